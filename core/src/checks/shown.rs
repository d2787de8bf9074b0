//! Whether the published minimum is shown by the readings. Start at [`judge`].
//!
//! Hot is believed only in the right places by the right instrument; cold is believed from anywhere. A cold reading
//! stands until a later one by the right instrument at the same place is hot. The minimum is shown by one pass: enough
//! places read hot within [`PASS_MS`], with no cold reading standing in the ten minutes up to its end or after it.

use super::{
    CutFacts, SafeState, Safety, Spot, cut_facts,
    reading::{Reading, latest_by_spot},
};
use crate::{
    checks::Cut,
    moment::MINUTE,
    safety::{Form, Minimum, minimum},
    units::Mk,
};
use std::collections::BTreeMap;

/// The places of one pass are read within this, in milliseconds. Our own caution, no source.
pub const PASS_MS: i64 = 10 * MINUTE;

/// What the readings show.
pub(super) struct Shown {
    pub safety: Safety,
    /// Places that the latest pass lacks; empty once the minimum is shown.
    pub missing: Vec<Spot>,
}

struct Judge<'a> {
    facts: CutFacts,
    form: Form,
    minimum: Minimum,
    readings: &'a [Reading],
    now: i64,
    resting_since: Option<i64>,
}

struct Pass {
    coldest: Mk,
    end: i64,
}

/// What `readings`, in any order, show of this cut at `now`, off the fire since `resting_since`.
pub(super) fn judge(
    cut: Cut,
    form: Form,
    readings: &[Reading],
    now: i64,
    resting_since: Option<i64>,
) -> Shown {
    let judge = Judge {
        facts: cut_facts(cut),
        form,
        minimum: minimum(cut, form),
        readings,
        now,
        resting_since,
    };
    let rest_left_ms = judge.passes().map(|pass| judge.rest_left(&pass)).min();
    let coldest = judge.coldest_now();
    let below = coldest.is_some_and(|coldest| coldest < judge.minimum.temp);
    let state = match rest_left_ms {
        Some(0) => SafeState::Safe,
        Some(_) => SafeState::NotSafe,
        None if below => SafeState::NotSafe,
        None => SafeState::Unknown,
    };
    let missing = if rest_left_ms.is_some() {
        vec![]
    } else {
        judge.missing()
    };
    Shown {
        safety: Safety {
            state,
            minimum: judge.minimum,
            coldest,
            rest_left_ms,
        },
        missing,
    }
}

impl Judge<'_> {
    fn hot(&self, reading: &Reading) -> bool {
        reading.mk >= self.minimum.temp
    }

    fn right_instrument(&self, reading: &Reading) -> bool {
        reading.instant || !self.facts.by_hand
    }

    /// A hot reading by the right instrument that no cold one at its place follows or equals in time.
    fn stands_hot(&self, reading: &Reading) -> bool {
        let cold_since = |other: &Reading| {
            other.spot == reading.spot && other.at >= reading.at && !self.hot(other)
        };
        self.hot(reading) && self.right_instrument(reading) && !self.readings.iter().any(cold_since)
    }

    /// A cold reading that no hot one by the right instrument at its place follows. "Elsewhere" is no place.
    fn stands_cold(&self, reading: &Reading) -> bool {
        let hot_after = |other: &Reading| {
            other.spot == reading.spot
                && other.at > reading.at
                && self.hot(other)
                && self.right_instrument(other)
        };
        !self.hot(reading)
            && (reading.spot == Spot::Elsewhere || !self.readings.iter().any(hot_after))
    }

    fn passes(&self) -> impl Iterator<Item = Pass> {
        let places = self.facts.cut.spots(self.form);
        let hot = self
            .readings
            .iter()
            .filter(|r| places.contains(&r.spot) && self.stands_hot(r));
        let hot: Vec<&Reading> = hot.collect();
        let last_cold = self
            .readings
            .iter()
            .filter(|r| self.stands_cold(r))
            .map(|r| r.at)
            .max();
        let starts: Vec<i64> = hot.iter().map(|r| r.at).collect();
        starts
            .into_iter()
            .filter_map(move |start| self.pass_from(start, &hot))
            .filter(move |pass| last_cold.is_none_or(|cold| cold < pass.end - PASS_MS))
    }

    fn pass_from(&self, start: i64, hot: &[&Reading]) -> Option<Pass> {
        let within: Vec<_> = hot
            .iter()
            .filter(|r| (start..=start + PASS_MS).contains(&r.at))
            .copied()
            .collect();
        let latest = latest_by_spot(&within);
        self.enough(&latest).then_some(())?;
        let end = latest.values().map(|r| r.at).max()?;
        // What is read colder soon after the pass weighs as if it were of it: it was not all that hot at once.
        let soon_after = hot
            .iter()
            .filter(|r| r.at > end && r.at <= end + PASS_MS)
            .copied();
        let coldest = latest.values().copied().chain(soon_after).map(|r| r.mk);
        Some(Pass {
            coldest: coldest.min()?,
            end,
        })
    }

    fn enough(&self, latest: &BTreeMap<Spot, &Reading>) -> bool {
        let stuffing = latest.contains_key(&Spot::StuffingCenter);
        let others = latest.len() - usize::from(stuffing);
        others >= self.facts.spots_needed as usize && (stuffing || self.form != Form::Stuffed)
    }

    fn rest_left(&self, pass: &Pass) -> i64 {
        if pass.coldest >= self.minimum.at_once {
            return 0;
        }
        let rested = self
            .resting_since
            .map_or(0, |since| self.now - since.max(pass.end).min(self.now));
        (self.minimum.rest_ms - rested).max(0)
    }

    /// The readings of the ten minutes up to the newest.
    fn newest_pass(&self) -> Vec<&Reading> {
        let newest = self.readings.iter().map(|r| r.at).max().unwrap_or(0);
        self.readings
            .iter()
            .filter(|r| r.at >= newest - PASS_MS)
            .collect()
    }

    fn coldest_now(&self) -> Option<Mk> {
        let recent = self.newest_pass();
        let latest = latest_by_spot(&recent);
        let cold = recent.iter().filter(|r| self.stands_cold(r)).map(|r| r.mk);
        latest.values().map(|r| r.mk).chain(cold).min()
    }

    fn missing(&self) -> Vec<Spot> {
        let recent = self.newest_pass();
        let read = |spot: &Spot| {
            recent
                .iter()
                .any(|r| r.spot == *spot && self.right_instrument(r))
        };
        let (read, unread): (Vec<Spot>, Vec<Spot>) =
            self.facts.cut.spots(self.form).into_iter().partition(read);
        let stuffing = read.contains(&Spot::StuffingCenter);
        let enough = read.len() - usize::from(stuffing) >= self.facts.spots_needed as usize;
        unread
            .into_iter()
            .filter(|spot| !enough || *spot == Spot::StuffingCenter)
            .collect()
    }
}
