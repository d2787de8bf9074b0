//! What rings is answered where it rings, stands until then, and is shown before sleep.

use super::*;
use crate::alarms::{Alarm, AlarmId, Urgency};

fn wake(door: &mut Slowbend, minutes: i64) -> Alarm {
    let viewer = viewer(door);
    let list = door.alarms(&viewer, &now(minutes), 60).unwrap();
    let mut wakes = list.alarms.into_iter();
    wakes
        .find(|alarm| alarm.urgency == Urgency::Wake)
        .expect("a fire that no probe watches wakes")
}

#[test]
fn an_answer_given_before_the_core_was_open_counts_from_when_it_was_given_and_once() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "a");
    begun(&mut door);
    let first = wake(&mut door, 1);
    let rings = (first.at - SIX) / MINUTE;
    assert_eq!(first.thing, first.id);
    let labels: Vec<&str> = first.answers.iter().map(|a| a.label.as_str()).collect();
    assert_eq!(labels, ["Seen to it", "In 10 min"]);
    assert_eq!(first.answers[1].again_minutes, Some(10));
    let (viewer, seen) = (viewer(&mut door), now(rings + 1));
    let answer = |door: &mut Slowbend| {
        door.answer("token", &viewer, &first.answers[0].act, &seen)
            .unwrap()
    };
    assert!(!answer(&mut door).repeated);
    assert!(answer(&mut door).repeated);
    let next = wake(&mut door, rings + 30);
    assert_ne!(next.thing, first.thing);
    assert_eq!(
        next.at,
        SIX + (rings + 1 + crate::alarms::ROUND_MIN) * MINUTE
    );
}

#[test]
fn a_text_that_is_no_answer_is_refused() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "a");
    let viewer = viewer(&mut door);
    for text in ["", "{}", "{\"act\":\"fly\"}"] {
        let refused = door.answer("token", &viewer, text, &now(0));
        assert!(matches!(refused, Err(Trouble::Refused { .. })), "{text}");
    }
}

#[test]
fn a_ring_stands_from_its_time_until_it_is_answered_or_put_off() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "a");
    begun(&mut door);
    let ring = wake(&mut door, 1);
    let rings = (ring.at - SIX) / MINUTE;
    let ids = [ring.id, AlarmId([7; 16])];
    let stands = |door: &mut Slowbend, minutes| door.standing(&ids, &now(minutes)).unwrap();
    assert_eq!(stands(&mut door, rings - 1), []);
    door.rang(&ring.covers, &now(rings)).unwrap();
    assert_eq!(stands(&mut door, rings + 1), [ring.id]);
    let viewer = viewer(&mut door);
    door.answer("later", &viewer, &ring.answers[1].act, &now(rings + 1))
        .unwrap();
    assert_eq!(stands(&mut door, rings + 2), []);
    assert_eq!(
        stands(&mut door, rings + 11),
        [],
        "it comes back by another name"
    );
}

#[test]
fn no_ring_changes_a_stage_at_one_touch() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "a");
    let (_, _, slab) = begun(&mut door);
    for stage in [Stage::Off, Stage::Served] {
        let (piece, at) = (slab, None);
        act(&mut door, 60, Act::SetStage { piece, stage, at });
    }
    let viewer = viewer(&mut door);
    let list = door.alarms(&viewer, &now(60), 60).unwrap();
    let away = list.alarms.iter().find(|a| a.title.starts_with("Put away"));
    let answers = &away.expect("what was served is put away").answers;
    assert!(answers.iter().all(|a| !a.act.contains("set_stage")));
    assert!(!answers.is_empty());
}

#[test]
fn before_sleep_each_pit_is_told_with_its_wakes() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "a");
    begun(&mut door);
    let viewer = viewer(&mut door);
    let night = door.night(&viewer, &now(1)).unwrap();
    assert_eq!(night.pits.len(), 1);
    assert_eq!(night.alone[0].state, "Not left alone");
    assert_eq!(night.wakes[0].name, "See to the fire: Drum");
}
