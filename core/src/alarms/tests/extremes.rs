//! Law 6 for what comes from other devices: an absorbed entry may claim any number, and nothing that is folded, rung or
//! shown of it may fail. Debug builds stop at an overflow, so that these tests would too.

use super::*;
use crate::{
    checks::{Spot, Temperature, TestResult},
    cook::story::{device, thermometer},
    ids::DishId,
    moment::Moment,
    screens,
    words::{Locale, TemperatureUnit, Viewer, Words},
};
use proptest::prelude::*;
use uuid::Uuid;

type Numbers = [i64; 3];

fn number() -> impl Strategy<Value = i64> {
    let limits = vec![i64::MIN, i64::MIN + 1, -1, 0, 1, 30, i64::MAX - 1, i64::MAX];
    prop_oneof![
        3 => prop::sample::select(limits),
        1 => (-600i64..600).prop_map(minute),
        1 => 0i64..400_000,
        1 => any::<i64>(),
    ]
}

fn jobs() -> Vec<Job> {
    let of_piece = [
        Job::RubSet,
        Job::Wet,
        Job::Glaze,
        Job::Check,
        Job::Pull,
        Job::PutAway,
        Job::ComeUp,
        Job::KeepHot,
    ];
    let of_pit = [Job::FireRound, Job::Outside, Job::Silent];
    of_piece
        .map(|job| job(piece(1)))
        .into_iter()
        .chain(of_pit.map(|job| job(pit(1))))
        .chain([Job::Serve(cook(1)), Job::WakeUp(cook(1))])
        .collect()
}

fn fields([a, b, c]: Numbers) -> Vec<(Subject, Field)> {
    let band = Band {
        low: Mk(a),
        high: Mk(b),
        minutes: c,
    };
    let serve = Serve {
        at: a,
        zone: "nowhere".into(),
    };
    vec![
        (Subject::Pit(pit(1)), Field::GrateCm2(Some(a))),
        (Subject::Pit(pit(1)), Field::AloneMinutes(Some(a))),
        (Subject::Pit(pit(1)), Field::Band(band)),
        (Subject::Cook(cook(1)), Field::Serve(Some(serve))),
        (Subject::Cook(cook(1)), Field::People(Some(a))),
        (Subject::Piece(piece(1)), Field::WeightG(Some(a))),
        (Subject::Piece(piece(1)), Field::PullAt(Some(Mk(a)))),
        (
            Subject::Piece(piece(1)),
            Field::Cadence(Cadence::Mop { every_min: a }),
        ),
        (
            Subject::Piece(piece(1)),
            Field::Cadence(Cadence::Spritz { every_min: a }),
        ),
        (Subject::Crew, Field::MopMinutes(a)),
        (Subject::Crew, Field::SpritzMinutes(a)),
        (Subject::Crew, Field::AltitudeM(a)),
    ]
}

/// Every kind of entry that carries a number or is counted from its claimed time, with whether it belongs to the cook.
fn facts(numbers: Numbers, job: usize) -> Vec<(bool, Payload)> {
    let [a, b, c] = numbers;
    let job = jobs()[job % jobs().len()];
    let heat = |instant_read| {
        TestResult::Heat(Temperature {
            mk: Mk(a),
            spot: Spot::ALL[0],
            thermometer: Some(thermometer(1)),
            instant_read,
        })
    };
    let in_meat = Where::Piece {
        piece: piece(1),
        spot: "center".into(),
    };
    let part = |number| Part {
        piece: piece(number),
        name: "Half".into(),
        weight_g: Some(a),
    };
    let stage = |number, stage| StageSet {
        piece: piece(number),
        stage,
    };
    let on = Stage::OnPit { pit: pit(1) };
    let name = || "Any".to_owned();
    let mut all: Vec<(bool, Payload)> = vec![
        (true, stage(1, on).into()),
        (true, stage(2, on).into()),
        (true, stage(1, Stage::Wrapped { wrap: Wrap::Foil }).into()),
        (true, stage(1, Stage::Off).into()),
        (true, stage(1, Stage::Served).into()),
        (
            true,
            RubAnswered {
                piece: piece(1),
                set: true,
            }
            .into(),
        ),
        (
            true,
            Opened {
                pit: Some(pit(1)),
                wetted: vec![piece(1)],
                turned: vec![piece(1)],
                glazed: if b > 0 { vec![piece(2)] } else { vec![] },
            }
            .into(),
        ),
        (
            true,
            Checked {
                piece: piece(1),
                results: vec![heat(true), heat(false)],
            }
            .into(),
        ),
        (
            true,
            Read {
                place: in_meat.clone(),
                thermometer: Some(thermometer(1)),
                temp: Mk(a),
            }
            .into(),
        ),
        (
            true,
            Read {
                place: Where::Pit { pit: pit(1) },
                thermometer: None,
                temp: Mk(a),
            }
            .into(),
        ),
        (
            true,
            ProbeBound {
                source: "box".into(),
                sensor: "1".into(),
                place: Where::Pit { pit: pit(1) },
                thermometer: None,
            }
            .into(),
        ),
        (
            true,
            ProbeBound {
                source: "box".into(),
                sensor: "2".into(),
                place: in_meat,
                thermometer: None,
            }
            .into(),
        ),
        (
            true,
            SeriesSaved {
                source: "box".into(),
                sensor: "1".into(),
                from: a,
                to: b,
                count: c,
                hash: name(),
            }
            .into(),
        ),
        (
            true,
            Fed {
                pit: pit(1),
                what: name(),
            }
            .into(),
        ),
        (true, FireSeen { pit: pit(1) }.into()),
        (true, Skipped { job }.into()),
        (true, PutOff { job, minutes: a }.into()),
        (true, Answered { job }.into()),
        (
            true,
            PieceMoved {
                piece: piece(1),
                pit: pit(2),
                spot: name(),
            }
            .into(),
        ),
        (
            true,
            PieceSplit {
                piece: piece(2),
                into: vec![part(3), part(4)],
            }
            .into(),
        ),
        (
            true,
            PiecesJoined {
                pieces: vec![piece(3), piece(1)],
                into: part(5),
            }
            .into(),
        ),
        (
            true,
            Noted {
                about: Subject::Cook(cook(1)),
                text: name(),
            }
            .into(),
        ),
        (
            true,
            DishReady {
                dish: DishId(Uuid::from_u128(7)),
                ready: true,
            }
            .into(),
        ),
        (
            false,
            ThermometerChecked {
                thermometer: thermometer(1),
                against: Bath::Boiling { altitude_m: a },
                expected: Mk(b),
                read: Mk(c),
            }
            .into(),
        ),
        (false, Slept { until: a }.into()),
        (false, Woke {}.into()),
        (false, WatchTaken { note: name() }.into()),
    ];
    all.extend(fields(numbers).into_iter().map(|(of, to)| {
        let in_cook = matches!(of, Subject::Cook(_) | Subject::Piece(_));
        (in_cook, FieldSet { of, to, saw: None }.into())
    }));
    all
}

