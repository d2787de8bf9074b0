//! Bad input at the door: a clear sentence, and nothing that was recorded is lost.

use slowbend_core::{
    acts::{Act, NewMeat},
    checks::{Cut, Spot, Temperature, TestResult},
    door::{SensorReading, Slowbend},
    error::Trouble,
    ids::Names,
    log::{Band, Draft, Entry, EntryKey, Field, Stamp, Subject, Where, Woke},
    moment::{HOUR, MINUTE, Moment, SECOND},
    safety::Form,
    store::{Along, Store, StoreTrouble},
    units::Mk,
};
use slowbend_tests::{
    kit,
    sim::{faults::Files, heard, place},
};
use std::{collections::BTreeMap, path::Path};

/// All entries in `folder`, opened again where damage is met only in reading them, as the sentence says.
fn held(folder: &Path) -> BTreeMap<EntryKey, Entry> {
    let mut door = kit::open(folder, "phone", &kit::six());
    if let Err(trouble) = door.entries_after(&[]) {
        assert!(
            trouble.reason().contains("start Slowbend again"),
            "{trouble:?}"
        );
        drop(door);
        door = kit::open(folder, "phone", &kit::six());
    }
    kit::entries(&mut door)
        .into_iter()
        .map(|entry| (entry.key, entry))
        .collect()
}

/// A folder with a cook of some forty entries in it, and those entries.
fn with_a_cook(folder: &Path) -> BTreeMap<EntryKey, Entry> {
    let mut door = kit::open(folder, "phone", &kit::six());
    let lunch = kit::lunch(&mut door, &kit::six());
    for i in 0..40 {
        let note = Act::Note {
            cook: lunch.cook,
            about: Subject::Cook(lunch.cook),
            text: format!("note {i} {}", "smoke ".repeat(60)),
        };
        kit::act(&mut door, &note, &kit::six().plus(i * MINUTE));
    }
    drop(door);
    held(folder)
}

fn set_aside(folder: &Path) -> Vec<String> {
    let files = std::fs::read_dir(folder).expect("the folder is there");
    let names = files
        .flatten()
        .map(|file| file.file_name().to_string_lossy().into_owned());
    names
        .filter(|name| name.starts_with("slowbend-aside-") && name.ends_with(".db"))
        .collect()
}

/// What is found is a part of what was there, and where something lacks the damaged file is still there.
fn is_honest(folder: &Path, all: &BTreeMap<EntryKey, Entry>, what: &str) {
    let found = held(folder);
    let changed: Vec<_> = found
        .iter()
        .filter(|(key, entry)| all.get(key).is_some_and(|was| was != *entry))
        .collect();
    assert!(changed.is_empty(), "{what}: {changed:?}");
    let lacking = all.keys().filter(|key| !found.contains_key(key)).count();
    assert!(
        lacking == 0 || !set_aside(folder).is_empty(),
        "{what}: {lacking} entries lack, and nothing was set aside"
    );
}

#[test]
fn a_truncated_database_is_set_aside_and_what_is_readable_taken_over() {
    let root = place::fresh();
    let whole = root.path().join("whole");
    let all = with_a_cook(&whole);
    let files = Files::of(&whole);
    let size = files.db.len();
    for end in [
        1,
        99,
        100,
        1_000,
        4_095,
        4_096,
        8_192,
        size / 2,
        size - 4_096,
        size - 1,
    ] {
        let folder = root.path().join(end.to_string());
        std::fs::create_dir_all(&folder).unwrap();
        Files {
            db: files.db[..end].to_vec(),
            wal: vec![],
        }
        .put(&folder);
        is_honest(&folder, &all, &format!("cut at {end} of {size}"));
        assert_eq!(set_aside(&folder).len(), 1, "cut at {end} of {size}");
    }
}

#[test]
fn a_damaged_page_is_never_guessed_at() {
    let root = place::fresh();
    let whole = root.path().join("whole");
    let all = with_a_cook(&whole);
    let files = Files::of(&whole);
    for page in 0..files.db.len() / 4_096 {
        let folder = root.path().join(format!("page {page}"));
        std::fs::create_dir_all(&folder).unwrap();
        let mut torn = files.clone();
        torn.db[page * 4_096..(page + 1) * 4_096].fill(0xa7);
        torn.put(&folder);
        is_honest(&folder, &all, &format!("page {page} overwritten"));
    }
}

#[test]
fn a_newer_database_is_left_alone_and_said() {
    let root = place::fresh();
    let all = with_a_cook(root.path());
    let file = root.path().join("slowbend.db");
    let set_version = |version: i64| {
        rusqlite::Connection::open(&file)
            .unwrap()
            .pragma_update(None, "user_version", version)
            .unwrap()
    };
    set_version(slowbend_core::store::SCHEMA_VERSION + 1);
    let refused = Slowbend::open(kit::args(root.path(), "phone"), &kit::six()).err();
    assert!(
        matches!(&refused, Some(Trouble::Newer { reason }) if reason.contains("update")),
        "{refused:?}"
    );
    assert_eq!(set_aside(root.path()), Vec::<String>::new());
    set_version(slowbend_core::store::SCHEMA_VERSION);
    assert_eq!(held(root.path()), all);
}

