//! How long what is cut has to wait, at the least. Start at [`at_least`].
//!
//! All cutting for a serving is done by so many hands, so not all of it can be the last thing before. Law: with `minutes` free
//! in the slots counted back from the serving, no more jobs end with `n` slots or fewer of waiting than the shortest ones that
//! fill the minutes of these slots.

use crate::plan::{cost::Level, household::GRID_MIN, model::Model};

/// The cost of waiting of all tasks of a serving where nothing else needs hands.
pub(super) fn at_least(model: &Model, serving: usize) -> u128 {
    let tasks = model.tasks.iter().filter(|task| task.serving == serving);
    let jobs: Vec<u8> = tasks
        .map(|task| last_slot(task.cut.0))
        .filter(|minutes| *minutes > 0)
        .collect();
    let all = i64::from(model.hands) * GRID_MIN;
    cost(model, jobs, std::iter::repeat(all))
}

/// The cost of waiting of these jobs, with so many minutes free in each slot from the serving back.
pub(super) fn cost(model: &Model, mut jobs: Vec<u8>, free: impl Iterator<Item = i64>) -> u128 {
    jobs.sort_unstable();
    let (mut minutes, mut done, mut waits) = (0, 0, 0);
    for free in free.take(SLOTS) {
        minutes += free;
        while done < jobs.len() && i64::from(jobs[done]) <= minutes {
            minutes -= i64::from(jobs[done]);
            done += 1;
        }
        if done == jobs.len() {
            break;
        }
        waits += (jobs.len() - done) as i64;
    }
    model.order.of_level(Level::Hold, waits * GRID_MIN)
}

/// How far back is counted: an hour of waiting and the longest cutting, in slots.
const SLOTS: usize = 12;

/// The minutes of a cut in its last slot: what comes before does not bear on how long it waits.
pub(super) fn last_slot(minutes: u8) -> u8 {
    minutes.min(GRID_MIN as u8)
}
