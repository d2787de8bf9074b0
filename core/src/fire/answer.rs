//! What the heat balance is told, and what it says.

use super::{Fuel, FuelUnit, Weather};
use crate::{log::PitKind, units::Mk};
use serde::{Deserialize, Serialize};

/// A number that is not known exactly: what it is likely, and between what it may lie. In order, low to high.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Spread {
    /// The least.
    pub low: i64,
    /// The likely.
    pub likely: i64,
    /// The most.
    pub high: i64,
}

impl Spread {
    /// From the least to the most.
    pub const fn new(low: i64, likely: i64, high: i64) -> Self {
        Self { low, likely, high }
    }
}

/// A pit that is to be kept hot.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct FuelInput {
    /// What it is.
    pub pit: PitKind,
    /// Its grate, cm², 100 to 200,000; what such a pit usually has where nothing is said.
    #[serde(default)]
    pub grate_cm2: Option<i64>,
    /// What its air is held at, millikelvin: 40 to 400 °C.
    pub pit_temp: Mk,
    /// The weather; a mild, still, dry day in the shade where nothing is said.
    #[serde(default)]
    pub weather: Option<Weather>,
    /// The air around it, millikelvin, where it was measured: −40 to 55 °C.
    #[serde(default)]
    pub air: Option<Mk>,
    /// What burns; what such a pit usually burns where nothing is said.
    #[serde(default)]
    pub fuel: Option<Fuel>,
    /// Water in wood or pellets, thousandths of the wet mass, 0 to 500; 180 and 80 where nothing is said.
    #[serde(default)]
    pub moisture_permille: Option<i64>,
    /// Humidity of the air that the wood lay in for long, thousandths, 50 to 950: instead of the moisture.
    #[serde(default)]
    pub wood_humidity_permille: Option<i64>,
    /// Raw meat on it, grams, 0 to 500,000.
    #[serde(default)]
    pub meat_g: i64,
    /// For how long, minutes, 1 to 2,880.
    pub minutes: i64,
    /// What hands count; the usual of such a pit where nothing is said.
    #[serde(default)]
    pub unit: Option<FuelUnit>,
    /// What one weighs, grams, 10 to 50,000, where it was weighed.
    #[serde(default)]
    pub unit_g: Option<i64>,
}

/// What it loses and burns: rough.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct FuelAnswer {
    /// What the pit needs, walls and meat, watts.
    pub need_w: Spread,
    /// Where the heat of the likely fire goes, watts: through the walls,
    pub walls_w: i64,
    /// into the meat and its steam,
    pub meat_w: i64,
    /// and up with the smoke. The three are all that the fuel gives.
    pub smoke_w: i64,
    /// What a kilogram of the fuel gives, kJ, net; none for a pit that burns nothing.
    pub heat_kj_per_kg: Option<Spread>,
    /// Fuel an hour, grams; none for a pit that burns nothing.
    pub g_per_hour: Option<Spread>,
    /// Fuel for all that time, grams.
    pub g: Option<Spread>,
    /// Quarters of the unit for all that time: 4 are one split.
    pub quarters: Option<Spread>,
    /// Minutes that one of the unit lasts.
    pub minutes_per_unit: Option<Spread>,
    /// What hands count.
    pub unit: Option<FuelUnit>,
    /// What one was taken to weigh, grams.
    pub unit_g: Option<i64>,
    /// How far to trust it.
    pub basis: String,
}
