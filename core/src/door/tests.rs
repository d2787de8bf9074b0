//! The one door, opened and shut.

mod ahead;
mod cached;
mod charts;
mod lines;
mod probes;
mod rings;

use super::*;
use crate::{
    acts::{Act, NewMeat},
    alarms::SILENT_MS,
    checks::Cut,
    error::Trouble,
    log::{PitKind, Stage, Subject, Where},
    moment::{HOUR, MINUTE, Moment},
    safety::Form,
    store::Group,
    units::Mk,
    words::Viewer,
};
use std::path::Path;

const SIX: i64 = 1_781_348_400_000;

fn now(minutes: i64) -> Moment {
    Moment::at(SIX + minutes * MINUTE, "America/Chicago")
}

fn open(place: &Path, install: &str) -> Slowbend {
    let args = OpenArgs {
        place: place.into(),
        install_id: install.into(),
        entropy: [install.len() as u8; 32],
    };
    Slowbend::open(args, &now(0)).unwrap()
}

fn viewer(door: &mut Slowbend) -> Viewer {
    Viewer {
        zone: "America/Chicago".into(),
        ..Viewer::default_for(door.device().unwrap())
    }
}

fn act(door: &mut Slowbend, minutes: i64, act: Act) -> crate::acts::Outcome {
    let viewer = viewer(door);
    door.act(&viewer, &act, &now(minutes)).unwrap()
}

/// A drum, a cook and a slab on it.
fn begun(door: &mut Slowbend) -> (CookId, crate::ids::PitId, crate::ids::PieceId) {
    let pit = Act::AddPit {
        name: "Drum".into(),
        kind: PitKind::Drum,
        grate_cm2: None,
        alone_minutes: None,
    };
    let Subject::Pit(pit) = act(door, 0, pit).made[0] else {
        panic!("a pit was made")
    };
    let meat = NewMeat {
        name: String::new(),
        cut: Cut::SpareRibs,
        form: Form::Intact,
        weight_g: Some(1_600),
        cadence: None,
        pit: None,
    };
    let start = Act::StartCook {
        name: "Regatta lunch".into(),
        serve: None,
        people: Some(14),
        meats: vec![meat],
        demo: false,
    };
    let made = act(door, 0, start).made;
    let [Subject::Cook(cook), Subject::Piece(piece)] = made[..] else {
        panic!("a cook and a meat: {made:?}")
    };
    act(
        door,
        1,
        Act::SetStage {
            piece,
            stage: Stage::OnPit { pit },
            at: None,
        },
    );
    (cook, pit, piece)
}

#[test]
fn what_was_done_is_there_when_it_is_opened_again() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let (cook, ..) = begun(&mut door);
    let before = (door.crew.clone(), door.cooks[&cook].clone());
    drop(door);
    let door = open(place.path(), "here");
    assert_eq!((door.crew.clone(), door.cooks[&cook].clone()), before);
}

#[test]
fn a_cached_state_is_used_and_is_the_folded_one() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let (cook, pit, piece) = begun(&mut door);
    for minutes in 2..60 {
        let opened = Act::Open {
            pit: Some(pit),
            wetted: vec![piece],
            turned: vec![piece],
            glazed: vec![],
            at: None,
        };
        act(&mut door, minutes, opened);
        act(
            &mut door,
            minutes,
            Act::AddThermometer {
                name: format!("Pen {minutes}"),
            },
        );
    }
    while door.work(&now(60), 1).unwrap() {}
    act(
        &mut door,
        61,
        Act::Feed {
            cook,
            pit,
            what: "one chimney".into(),
            at: None,
        },
    );
    let before = (door.crew.clone(), door.cooks[&cook].clone());
    drop(door);
    let mut door = open(place.path(), "here");
    assert_eq!((door.crew.clone(), door.cooks[&cook].clone()), before);
    let cached = door
        .store()
        .unwrap()
        .cached::<(Cook, Option<Order>)>(Group::Cook(cook))
        .unwrap();
    let ((of_cache, _), seq) = cached.expect("the cook was cached and reads back");
    assert!(of_cache.entries > 50 && seq > 0);
    assert_eq!(
        door.marks[&Group::Cook(cook)].since_cached,
        1,
        "only what came after the cache was folded"
    );
    assert!(
        door.store()
            .unwrap()
            .cached::<(Crew, Option<Order>)>(Group::Crew)
            .unwrap()
            .is_some()
    );
}

