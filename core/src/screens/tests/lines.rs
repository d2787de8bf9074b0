//! Stories of single lines: undo, notices, the timeline's pages, settings.

use super::regatta::{minute, moment, opened, stage, told_until, viewer};
use crate::{
    acts::Act,
    checks::{ProbeFeel, Spot, Temperature, TestResult},
    cook::story::{Story, cook, device, piece, pit},
    log::*,
    moment::SECOND,
    screens::{self, Happened, Notice, Weight},
    units::Mk,
    words::Locale,
};

fn notices(story: &Story, at: i64) -> Vec<Notice> {
    let told = story.told();
    let screen = screens::pitside(&told.known(1), &viewer(Locale::EnUs), cook(1), &moment(at));
    let all = screen.unwrap().notices.into_iter();
    // What is told once of charcoal has a test of its own.
    all.filter(|notice| !notice.text.contains("carbon monoxide"))
        .collect()
}

fn timeline(story: &Story, before: Option<i64>, page: usize) -> (Vec<Happened>, Option<i64>) {
    let (told, viewer) = (story.told(), viewer(Locale::EnUs));
    let entries = &story.entries;
    let of_cook: Vec<Entry> = entries
        .iter()
        .filter(|entry| match &entry.body {
            Body::Raw(raw) => Entry::head(raw).unwrap().cook.is_some(),
            Body::Erased => true,
        })
        .cloned()
        .collect();
    let known = told.known(1);
    let screen = screens::timeline(
        &known,
        &viewer,
        cook(1),
        &of_cook,
        before,
        page,
        &moment(500),
    )
    .unwrap();
    (screen.lines, screen.next)
}

#[test]
fn the_last_act_is_offered_back_for_thirty_seconds_to_who_did_it() {
    let mut story = told_until(160);
    let key = opened(&mut story, 1, 161, &[1]);
    let told = story.told();
    let undo = |on: u128, seconds: i64| {
        let viewer = crate::words::Viewer {
            device: device(on),
            ..viewer(Locale::EnUs)
        };
        let then = moment(161).plus(seconds * SECOND);
        screens::pitside(&told.known(on), &viewer, cook(1), &then)
            .unwrap()
            .undo
    };
    let offered = undo(1, 29).unwrap();
    assert_eq!(offered.label, "Undo: wetted Slab 1");
    assert_eq!(offered.until, minute(161) + 30 * SECOND);
    assert_eq!(offered.act, Act::Undo { targets: vec![key] });
    assert_eq!(undo(1, 30), None);
    assert_eq!(undo(2, 1), None);
}

#[test]
fn an_undo_says_what_it_takes_back() {
    let label = |story: &Story, locale: Locale| {
        let (told, viewer) = (story.told(), viewer(locale));
        let screen = screens::pitside(&told.known(1), &viewer, cook(1), &moment(161));
        screen.unwrap().undo.unwrap().label
    };
    let mut off = told_until(160);
    stage(&mut off, 1, 161, Stage::Off);
    assert_eq!(label(&off, Locale::EnUs), "Undo: Slab 1: Off, resting");
    assert_eq!(
        label(&off, Locale::EsUs),
        "Deshacer: Slab 1: Fuera, reposando"
    );
    let mut fed = told_until(160);
    let what = String::new();
    fed.say(1, minute(161), Some(cook(1)), Fed { pit: pit(1), what });
    assert_eq!(label(&fed, Locale::EnUs), "Undo: Fed the fire: Drum");
}

#[test]
fn a_claim_from_the_future_is_told_as_a_wrong_clock_until_it_has_come() {
    let mut story = told_until(160);
    opened(&mut story, 2, 300, &[1]);
    let told = notices(&story, 165);
    assert_eq!(told.len(), 1);
    assert!(
        told[0].text.contains("Ben recorded something for 11:00 AM"),
        "{}",
        told[0].text
    );
    assert!(notices(&story, 290).is_empty());
}

#[test]
fn who_was_overruled_is_said_until_it_is_put_away() {
    let mut story = told_until(160);
    for (by, f) in [(1, 225), (2, 235)] {
        let band = Band {
            low: Mk::from_f(f),
            high: Mk::from_f(275),
            minutes: 10,
        };
        let (of, to, saw) = (Subject::Pit(pit(1)), Field::Band(band), None);
        story.say(by, minute(150), None, FieldSet { of, to, saw });
    }
    let told = notices(&story, 165);
    assert_eq!(
        told[0].text,
        "Ben and Ana set Held between of Drum without knowing of each other. What Ben set stands."
    );
    let Some(Act::Dismiss { notice }) = told[0].dismiss.as_ref().map(|b| b.act.clone()) else {
        panic!("it can be put away")
    };
    story.say(1, minute(166), None, Dismissed { notice });
    assert!(notices(&story, 167).is_empty());
}

