//! A meat that came off before its minimum was shown.

use super::*;
use crate::checks::{Spot, Temperature, TestResult};

const TURKEY: u128 = 3;

/// A turkey breast beside the ribs, taken off at 120 min.
fn turkey_off() -> Night {
    let mut night = Night::begun();
    night.meat(TURKEY, "Turkey breast", Cut::TurkeyBreast, Cadence::None);
    came_to(&mut night, 120, Stage::Off);
    night
}

fn came_to(night: &mut Night, at: i64, stage: Stage) {
    let piece = piece(TURKEY);
    night.say(at, StageSet { piece, stage });
}

fn reads(night: &mut Night, at: i64, spots: &[Spot]) {
    let heat = |spot: &Spot| {
        TestResult::Heat(Temperature {
            mk: Mk::from_f(168),
            spot: *spot,
            thermometer: None,
            instant_read: true,
        })
    };
    let (piece, results) = (piece(TURKEY), spots.iter().map(heat).collect());
    night.say(at, Checked { piece, results });
}

fn called(night: &Night, at: i64) -> Option<Due> {
    night.job(at, Job::Check(piece(TURKEY)))
}

#[test]
fn a_turkey_taken_off_unread_is_called_for_at_once_and_wakes() {
    let night = turkey_off();
    let call = called(&night, 120).unwrap();
    assert_eq!((call.at, call.urgency), (minute(120), Urgency::Wake));
    let ring = night
        .rings(120)
        .into_iter()
        .find(|ring| ring.jobs[0].job == call.job)
        .unwrap();
    assert_eq!(ring.at, minute(120));
    for stage in [Stage::Held, Stage::CutUp] {
        let mut night = turkey_off();
        came_to(&mut night, 140, stage);
        assert!(called(&night, 150).is_some(), "{stage:?} answers nothing");
    }
}

#[test]
fn one_place_of_three_does_not_end_the_call_and_all_three_do() {
    let mut night = turkey_off();
    reads(&mut night, 122, &[Spot::UpperThick]);
    assert!(called(&night, 123).is_some(), "two places are unread");
    reads(&mut night, 124, &[Spot::LowerThick, Spot::InnerBreastbone]);
    assert_eq!(called(&night, 125), None);
}

#[test]
fn not_this_time_does_not_end_it_later_moves_it_and_back_on_the_pit_ends_it() {
    let mut night = turkey_off();
    let job = Job::Check(piece(TURKEY));
    night.say(121, Skipped { job });
    assert_eq!(called(&night, 122).unwrap().at, minute(120));
    night.say(123, PutOff { job, minutes: 10 });
    assert_eq!(called(&night, 124).unwrap().at, minute(133));
    came_to(&mut night, 125, Stage::OnPit { pit: pit(1) });
    let check = called(&night, 126);
    assert!(
        check.is_none_or(|check| check.urgency == Urgency::Call && check.pit == Some(pit(1))),
        "the check of a meat on the pit, in its own time"
    );
}