#[test]
fn an_act_posted_twice_is_done_once() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let (viewer, add) = (
        viewer(&mut door),
        Act::AddThermometer { name: "Pen".into() },
    );
    let first = door.act_once("form-1", &viewer, &add, &now(0)).unwrap();
    let second = door.act_once("form-1", &viewer, &add, &now(1)).unwrap();
    assert!(!first.repeated && second.repeated);
    assert_eq!(first.made, second.made);
    assert_eq!(door.crew.thermometers.len(), 1);
    drop(door);
    let mut door = open(place.path(), "here");
    assert!(
        door.act_once("form-1", &viewer, &add, &now(2))
            .unwrap()
            .repeated,
        "also after a restart"
    );
}

#[test]
fn undo_takes_back_and_undo_of_it_restores() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let (cook, pit, piece) = begun(&mut door);
    let opened = Act::Open {
        pit: Some(pit),
        wetted: vec![piece],
        turned: vec![],
        glazed: vec![],
        at: None,
    };
    let mopped = act(&mut door, 50, opened);
    let wetted = |door: &Slowbend| door.cooks[&cook].pieces[&piece].wetted.len();
    assert_eq!(wetted(&door), 1);
    let undone = act(&mut door, 51, mopped.undo.unwrap().act);
    assert_eq!(wetted(&door), 0);
    act(&mut door, 52, undone.undo.unwrap().act);
    assert_eq!(wetted(&door), 1);
}

#[test]
fn a_second_program_is_told_and_a_suspended_one_lets_go() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    begun(&mut door);
    let args = OpenArgs {
        place: place.path().into(),
        install_id: "here".into(),
        entropy: [0; 32],
    };
    assert!(matches!(
        Slowbend::open(args, &now(0)),
        Err(Trouble::InUse { .. })
    ));
    door.suspend().unwrap();
    let other = open(place.path(), "here");
    assert_eq!(other.cooks.len(), 1);
    drop(other);
    act(&mut door, 5, Act::AddThermometer { name: "Pen".into() });
    assert_eq!(door.crew.thermometers.len(), 1);
}

#[test]
fn a_copied_database_goes_on_under_a_name_of_its_own() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let (cook, ..) = begun(&mut door);
    let first = door.device().unwrap();
    drop(door);
    let mut copy = open(place.path(), "elsewhere");
    assert_ne!(copy.device().unwrap(), first);
    assert_eq!(copy.warnings, [Warning::Cloned]);
    assert_eq!(
        act(&mut copy, 9, Act::AddThermometer { name: "Pen".into() }).entries[0].n,
        1
    );
    assert!(copy.cooks.contains_key(&cook));
}

#[test]
fn two_devices_agree_once_they_have_met() {
    let (here, there) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let (mut a, mut b) = (open(here.path(), "a"), open(there.path(), "bb"));
    let (cook, pit, piece) = begun(&mut a);
    let log = a.log().unwrap();
    b.join_crew(log, &now(2)).unwrap();
    b.absorb(&a.entries_after(&[]).unwrap(), &now(3)).unwrap();
    let opened = Act::Open {
        pit: Some(pit),
        wetted: vec![piece],
        turned: vec![],
        glazed: vec![],
        at: None,
    };
    act(&mut a, 50, opened.clone());
    act(&mut b, 51, opened);
    let (from_a, from_b) = (a.entries_after(&[]).unwrap(), b.entries_after(&[]).unwrap());
    let told = a.absorb(&from_b, &now(52)).unwrap();
    assert!(told.fresh > 0 && told.repeated > 0 && told.refused == 0);
    b.absorb(&from_a, &now(52)).unwrap();
    assert_eq!(a.cooks, b.cooks);
    assert_eq!(a.crew, b.crew);
    assert_eq!(a.cooks[&cook].pieces[&piece].wetted.len(), 2);
}

#[test]
fn readings_are_taken_flushed_sealed_and_there_again() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let (cook, pit, _) = begun(&mut door);
    let bind = Act::BindProbe {
        cook,
        source: "box".into(),
        sensor: "1".into(),
        place: Where::Pit { pit },
        thermometer: None,
    };
    act(&mut door, 2, bind);
    for minutes in 3..90 {
        let temp = Mk::from_f(250);
        let reading = SensorReading {
            source: "box".into(),
            sensor: "1".into(),
            at: now(minutes).utc_ms,
            temp,
        };
        door.readings(&[reading], &now(minutes)).unwrap();
    }
    while door.work(&now(90), 1).unwrap() {}
    assert!(door.store().unwrap().sealed_count().unwrap() > 60);
    let silent = |door: &mut Slowbend| {
        let rings = door.rings(&now(90), 60).unwrap().rings;
        rings
            .iter()
            .find(|ring| matches!(ring.jobs[0].job, crate::log::Job::Silent(_)))
            .map(|ring| ring.at)
    };
    assert_eq!(silent(&mut door), Some(now(89).utc_ms + SILENT_MS));
    let tails = door.tails.clone();
    drop(door);
    let mut door = open(place.path(), "here");
    assert_eq!(door.tails, tails);
    assert_eq!(silent(&mut door), Some(now(89).utc_ms + SILENT_MS));
}

