//! Which rings still stand: what was shown for the others is taken away.

use super::{AlarmId, NAGS_MIN, Rung, due};
use crate::cook::Known;

/// Of `ids`, those whose job still waits to be done, and is due, or sounded for its present time. "Open Slowbend" always
/// stands: opening it is its answer.
pub fn standing(known: &Known<'_>, rung: &Rung, now: i64, ids: &[AlarmId]) -> Vec<AlarmId> {
    let dues = due(known, now);
    let stands = |id: &AlarmId| {
        let sounded = |from: i64| rung.get(id).is_some_and(|(at, _)| *at >= from);
        let names = |due: &super::Due| {
            (0..NAGS_MIN.len())
                .any(|nag| *id == AlarmId::of(due.cook, due.job, due.ordinal, nag as i64))
        };
        *id == AlarmId::OPEN_SLOWBEND
            || dues
                .iter()
                .any(|due| names(due) && (due.at <= now || sounded(due.from)))
    };
    ids.iter().copied().filter(stands).collect()
}