#[test]
fn two_cannot_hold_one_folder() {
    let root = place::fresh();
    let mut first = kit::open(root.path(), "phone", &kit::six());
    let second = Slowbend::open(kit::args(root.path(), "phone"), &kit::six()).err();
    assert!(
        matches!(&second, Some(Trouble::InUse { reason }) if reason.contains("close it")),
        "{second:?}"
    );
    kit::lunch(&mut first, &kit::six());
    first.suspend().unwrap();
    let third = Slowbend::open(kit::args(root.path(), "phone"), &kit::six());
    assert!(third.is_ok(), "who lets go lets others in");
}

#[test]
fn while_another_program_holds_the_file_nothing_is_recorded_and_nothing_lost() {
    let root = place::fresh();
    let mut door = kit::open(root.path(), "phone", &kit::six());
    let lunch = kit::lunch(&mut door, &kit::six());
    let viewer = kit::viewer(&mut door);
    let other = rusqlite::Connection::open(root.path().join("slowbend.db")).unwrap();
    other.execute_batch("BEGIN EXCLUSIVE").unwrap();
    let before = kit::entries(&mut door);
    let note = Act::Note {
        cook: lunch.cook,
        about: Subject::Crew,
        text: "smoke is thin and blue".into(),
    };
    let met = door.act(&viewer, &note, &kit::six());
    assert!(
        matches!(&met, Err(Trouble::InUse { reason }) if !reason.is_empty()),
        "{met:?}"
    );
    assert_eq!(kit::entries(&mut door), before);
    other.execute_batch("ROLLBACK").unwrap();
    kit::act(&mut door, &note, &kit::six());
    assert_eq!(kit::entries(&mut door).len(), before.len() + 1);
}

#[test]
fn a_full_disk_records_nothing_and_loses_nothing() {
    let root = place::fresh();
    let mut names = Names::new([3; 32]);
    let mut store = Store::open(root.path(), "phone", &mut names, kit::SIX)
        .unwrap()
        .store;
    let draft = Draft {
        cook: None,
        at: kit::SIX,
        payload: slowbend_core::log::WatchTaken {
            note: "x".repeat(60_000),
        }
        .into(),
    };
    let small = Draft {
        cook: None,
        at: kit::SIX,
        payload: Woke {}.into(),
    };
    store
        .append(
            std::slice::from_ref(&small),
            1,
            &[Stamp(1 << 20)],
            Along::default(),
        )
        .unwrap();
    let pages: i64 = store
        .connection()
        .pragma_query_value(None, "page_count", |row| row.get(0))
        .unwrap();
    store
        .connection()
        .pragma_update(None, "max_page_count", pages)
        .unwrap();
    let met = store.append(
        &[small.clone(), draft],
        2,
        &[Stamp(1 << 21), Stamp(1 << 22)],
        Along::default(),
    );
    assert!(matches!(met, Err(StoreTrouble::Full)), "{met:?}");
    assert_eq!(store.count().unwrap(), 1);
    store
        .connection()
        .pragma_update(None, "max_page_count", pages * 100)
        .unwrap();
    store
        .append(&[small], 2, &[Stamp(1 << 21)], Along::default())
        .unwrap();
    assert_eq!(store.count().unwrap(), 2);
}

#[test]
fn clocks_that_were_never_set_or_run_ahead_do_no_harm() {
    for wrong in [0, 1, 86_400_000, 7_258_118_400_000, 16_725_225_600_000] {
        let root = place::fresh();
        let mut door = kit::open(root.path(), "phone", &kit::six());
        let lunch = kit::lunch(&mut door, &kit::six());
        let (viewer, before) = (kit::viewer(&mut door), kit::entries(&mut door));
        let off = Moment {
            utc_ms: wrong,
            ..kit::six().plus(HOUR)
        };
        let fed = Act::Feed {
            cook: lunch.cook,
            pit: lunch.pit,
            what: "half a chimney".into(),
            at: None,
        };
        let met = door.act(&viewer, &fed, &off);
        let told = |reason: &str| reason.contains("clock") && reason.ends_with('.');
        assert!(
            matches!(&met, Err(Trouble::Refused { reason }) if told(reason)),
            "{met:?}"
        );
        door.alarms(&viewer, &off, 60).unwrap();
        drop(door);
        let mut door = kit::open(root.path(), "phone", &off);
        assert_eq!(kit::entries(&mut door), before);
        kit::act(&mut door, &fed, &kit::six().plus(2 * HOUR));
        let list = door
            .alarms(&viewer, &kit::six().plus(2 * HOUR), 60)
            .unwrap();
        assert!(!list.alarms.is_empty());
    }
}

