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
    let hands = i64::from(model.hands);
    cost(model, jobs, std::iter::repeat((hands * GRID_MIN, hands)))
}

/// The cost of waiting of these jobs, with so many minutes, and so many hands for jobs of more than five, free in each slot
/// from the serving back.
pub(super) fn cost(
    model: &Model,
    mut jobs: Vec<u8>,
    free: impl Iterator<Item = (i64, i64)>,
) -> u128 {
    jobs.sort_unstable();
    let (mut minutes, mut hands, mut waits) = (0, 0, 0);
    for (free, long) in free.take(SLOTS) {
        (minutes, hands) = (minutes + free, hands + long);
        let done = fit(&jobs, minutes, hands);
        if done == jobs.len() {
            break;
        }
        waits += (jobs.len() - done) as i64;
    }
    model.order.of_level(Level::Hold, waits * GRID_MIN)
}

/// How many of these jobs, the shortest first, so many minutes and hands are enough for.
fn fit(jobs: &[u8], mut minutes: i64, mut hands: i64) -> usize {
    let mut fits = |job: &&u8| {
        minutes -= i64::from(**job);
        hands -= i64::from(**job > 5);
        minutes >= 0 && hands >= 0
    };
    jobs.iter().take_while(|job| fits(job)).count()
}

/// How far back is counted: an hour of waiting and the longest cutting, in slots.
const SLOTS: usize = 12;

/// The minutes of a cut in its last slot: what comes before does not bear on how long it waits.
pub(super) fn last_slot(minutes: u8) -> u8 {
    minutes.min(GRID_MIN as u8)
}
