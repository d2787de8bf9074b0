//! The pit or the power failed some time between two readings: what now. Start at [`fire_out`].
//!
//! Nobody knows when it failed, so the worst is taken: the whole time between the readings counts as spent where bacteria
//! grow, and the food may have been hot in between, so that it counts on both [`clocks`](super::clocks): two hours that nobody
//! can account for are the end of any food. Laws: no path that the food could have taken through the gap gives a harder answer; reheating never sets a clock
//! back; what has no reading since is not called well.

#[cfg(test)]
mod tests;

use super::{
    Minimum, Source,
    clocks::{Clock, Clocks, ClocksAnswer, Kept},
    food_log::{NotALog, TempAt, follow_all},
};
use crate::units::Mk;
use serde::{Deserialize, Serialize};

/// What is asked.
#[derive(Clone, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct FireOutInput {
    /// How the food is kept.
    pub kept: Kept,
    /// Its published minimum.
    pub minimum: Minimum,
    /// All readings of its coldest place, oldest first: those before the fire was found out, and those since, if any.
    pub readings: Vec<TempAt>,
    /// The last sign that the fire burned, milliseconds since 1970: up to then the food stood on a pit that ran. None = nobody
    /// knows, and all silence counts.
    #[serde(default)]
    pub burned_until: Option<i64>,
    /// Earlier times that the fire was out and burned again, oldest first: silence in them counts as silence since.
    #[serde(default)]
    pub outages: Vec<Outage>,
    /// When it was found out, milliseconds since 1970.
    pub found_at: i64,
    /// When it is.
    pub now: i64,
}

/// A time that a fire was out in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Outage {
    /// Until when it burned for certain, milliseconds since 1970.
    pub from: i64,
    /// From when on it is known to have burned again, or the food was read again, milliseconds since 1970.
    pub back: i64,
}

/// What to do.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "do")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum FireOutAdvice {
    /// Read it now, in the coldest place: there is no reading since the fire was found out.
    ReadNow {
        /// When it is to be thrown away unless it proves hot, milliseconds since 1970.
        by: i64,
    },
    /// Get it above `above` before `by`, then on to its minimum.
    HeatBy {
        /// Millikelvin.
        above: Mk,
        /// Milliseconds since 1970.
        by: i64,
    },
    /// It is hot, or still cold, and the clock stands: carry on.
    CarryOn,
    /// The clock has run out: throw it away.
    Discard,
}

/// What to do and by what rule.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct FireOutAnswer {
    /// What to do.
    pub advice: FireOutAdvice,
    /// Afterwards its coldest part must still reach this, millikelvin.
    pub then_to: Mk,
    /// The clock that decides.
    pub clock: Clock,
    /// Both clocks.
    pub clocks: ClocksAnswer,
    /// How much of the time is not known, milliseconds.
    pub unknown_ms: i64,
    /// Who published the limit.
    pub source: Source,
}

/// What to do with food whose fire went out.
///
/// # Errors
/// Where there is no reading that food can have, or they are not in order.
pub fn fire_out(input: &FireOutInput) -> Result<FireOutAnswer, NotALog> {
    let mut so_far = Clocks::of(input.kept);
    let mut before = i64::MIN;
    let flags = follow_all(&input.readings, input.now, |reading| {
        so_far = so_far.strictly(input.may_be_out(before, reading.at));
        before = reading.at;
        so_far.push(reading)
    })?;
    so_far = so_far.strictly(input.may_be_out(before, input.now));
    let last = input.readings.last().ok_or(NotALog::Empty)?;
    if input.found_at > input.now {
        return Err(NotALog::OutOfOrder);
    }
    let is_read = last.at >= input.found_at;
    let clocks = so_far.answer(input.now, flags).ok_or(NotALog::Empty)?;
    let clock = nearest(&clocks).clone();
    Ok(FireOutAnswer {
        advice: advice(&clocks, &clock, is_read, input.now),
        then_to: input.minimum.temp,
        unknown_ms: clock.unknown_ms,
        source: clock.source,
        clock,
        clocks,
    })
}

impl FireOutInput {
    /// Whether the fire may have been out at some time from `from` to `to`.
    fn may_be_out(&self, from: i64, to: i64) -> bool {
        let mut outages = self.outages.iter();
        outages.any(|out| from < out.back && out.from < to)
            || self.burned_until.is_none_or(|until| to > until)
    }
}

/// The clock that has run out, or does so first; of two that stand still, the one with less left.
fn nearest(clocks: &ClocksAnswer) -> &Clock {
    let soon = |clock: &Clock| (clock.runs_out_at.is_none() && !clock.is_over, clock.left_ms);
    match soon(&clocks.coming_up) < soon(&clocks.standing) {
        true => &clocks.coming_up,
        false => &clocks.standing,
    }
}

/// A clock that has run out stays so, whatever the food reads now. The clock of the way up has run out too where the food has
/// since become hot: that is why both are asked.
fn advice(clocks: &ClocksAnswer, clock: &Clock, is_read: bool, now: i64) -> FireOutAdvice {
    if clocks.standing.is_over || clocks.coming_up.is_over {
        return FireOutAdvice::Discard;
    }
    match (is_read, clock.runs_out_at) {
        (false, _) => FireOutAdvice::ReadNow {
            by: now + clock.left_ms,
        },
        (true, Some(by)) => FireOutAdvice::HeatBy {
            above: clocks.hot,
            by,
        },
        (true, None) => FireOutAdvice::CarryOn,
    }
}