#[test]
fn what_no_pit_and_no_meat_can_be_is_refused_with_a_sentence() {
    let root = place::fresh();
    let mut door = kit::open(root.path(), "phone", &kit::six());
    let lunch = kit::lunch(&mut door, &kit::six());
    let viewer = kit::viewer(&mut door);
    let before = kit::entries(&mut door);
    let (cook, piece, pit) = (lunch.cook, lunch.ribs, lunch.pit);
    let weighing = |grams| Act::AddMeat {
        cook,
        meat: NewMeat {
            name: "Butt".into(),
            cut: Cut::PorkButt,
            form: Form::Intact,
            weight_g: Some(grams),
            cadence: None,
            pit: None,
        },
    };
    let hot = TestResult::Heat(Temperature {
        mk: Mk::from_f(9_000),
        spot: Spot::BetweenBones,
        thermometer: None,
        instant_read: true,
    });
    let absurd = [
        weighing(0),
        weighing(900_000),
        weighing(i64::MIN),
        Act::SetField {
            of: Subject::Piece(piece),
            to: Field::WeightG(Some(900_000)),
            saw: None,
        },
        Act::Read {
            cook,
            place: Where::Pit { pit },
            thermometer: None,
            temp: Mk::from_f(9_000),
            at: None,
        },
        Act::Check {
            piece,
            results: vec![hot],
            at: None,
        },
        Act::SetField {
            of: Subject::Pit(pit),
            to: Field::Band(Band {
                low: Mk::from_f(225),
                high: Mk::from_f(9_000),
                minutes: 15,
            }),
            saw: None,
        },
        Act::SeeFire {
            cook,
            pit,
            at: Some(0),
        },
        Act::SeeFire {
            cook,
            pit,
            at: Some(7_258_118_400_000),
        },
        Act::SeeFire {
            cook,
            pit,
            at: Some(i64::MIN),
        },
        Act::Sleep { until: i64::MAX },
        Act::Later {
            cook,
            jobs: vec![slowbend_core::log::Job::Wet(piece)],
            minutes: i64::MAX,
        },
    ];
    for act in absurd {
        let met = door.act(&viewer, &act, &kit::six());
        assert!(
            matches!(&met, Err(Trouble::Refused { reason }) if reason.ends_with('.')),
            "{act:?}: {met:?}"
        );
    }
    assert_eq!(kit::entries(&mut door), before);
}

#[test]
fn absurd_readings_are_refused_whole() {
    let root = place::fresh();
    let mut door = kit::open(root.path(), "phone", &kit::six());
    let reading = |at, temp| SensorReading {
        source: "drum probe".into(),
        sensor: "grate".into(),
        at,
        temp,
    };
    let good = reading(kit::SIX, Mk::from_f(250));
    let bad = [
        reading(kit::SIX, Mk::from_f(9_000)),
        reading(0, Mk::from_f(250)),
        reading(7_258_118_400_000, Mk::from_f(250)),
        SensorReading {
            source: String::new(),
            ..good.clone()
        },
    ];
    for one in bad {
        let met = door.readings(&[good.clone(), one.clone()], &kit::six());
        assert!(
            matches!(&met, Err(Trouble::Refused { reason }) if !reason.is_empty()),
            "{one:?}: {met:?}"
        );
    }
    door.suspend().unwrap();
    let none = heard::on_disk(&root.path().join("slowbend.db")).unwrap();
    assert_eq!(none.last("drum probe", "grate", i64::MAX), None);
}

/// Probe readings come every five seconds; the power fails at any of them: what is a minute old is there.
#[test]
fn readings_are_on_disk_within_a_minute() {
    let root = place::fresh();
    let mut door = kit::open(root.path(), "phone", &kit::six());
    for i in 0..60 {
        let now = kit::six().plus(i * 5 * SECOND);
        let reading = SensorReading {
            source: "drum probe".into(),
            sensor: "grate".into(),
            at: now.utc_ms,
            temp: Mk::from_f(250),
        };
        door.readings(&[reading], &now).unwrap();
        let cut = root.path().join(format!("cut {i}"));
        std::fs::create_dir_all(&cut).unwrap();
        Files::of(root.path()).put(&cut);
        let tails = heard::on_disk(&cut.join("slowbend.db")).unwrap();
        let there = tails
            .last("drum probe", "grate", i64::MAX)
            .map_or(kit::SIX - SECOND, |(at, _)| at);
        assert!(
            there + MINUTE >= now.utc_ms,
            "after {i} readings the last on disk is {there}"
        );
    }
}

/// Any verb keeps the promise, not only more readings.
#[test]
fn an_act_takes_waiting_readings_to_disk() {
    let root = place::fresh();
    let mut door = kit::open(root.path(), "phone", &kit::six());
    kit::lunch(&mut door, &kit::six());
    let reading = SensorReading {
        source: "drum probe".into(),
        sensor: "grate".into(),
        at: kit::SIX,
        temp: Mk::from_f(250),
    };
    door.readings(&[reading], &kit::six()).unwrap();
    kit::act(&mut door, &Act::WakeUp, &kit::six().plus(31 * SECOND));
    let tails = heard::on_disk(&root.path().join("slowbend.db")).unwrap();
    assert_eq!(
        tails.last("drum probe", "grate", i64::MAX),
        Some((kit::SIX, Mk::from_f(250)))
    );
}
