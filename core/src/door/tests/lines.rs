//! The list of cooks tells the entries' story, wherever the process ended.

use super::*;
use crate::{
    log::{CookFinished, Draft, Payload, Voided},
    store::Along,
};

fn open_cooks(door: &mut Slowbend) -> Vec<CookId> {
    door.known().open_cooks().map(|cook| cook.id).collect()
}

#[test]
fn a_cook_that_came_from_another_device_is_there_though_the_process_ended_before_it_was_folded() {
    let (ours, theirs) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let mut other = open(theirs.path(), "other");
    let (cook, ..) = begun(&mut other);
    let entries = other.entries_after(&[]).unwrap();
    let mut door = open(ours.path(), "ours");
    door.store().unwrap().absorb(&entries).unwrap();
    drop(door);
    let mut again = open(ours.path(), "ours");
    assert_eq!(open_cooks(&mut again), [cook]);
    assert!(again.store().unwrap().lines_are_current().unwrap());
}

#[test]
fn a_cook_that_goes_on_after_all_rings_though_the_process_ended_before_its_line_was_settled() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "ours");
    let (cook, ..) = begun(&mut door);
    let ended = act(&mut door, 60, Act::FinishCook { cook }).entries;
    assert_eq!(open_cooks(&mut door), []);
    append_only(&mut door, cook, Voided { targets: ended });
    assert_eq!(open_cooks(&mut open(place.path(), "ours")), [cook]);
}

#[test]
fn a_cook_that_ended_just_before_the_process_did_is_past() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "ours");
    let (cook, ..) = begun(&mut door);
    append_only(&mut door, cook, CookFinished {});
    let mut again = open(place.path(), "ours");
    assert_eq!(open_cooks(&mut again), []);
    let past = again.store().unwrap().past_lines(i64::MAX, 10).unwrap();
    assert_eq!(past.len(), 1);
    assert_eq!(past[0].finished, Some(SIX + 60 * MINUTE));
}

/// What is on disk once an act returned from the store, and lets the door go before it did more.
fn append_only(door: &mut Slowbend, cook: CookId, fact: impl Into<Payload>) {
    let (n, stamp) = (door.next_n, door.stamp.tick(SIX + 60 * MINUTE));
    let draft = Draft {
        cook: Some(cook),
        at: SIX + 60 * MINUTE,
        payload: fact.into(),
    };
    let along = Along {
        changes_lines: true,
        ..Along::default()
    };
    let store = door.store().unwrap();
    store.append(&[draft], n, &[stamp], along).unwrap();
    door.suspend().unwrap();
}