fn started(at: i64, numbers: Numbers) -> Story {
    let mut story = Night::begun().story;
    story.say(
        2,
        minute(0),
        None,
        ThermometerAdded {
            thermometer: thermometer(1),
            name: "Pen".into(),
        },
    );
    let serve = Some(Serve {
        at: numbers[0],
        zone: "nowhere".into(),
    });
    let fact = CookStarted {
        id: cook(2),
        name: "Absurd".into(),
        serve,
        people: Some(numbers[1]),
        demo: false,
    };
    story.say(2, at, Some(cook(2)), fact);
    let fact = PieceAdded {
        piece: piece(9),
        name: "Absurd".into(),
        cut: Cut::TurkeyBreast,
        form: Form::Stuffed,
        weight_g: Some(numbers[2]),
        cadence: Cadence::Mop {
            every_min: numbers[1],
        },
    };
    story.say(2, at, Some(cook(2)), fact);
    let fact = StageSet {
        piece: piece(9),
        stage: Stage::OnPit { pit: pit(2) },
    };
    story.say(2, minute(1), Some(cook(2)), fact);
    for (at, sensor) in (0..60).step_by(5).zip([1, 2].into_iter().cycle()) {
        let (sensor, temp) = (sensor.to_string(), Mk::from_f(60 + 20 * at));
        story.tails.take("box", &sensor, minute(at), temp);
    }
    story
}

fn viewers() -> Vec<Viewer> {
    let english = Viewer::default_for(device(1));
    let spanish = Viewer {
        locale: Locale::EsUs,
        temperature: TemperatureUnit::Celsius,
        weight: crate::words::WeightUnit::Kilogram,
        ..english.clone()
    };
    vec![english, spanish]
}

fn show_all(story: &Story, now: i64) {
    let told = story.told();
    let known = told.known(1);
    let moment = Moment::at(now, "America/Chicago");
    let rings = rings(&known, &Rung::new(), now, 60);
    for viewer in viewers() {
        let _ = Words::of(&viewer);
        let list = said(&known, &viewer, &rings, &moment);
        assert_eq!(list.alarms.len(), rings.rings.len());
        screens::start(&known, &viewer, &Default::default(), &moment);
        screens::settings(&known, &viewer, &moment);
        for cook in [cook(1), cook(2)] {
            screens::pitside(&known, &viewer, cook, &moment);
            screens::timeline(&known, &viewer, cook, &story.entries, None, 500, &moment);
        }
        for number in 1..=9 {
            screens::piece(&known, &viewer, piece(number), &moment);
            screens::check(&known, &viewer, piece(number), &moment);
        }
    }
}

#[test]
fn each_kind_at_each_end_of_the_numbers_is_folded_rung_and_shown() {
    let ends = [i64::MIN, -1, 0, i64::MAX];
    for end in ends {
        for at in [i64::MIN, minute(30), i64::MAX] {
            let numbers = [end, end, end];
            let kinds = facts(numbers, 0).len();
            for kind in 0..kinds {
                let mut story = started(at, numbers);
                for job in 0..jobs().len() {
                    let (in_cook, fact) = facts(numbers, job)[kind].clone();
                    story.say(2, at, in_cook.then(|| cook(1)), fact);
                }
                show_all(&story, minute(60));
            }
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn whatever_an_absorbed_entry_claims_nothing_fails(
        begins in number(),
        first in prop::array::uniform3(number()),
        claims in prop::collection::vec((prop::array::uniform3(number()), number(), 0usize..64, 0usize..64, 1u128..3), 1..24),
        now in prop::sample::select(vec![minute(0), minute(60), minute(900), 0, 4_133_980_799_999]),
    ) {
        let mut story = started(begins, first);
        for (numbers, at, kind, job, by) in claims {
            let all = facts(numbers, job);
            let (in_cook, fact) = all[kind % all.len()].clone();
            story.say(by, at, in_cook.then(|| cook(1)), fact);
        }
        show_all(&story, now);
    }
}
