//! How long food may stay where bacteria grow. Start at [`clocks`], or at [`Clocks`] to follow a cook.
//!
//! Two clocks run on one food. **Coming up**, from the first reading until it was once hot: what is not intact has four hours
//! to get above the hot limit; intact meat has the six hours between 50 and 130 °F that the tables of
//! [`lethality`](super::lethality) presume, which is told and never rings. **Standing**, from the time it was hot: whatever it
//! spends below the hot limit and above the cold one adds up. Laws: reheating never sets a clock back, and time that is not
//! known counts as spent.

mod answer;
mod rules;
#[cfg(test)]
mod tests;

pub use answer::{Clock, ClocksAnswer};
pub use rules::{Kept, Rules};

use super::food_log::{Flag, Follow, GAP_MS, NotALog, TempAt, follow_all};
use crate::units::Mk;
use serde::{Deserialize, Serialize};

/// What is asked.
#[derive(Clone, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ClocksInput {
    /// How the food is kept.
    pub kept: Kept,
    /// The readings of its coldest place on the way up, or of its warmest when it is cold; oldest first.
    pub readings: Vec<TempAt>,
    /// When it is, milliseconds since 1970; not before the last reading.
    pub now: i64,
}

/// Follows the readings of one food as they come; one more takes constant time.
#[derive(Clone, Copy, Debug)]
pub struct Clocks {
    kept: Kept,
    follow: Follow,
    /// Whether it was once above the hot limit.
    was_hot: bool,
    /// Whether what is not known may have been hot as well.
    is_strict: bool,
    /// Whether it may have been hot at some time that is not known; only where that is asked for.
    may_have_been_hot: bool,
    coming_up: Spent,
    standing: Spent,
}

/// What one clock has counted.
#[derive(Clone, Copy, Debug, Default)]
struct Spent {
    ms: i64,
    unknown_ms: i64,
}

impl Spent {
    fn add(&mut self, length: i64, is_known: bool) {
        self.ms += length;
        if !is_known {
            self.unknown_ms += length;
        }
    }
}

impl Clocks {
    /// Nothing counted yet. `was_hot`: whether the food was cooked before the first reading.
    pub fn of(kept: Kept) -> Self {
        Self {
            kept,
            follow: Follow::default(),
            was_hot: kept.was_hot,
            is_strict: false,
            may_have_been_hot: false,
            coming_up: Spent::default(),
            standing: Spent::default(),
        }
    }

    /// The same clocks, strict from here on about what is not known, or not. Strict is for a fire that failed unseen: food that
    /// nobody read may have been hot in between, so that from then on both clocks run.
    pub fn strictly(self, is_strict: bool) -> Self {
        Self { is_strict, ..self }
    }

    /// Takes one more reading; a flag where the time up to it is not known.
    ///
    /// # Errors
    /// Where it is older than the one before.
    pub fn push(&mut self, reading: TempAt) -> Result<Option<Flag>, NotALog> {
        let step = self.follow.push(reading)?;
        let believed = self.follow.now().is_some_and(|(_, believed)| believed);
        if let Some(step) = step {
            self.count(
                step.colder(),
                step.hotter(),
                step.length(),
                step.doubt.is_none(),
            );
        }
        if believed
            && self
                .follow
                .now()
                .is_some_and(|(last, _)| last.temp >= self.kept.hot())
        {
            self.was_hot = true;
        }
        Ok(step.and_then(|step| step.flag()))
    }

    /// Counts a stretch whose temperature stayed between these, or, where it is not known, may have been anywhere.
    fn count(&mut self, colder: Mk, hotter: Mk, length: i64, is_known: bool) {
        self.may_have_been_hot |= self.is_strict && !is_known;
        let within = |(low, high): (Mk, Mk)| !is_known || (hotter > low && colder < high);
        if !self.was_hot && within(self.kept.come_up_range()) {
            self.coming_up.add(length, is_known);
        }
        if self.stands() && within(self.kept.danger()) {
            self.standing.add(length, is_known);
        }
    }

    /// Whether the clock of what was hot runs.
    const fn stands(&self) -> bool {
        self.was_hot || self.may_have_been_hot
    }

    /// What the clocks say at `now`; none where nothing was read that food can have.
    pub fn answer(&self, now: i64, flags: Vec<Flag>) -> Option<ClocksAnswer> {
        let (last, believed) = self.follow.now()?;
        let since = (now - last.at).max(0);
        let is_known = believed && since <= GAP_MS;
        let mut then = *self;
        then.count(last.temp, last.temp, since, is_known);
        Some(answer::of(&then, last.temp, is_known, now, flags))
    }
}

/// What all readings of one food come to.
///
/// # Errors
/// Where there are none that food can have, or they are not in order.
pub fn clocks(input: &ClocksInput) -> Result<ClocksAnswer, NotALog> {
    let mut so_far = Clocks::of(input.kept);
    let flags = follow_all(&input.readings, input.now, |reading| so_far.push(reading))?;
    so_far.answer(input.now, flags).ok_or(NotALog::Empty)
}
