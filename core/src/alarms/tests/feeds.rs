//! Feed times that a person accepted: they ring, and nothing else about a feed does.

use super::*;
use crate::fire::{FireDid, FuelUnit};

fn round(night: &Night, at: i64) -> Option<i64> {
    let due = night.job(at, Job::FireRound(pit(1)))?;
    Some((due.at - SIX) / MINUTE)
}

fn split(night: &mut Night, at: i64, unit: FuelUnit) -> EntryKey {
    let (pit, what) = (pit(1), String::new());
    let fed = FedUnits {
        pit,
        unit,
        quarters: 4,
        what,
    };
    night.say(at, fed)
}

fn plan(night: &mut Night, at: i64, due: i64) -> EntryKey {
    let (pit, due) = (pit(1), minute(due));
    night.say(at, FeedPlanned { pit, due })
}

/// A probe sees to the fire, so nothing asks for a round.
fn watched() -> Night {
    let mut night = Night::begun();
    night.probe(0);
    for at in (0..=240).step_by(10) {
        night.reads(at, 250);
    }
    night
}

#[test]
fn however_regular_the_feeds_nothing_rings_until_a_time_is_accepted() {
    let mut night = watched();
    for at in [10, 50, 90, 130] {
        split(&mut night, at, FuelUnit::Chimney);
    }
    assert_eq!(round(&night, 131), None);
    plan(&mut night, 132, 170);
    assert_eq!(round(&night, 133), Some(170));
    let rings = night.rings(133);
    assert!(
        rings
            .iter()
            .any(|ring| ring.at == minute(170) && ring.urgency == Urgency::Wake)
    );
}

#[test]
fn a_feed_ends_it_and_taking_the_feed_back_brings_it_back() {
    let mut night = watched();
    plan(&mut night, 10, 60);
    let fed = split(&mut night, 55, FuelUnit::Chimney);
    assert_eq!(round(&night, 56), None);
    night.say(57, Voided { targets: vec![fed] });
    assert_eq!(round(&night, 58), Some(60));
}

#[test]
fn a_chunk_of_wood_on_charcoal_is_no_feed() {
    let mut night = watched();
    plan(&mut night, 10, 60);
    split(&mut night, 20, FuelUnit::Chunk);
    assert_eq!(round(&night, 21), Some(60));
}

#[test]
fn whoever_tends_the_fire_at_that_time_or_later_has_answered_it() {
    let mut night = watched();
    plan(&mut night, 10, 60);
    night.say(30, FireSeen { pit: pit(1) });
    assert_eq!(round(&night, 31), Some(60), "it is not yet that time");
    night.say(61, FireSeen { pit: pit(1) });
    assert_eq!(round(&night, 62), None);
}

#[test]
fn it_can_be_put_off_left_out_and_moved() {
    let mut night = watched();
    let job = Job::FireRound(pit(1));
    plan(&mut night, 10, 60);
    night.say(60, PutOff { job, minutes: 15 });
    assert_eq!(round(&night, 61), Some(75));
    plan(&mut night, 62, 90);
    assert_eq!(round(&night, 63), Some(90));
    night.say(64, Skipped { job });
    assert_eq!(round(&night, 65), None);
}

#[test]
fn with_no_probe_the_round_comes_first_and_an_accepted_time_never_puts_it_off() {
    let mut night = Night::begun();
    assert_eq!(round(&night, 1), Some(60));
    plan(&mut night, 2, 150);
    assert_eq!(round(&night, 3), Some(60));
    plan(&mut night, 4, 40);
    assert_eq!(round(&night, 5), Some(40));
}

#[test]
fn it_rings_before_any_meat_is_on_and_not_once_the_fire_is_shut_down() {
    let mut night = watched();
    for number in [1, 2] {
        let (piece, stage) = (piece(number), Stage::Off);
        night.say(5, StageSet { piece, stage });
    }
    plan(&mut night, 10, 60);
    assert_eq!(round(&night, 11), Some(60));
    let did = FireDid::ShutDown;
    night.say(12, FireTended { pit: pit(1), did });
    assert_eq!(round(&night, 13), None);
}
