//! What a mop is told, and what it says.

use crate::{
    batch::{Grams, Milliliters},
    checks::Cut,
    safety::CautionKind,
    units::Mk,
};
use serde::{Deserialize, Serialize};

/// What is to be wetted in the hours ahead.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct MopInput {
    /// How far ahead, minutes, 1 to 2880.
    pub ahead_min: i64,
    /// The meats, 1 to 200.
    pub meats: Vec<MopMeat>,
    /// What stays in pot and brush, percent on top, 0 to 100; 10 where nothing is said (common practice, no source).
    #[serde(default = "ten")]
    pub spare_percent: i64,
    /// What it is mixed of, by volume; nothing where that does not matter.
    #[serde(default)]
    pub parts: Vec<MopPart>,
}

const fn ten() -> i64 {
    10
}

/// A meat that is wetted.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct MopMeat {
    /// What it is called.
    pub name: String,
    /// Which cut.
    pub cut: Cut,
    /// Its weight, grams, 20 to 500,000.
    pub g: Grams,
    /// How it is wetted.
    pub wetting: Wetting,
    /// How often, minutes, 10 to 240.
    pub every_min: i64,
    /// In how many minutes the first time, 0 to 2880.
    pub first_in_min: i64,
    /// Milliliters each time, 1 to 5,000, where they are known; else by weight and kind.
    #[serde(default)]
    pub ml: Option<Milliliters>,
}

/// How a meat is wetted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Wetting {
    /// With a mop or brush.
    Mop,
    /// With a spray bottle.
    Spritz,
}

/// One part of a mop.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct MopPart {
    /// What it is called.
    pub name: String,
    /// How many parts of it, by volume, 1 to 10,000.
    pub parts: i64,
}

/// The pots.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct MopAnswer {
    /// All of it.
    pub ml: Milliliters,
    /// One pot for what is no poultry, then one for each bird; none for what is not wetted in that time.
    pub pots: Vec<Pot>,
    /// Each pot is held at this or hotter, millikelvin, or boiled before it is used again.
    pub held_at_least: Mk,
    /// What to heed.
    pub cautions: Vec<CautionKind>,
}

/// One pot, with a mop, brush or bottle of its own.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Pot {
    /// Whether it touches raw poultry, and so nothing else.
    pub poultry: bool,
    /// The meats that are wetted from it.
    pub names: Vec<String>,
    /// How many wettings, each meat counted.
    pub wettings: i64,
    /// How much goes on, without what is spare.
    pub on_ml: Milliliters,
    /// How much to mix.
    pub ml: Milliliters,
    /// What to mix it of; adds up to `ml`.
    pub parts: Vec<PotPart>,
}

/// One part of a pot.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct PotPart {
    /// What it is called.
    pub name: String,
    /// How much of it.
    pub ml: Milliliters,
}