#[test]
fn what_is_newer_must_be_updated_for_before_judging() {
    let mut story = told_until(160);
    let raw = format!(
        r#"{{"kind":"torched","v":1,"must_understand":true,"cook":"{}","at":{},"body":{{}}}}"#,
        cook(1),
        minute(150)
    );
    story.say_raw(2, minute(150), raw.into_bytes());
    assert!(
        notices(&story, 165)[0]
            .text
            .starts_with("Something was recorded by a newer")
    );
    let (lines, _) = timeline(&story, None, 100);
    let newer = lines
        .iter()
        .find(|line| line.standing == "Update to judge this")
        .unwrap();
    assert_eq!(
        (newer.what.as_str(), newer.who.as_str()),
        ("Something from a newer Slowbend", "Ben")
    );
    let told = story.told();
    let meat = screens::piece(
        &told.known(1),
        &viewer(Locale::EnUs),
        piece(1),
        &moment(165),
    );
    let verdict = meat.unwrap().verdict;
    assert_eq!(verdict.weight, Weight::Wake);
    assert_eq!(verdict.headline, "Update to judge this");
    assert!(verdict.doubts[0].starts_with("Something was recorded"));
}

#[test]
fn pages_of_the_timeline_hold_every_entry_once_latest_first() {
    let story = told_until(500);
    let (whole, none) = timeline(&story, None, 1_000);
    assert_eq!(none, None);
    let (mut paged, mut before) = (vec![], None);
    loop {
        let (lines, next) = timeline(&story, before, 3);
        paged.extend(lines);
        match next {
            Some(_) => before = next,
            None => break,
        }
    }
    assert_eq!(whole, paged);
    assert!(whole[0].what.contains("Turkey breast"), "{}", whole[0].what);
    assert_eq!(
        whole.last().unwrap().what,
        "Started the cook: Regatta lunch"
    );
}

#[test]
fn taken_back_is_struck_and_can_be_restored_and_what_hangs_on_it_says_so() {
    let mut story = told_until(500);
    let added = story
        .entries
        .iter()
        .find(|entry| match &entry.body {
            Body::Raw(raw) => String::from_utf8_lossy(raw).contains("Turkey breast"),
            Body::Erased => false,
        })
        .unwrap()
        .key;
    let targets = vec![added];
    let void = story.say(1, minute(490), Some(cook(1)), Voided { targets });
    let (lines, _) = timeline(&story, None, 1_000);
    assert_eq!(lines[0].what, "Took back: Added a meat: Turkey breast");
    let struck = lines.iter().find(|line| line.entry == added).unwrap();
    assert_eq!(struck.standing, "Taken back");
    assert_eq!(
        struck.undo.as_ref().unwrap().act,
        Act::Undo {
            targets: vec![void]
        }
    );
    let orphans = lines
        .iter()
        .filter(|l| l.standing.starts_with("Belongs to"));
    let orphans: Vec<&str> = orphans.map(|line| line.what.as_str()).collect();
    assert_eq!(orphans.len(), 2, "its stage and its check: {orphans:?}");
}

#[test]
fn an_erased_entry_stays_as_a_marker() {
    let mut story = told_until(500);
    let last = story.entries.last_mut().unwrap();
    last.body = Body::Erased;
    let key = last.key;
    let (lines, _) = timeline(&story, None, 1_000);
    let erased = lines.iter().find(|line| line.entry == key).unwrap();
    assert_eq!((erased.standing.as_str(), &erased.undo), ("Erased", &None));
}

#[test]
fn settings_carry_the_stamps_that_were_seen() {
    let story = told_until(0);
    let told = story.told();
    let screen = screens::settings(&told.known(1), &viewer(Locale::EnUs), &moment(0));
    let drum = &screen.pits[0];
    assert_eq!(drum.name, "Drum");
    assert!(drum.fields.iter().all(|field| field.saw.is_some()));
    assert_eq!(
        screen.thermometers[0].detail,
        "Checked 5 h ago: reads right."
    );
    let mop = &screen.habits[0].fields[0];
    assert_eq!((mop.value.as_str(), mop.saw), ("30", None));
}

#[test]
fn serving_what_was_not_shown_safe_is_asked_about_first() {
    let mut story = told_until(330);
    stage(&mut story, 4, 400, Stage::Off);
    let told = story.told();
    let meat = screens::piece(
        &told.known(1),
        &viewer(Locale::EnUs),
        piece(4),
        &moment(401),
    );
    let buttons = meat.unwrap().buttons;
    let serve = buttons
        .iter()
        .find(|button| button.label == "Serve")
        .unwrap();
    assert!(
        serve
            .confirm
            .as_ref()
            .unwrap()
            .contains("published minimum")
    );
}

#[test]
fn a_verdict_by_a_thermometer_that_nobody_checked_says_so_wherever_it_stands() {
    let mut story = told_until(160);
    let results = vec![
        TestResult::Probed(ProbeFeel::Slides),
        TestResult::Heat(Temperature {
            mk: Mk::from_f(203),
            spot: Spot::Center,
            thermometer: None,
            instant_read: true,
        }),
    ];
    let piece = piece(3);
    story.say(1, minute(161), Some(cook(1)), Checked { piece, results });
    let (told, viewer) = (story.told(), viewer(Locale::EnUs));
    let now = screens::pitside(&told.known(1), &viewer, cook(1), &moment(162)).unwrap();
    let butt = now.meats.iter().find(|line| line.name == "Butt").unwrap();
    assert!(
        butt.detail.ends_with("thermometer not checked"),
        "{}",
        butt.detail
    );
    let meat = screens::piece(&told.known(1), &viewer, piece, &moment(162)).unwrap();
    let check = screens::check(&told.known(1), &viewer, piece, &moment(162)).unwrap();
    for verdict in [meat.verdict, check.verdict] {
        assert!(verdict.doubts[0].starts_with("Not checked in 30 days: "));
    }
}
