//! Pasteurization at one probe, for information. Start at [`lethality`], or at [`Lethality`] to follow a cook.
//!
//! The published times (USDA FSIS, Revised Appendix A, 2021) say how long meat has to stay at a
//! temperature. Here a cook's readings are added up against them: each stretch of time earns its share of the time that
//! its colder end asks for. Law: credit never falls, what is not known earns nothing, and no answer of this turns a
//! [`Verdict`](crate::checks::Verdict): the published minimum is the rule. A validated process would also need the surface to
//! be moist (the same guideline, Table 1) and the probe to sit in the coldest part, which nobody here can know.

mod dwell;
mod food;
mod tables;
#[cfg(test)]
mod tests;

pub use food::{Logs, PasteurizedFood};

use super::{
    Source,
    food_log::{Flag, Follow, NotALog, Step, TempAt, follow_all},
};
use crate::{moment::HOUR, units::Mk};
use serde::{Deserialize, Serialize};

/// The most time between [`COME_UP_FROM`] and [`COME_UP_TO`]: 6 h. FSIS Revised Appendix A, pages 23 and 24.
pub const COME_UP_MS: i64 = 6 * HOUR;
/// 50 °F; same place.
pub const COME_UP_FROM: Mk = Mk::from_f(50);
/// 130 °F; same place.
pub const COME_UP_TO: Mk = Mk::from_f(130);

/// What is asked.
#[derive(Clone, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct LethalityInput {
    /// Which table counts.
    pub food: PasteurizedFood,
    /// The readings of one probe, oldest first.
    pub readings: Vec<TempAt>,
}

/// What a probe's readings come to.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct LethalityAnswer {
    /// Thousandths of the published time that were earned, rounded down; 1,000 = all of it.
    pub credit_permille: i64,
    /// When all of it was earned, milliseconds since 1970.
    pub reached_at: Option<i64>,
    /// How long it was, or may have been, between 50 and 130 °F before that, milliseconds.
    pub come_up_ms: i64,
    /// Whether that is no more than the 6 h that the tables presume.
    pub come_up_within: bool,
    /// Time that earned nothing because it is not known, milliseconds.
    pub unknown_ms: i64,
    /// Why, one for each stretch.
    pub flags: Vec<Flag>,
    /// Who published the times.
    pub source: Source,
}

/// Adds up a probe's readings as they come; one more takes constant time.
#[derive(Clone, Copy, Debug)]
pub struct Lethality {
    food: PasteurizedFood,
    follow: Follow,
    credit: f64,
    reached_at: Option<i64>,
    come_up_ms: i64,
    unknown_ms: i64,
}

impl Lethality {
    /// Nothing earned yet.
    pub fn of(food: PasteurizedFood) -> Self {
        Self {
            food,
            follow: Follow::default(),
            credit: 0.0,
            reached_at: None,
            come_up_ms: 0,
            unknown_ms: 0,
        }
    }

    /// Takes one more reading; a flag where the time up to it is not known.
    ///
    /// # Errors
    /// Where it is older than the one before.
    pub fn push(&mut self, reading: TempAt) -> Result<Option<Flag>, NotALog> {
        let Some(step) = self.follow.push(reading)? else {
            return Ok(None);
        };
        self.come_up(&step);
        match step.doubt {
            None => self.earn(&step),
            Some(_) => self.unknown_ms += step.length(),
        }
        Ok(step.flag())
    }

    /// The credit of a step, by its colder end.
    fn earn(&mut self, step: &Step) {
        let Some(seconds) = self.food.seconds(step.colder()) else {
            return;
        };
        // Both ends are at or above a row that asks for no time: two readings agree.
        let earned = match seconds {
            0.0 => 1.0,
            seconds => step.length() as f64 / 1000.0 / seconds,
        };
        let before = self.credit;
        self.credit += earned;
        if self.reached_at.is_none() && self.credit >= 1.0 {
            let share = ((1.0 - before) / earned).clamp(0.0, 1.0);
            let into = libm::ceil(share * step.length() as f64) as i64;
            self.reached_at = Some(step.from.at + into.min(step.length()));
        }
    }

    /// Time in the range where bacteria may grow, until the times are earned; what is not known may have been in it.
    fn come_up(&mut self, step: &Step) {
        let touches = step.hotter() > COME_UP_FROM && step.colder() < COME_UP_TO;
        if self.reached_at.is_none() && (touches || step.doubt.is_some()) {
            self.come_up_ms += step.length();
        }
    }

    /// What it has come to.
    pub fn answer(&self, flags: Vec<Flag>) -> LethalityAnswer {
        LethalityAnswer {
            credit_permille: libm::floor(self.credit.min(1.0) * 1000.0) as i64,
            reached_at: self.reached_at,
            come_up_ms: self.come_up_ms,
            come_up_within: self.come_up_ms <= COME_UP_MS,
            unknown_ms: self.unknown_ms,
            flags,
            source: Source::FsisAppendixA,
        }
    }
}

/// Adds up all readings of one probe.
///
/// ```
/// use slowbend_core::{safety::{food_log::TempAt, lethality::*}, units::Mk};
/// // Pork at 145 °F for 4 minutes: the whole published time for 6.5 log.
/// let readings = (0..=4).map(|minute| TempAt { at: minute * 60_000, temp: Mk::from_f(145) }).collect();
/// let food = PasteurizedFood::Meat { logs: Logs::SixAndAHalf };
/// let answer = lethality(&LethalityInput { food, readings }).unwrap();
/// assert_eq!((answer.credit_permille, answer.reached_at), (1000, Some(240_000)));
/// ```
///
/// # Errors
/// Where there are no readings, or they are not in order.
pub fn lethality(input: &LethalityInput) -> Result<LethalityAnswer, NotALog> {
    if input.readings.is_empty() {
        return Err(NotALog::Empty);
    }
    let mut so_far = Lethality::of(input.food);
    let flags = follow_all(&input.readings, i64::MAX, |reading| so_far.push(reading))?;
    Ok(so_far.answer(flags))
}
