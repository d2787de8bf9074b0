//! Cooling cooked food: from 135 to 70 °F within two hours, to 41 °F within six in all (FDA Food Code 2022, 3-501.14(A), read
//! in state adoptions). Start at [`cooling`]; [`Cooling`] follows readings, [`forecast`](mod@forecast) says how long a pan of
//! some depth takes.
//!
//! At home the rule is simpler: into the refrigerator within two hours ([`clocks`](super::clocks)). This is for what is kept in
//! quantity, and for whoever cooks for the public. Laws: a stage begins as early and ends as late as the readings allow; time
//! that is not known counts; warming up again sets nothing back.

pub mod forecast;
mod slab;
#[cfg(test)]
mod tests;

pub use forecast::{Forecast, Pan, Surroundings};

use super::{
    Source,
    food_log::{Flag, Follow, NotALog, Step, TempAt, follow_all},
};
use crate::{moment::HOUR, units::Mk};
use serde::{Deserialize, Serialize};

/// Cooling begins below this.
pub const FROM: Mk = Mk::from_f(135);
/// The end of the first stage.
pub const FIRST_TO: Mk = Mk::from_f(70);
/// The end of the second.
pub const COLD: Mk = Mk::from_f(41);
/// The first stage takes no longer, milliseconds.
pub const FIRST_MS: i64 = 2 * HOUR;
/// Both together take no longer, milliseconds.
pub const BOTH_MS: i64 = 6 * HOUR;

/// What is asked.
#[derive(Clone, Debug, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct CoolingInput {
    /// Readings of the warmest place, oldest first; may be empty where only a forecast is asked for.
    #[serde(default)]
    pub readings: Vec<TempAt>,
    /// When it is, milliseconds since 1970; not before the last reading.
    pub now: i64,
    /// What it stands in, where a forecast is asked for.
    #[serde(default)]
    pub pan: Option<Pan>,
}

/// How far it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "is")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum CoolingState {
    /// Nothing was read.
    NotRead,
    /// It is still hot: nothing runs.
    Hot,
    /// It has to be at 70 °F by then.
    First {
        /// Milliseconds since 1970.
        by: i64,
    },
    /// It has to be at 41 °F by then.
    Second {
        /// Milliseconds since 1970.
        by: i64,
    },
    /// It got cold in time.
    Cold,
    /// A stage took too long: throw it away.
    TooLong,
}

/// What readings and pan come to.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct CoolingAnswer {
    /// How far it is.
    pub state: CoolingState,
    /// When it may have begun, milliseconds since 1970.
    pub began_at: Option<i64>,
    /// When it was surely at 70 °F.
    pub first_at: Option<i64>,
    /// When it was surely at 41 °F.
    pub cold_at: Option<i64>,
    /// How long a pan takes from its present temperature.
    pub forecast: Option<Forecast>,
    /// What is not known, and why.
    pub flags: Vec<Flag>,
    /// Who published the limits.
    pub source: Source,
}

/// Follows readings as they come; one more takes constant time.
#[derive(Clone, Copy, Debug, Default)]
pub struct Cooling {
    follow: Follow,
    began_at: Option<i64>,
    first_at: Option<i64>,
    cold_at: Option<i64>,
}

impl Cooling {
    /// Takes one more reading; a flag where the time up to it is not known.
    ///
    /// # Errors
    /// Where it is older than the one before.
    pub fn push(&mut self, reading: TempAt) -> Result<Option<Flag>, NotALog> {
        match self.follow.push(reading)? {
            None => {
                self.start(reading);
                Ok(None)
            }
            Some(step) => {
                self.take(&step);
                Ok(step.flag())
            }
        }
    }

    /// The first reading that food can have: below the hot limit, cooling has begun there at the latest.
    fn start(&mut self, reading: TempAt) {
        let is_first = self.follow.now().is_some_and(|(last, _)| last == reading);
        if is_first && reading.temp < FROM {
            self.began_at = Some(reading.at);
            self.reach(reading);
        }
    }

    fn take(&mut self, step: &Step) {
        if self.began_at.is_none() && (step.to.temp < FROM || step.doubt.is_some()) {
            self.began_at = Some(step.from.at);
        }
        self.reach(step.to);
    }

    /// What a reading shows to be over, where it is believed.
    fn reach(&mut self, reading: TempAt) {
        let believed = self.follow.now().is_some_and(|(_, believed)| believed);
        for (reached, limit) in [(&mut self.first_at, FIRST_TO), (&mut self.cold_at, COLD)] {
            if believed && reached.is_none() && reading.temp <= limit {
                *reached = Some(reading.at);
            }
        }
    }

    /// How far it is at `now`.
    pub fn state(&self, now: i64) -> CoolingState {
        let Some(began) = self.began_at else {
            return match self.follow.now() {
                Some(_) => CoolingState::Hot,
                None => CoolingState::NotRead,
            };
        };
        let (first_by, cold_by) = (began + FIRST_MS, began + BOTH_MS);
        let late = |reached: Option<i64>, by: i64| reached.unwrap_or(now) > by;
        if late(self.first_at, first_by) || late(self.cold_at, cold_by) {
            return CoolingState::TooLong;
        }
        match (self.first_at, self.cold_at) {
            (_, Some(_)) => CoolingState::Cold,
            (Some(_), None) => CoolingState::Second { by: cold_by },
            (None, None) => CoolingState::First { by: first_by },
        }
    }
}

/// What the readings and the pan come to.
///
/// # Errors
/// Where the readings are not in order, or there are neither readings nor a pan with a temperature.
pub fn cooling(input: &CoolingInput) -> Result<CoolingAnswer, NotALog> {
    let mut so_far = Cooling::default();
    let flags = follow_all(&input.readings, input.now, |reading| so_far.push(reading))?;
    let read = so_far.follow.now().map(|(last, _)| last.temp);
    let forecast = input.pan.and_then(|pan| forecast::forecast(&pan, read));
    if read.is_none() && forecast.is_none() {
        return Err(NotALog::Empty);
    }
    Ok(CoolingAnswer {
        state: so_far.state(input.now),
        began_at: so_far.began_at,
        first_at: so_far.first_at,
        cold_at: so_far.cold_at,
        forecast,
        flags,
        source: Source::FoodCodeCooling,
    })
}
