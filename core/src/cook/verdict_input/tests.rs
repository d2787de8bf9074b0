use super::*;
use crate::{
    cadence::Cadence,
    checks::{Cut, DoneState, Test, verdict},
    cook::story::{SIX, Story, cook, piece, pit, thermometer},
    log::*,
    moment::{HOUR, SECOND},
    safety::Form,
};

fn minute(minutes: i64) -> i64 {
    SIX + minutes * MINUTE
}

/// One meat on the drum since six.
fn on_the_drum(cut: Cut) -> Story {
    let mut story = Story::default();
    let started = CookStarted {
        id: cook(1),
        name: "Regatta lunch".into(),
        serve: None,
        people: None,
        demo: false,
    };
    story.say(1, SIX, Some(cook(1)), started);
    let added = PieceAdded {
        piece: piece(1),
        name: "The meat".into(),
        cut,
        form: Form::Intact,
        weight_g: None,
        cadence: Cadence::None,
    };
    story.say(1, SIX, Some(cook(1)), added);
    set(&mut story, 0, Stage::OnPit { pit: pit(1) });
    story
}

fn set(story: &mut Story, at: i64, stage: Stage) {
    let piece = piece(1);
    story.say(1, minute(at), Some(cook(1)), StageSet { piece, stage });
}

fn heat(f: i64, spot: Spot, thermometer: Option<ThermometerId>) -> TestResult {
    TestResult::Heat(Temperature {
        mk: Mk::from_f(f),
        spot,
        thermometer,
        instant_read: true,
    })
}

fn check(story: &mut Story, at: i64, results: Vec<TestResult>) {
    let piece = piece(1);
    story.say(1, minute(at), Some(cook(1)), Checked { piece, results });
}

fn input(story: &Story, now: i64) -> VerdictInput {
    let told = story.told();
    let known = told.known(1);
    let (cook, piece) = known.piece(piece(1)).unwrap();
    verdict_input(&known, cook, piece, minute(now))
}

fn state(story: &Story, now: i64) -> DoneState {
    verdict(&input(story, now)).unwrap().state
}

fn turkey_at_165(by: Option<ThermometerId>) -> Story {
    let mut story = on_the_drum(Cut::TurkeyBreast);
    let spots = [Spot::UpperThick, Spot::LowerThick, Spot::InnerBreastbone];
    check(
        &mut story,
        120,
        spots.map(|spot| heat(166, spot, by)).into(),
    );
    story
}

#[test]
fn a_thermometer_stands_by_its_last_check_and_an_unknown_one_is_unchecked() {
    let mut story = turkey_at_165(Some(thermometer(1)));
    assert!(verdict(&input(&story, 121)).unwrap().say_unchecked);
    let name = "Pen".to_string();
    let thermometer = thermometer(1);
    story.say(1, SIX, None, ThermometerAdded { thermometer, name });
    for (at, read) in [(-120, 36), (-60, 32)] {
        let checked = ThermometerChecked {
            thermometer,
            against: Bath::Ice,
            expected: Mk::from_f(32),
            read: Mk::from_f(read),
        };
        story.say(1, minute(at), None, checked);
    }
    let told = verdict(&input(&story, 121)).unwrap();
    assert_eq!((told.state, told.say_unchecked), (DoneState::Done, false));
    let month_later = 121 + 31 * 24 * 60;
    assert!(verdict(&input(&story, month_later)).unwrap().say_unchecked);
}

#[test]
fn a_thermometer_that_reads_hot_is_corrected_down() {
    let mut story = turkey_at_165(Some(thermometer(1)));
    let (thermometer, name) = (thermometer(1), "Pen".to_string());
    story.say(1, SIX, None, ThermometerAdded { thermometer, name });
    let checked = ThermometerChecked {
        thermometer,
        against: Bath::Ice,
        expected: Mk::from_f(32),
        read: Mk::from_f(35),
    };
    story.say(1, SIX, None, checked);
    assert_ne!(state(&story, 121), DoneState::Done, "166 less 3 is 163");
}

#[test]
fn nothing_from_the_future_is_judged_and_a_slightly_fast_clock_is_now() {
    let story = turkey_at_165(None);
    assert!(input(&story, 109).checks.is_empty());
    assert_eq!(input(&story, 111).checks[0].at, minute(111));
}

