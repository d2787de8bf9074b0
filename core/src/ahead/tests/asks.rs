//! What is asked of a cook's log, as stories: two pits, a probe that was moved, thermometers, checks, wraps.

use crate::{
    ahead::{Asked, DoneWhen, Facts, Likeness, Sitting, Tried, Wrapped, asked},
    cadence::Cadence,
    checks::{Bend, BoneShowing, Cut, ProbeFeel, Spot, Temperature, TestResult},
    cook::story::{SIX, Story, cook, piece, pit, thermometer},
    log::*,
    moment::MINUTE,
    readings::Reading,
    safety::Form,
    units::Mk,
};

pub(super) const fn minute(minutes: i64) -> i64 {
    SIX + minutes * MINUTE
}

pub(super) fn here(story: &mut Story, at: i64, payload: impl Into<Payload>) {
    story.say(1, minute(at), Some(cook(1)), payload);
}

pub(super) fn stage(story: &mut Story, at: i64, stage: Stage) {
    let piece = piece(1);
    here(story, at, StageSet { piece, stage });
}

pub(super) fn bind(story: &mut Story, at: i64, sensor: &str, place: Where, of: Option<u128>) {
    let bound = ProbeBound {
        source: "box".into(),
        sensor: sensor.into(),
        place,
        thermometer: of.map(thermometer),
    };
    here(story, at, bound);
}

pub(super) fn inside() -> Where {
    Where::Piece {
        piece: piece(1),
        spot: "center".into(),
    }
}

/// A drum, a kettle, and a meat that goes on the drum at six.
pub(super) fn begun(cut: Cut) -> Story {
    let mut story = Story::default();
    for (of, name) in [(1, "Drum"), (2, "Kettle")] {
        let added = PitAdded {
            pit: pit(of),
            name: name.into(),
            kind: PitKind::Drum,
            grate_cm2: None,
            alone_minutes: None,
        };
        story.say(1, minute(-60), None, added);
    }
    let started = CookStarted {
        id: cook(1),
        name: "Regatta lunch".into(),
        serve: None,
        people: None,
        demo: false,
    };
    here(&mut story, -50, started);
    let added = PieceAdded {
        piece: piece(1),
        name: "Slab".into(),
        cut,
        form: Form::Intact,
        weight_g: Some(1_600),
        cadence: Cadence::mop(),
    };
    here(&mut story, -49, added);
    stage(&mut story, 0, Stage::OnPit { pit: pit(1) });
    story
}

pub(super) fn ask(story: &Story, minutes: i64) -> Option<Asked> {
    let told = story.told();
    let known = told.known(1);
    let (cook, piece) = known.piece(piece(1)).unwrap();
    asked(&known, cook, piece, minute(minutes))
}

pub(super) fn facts(story: &Story, minutes: i64) -> Facts {
    ask(story, minutes).unwrap().facts(&[], &[])
}

fn sitting(sensor: &str, from: i64, until: i64, shift: i64) -> Sitting {
    Sitting {
        series: ("box".into(), sensor.into()),
        from: minute(from),
        until: minute(until),
        shift,
    }
}

#[test]
fn a_meat_that_was_moved_is_followed_from_pit_to_pit() {
    let mut story = begun(Cut::PorkButt);
    bind(&mut story, -10, "drum", Where::Pit { pit: pit(1) }, None);
    bind(&mut story, 20, "kettle", Where::Pit { pit: pit(2) }, None);
    let (piece, spot) = (piece(1), String::new());
    let moved = PieceMoved {
        piece,
        pit: pit(2),
        spot,
    };
    here(&mut story, 90, moved);
    for (at, of) in [(30, 1), (60, 2), (120, 1), (150, 2)] {
        let opened = Opened {
            pit: Some(pit(of)),
            wetted: vec![],
            turned: vec![],
            glazed: vec![],
        };
        here(&mut story, at, opened);
    }
    let asked = ask(&story, 200).unwrap();
    assert_eq!(
        asked.pit,
        [sitting("drum", 0, 90, 0), sitting("kettle", 90, 200, 0)]
    );
    let read = |at: i64, temp: i64| {
        let at = minute(at);
        vec![Reading { at, temp: Mk(temp) }]
    };
    let facts = asked.facts(&[read(10, 390_000), read(95, 400_000)], &[]);
    assert_eq!(facts.pit, [read(10, 390_000), read(95, 400_000)].concat());
    assert_eq!(facts.opened, [minute(30), minute(150)]);
}

