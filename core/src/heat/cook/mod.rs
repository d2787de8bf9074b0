//! One cook, followed from going on to coming off and past it. Start at [`cook_heat`].
//!
//! What comes out is a reckoning, not a reading: no curve of it says that a meat is done or safe; its minimum is shown by a
//! thermometer ([`checks::verdict`](mod@crate::checks::verdict)).

mod follow;
mod input;
#[cfg(test)]
mod tests;

pub use input::{CookHeatInput, MopAt, NotACook, OpeningAt, PitAt, WrapAt};

use crate::units::Mk;
use follow::Follow;
use serde::{Deserialize, Serialize};

/// How warm it is at one time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct HeatAt {
    /// Seconds since it went on.
    pub at_s: i64,
    /// The center, millikelvin.
    pub core: Mk,
    /// The surface, millikelvin.
    pub surface: Mk,
    /// What is around it, millikelvin.
    pub pit: Mk,
    /// Water that it lost, thousandths of its raw weight.
    pub lost_permille: i64,
}

/// The longest time in which the center rose no faster than 7 °F an hour, between 130 and 195 °F: what cooks call a stall.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Stall {
    /// Seconds since it went on.
    pub from_s: i64,
    /// Seconds since it went on.
    pub to_s: i64,
    /// The center when it began, millikelvin.
    pub from: Mk,
    /// The center when it ended, millikelvin.
    pub to: Mk,
}

/// One cook as it comes out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct CookHeatAnswer {
    /// The curve, a point every `every_s` and at the end.
    pub curve: Vec<HeatAt>,
    /// When the center reached `until`, seconds since it went on.
    pub reached_s: Option<i64>,
    /// The warmest that the center became, millikelvin: after it came off it goes on rising for a while.
    pub warmest: Mk,
    /// The stall, where there was one.
    pub stall: Option<Stall>,
    /// Water that evaporated, its mops among it, thousandths of its raw weight.
    pub evaporated_permille: i64,
    /// Juice and mop that ran off, thousandths of its raw weight.
    pub ran_off_permille: i64,
}

/// Follows one cook in steps of a minute.
///
/// # Errors
/// A figure out of its range, or times that do not rise, which is said.
pub fn cook_heat(input: &CookHeatInput) -> Result<CookHeatAnswer, NotACook> {
    input.check()?;
    let followed = Follow::all(input);
    Ok(CookHeatAnswer {
        reached_s: followed.reached_s,
        warmest: mk(followed.warmest),
        stall: followed.stall,
        evaporated_permille: permille(followed.evaporated),
        ran_off_permille: permille(followed.ran_off),
        curve: followed.curve,
    })
}

fn mk(celsius: f64) -> Mk {
    Mk::from_c_milli(libm::round(celsius * 1000.0) as i64)
}

fn permille(share: f64) -> i64 {
    libm::round(share * 1000.0) as i64
}