#[test]
fn a_probe_left_in_counts_from_its_binding_while_the_meat_is_on_the_pit() {
    let mut story = on_the_drum(Cut::PorkButt);
    let place = Where::Piece {
        piece: piece(1),
        spot: "center".into(),
    };
    let bound = ProbeBound {
        source: "drum".into(),
        sensor: "1".into(),
        place,
        thermometer: None,
    };
    story.say(1, minute(10), Some(cook(1)), bound);
    for (at, f) in [(5, 300), (20, 50), (600, 203), (605, 80)] {
        story.tails.take("drum", "1", minute(at), Mk::from_f(f));
    }
    set(&mut story, 602, Stage::Off);
    let heats = |now| {
        input(&story, now)
            .checks
            .iter()
            .map(|dated| match dated.result {
                TestResult::Heat(heat) => (heat.mk.f_tenths() / 10, heat.instant_read),
                _ => panic!("no other test"),
            })
            .collect::<Vec<_>>()
    };
    assert_eq!(
        heats(601),
        [(203, false)],
        "the tail reaches back six hours"
    );
    assert_eq!(heats(610), [(203, false)], "the air after it came off");
}

#[test]
fn of_each_stretch_the_coldest_reading_is_kept_and_the_last_of_all() {
    let at = |second: i64| SIX + second * SECOND;
    let tail = [(0, 330), (60, 320), (299, 340), (300, 341), (310, 342)];
    let kept = coldest_of_stretches(tail.into_iter().map(|(s, mk)| (at(s), Mk(mk))));
    assert_eq!(
        kept,
        [(at(60), Mk(320)), (at(300), Mk(341)), (at(310), Mk(342))]
    );
}

#[test]
fn a_spot_in_the_cooks_own_words_shows_no_minimum() {
    assert_eq!(spot_named("between_bones"), Spot::BetweenBones);
    assert_eq!(spot_named("near the stern"), Spot::Elsewhere);
    let mut story = on_the_drum(Cut::SpareRibs);
    check(
        &mut story,
        300,
        vec![TestResult::Lifted(crate::checks::Bend::Cracks)],
    );
    for spot in ["near the stern", "between_bones"] {
        assert_eq!(state(&story, 305), DoneState::TenderOnly);
        let read = Read {
            place: Where::Piece {
                piece: piece(1),
                spot: spot.into(),
            },
            thermometer: None,
            temp: Mk::from_f(198),
        };
        story.say(1, minute(304), Some(cook(1)), read);
    }
    assert_eq!(state(&story, 305), DoneState::Done);
}

#[test]
fn what_no_meat_can_be_is_left_out_hot_and_kept_cold() {
    let mut story = on_the_drum(Cut::PorkButt);
    check(&mut story, 10, vec![heat(900, Spot::Center, None)]);
    assert!(input(&story, 11).checks.is_empty());
    check(&mut story, 12, vec![heat(-200, Spot::Center, None)]);
    assert_eq!(state(&story, 13), DoneState::NotYet);
}

#[test]
fn what_must_be_understood_and_is_not_lets_nothing_be_judged() {
    let mut story = turkey_at_165(None);
    let raw = format!(
        r#"{{"kind":"torched","v":1,"must_understand":true,"cook":"{}","at":{SIX},"body":{{}}}}"#,
        cook(1)
    );
    story.say_raw(2, SIX, raw.into_bytes());
    assert_eq!(state(&story, 121), DoneState::UpdateToJudge);
}

#[test]
fn the_latest_thousand_are_judged() {
    let mut story = on_the_drum(Cut::SpareRibs);
    for at in 0..1_100 {
        let result = TestResult::Lifted(crate::checks::Bend::Stiff);
        check(&mut story, at, vec![result]);
    }
    let judged = input(&story, 20 * HOUR / MINUTE);
    assert_eq!(judged.checks.len(), RESULTS_MAX);
    assert_eq!(judged.checks[0].at, minute(1_099));
    assert_eq!(judged.checks[0].result.test(), Test::Bend);
}

#[test]
fn a_probe_that_was_moved_to_another_meat_leaves_its_cold_readings_with_the_first() {
    let mut story = on_the_drum(Cut::PorkButt);
    let bind = |story: &mut Story, at: i64, of: u128| {
        let bound = ProbeBound {
            source: "box".into(),
            sensor: "1".into(),
            place: Where::Piece {
                piece: piece(of),
                spot: "center".into(),
            },
            thermometer: None,
        };
        story.say(1, minute(at), Some(cook(1)), bound);
    };
    bind(&mut story, 1, 1);
    for (at, f) in [(10, 120), (20, 130), (40, 60)] {
        story.tails.take("box", "1", minute(at), Mk::from_f(f));
    }
    bind(&mut story, 30, 2);
    let read: Vec<i64> = input(&story, 50).checks.iter().map(|c| c.at).collect();
    assert_eq!(read, [minute(20), minute(10)]);
}
