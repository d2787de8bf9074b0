//! When a meat will be done: what is known of it, and what that comes to.
//!
//! [`Facts`] is all that a forecast may look at; [`Forecast`] is what it says, always as an interval with its probability.
//! A forecast proposes: no ring, no rhythm and no verdict is computed from one.

mod facts;
mod forecast;

pub use facts::{DoneWhen, Facts, Likeness, Tried, Wrapped};
pub use forecast::{Change, Effect, FanPoint, Forecast, Spread, Stall};

/// Forecasts are made for whole steps of five minutes: two phones that ask a minute apart say the same.
pub const GRID_MS: i64 = 300_000;
