use super::*;
use crate::{
    cadence::rhythm::Next,
    checks::Cut,
    cook::story::{SIX, Story, cook, device, piece, pit},
    log::*,
    moment::HOUR,
    safety::Form,
};

fn minute(minutes: i64) -> i64 {
    SIX + minutes * MINUTE
}

/// One slab on the drum since six, for two o'clock.
fn slab() -> Story {
    let mut story = Story::default();
    let here = Some(cook(1));
    let serve = Serve {
        at: SIX + 8 * HOUR,
        zone: "America/Chicago".into(),
    };
    story.say(
        1,
        SIX,
        here,
        CookStarted {
            id: cook(1),
            name: "Regatta lunch".into(),
            serve: Some(serve),
            people: Some(14),
            demo: false,
        },
    );
    story.say(
        1,
        SIX,
        here,
        PieceAdded {
            piece: piece(1),
            name: "Slab 1".into(),
            cut: Cut::SpareRibs,
            form: Form::Intact,
            weight_g: Some(1_600),
            cadence: Cadence::mop(),
        },
    );
    stage(&mut story, 0, Stage::OnPit { pit: pit(1) });
    story
}

fn stage(story: &mut Story, at: i64, stage: Stage) {
    let piece = piece(1);
    story.say(1, minute(at), Some(cook(1)), StageSet { piece, stage });
}

fn wet(story: &mut Story, by: u128, at: i64) {
    let opened = Opened {
        pit: Some(pit(1)),
        wetted: vec![piece(1)],
        turned: vec![],
        glazed: vec![],
    };
    story.say(by, minute(at), Some(cook(1)), opened);
}

fn facts(story: &Story, now: i64) -> Facts {
    let told = story.told();
    let known = told.known(1);
    let (cook, piece) = known.piece(piece(1)).unwrap();
    rhythm_facts(cook, piece, known.crew, device(1), minute(now))
}

fn next(story: &Story, now: i64) -> Next {
    facts(story, now).next(minute(now))
}

#[test]
fn two_phones_that_record_one_mop_make_one() {
    let mut story = slab();
    wet(&mut story, 1, 60);
    wet(&mut story, 2, 63);
    wet(&mut story, 1, 90);
    assert_eq!(facts(&story, 95).wet_at, [minute(60), minute(90)]);
}

#[test]
fn what_is_claimed_from_further_ahead_than_ten_minutes_counts_nowhere() {
    let mut story = slab();
    wet(&mut story, 1, 60);
    wet(&mut story, 2, 90);
    assert_eq!(facts(&story, 79).wet_at, [minute(60)]);
    assert_eq!(facts(&story, 80).wet_at, [minute(60), minute(90)]);
}

#[test]
fn a_question_left_out_is_asked_again_and_a_mop_left_out_is_counted_from() {
    let mut story = slab();
    let skip =
        |story: &mut Story, at, job| story.say(1, minute(at), Some(cook(1)), Skipped { job });
    skip(&mut story, 50, Job::RubSet(piece(1)));
    assert_eq!(next(&story, 51), Next::AskRub { due: minute(70) });
    wet(&mut story, 1, 80);
    skip(&mut story, 111, Job::Wet(piece(1)));
    assert!(matches!(next(&story, 112), Next::Wet { due, .. } if due == minute(141)));
}

#[test]
fn later_is_for_the_meat_it_was_said_of() {
    let mut story = slab();
    wet(&mut story, 1, 60);
    for of in [piece(1), piece(2)] {
        let job = Job::Wet(of);
        story.say(1, minute(88), Some(cook(1)), PutOff { job, minutes: 10 });
    }
    assert_eq!(facts(&story, 95).later.len(), 1);
    assert!(matches!(next(&story, 95), Next::Wet { due, .. } if due == minute(98)));
}

#[test]
fn wrapped_ends_it_unwrapped_takes_it_up_and_back_on_the_pit_is_not_off() {
    let mut story = slab();
    wet(&mut story, 1, 60);
    stage(&mut story, 80, Stage::Wrapped { wrap: Wrap::Paper });
    assert_eq!(facts(&story, 85).wrapped_at, Some(minute(80)));
    stage(&mut story, 200, Stage::Unwrapped);
    assert_eq!(facts(&story, 201).wrapped_at, None);
    stage(&mut story, 210, Stage::Off);
    assert_eq!(facts(&story, 215).off_at, Some(minute(210)));
    stage(&mut story, 216, Stage::OnPit { pit: pit(1) });
    assert_eq!(facts(&story, 220).off_at, None);
    stage(&mut story, 230, Stage::Off);
    assert_eq!(
        facts(&story, 240).off_at,
        Some(minute(230)),
        "the last rest"
    );
}

#[test]
fn ribs_are_glazed_fifty_minutes_before_lunch_unless_that_was_left_out() {
    let mut story = slab();
    wet(&mut story, 1, 415);
    let lunch = 8 * 60;
    assert_eq!(facts(&story, 420).glaze_from, Some(minute(lunch - 50)));
    assert_eq!(next(&story, 431), Next::Glaze { due: minute(430) });
    let job = Job::Glaze(piece(1));
    story.say(1, minute(432), Some(cook(1)), Skipped { job });
    assert!(matches!(next(&story, 433), Next::Wet { .. }));
}

#[test]
fn the_sleep_of_this_devices_person_counts_and_no_other() {
    let mut story = slab();
    story.say(2, minute(5), None, Slept { until: minute(200) });
    assert_eq!(facts(&story, 10).asleep, []);
    story.say(1, minute(6), None, Slept { until: minute(100) });
    let slept = Span {
        from: minute(6),
        to: minute(100),
    };
    assert_eq!(facts(&story, 10).asleep, [slept]);
    assert_eq!(next(&story, 10), Next::AskRub { due: minute(100) });
}

#[test]
fn taken_back_is_as_if_never_said() {
    let mut story = slab();
    wet(&mut story, 1, 60);
    let before = facts(&story, 100);
    wet(&mut story, 1, 90);
    let target = story.entries.last().unwrap().key;
    let targets = vec![target];
    story.say(1, minute(91), Some(cook(1)), Voided { targets });
    assert_eq!(facts(&story, 100), before);
}
