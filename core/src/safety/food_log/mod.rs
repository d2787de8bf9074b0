//! How hot food was over time, as far as it can be believed. Start at [`Follow`].
//!
//! Every sum of safety follows its readings through here, so that all of them doubt the same things. Law: what is doubted is
//! never read in the food's favor; one more reading takes constant time.

#[cfg(test)]
mod tests;
#[cfg(test)]
pub mod walk;

use crate::{
    moment::{MINUTE, SECOND},
    units::Mk,
};
use serde::{Deserialize, Serialize};

/// Silence longer than this is not known to be anything. Our own caution, no source.
pub const GAP_MS: i64 = 10 * MINUTE;
/// Food does not warm faster than this, millikelvin a minute, beyond [`NOISE`]. Our own caution, no source.
pub const FASTEST: i64 = 5_000;
/// What two readings of one place may differ by at once, millikelvin. Our own caution, no source.
pub const NOISE: i64 = 2_000;
/// Food on a pit is between these: below, a probe is broken; above, it is in the air or the fire, for juice boils away first.
/// Our own caution, no source.
pub const FOOD: std::ops::RangeInclusive<Mk> = Mk(233_150)..=Mk(383_150);

/// How hot one place of the food was.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct TempAt {
    /// When, milliseconds since 1970.
    pub at: i64,
    /// How hot, millikelvin.
    pub temp: Mk,
}

/// Why the time up to a reading is not known.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Doubt {
    /// Nothing was read for longer than [`GAP_MS`].
    Gap,
    /// It rose faster than food does: the probe may have been pulled out or moved. What follows is doubted until it is
    /// back where it was, or falls as suddenly.
    Jump,
    /// It read what food on a pit never is.
    NotFood,
}

/// A doubt, and when it arose.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Flag {
    /// The reading up to which nothing is known, milliseconds since 1970.
    pub at: i64,
    /// Why.
    pub doubt: Doubt,
}

/// The time between two readings.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Step {
    /// The one before.
    pub from: TempAt,
    /// The later one.
    pub to: TempAt,
    /// Why what lies between is not known; none where it is.
    pub doubt: Option<Doubt>,
}

impl Step {
    /// How long it is, milliseconds.
    pub const fn length(&self) -> i64 {
        self.to.at - self.from.at
    }

    /// The colder end.
    pub fn colder(&self) -> Mk {
        self.from.temp.min(self.to.temp)
    }

    /// The hotter end.
    pub fn hotter(&self) -> Mk {
        self.from.temp.max(self.to.temp)
    }

    /// What is to be told of it.
    pub fn flag(&self) -> Option<Flag> {
        let at = self.to.at;
        self.doubt.map(|doubt| Flag { at, doubt })
    }
}

/// Why readings were not taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NotALog {
    /// A reading is older than the one before it.
    #[error("The readings are not in order of time: sort them, oldest first.")]
    OutOfOrder,
    /// There are none.
    #[error("There are no readings: give at least one, with its time and temperature.")]
    Empty,
}

/// Follows readings one by one.
#[derive(Clone, Copy, Debug, Default)]
pub struct Follow {
    last: Option<TempAt>,
    /// What to come back to, once it jumped.
    trusted: Option<Mk>,
    /// Whether readings were passed over since `last`.
    passed_over: bool,
    latest: Option<i64>,
}

impl Follow {
    /// Takes one more reading; the step to it, where there is one before.
    ///
    /// # Errors
    /// Where it is older than the one before.
    pub fn push(&mut self, reading: TempAt) -> Result<Option<Step>, NotALog> {
        if self.latest.is_some_and(|latest| reading.at < latest) {
            return Err(NotALog::OutOfOrder);
        }
        self.latest = Some(reading.at);
        if !FOOD.contains(&reading.temp) {
            self.passed_over = true;
            return Ok(None);
        }
        let step = self.last.map(|from| Step {
            from,
            to: reading,
            doubt: self.doubt(from, reading),
        });
        self.passed_over = false;
        self.last = Some(reading);
        Ok(step)
    }

    /// The last reading that food can have, and whether it is believed.
    pub fn now(&self) -> Option<(TempAt, bool)> {
        let believed = self.trusted.is_none() && !self.passed_over;
        self.last.map(|last| (last, believed))
    }

    fn doubt(&mut self, from: TempAt, to: TempAt) -> Option<Doubt> {
        let length = to.at - from.at;
        let change = to.temp.0 - from.temp.0;
        let most = NOISE + FASTEST * length / (60 * SECOND);
        match self.trusted {
            Some(was) if to.temp.0 <= was.0 + NOISE || change < -most => self.trusted = None,
            Some(_) => return Some(Doubt::Jump),
            None if change > most => {
                self.trusted = Some(from.temp);
                return Some(Doubt::Jump);
            }
            None => {}
        }
        match (self.passed_over, length > GAP_MS) {
            (true, _) => Some(Doubt::NotFood),
            (false, true) => Some(Doubt::Gap),
            (false, false) => None,
        }
    }
}

/// Gives all readings to `push`, oldest first; what is not known of them.
///
/// # Errors
/// Where one is older than the one before, or later than `now`.
pub fn follow_all(
    readings: &[TempAt],
    now: i64,
    mut push: impl FnMut(TempAt) -> Result<Option<Flag>, NotALog>,
) -> Result<Vec<Flag>, NotALog> {
    let mut flags = vec![];
    for reading in readings {
        flags.extend(push(*reading)?);
    }
    match readings.last() {
        Some(last) if last.at > now => Err(NotALog::OutOfOrder),
        _ => Ok(flags),
    }
}
