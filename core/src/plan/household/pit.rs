//! Pits, and places to hold what came off them.

use crate::units::Mk;
use serde::{Deserialize, Serialize};

/// A pit.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Pit {
    /// What it is called.
    pub name: String,
    /// Grate, all levels together, square centimeters.
    pub area_cm2: i64,
    /// The temperatures it can be held at, 1 to 5, coldest first. One plan uses at most two of them, one after the other.
    pub temps: Vec<PitTemp>,
    /// From lighting it to meat on, minutes.
    pub preheat_min: i64,
    /// Hands on while lighting it, minutes.
    #[serde(default = "ten")]
    pub light_min: i64,
    /// How long it may be left alone while it burns, minutes.
    pub alone_min: i64,
    /// Whether raw poultry has a place of its own in it, where it drips on nothing.
    #[serde(default)]
    pub poultry_apart: bool,
    /// Whether its temperature may be changed once during a cook.
    #[serde(default = "yes")]
    pub may_step: bool,
    /// Whether it is hot already.
    #[serde(default)]
    pub hot: bool,
}

const fn ten() -> i64 {
    10
}

const fn yes() -> bool {
    true
}

/// A temperature a pit can be held at, and what that burns.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct PitTemp {
    /// The temperature of its air.
    pub temp: Mk,
    /// Fuel an hour, grams, 0 to 20,000.
    pub fuel_g_per_h: i64,
}

/// Somewhere to hold what came off.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Place {
    /// What it is called.
    pub name: String,
    /// What it takes, grams of meat as bought.
    pub room_g: i64,
    /// How it keeps meat warm.
    pub keeps: Keeps,
}

/// How a place keeps meat warm.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Keeps {
    /// It is heated.
    Heated {
        /// The temperature it keeps meat at.
        at_mk: Mk,
    },
    /// It only slows the cooling: of the difference to the air around, so much is lost in each hour.
    Insulated {
        /// Permille of the difference lost in an hour, 1 to 900.
        loses_permille_per_h: i64,
        /// The air around.
        around_mk: Mk,
    },
}
