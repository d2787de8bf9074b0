//! A meat, as a plan sees it.

use crate::{checks::Cut, safety::Form, units::Mk};
use serde::{Deserialize, Serialize};

/// One meat.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Meat {
    /// What it is called; each has a name of its own.
    pub name: String,
    /// Which cut.
    pub cut: Cut,
    /// What was done to it: with the cut it says the published minimum.
    pub form: Form,
    /// Its place in the list of servings, from 0.
    pub serving: usize,
    /// Grate it takes, square centimeters.
    pub area_cm2: i64,
    /// What it weighs raw, grams: the room it takes where it is held.
    pub weight_g: i64,
    /// What is done to it before the fire, first to last.
    #[serde(default)]
    pub prep: Vec<Prep>,
    /// How long it takes, by the temperature of the pit. It is never planned at a temperature that is not listed.
    pub times: Vec<TimesAt>,
    /// The temperatures of the pit that it is happy in.
    pub happy: Happy,
    /// How warm it is inside when it comes off.
    pub off_mk: Mk,
    /// Rest before it is cut, minutes: least, and most where it stands without a place to hold it.
    pub rest: Span,
    /// How long it is best held, and how long at most, minutes from coming off to the knife.
    pub hold: Hold,
    /// Minutes it stands open after it comes off, before it is boxed: part of the rest.
    #[serde(default)]
    pub vent_min: i64,
    /// Cutting, minutes.
    #[serde(default)]
    pub cut_min: i64,
    /// How many minutes before its serving the cutting may be over, 0 to 60.
    #[serde(default)]
    pub cut_early_min: i64,
    /// Where it is on a pit already.
    #[serde(default)]
    pub on: Option<OnPit>,
    /// When it came off, minutes: 0 or before.
    #[serde(default)]
    pub off_at_min: Option<i64>,
}

/// One thing that is done to a meat before the fire.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Prep {
    /// What.
    pub what: PrepKind,
    /// Hands on, minutes.
    pub hands_min: i64,
    /// From its end to the next one, or to the pit, minutes.
    pub then: Span,
}

/// What is done to a meat before the fire.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum PrepKind {
    /// From the freezer into the refrigerator.
    Thaw,
    /// Into the brine.
    Brine,
    /// Trimmed.
    Trim,
    /// Rubbed; then it rests in the cold.
    Rub,
}

/// From the least to the most, minutes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Span {
    /// At least.
    pub least_min: i64,
    /// At most.
    pub most_min: i64,
}

/// How long a meat takes in a pit of one temperature.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct TimesAt {
    /// The temperature of the pit.
    pub pit: Mk,
    /// How long.
    pub minutes: Quantiles,
}

/// Minutes within which it is done in so many of a hundred cooks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Quantiles {
    /// In 10 of 100.
    pub p10: i64,
    /// In 50 of 100.
    pub p50: i64,
    /// In 80 of 100.
    pub p80: i64,
    /// In 90 of 100.
    pub p90: i64,
}

/// The temperatures of the pit that a meat is happy in, and what goes wrong outside.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Happy {
    /// From here.
    pub low_mk: Mk,
    /// Up to here.
    pub high_mk: Mk,
    /// Message key of what goes wrong below.
    #[serde(default)]
    pub below: Option<String>,
    /// Message key of what goes wrong above.
    #[serde(default)]
    pub above: Option<String>,
}

/// How long a meat is held, minutes from coming off, as expected, to the knife.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Hold {
    /// Best from here.
    pub best_least_min: i64,
    /// Best up to here.
    pub best_most_min: i64,
    /// Never longer.
    pub most_min: i64,
}

/// A meat that is on a pit already.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct OnPit {
    /// The pit's place in its list, from 0.
    pub pit: usize,
    /// When it went on, minutes: 0 or before.
    pub since_min: i64,
    /// How much of its cooking is over, permille, 0 to 999. With a forecast: 0, and the times are what is left of it.
    pub over_permille: i64,
}
