//! The invented regatta lunch: two slabs and a butt on a drum, a turkey breast on a kettle, two phones.

use crate::{
    cadence::Cadence,
    checks::{BarkSet, Bend, Cut, ProbeFeel, Spot, Temperature, TestResult},
    cook::story::{SIX, Story, cook, piece, pit, thermometer},
    log::*,
    moment::{HOUR, MINUTE, Moment},
    safety::Form,
    units::Mk,
    words::{Locale, Viewer},
};

/// Zone of the club.
pub(super) const ZONE: &str = "America/Chicago";

/// Minutes after six in the morning.
pub(in crate::screens) const fn minute(minutes: i64) -> i64 {
    SIX + minutes * MINUTE
}

pub(in crate::screens) fn moment(minutes: i64) -> Moment {
    Moment::at(minute(minutes), ZONE)
}

/// The first phone's viewer.
pub(in crate::screens) fn viewer(locale: Locale) -> Viewer {
    Viewer {
        locale,
        zone: ZONE.into(),
        ..Viewer::default_for(crate::cook::story::device(1))
    }
}

fn here(story: &mut Story, at: i64, payload: impl Into<Payload>) -> EntryKey {
    story.say(1, minute(at), Some(cook(1)), payload)
}

pub(super) fn stage(story: &mut Story, of: u128, at: i64, stage: Stage) -> EntryKey {
    let piece = piece(of);
    here(story, at, StageSet { piece, stage })
}

/// What was recorded by `until` minutes after six.
pub(in crate::screens) fn told_until(until: i64) -> Story {
    let mut story = Story::default();
    crew(&mut story);
    meats(&mut story);
    for (at, step) in STEPS {
        if *at <= until {
            step(&mut story, *at);
        }
    }
    for at in (-240..=until).step_by(5).filter(|at| *at <= 440) {
        let f = 250 + at.rem_euclid(7);
        story.tails.take("box", "1", minute(at), Mk::from_f(f));
        let inside = 40 + (at + 240) / 4;
        story.tails.take("box", "2", minute(at), Mk::from_f(inside));
    }
    story
}

fn crew(story: &mut Story) {
    let early = minute(-300);
    for (by, name) in [(1, "Ana"), (2, "Ben")] {
        let name = name.to_string();
        story.say(by, early, None, DeviceNamed { name });
    }
    for (of, name, kind) in [(1, "Drum", PitKind::Drum), (2, "Kettle", PitKind::Kettle)] {
        let added = PitAdded {
            pit: pit(of),
            name: name.into(),
            kind,
            grate_cm2: Some(2_200),
            alone_minutes: None,
        };
        story.say(1, early, None, added);
    }
    let (thermometer, name) = (thermometer(1), "Pen".to_string());
    story.say(1, early, None, ThermometerAdded { thermometer, name });
    let checked = ThermometerChecked {
        thermometer,
        against: Bath::Ice,
        expected: Mk::from_f(32),
        read: Mk::from_f(32),
    };
    story.say(1, early, None, checked);
}

fn meats(story: &mut Story) {
    let serve = Serve {
        at: SIX + 8 * HOUR,
        zone: ZONE.into(),
    };
    let started = CookStarted {
        id: cook(1),
        name: "Regatta lunch".into(),
        serve: Some(serve),
        people: Some(14),
        demo: true,
    };
    here(story, -260, started);
    for (of, name, cut, cadence, grams) in [
        (1, "Slab 1", Cut::SpareRibs, Cadence::mop(), 1_600),
        (2, "Slab 2", Cut::SpareRibs, Cadence::mop(), 1_700),
        (3, "Butt", Cut::PorkButt, Cadence::None, 3_600),
        (4, "Turkey breast", Cut::TurkeyBreast, Cadence::None, 2_700),
    ] {
        let added = PieceAdded {
            piece: piece(of),
            name: name.into(),
            cut,
            form: Form::Intact,
            weight_g: Some(grams),
            cadence,
        };
        here(story, -259, added);
    }
    for (sensor, place) in [
        ("1", Where::Pit { pit: pit(1) }),
        (
            "2",
            Where::Piece {
                piece: piece(3),
                spot: "center".into(),
            },
        ),
    ] {
        let bound = ProbeBound {
            source: "box".into(),
            sensor: sensor.into(),
            place,
            thermometer: None,
        };
        here(story, -250, bound);
    }
}