#[test]
fn absurd_readings_are_refused_whole() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let reading = |at, fahrenheit| SensorReading {
        source: "box".into(),
        sensor: "1".into(),
        at,
        temp: Mk::from_f(fahrenheit),
    };
    for bad in [
        reading(SIX, 9_000),
        reading(SIX + HOUR, 250),
        reading(0, 250),
    ] {
        let batch = [reading(SIX, 250), bad];
        assert!(matches!(
            door.readings(&batch, &now(0)),
            Err(Trouble::Refused { .. })
        ));
    }
    assert_eq!(door.tails, Tails::default());
}

#[test]
fn what_rang_is_remembered_by_the_device_it_rang_on() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    begun(&mut door);
    let (viewer, late) = (viewer(&mut door), now(70));
    let due: Vec<_> = door
        .alarms(&viewer, &late, 60)
        .unwrap()
        .alarms
        .into_iter()
        .filter(|a| a.at <= late.utc_ms)
        .collect();
    assert!(!due.is_empty());
    let ids: Vec<_> = due.iter().flat_map(|alarm| alarm.covers.clone()).collect();
    door.rang(&ids, &late).unwrap();
    drop(door);
    let mut door = open(place.path(), "here");
    let listed = door.alarms(&viewer, &late, 60).unwrap().alarms;
    assert!(
        listed.iter().all(|alarm| alarm.at > late.utc_ms),
        "{listed:#?}"
    );
}

#[test]
fn an_export_holds_every_entry_and_reads_back() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    begun(&mut door);
    let mut text = vec![];
    let count = door.export(&mut text).unwrap();
    let text = String::from_utf8(text).unwrap();
    let mut lines = text.lines();
    assert_eq!(lines.next(), Some(EXPORT_HEADER));
    let read: Vec<ExportLine> = lines
        .map(|line| serde_json::from_str(line).unwrap())
        .collect();
    assert_eq!(read.len() as u64, count);
    assert!(read.iter().all(|line| {
        line.entry
            .as_ref()
            .is_some_and(|entry| entry.contains("\"kind\""))
    }));
}

#[test]
fn each_screen_is_one_call_and_the_same_call_gives_the_same_bytes() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let (cook, _, piece) = begun(&mut door);
    let (viewer, at) = (viewer(&mut door), now(30));
    let all = |door: &mut Slowbend| {
        [
            serde_json::to_string(&door.start(&viewer, None, &at).unwrap()).unwrap(),
            serde_json::to_string(&door.pitside(&viewer, cook, &at).unwrap()).unwrap(),
            serde_json::to_string(&door.piece(&viewer, piece, &at).unwrap()).unwrap(),
            serde_json::to_string(&door.check(&viewer, piece, &at).unwrap()).unwrap(),
            serde_json::to_string(&door.timeline(&viewer, cook, None, &at).unwrap()).unwrap(),
            serde_json::to_string(&door.settings(&viewer, &at).unwrap()).unwrap(),
        ]
    };
    let before = all(&mut door);
    assert_eq!(before, all(&mut door));
    drop(door);
    assert_eq!(
        before,
        all(&mut open(place.path(), "here")),
        "also after a restart"
    );
    assert!(before.iter().all(|screen| !screen.contains('⟨')));
}

#[test]
fn a_past_cook_can_still_be_asked_for() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let (cook, _, piece) = begun(&mut door);
    act(&mut door, 400, Act::FinishCook { cook });
    drop(door);
    let mut door = open(place.path(), "here");
    assert!(door.cooks.is_empty(), "a past cook is not loaded");
    let viewer = viewer(&mut door);
    assert_eq!(door.start(&viewer, None, &now(401)).unwrap().past.len(), 1);
    assert!(door.piece(&viewer, piece, &now(401)).is_ok());
    assert!(
        door.timeline(&viewer, cook, None, &now(401))
            .unwrap()
            .lines
            .len()
            >= 3
    );
    let nothing = CookId(uuid::Uuid::nil());
    assert!(matches!(
        door.pitside(&viewer, nothing, &now(401)),
        Err(Trouble::Refused { .. })
    ));
}

