//! What is to be done, and when.

use super::Urgency;
use crate::{
    cook::Known,
    ids::{CookId, PitId},
    log::Job,
};
use serde::{Deserialize, Serialize};

/// One thing to be done.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Due {
    /// In which cook.
    pub cook: CookId,
    /// What.
    pub job: Job,
    /// Which time it comes up: rises with each answer, so that an answered alarm's name is never used again.
    pub ordinal: i64,
    /// When, milliseconds since 1970: the past for what is late.
    pub at: i64,
    /// How loudly.
    pub urgency: Urgency,
    /// The pit at which it is done, if at one.
    pub pit: Option<PitId>,
    /// For wettings: how many whole cadences went by undone.
    pub missed: i64,
    /// For wettings: until when it is still in time.
    pub latest: Option<i64>,
}

/// All that is to be done in one cook, at `now`: soonest first, then loudest, then by job.
pub fn due_in(known: &Known<'_>, cook: CookId, now: i64) -> Vec<Due> {
    let _ = (known, cook, now);
    vec![]
}

/// All that is to be done in the cooks under way, in the same order.
pub fn due(known: &Known<'_>, now: i64) -> Vec<Due> {
    let mut all: Vec<Due> = known
        .open_cooks()
        .flat_map(|cook| due_in(known, cook.id, now))
        .collect();
    all.sort_by_key(|due| (due.at, due.urgency, due.cook, due.job));
    all
}
