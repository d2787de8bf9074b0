//! What must ring again although something like it was answered, put off or handed over before.

use super::*;
use crate::{
    checks::{ProbeFeel, Spot, Temperature, TestResult},
    cook::story::device,
};

fn later(job: Job, minutes: i64) -> PutOff {
    PutOff { job, minutes }
}

#[test]
fn later_is_said_of_this_fire_round_and_not_of_the_one_after_the_next_feed() {
    let mut night = Night::begun();
    night.say(60, later(Job::FireRound(pit(1)), 240));
    let at = |night: &Night, now| night.job(now, Job::FireRound(pit(1))).unwrap().at;
    assert_eq!(at(&night, 61), minute(300));
    let what = "two splits".to_owned();
    night.say(65, Fed { pit: pit(1), what });
    assert_eq!(at(&night, 66), minute(125));
}

#[test]
fn later_is_said_of_this_silence_and_of_this_time_outside_the_band() {
    let mut night = Night::begun();
    night.probe(0);
    night.reads(1, 420);
    night.reads(20, 420);
    for job in [Job::Silent(pit(1)), Job::Outside(pit(1))] {
        night.say(21, later(job, 200));
    }
    night.reads(30, 250);
    night.reads(40, 420);
    let silent = night.job(41, Job::Silent(pit(1))).unwrap().at;
    assert_eq!(silent, minute(55), "it spoke again and then fell silent");
    let outside = night.job(41, Job::Outside(pit(1))).unwrap().at;
    assert_eq!(outside, minute(55), "it came back and left again");
}

#[test]
fn serving_time_is_called_again_when_it_is_moved_after_it_was_answered() {
    let mut night = Night::begun();
    let job = Job::Serve(cook(1));
    night.say(451, Answered { job });
    assert!(night.job(452, job).is_none());
    let serve = Some(Serve {
        at: minute(600),
        zone: "America/Chicago".into(),
    });
    let (of, to) = (Subject::Cook(cook(1)), Field::Serve(serve));
    night.say(453, FieldSet { of, to, saw: None });
    assert_eq!(night.job(454, job).unwrap().at, minute(570));
}

#[test]
fn a_watch_is_for_one_night_and_does_not_silence_the_next_cook() {
    let mut night = Night::begun();
    let note = "230 °F and steady".to_owned();
    night.story.say(2, minute(-30), None, WatchTaken { note });
    let silent = |at| {
        let calls = night.rings(at).into_iter();
        calls
            .filter(|ring| ring.urgency == Urgency::Call)
            .any(|ring| ring.silent)
    };
    assert!(silent(1), "another phone has the watch");
    assert!(!silent(-30 + 24 * 60), "it had it last night");
    let told = night.story.told();
    let turn = |at| {
        let known = told.known(1);
        known.crew.on_watch(minute(at)).map(|turn| turn.device)
    };
    assert_eq!((turn(0), turn(24 * 60)), (Some(device(2)), None));
}

#[test]
fn a_seen_check_is_not_called_for_at_once_again() {
    let mut night = Night::begun();
    let job = Job::Check(piece(1));
    let due = night.job(1, job).unwrap().at;
    let at = (due - SIX) / MINUTE + 1;
    night.say(at, Answered { job });
    assert!(night.job(at + 1, job).unwrap().at > minute(at + 10));
}

#[test]
fn no_pull_point_lies_below_what_another_phone_made_the_minimum() {
    let mut night = Night::begun();
    let of = Subject::Piece(piece(2));
    for to in [
        Field::PullAt(Some(Mk::from_f(150))),
        Field::Form(Form::Injected),
    ] {
        night.say(1, FieldSet { of, to, saw: None });
    }
    let told = night.story.told();
    let (_, butt) = told.known(1).piece(piece(2)).unwrap();
    assert_eq!(pull_point(butt), Mk::from_f(155));
}

#[test]
fn a_cold_reading_after_the_check_that_found_it_done_asks_for_another_check() {
    let mut night = Night::begun();
    let butt = piece(2);
    let heat = Temperature {
        mk: Mk::from_f(203),
        spot: Spot::Center,
        thermometer: None,
        instant_read: true,
    };
    let results = vec![
        TestResult::Probed(ProbeFeel::Slides),
        TestResult::Heat(heat),
    ];
    night.say(
        400,
        Checked {
            piece: butt,
            results,
        },
    );
    let pull = |night: &Night, at| night.job(at, Job::Pull(butt)).is_some();
    assert!(pull(&night, 401));
    let read = Read {
        place: Where::Piece {
            piece: butt,
            spot: "center".into(),
        },
        thermometer: None,
        temp: Mk::from_f(120),
    };
    night.say(430, read);
    assert!(!pull(&night, 431), "it is not done");
    let check = night.job(431, Job::Check(butt));
    assert!(check.is_some(), "so it is tried again");
}
