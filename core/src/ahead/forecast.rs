//! What a forecast says. All times are milliseconds since 1970, all temperatures millikelvin.

use crate::{
    finish::{FanPoint, WhatIf},
    units::Mk,
};
use serde::{Deserialize, Serialize};

/// When it will be done, and what it will be like until then.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Forecast {
    /// The instant of the grid for which it was made.
    pub made_for: i64,
    /// When it is done; none where no finish is in sight within a day, or it is off the pit.
    pub done: Option<Spread>,
    /// The temperature inside ahead, on the grid, until the late end of `done`.
    pub fan: Vec<FanPoint>,
    /// Where it stands still, or will.
    pub stall: Option<Stall>,
    /// What each choice would change.
    pub effects: Vec<Effect>,
    /// When trying it costs least, weighing an opening against overshooting.
    pub next_check: Option<i64>,
    /// Whether it has not yet been scored on cooks of this crew: every screen says "rough".
    pub rough: bool,
    /// Probes whose readings were left out, as places in [`Facts::inside`](super::Facts::inside).
    pub doubted: Vec<u32>,
}

/// An instant, with how sure it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Spread {
    /// One in ten is earlier.
    pub p10: i64,
    /// One in four is earlier.
    pub p25: i64,
    /// Half are earlier.
    pub p50: i64,
    /// One in four is later.
    pub p75: i64,
    /// One in ten is later.
    pub p90: i64,
}

/// It warms by less than 2 °C in half an hour.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Stall {
    /// From when on.
    pub from: i64,
    /// Until when.
    pub until: i64,
    /// How hot it is inside where it begins.
    pub at: Mk,
}

/// What something that could be done would change.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Effect {
    /// What is done.
    pub change: WhatIf,
    /// When it would then be done.
    pub done: Spread,
}
