//! What is to be done, and when: the shape of it, and all of it together.

use super::{AlarmId, Urgency, meats, openings, pits, sheet, sleep};
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
    /// Which time it comes up: how many entries ever answered it, so that an answered alarm's name is never used again.
    pub ordinal: i64,
    /// When, milliseconds since 1970: the past for what is late.
    pub at: i64,
    /// A ring from this instant on was for this time, even where it has been moved a little since.
    pub from: i64,
    /// How loudly.
    pub urgency: Urgency,
    /// The pit at which it is done, if at one.
    pub pit: Option<PitId>,
    /// For wettings: how many whole cadences went by undone.
    pub missed: i64,
    /// For wettings: until when it is still in time.
    pub latest: Option<i64>,
}

impl Due {
    /// Something due at `at`, the next time after `ordinal` answers.
    pub(super) fn new(cook: &crate::cook::Cook, job: Job, at: i64, urgency: Urgency) -> Self {
        let ordinal = cook.ordinals.get(&job).copied().unwrap_or(0);
        Self {
            cook: cook.id,
            job,
            ordinal,
            at,
            from: at,
            urgency,
            pit: None,
            missed: 0,
            latest: None,
        }
    }

    /// The name of its first ring.
    pub(super) fn name(&self) -> AlarmId {
        AlarmId::of(self.cook, self.job, self.ordinal, 0)
    }
}

/// All that is to be done in one cook, at `now`: soonest first, then loudest, then by job.
pub fn due_in(known: &Known<'_>, cook: CookId, now: i64) -> Vec<Due> {
    let Some(cook) = known.cooks.get(&cook).filter(|cook| cook.is_open()) else {
        return vec![];
    };
    let mut all = meats::due(known, cook, now);
    openings::bend(known, cook, now, &mut all);
    all.extend(pits::due(known, cook, now));
    all.extend(sleep::due(known, cook, now));
    all.extend(sheet::due(cook, now));
    sort(&mut all);
    all
}

/// All that is to be done in the cooks under way, in the same order.
pub fn due(known: &Known<'_>, now: i64) -> Vec<Due> {
    let mut all: Vec<Due> = known
        .open_cooks()
        .flat_map(|cook| due_in(known, cook.id, now))
        .collect();
    sort(&mut all);
    all
}

fn sort(all: &mut [Due]) {
    all.sort_by_key(|due| (due.at, due.urgency, due.cook, due.job));
}
