//! The ordered list of what must ring.
//!
//! Laws. The list holds the soonest of all cooks under way, rings again counted, at most `limit`; if cut, its last slot
//! is "open Slowbend" and `complete_until` says from when on something is missing. What rang on this device for its
//! present time is not in it; what was answered never is. Calls are ten minutes apart, and what is due within ten
//! minutes of a call is one call with it; a call that would sound in sleep waits for its end. What must wake rings again
//! and again, and where somebody else has the watch, first with them.

use super::{AlarmId, Due, Urgency, due};
use crate::{
    cook::Known,
    ids::{CookId, DeviceId},
    moment::MINUTE,
};
use std::collections::BTreeMap;

/// Calls are this far apart.
pub const CALLS_APART_MS: i64 = 10 * MINUTE;
/// What must wake rings at these minutes after its time until it is answered. Common practice, no source.
pub const NAGS_MIN: [i64; 9] = [0, 2, 4, 7, 10, 15, 20, 30, 45];
/// Where somebody else has the watch, this device rings so much later, if nobody answered. Common practice, no source.
pub const SECOND_EAR_MS: i64 = 5 * MINUTE;

/// What rang on this device: when last, and whether it was a call.
pub type Rung = BTreeMap<AlarmId, (i64, bool)>;

/// One ring, before it is put into words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ring {
    /// Its name: that of its first job.
    pub id: AlarmId,
    /// Of which cook; none for "open Slowbend".
    pub cook: Option<CookId>,
    /// When: of what is late, a call's is now, another's its own time.
    pub at: i64,
    /// How loudly.
    pub urgency: Urgency,
    /// What is due, first the one it is named for.
    pub jobs: Vec<Due>,
    /// The names that it answers for, its own among them.
    pub covers: Vec<AlarmId>,
    /// Shown without a sound: somebody else has the watch.
    pub silent: bool,
    /// How often it rang before for the same thing.
    pub nag: usize,
}

/// The rings in order, and from when on the list may lack some.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Rings {
    /// Soonest first.
    pub rings: Vec<Ring>,
    /// The list lacks nothing before this; none = it lacks nothing.
    pub complete_until: Option<i64>,
}

/// The list at `now`, at most `limit` long (1 or more).
pub fn rings(known: &Known<'_>, rung: &Rung, now: i64, limit: usize) -> Rings {
    let all = due(known, now);
    let watched_by_other = known
        .crew
        .on_watch(now)
        .is_some_and(|turn| turn.device != known.device);
    let wakes = all.iter().filter(|due| due.urgency == Urgency::Wake);
    let mut rings: Vec<Ring> = wakes
        .flat_map(|due| wake(due, rung, now, watched_by_other))
        .collect();
    let calls: Vec<&Due> = all
        .iter()
        .filter(|due| due.urgency == Urgency::Call && !rang(rung, due))
        .collect();
    rings.extend(call(known, &calls, rung, now, watched_by_other));
    rings.sort_by_key(|ring| (ring.at, ring.urgency, ring.id));
    cut(rings, limit.max(1))
}

fn id_of(due: &Due, nag: usize) -> AlarmId {
    AlarmId::of(due.cook, due.job, due.ordinal, nag as i64)
}

fn rang(rung: &Rung, due: &Due) -> bool {
    rung.get(&id_of(due, 0))
        .is_some_and(|(at, _)| *at >= due.from)
}

/// The rings of one thing that must wake, those that sounded left out, those whose time has passed made one.
fn wake(due: &Due, rung: &Rung, now: i64, watched_by_other: bool) -> Vec<Ring> {
    let later = if watched_by_other { SECOND_EAR_MS } else { 0 };
    let first = due.at.saturating_add(later);
    let sounded = |nag: &usize| {
        rung.get(&id_of(due, *nag))
            .is_some_and(|(at, _)| *at >= due.from)
    };
    let times = NAGS_MIN
        .iter()
        .enumerate()
        .map(|(nag, minutes)| (nag, first.saturating_add(minutes * MINUTE)));
    let last_sounded = times
        .clone()
        .filter(|(nag, _)| sounded(nag))
        .map(|(nag, _)| nag)
        .max();
    let left: Vec<(usize, i64)> = times
        .filter(|(nag, _)| last_sounded.is_none_or(|last| *nag > last))
        .collect();
    let passed = left.iter().filter(|(_, at)| *at <= now).count();
    let late = passed.checked_sub(1).map(|last| {
        let covers = left[..passed]
            .iter()
            .map(|(nag, _)| id_of(due, *nag))
            .collect();
        ring(due, left[last], covers)
    });
    let ahead = left[passed..]
        .iter()
        .map(|slot| ring(due, *slot, vec![id_of(due, slot.0)]));
    late.into_iter().chain(ahead).collect()
}

fn ring(due: &Due, (nag, at): (usize, i64), covers: Vec<AlarmId>) -> Ring {
    let (id, cook, jobs) = (id_of(due, nag), Some(due.cook), vec![due.clone()]);
    Ring {
        id,
        cook,
        at,
        urgency: Urgency::Wake,
        jobs,
        covers,
        silent: false,
        nag,
    }
}

/// Calls made few: ten minutes apart, each with all that is due before the next may come.
fn call(known: &Known<'_>, calls: &[&Due], rung: &Rung, now: i64, silent: bool) -> Vec<Ring> {
    let sleeps = sleeps(known, known.device);
    let awake = |at: i64| {
        sleeps
            .iter()
            .find(|(from, to)| (*from..*to).contains(&at))
            .map_or(at, |(_, to)| *to)
    };
    let mut waiting: Vec<(i64, &Due)> = calls
        .iter()
        .map(|due| (awake(due.at.max(now)), *due))
        .collect();
    waiting.sort_by_key(|(at, due)| (*at, due.cook, due.job));
    let mut free_from = rung
        .values()
        .filter(|(_, call)| *call)
        .map(|(at, _)| at.saturating_add(CALLS_APART_MS))
        .max();
    let mut rings: Vec<Ring> = vec![];
    for (at, due) in waiting {
        match rings.last_mut() {
            Some(last) if at < last.at.saturating_add(CALLS_APART_MS) => {
                last.jobs.push(due.clone());
                last.covers.push(id_of(due, 0));
            }
            _ => {
                let at = awake(free_from.map_or(at, |free| at.max(free)));
                free_from = Some(at.saturating_add(CALLS_APART_MS));
                let id = id_of(due, 0);
                let (cook, jobs, covers) = (Some(due.cook), vec![due.clone()], vec![id]);
                rings.push(Ring {
                    id,
                    cook,
                    at,
                    urgency: Urgency::Call,
                    jobs,
                    covers,
                    silent,
                    nag: 0,
                });
            }
        }
    }
    rings
}

fn sleeps(known: &Known<'_>, device: DeviceId) -> Vec<(i64, i64)> {
    known
        .crew
        .people
        .get(&device)
        .map(|person| person.sleeps())
        .unwrap_or_default()
}

fn cut(mut rings: Vec<Ring>, limit: usize) -> Rings {
    if rings.len() <= limit {
        return Rings {
            rings,
            complete_until: None,
        };
    }
    let from = rings[limit - 1].at;
    rings.truncate(limit - 1);
    rings.push(Ring {
        id: AlarmId::OPEN_SLOWBEND,
        cook: None,
        at: from,
        urgency: Urgency::Wake,
        jobs: vec![],
        covers: vec![AlarmId::OPEN_SLOWBEND],
        silent: false,
        nag: 0,
    });
    Rings {
        rings,
        complete_until: Some(from),
    }
}
