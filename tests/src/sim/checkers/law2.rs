//! Law 2, no missed alarm: the list of a device against what is due, whatever happened before.
//!
//! What is due is taken from a cold fold of the entries and of the readings on disk, not from the device's own state.

use crate::sim::{Told, platform::Platform};
use slowbend_core::{
    alarms::{AlarmId, AlarmList, Due, NAGS_MIN, Urgency},
    ids::CookId,
    log::Job,
    moment::SECOND,
};
use std::collections::{BTreeMap, BTreeSet};

/// A wall clock that is put right by less than this was not moved.
const DRIFT_MS: i64 = 90 * SECOND;

/// A job with how often it was answered: rises, and never falls.
pub type Ordinals = BTreeMap<(CookId, Job), i64>;

/// Checks the shape of a list of at most `limit`, against the longest one there is.
///
/// # Errors
/// What of the law is broken.
pub fn shape(list: &AlarmList, longest: &AlarmList, limit: usize) -> Told<()> {
    let broken = |what: &str| Err(format!("law 2: {what}: {list:#?} of {longest:#?}"));
    let ids: BTreeSet<AlarmId> = covered(list).collect();
    if list.alarms.len() > limit {
        return broken("more than the limit");
    }
    if !list.alarms.is_sorted_by_key(|alarm| alarm.at) {
        return broken("not soonest first");
    }
    if ids.len() != covered(list).count() {
        return broken("a name twice");
    }
    match list.complete_until {
        None if list == longest => Ok(()),
        None => broken("not all, and not said"),
        Some(until) => cut(list, longest, until),
    }
}

/// A list that was cut: its last slot says so, and before its time it lacks nothing.
fn cut(list: &AlarmList, longest: &AlarmList, until: i64) -> Told<()> {
    let last = list.alarms.last();
    if last.is_none_or(|last| last.id != AlarmId::OPEN_SLOWBEND || last.at > until) {
        return Err(format!(
            "law 2: cut, and the last slot does not say so: {last:?}"
        ));
    }
    let shown: BTreeSet<AlarmId> = covered(list).collect();
    let lacking = longest
        .alarms
        .iter()
        .find(|alarm| alarm.at < until && !shown.contains(&alarm.id));
    match lacking {
        Some(alarm) => Err(format!(
            "law 2: complete until {until}, but lacks {alarm:?}"
        )),
        None => Ok(()),
    }
}

/// Checks that each thing due is in the list, or sounded for its present time; that nothing else is in the list; and
/// that no ordinal falls.
///
/// # Errors
/// What of the law is broken.
pub fn nothing_missed(
    due: &[Due],
    list: &AlarmList,
    platform: &Platform,
    wall_ms: i64,
) -> Told<()> {
    let shown: BTreeSet<AlarmId> = covered(list).collect();
    for due in due.iter().filter(|due| due.urgency != Urgency::Quiet) {
        let beyond = list.complete_until.is_some_and(|until| due.at >= until);
        let sounded = names(due).any(|id| {
            platform
                .sounded(&id)
                .iter()
                .any(|at| (due.from..=wall_ms + DRIFT_MS).contains(at))
        });
        if !beyond && !sounded && !names(due).any(|id| shown.contains(&id)) {
            return Err(format!(
                "law 2: at {wall_ms} nothing rings for {due:?} in {list:#?}"
            ));
        }
    }
    let known: BTreeSet<AlarmId> = due
        .iter()
        .flat_map(names)
        .chain([AlarmId::OPEN_SLOWBEND])
        .collect();
    match shown.iter().find(|id| !known.contains(id)) {
        Some(id) => Err(format!(
            "law 2: {id} rings, and nothing is due by that name: {list:#?}"
        )),
        None => Ok(()),
    }
}

/// Checks that what was answered keeps its name to itself: ordinals never fall.
///
/// # Errors
/// The first that does.
pub fn answered_for_good(due: &[Due], before: &mut Ordinals) -> Told<()> {
    for due in due {
        let last = before.entry((due.cook, due.job)).or_insert(due.ordinal);
        if due.ordinal < *last {
            return Err(format!(
                "law 2: answered {last} times before, and now {due:?}"
            ));
        }
        *last = due.ordinal;
    }
    Ok(())
}

fn covered(list: &AlarmList) -> impl Iterator<Item = AlarmId> {
    list.alarms
        .iter()
        .flat_map(|alarm| alarm.covers.iter().copied())
}

/// All names under which a thing may ring.
pub fn names(due: &Due) -> impl Iterator<Item = AlarmId> {
    let (cook, job, ordinal) = (due.cook, due.job, due.ordinal);
    (0..NAGS_MIN.len() as i64).map(move |nag| AlarmId::of(cook, job, ordinal, nag))
}
