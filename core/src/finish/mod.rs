//! When a meat will be done, as a distribution. Start at [`forecast`]; what it is asked is [`Told`], what it answers [`Forecast`].
//!
//! A thousand members, each one hypothesis about this meat, this pit and this probe, are carried through [`heat`](crate::heat) on a
//! grid of five minutes and pulled towards each reading as it comes (an ensemble Kalman filter in its adjusting form, one
//! reading at a time: Anderson 2001, from memory). What the model itself gets wrong is a slowly changing slip of each member, so
//! that readings which are wrong together are not counted as many. A check by feel weighs members softly and draws them anew.
//! Then every member runs on to its own end: where those lie is the forecast, drawn together with Newton's law and its own record
//! of errors near the end (`blend`). `docs/finish.md` says how it was measured, and what that can show.
//!
//! Laws: the same facts give the same bytes on every processor (`dice`); facts are taken in the order of the grid, whatever
//! order they came in; state kept as bytes goes on to the same bytes; a forecast is a proposal, and nothing rings by it; nothing is
//! called done below its published minimum.

mod ahead;
mod answer;
mod blend;
mod crowd;
mod dice;
mod effects;
mod felt;
mod follow;
pub mod habits;
mod knobs;
mod newton;
pub mod next;
mod prior;
mod pull;
mod refused;
mod stall;
mod steps;
#[cfg(test)]
mod tests;
pub mod told;

pub use answer::{Effect, Even, FanPoint, Forecast, Likely, Outlook, Stall, WhatIf};
pub use follow::Follow;
pub use habits::{Habits, habits_after};
pub use next::{CheckAt, NextCheck, Prices, next_check};
pub use refused::NotAForecast;
pub use told::{CoreAt, DoneWhen, Felt, FeltAt, Told, WrapAt, key_of};

/// The members of an ensemble, where nobody asks for fewer.
pub const MEMBERS: usize = 1_000;
/// Forecasts are for instants of this grid, milliseconds.
pub const GRID_MS: i64 = 5 * crate::moment::MINUTE;

/// When it will be done, by all that is known at `told.now`.
///
/// # Errors
/// Outside the ranges of [`Told`], or where something is said of before it came on.
pub fn forecast(told: &Told) -> Result<Forecast, NotAForecast> {
    let mut follow = Follow::start(told)?;
    while follow.work(told) {}
    Ok(forecast_of(&follow, told))
}

/// The same from a crowd that has followed the facts so far.
pub fn forecast_of(follow: &Follow, told: &Told) -> Forecast {
    Outlook::of(follow, told).forecast()
}
