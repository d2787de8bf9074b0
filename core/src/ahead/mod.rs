//! From a cook under way to what its screens say of the hours ahead.
//!
//! Three steps, each a pure function: [`asked`] says which readings a forecast of a meat needs and makes
//! [`Facts`] of them; [`Run`] carries an [`Estimator`] from one instant of the grid to the next, so
//! that the same facts come to the same bytes wherever and whenever they are followed; [`settle`] decides what of each
//! forecast is shown, which moves only when it changes by more than its rounding. The door keeps the last one finished
//! ([`Ahead`]), and screens read that.
//!
//! Law: nothing rings, no rhythm runs and no verdict is made by any of it.

mod asked;
mod crowd;
mod estimator;
mod facts;
mod forecast;
mod lessons;
mod minutes;
mod run;
mod shown;
mod stays;
mod taught;
#[cfg(test)]
pub(crate) mod tests;

pub use crate::finish::{FanPoint, WhatIf};
pub use asked::{Asked, Sitting, asked};
pub use crowd::CROWD;
pub use estimator::{Estimator, Made};
pub use facts::{DoneWhen, Facts, Likeness, Tried, Wrapped};
pub use forecast::{Effect, Forecast, Spread, Stall};
pub use lessons::{Lesson, Lessons, UNTAUGHT};
pub use run::{Kept, Run, print, until};
pub use shown::{Grain, Range, Told, settle};
pub use taught::{Taught, taught_by};

use crate::{finish::GRID_MS, ids::PieceId};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// The last forecast that was finished of one meat, and what is shown of it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Ahead {
    /// All of it.
    pub forecast: Forecast,
    /// When it will be ready, as it is shown; none where no finish is in sight.
    pub told: Option<Told>,
}

/// The last forecast of each meat that has one.
pub type Forecasts = BTreeMap<PieceId, Ahead>;

/// Nothing forecast: for whoever knows of none.
pub static NOTHING: Forecasts = BTreeMap::new();

/// The instant of the grid that `at` lies at or after, milliseconds since 1970.
pub const fn grid(at: i64) -> i64 {
    at.div_euclid(GRID_MS).saturating_mul(GRID_MS)
}