type Step = fn(&mut Story, i64);

/// What happens when.
const STEPS: &[(i64, Step)] = &[
    (-240, |story, at| {
        stage(story, 3, at, Stage::OnPit { pit: pit(1) });
    }),
    (-239, |story, at| {
        let note = "steady".to_string();
        story.say(2, minute(at), None, WatchTaken { note });
        story.say(1, minute(at), None, Slept { until: minute(90) });
    }),
    (90, |story, at| {
        story.say(1, minute(at), None, Woke {});
    }),
    (120, |story, at| {
        for slab in [1, 2] {
            stage(story, slab, at, Stage::OnPit { pit: pit(1) });
        }
    }),
    (166, |story, at| {
        for slab in [1, 2] {
            let piece = piece(slab);
            here(story, at, RubAnswered { piece, set: true });
        }
    }),
    (168, |story, at| {
        opened(story, 1, at, &[1, 2]);
        opened(story, 2, at + 2, &[1, 2]);
    }),
    (175, |story, at| {
        let piece = piece(3);
        let results = vec![
            TestResult::Bark(BarkSet::Holds),
            TestResult::Probed(ProbeFeel::Tight),
            heat(174, Spot::Center),
        ];
        here(story, at, Checked { piece, results });
    }),
    (240, |story, at| {
        let wrap = Wrap::Paper;
        stage(story, 1, at, Stage::Wrapped { wrap });
    }),
    (330, |story, at| {
        stage(story, 4, at, Stage::OnPit { pit: pit(2) });
    }),
    (337, |story, at| {
        for slab in [1, 2] {
            let (piece, results) = (piece(slab), vec![TestResult::Lifted(Bend::Bows)]);
            here(story, at, Checked { piece, results });
        }
    }),
    (391, |story, at| {
        here(story, at, FireSeen { pit: pit(2) });
    }),
    (421, |story, at| {
        let results = vec![
            TestResult::Probed(ProbeFeel::Slides),
            heat(203, Spot::Center),
        ];
        let piece = piece(3);
        here(story, at, Checked { piece, results });
        stage(story, 3, at, Stage::Off);
        stage(story, 3, at + 4, Stage::Held);
    }),
    (455, |story, at| {
        for slab in [1, 2] {
            let piece = piece(slab);
            let heat = heat(198, Spot::BetweenBones);
            let results = vec![TestResult::Lifted(Bend::Cracks), heat];
            here(story, at, Checked { piece, results });
        }
    }),
    (456, |story, at| {
        stage(story, 1, at, Stage::Off);
        stage(story, 2, at, Stage::Off);
    }),
    (460, |story, at| {
        let spots = [Spot::UpperThick, Spot::LowerThick, Spot::InnerBreastbone];
        let results = spots.map(|spot| heat(167, spot)).into();
        let piece = piece(4);
        here(story, at, Checked { piece, results });
    }),
];

fn heat(f: i64, spot: Spot) -> TestResult {
    TestResult::Heat(Temperature {
        mk: Mk::from_f(f),
        spot,
        thermometer: Some(thermometer(1)),
        instant_read: true,
    })
}

pub(super) fn opened(story: &mut Story, by: u128, at: i64, slabs: &[u128]) -> EntryKey {
    let opened = Opened {
        pit: Some(pit(1)),
        wetted: slabs.iter().map(|slab| piece(*slab)).collect(),
        turned: vec![],
        glazed: vec![],
    };
    story.say(by, minute(at), Some(cook(1)), opened)
}