#[test]
fn readings_taken_by_a_clock_that_was_put_back_do_not_hide_those_of_now() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let read = |door: &mut Slowbend, minutes: i64| {
        let reading = SensorReading {
            source: "box".into(),
            sensor: "1".into(),
            at: now(minutes).utc_ms,
            temp: Mk::from_f(250),
        };
        door.readings(&[reading], &now(minutes)).unwrap();
    };
    let last = |door: &Slowbend| {
        door.tails
            .last("box", "1", now(20).utc_ms)
            .map(|(at, _)| at)
    };
    let years = 70 * 365 * 24 * 60;
    read(&mut door, 1);
    read(&mut door, years);
    read(&mut door, 2);
    read(&mut door, 3);
    assert_eq!(last(&door), Some(now(3).utc_ms));
    door.suspend().unwrap();
    drop(door);
    let door = open(place.path(), "here");
    assert_eq!(last(&door), Some(now(3).utc_ms));
}

#[test]
fn what_another_program_finished_while_the_files_were_let_go_is_not_under_way_here() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let (cook, ..) = begun(&mut door);
    door.suspend().unwrap();
    let mut other = open(place.path(), "here");
    act(&mut other, 5, Act::FinishCook { cook });
    drop(other);
    let rings = door.rings(&now(6), 60).unwrap().rings;
    assert_eq!(rings, []);
}

#[test]
fn a_file_of_readings_takes_nothing_from_what_a_probe_said_meanwhile() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let (cook, ..) = begun(&mut door);
    let at = now(30).utc_ms;
    let live = SensorReading {
        source: "box".into(),
        sensor: "Pit".into(),
        at,
        temp: Mk::from_f(251),
    };
    door.readings(&[live], &now(31)).unwrap();
    door.flush_readings().unwrap();
    let file = "time,Pit (°F)\n2026-06-13T06:00:00,240\n2026-06-13T07:00:00,250\n";
    let plan = crate::readings::ImportPlan {
        source: "box".into(),
        delimiter: crate::readings::Delimiter::Comma,
        skip_rows: 1,
        date_column: None,
        time_column: 0,
        time_format: crate::readings::times::TimeFormat::Iso,
        zone: "America/Chicago".into(),
        temp_columns: vec![crate::readings::TempColumn {
            column: 1,
            sensor: "Pit".into(),
            unit: crate::readings::numbers::Unit::Fahrenheit,
        }],
        latest: None,
    };
    let report = door
        .import_readings(file.as_bytes(), &plan, Some(cook), &now(120))
        .unwrap();
    assert_eq!(report.taken, 2);
    let kept = door.store().unwrap().live().unwrap();
    assert_eq!(
        kept.iter().map(|row| row.at).collect::<Vec<_>>(),
        [at],
        "still there, to be sealed in its turn"
    );
}

#[test]
fn a_damaged_database_gives_up_its_log_its_readings_and_its_entries() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let (cook, ..) = begun(&mut door);
    let log = door.log().unwrap();
    let reading = SensorReading {
        source: "box".into(),
        sensor: "1".into(),
        at: SIX,
        temp: Mk::from_f(250),
    };
    door.readings(&[reading], &now(1)).unwrap();
    while door.work(&now(2), 1).unwrap() {}
    drop(door);
    let file = place.path().join("slowbend.db");
    let mut bytes = std::fs::read(&file).unwrap();
    let page = 4096;
    let end = bytes.len();
    bytes.truncate(end - page);
    std::fs::write(&file, bytes).unwrap();
    let mut door = open(place.path(), "here");
    assert!(
        matches!(door.warnings[..], [Warning::SetAside { entries: 4.., .. }]),
        "{:?}",
        door.warnings
    );
    assert!(door.cooks.contains_key(&cook));
    assert_eq!(door.log().unwrap(), log, "the crew's log goes on");
    assert_eq!(
        door.tails.last("box", "1", i64::MAX),
        Some((SIX, Mk::from_f(250)))
    );
}

#[test]
fn past_cooks_begun_at_one_instant_are_not_parted_by_a_page() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    for number in 0..60 {
        let start = Act::StartCook {
            name: format!("Cook {number}"),
            serve: None,
            people: None,
            meats: vec![],
            demo: false,
        };
        let minute = if number < 20 { number } else { 30 };
        let Subject::Cook(cook) = act(&mut door, minute, start).made[0] else {
            panic!()
        };
        act(&mut door, minute, Act::FinishCook { cook });
    }
    let viewer = viewer(&mut door);
    let mut seen = std::collections::BTreeSet::new();
    let mut before = None;
    loop {
        let page = door.start(&viewer, before, &now(100)).unwrap();
        seen.extend(page.past.iter().map(|line| line.name.clone()));
        before = page.past_next;
        if before.is_none() {
            break;
        }
    }
    assert_eq!(seen.len(), 60);
}