#[test]
fn a_probe_counts_while_it_sits_there_and_as_its_thermometer_was_checked() {
    let mut story = begun(Cut::PorkButt);
    for (of, reads) in [(1, 276_000), (2, 283_000)] {
        let (thermometer, name) = (thermometer(of), format!("Pen {of}"));
        story.say(1, minute(-40), None, ThermometerAdded { thermometer, name });
        let checked = ThermometerChecked {
            thermometer,
            against: Bath::Ice,
            expected: Mk(273_150),
            read: Mk(reads - 1_000),
        };
        story.say(1, minute(-39), None, checked);
    }
    bind(&mut story, -5, "hot", inside(), Some(1));
    bind(&mut story, 5, "broken", inside(), Some(2));
    bind(&mut story, 7, "loose", Where::Pit { pit: pit(2) }, None);
    bind(&mut story, 60, "hot", Where::Pit { pit: pit(1) }, Some(1));
    bind(&mut story, 70, "second", inside(), None);
    let asked = ask(&story, 100).unwrap();
    assert_eq!(
        asked.inside,
        [sitting("hot", 0, 60, -1_850), sitting("second", 70, 100, 0)]
    );
    assert_eq!(asked.pit, [sitting("hot", 60, 100, -1_850)]);
}

#[test]
fn one_more_series_that_begins_later_moves_none() {
    let mut story = begun(Cut::PorkButt);
    bind(&mut story, -5, "first", inside(), None);
    bind(&mut story, -4, "second", inside(), None);
    let at = |at: i64, temp: i64| Reading {
        at: minute(at),
        temp: Mk(temp),
    };
    let facts = |first: Vec<Reading>, second: Vec<Reading>| {
        let asked = ask(&story, 60).unwrap();
        asked.facts(&[], &[first, second])
    };
    let second = || vec![at(20, 300_000)];
    assert_eq!(facts(vec![], second()).inside, [second()]);
    let first = || vec![at(30, 301_000)];
    assert_eq!(facts(first(), second()).inside, [second(), first()]);
}

#[test]
fn checks_say_far_near_or_done_and_their_temperatures_are_readings() {
    let mut story = begun(Cut::SpareRibs);
    let heat = Temperature {
        mk: Mk::from_f(190),
        spot: Spot::BetweenBones,
        thermometer: None,
        instant_read: true,
    };
    let passes = [
        (100, vec![TestResult::Bone(BoneShowing::QuarterInch)]),
        (
            200,
            vec![
                TestResult::Lifted(Bend::Stiff),
                TestResult::Bone(BoneShowing::HalfInch),
            ],
        ),
        (230, vec![TestResult::Heat(heat)]),
        (
            250,
            vec![
                TestResult::Lifted(Bend::Cracks),
                TestResult::Probed(ProbeFeel::Grabs),
            ],
        ),
        (270, vec![TestResult::Lifted(Bend::Cracks)]),
        (290, vec![TestResult::Lifted(Bend::Stiff)]),
    ];
    for (at, results) in passes {
        let piece = piece(1);
        here(&mut story, at, Checked { piece, results });
    }
    let facts = facts(&story, 290);
    let tried = |at: i64, found| Tried {
        at: minute(at),
        found,
    };
    assert_eq!(
        facts.tried,
        [
            tried(100, Likeness::Near),
            tried(200, Likeness::Far),
            tried(250, Likeness::Near),
            tried(270, Likeness::Done)
        ]
    );
    let at = minute(230);
    let temp = Mk::from_f(190);
    assert_eq!(facts.by_hand, [Reading { at, temp }]);
}

#[test]
fn wraps_follow_each_other_and_done_means_what_it_means_for_the_cut() {
    let mut story = begun(Cut::SpareRibs);
    stage(&mut story, 100, Stage::Wrapped { wrap: Wrap::Paper });
    stage(&mut story, 140, Stage::Unwrapped);
    let ribs = facts(&story, 200);
    let wrapped = |at: i64, wrap| Wrapped {
        at: minute(at),
        wrap,
    };
    assert_eq!(
        ribs.wrapped,
        [wrapped(100, Some(Wrap::Paper)), wrapped(140, None)]
    );
    assert_eq!(ribs.done_when, DoneWhen::Tender);
    let turkey = facts(&begun(Cut::TurkeyBreast), 60);
    let DoneWhen::Heat(mk) = turkey.done_when else {
        panic!("a turkey breast is done by heat")
    };
    assert!(mk >= Mk::from_f(165), "{mk:?}");
}

#[test]
fn what_is_claimed_for_now_or_later_is_not_asked_and_a_meat_that_is_off_is_not_followed() {
    let mut story = begun(Cut::SpareRibs);
    stage(&mut story, 100, Stage::Wrapped { wrap: Wrap::Foil });
    stage(&mut story, 200, Stage::Off);
    assert_eq!(ask(&story, 0), None);
    assert_eq!(facts(&story, 100).wrapped, []);
    assert_eq!(facts(&story, 105).wrapped.len(), 1);
    assert!(ask(&story, 200).is_some());
    assert_eq!(ask(&story, 205), None);
}
