//! What a kilogram of fuel gives. The published values, with where they were read, lie in
//! `core/tests/published/heating_values.csv`.

use super::{NotAFire, Spread, refused};
use serde::{Deserialize, Serialize};

/// What burns.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Fuel {
    /// Splits or chunks of wood.
    Wood,
    /// Charcoal in lumps.
    Lump,
    /// Charcoal pressed to briquettes.
    Briquettes,
    /// Pressed wood.
    Pellets,
}

/// Gross heat of dry hardwood, kJ/kg: 8,600 Btu/lb (USDA Forest Products Laboratory; read).
const WOOD_GROSS: f64 = 8_600.0 * 2.326;
/// Gross heat of raw wood from the least to the most, kJ/kg: 4,000 to 5,000 kcal/kg (HEDON; read).
const WOOD_GROSS_RANGE: [f64; 2] = [4_000.0 * 4.1868, 5_000.0 * 4.1868];
/// What goes into making steam of a kilogram of water at 25 °C, kJ: 2,442 (computed with CoolProp).
const STEAM: f64 = 2_442.0;
/// Hydrogen in dry wood, a part of its mass (from memory): each kilogram of it burns to 9 of water.
const HYDROGEN: f64 = 0.06;
/// Water in wood that lay a year under a roof, thousandths of its mass: common practice, no source.
pub(super) const SEASONED_PERMILLE: i64 = 180;
/// Water in pellets, the same: common practice, no source.
pub(super) const PELLETS_PERMILLE: i64 = 80;
/// The wettest that wood is reckoned with: half water, as green wood is (USDA FPL Fuel Value Calculator; read).
const GREEN_PERMILLE: i64 = 500;

/// Lump charcoal, net: a measured 25,715 (EPA 600/R-00/052, 7.4 % ash), the lower end of 29 to 33 GJ/t, and 8,000 kcal/kg
/// (HEDON); all read.
const LUMP: Spread = Spread::new(25_715, 29_000, 33_494);
/// Briquettes: a measured 15,298 (EPA 600/R-00/052, 40 % ash); 7,400 kcal/kg (HEDON) less the 18 % of ash and 8 % of water
/// that EN 1860-2 allows (computed); and lump's likely as the most.
const BRIQUETTES: Spread = Spread::new(15_298, 22_927, 29_000);

/// Net heat of a kilogram as it lies there, kJ: what steam carries off is taken away. `moisture_permille` is of the wet mass,
/// 0 to 500; for charcoal it is not asked.
///
/// The formula for wood is that of the standards for net calorific value (from memory).
///
/// # Errors
/// Wood wetter than green.
pub fn heat_kj_per_kg(fuel: Fuel, moisture_permille: Option<i64>) -> Result<Spread, NotAFire> {
    let wet = match fuel {
        Fuel::Lump => return Ok(LUMP),
        Fuel::Briquettes => return Ok(BRIQUETTES),
        Fuel::Wood => moisture_permille.unwrap_or(SEASONED_PERMILLE),
        Fuel::Pellets => moisture_permille.unwrap_or(PELLETS_PERMILLE),
    };
    let wet = refused::within(
        "The moisture, thousandths of the wet mass,",
        wet,
        0,
        GREEN_PERMILLE,
    )?;
    let net = |gross: f64| {
        let water = wet as f64 / 1_000.0;
        let dry = gross - STEAM * 9.0 * HYDROGEN;
        libm::round(dry * (1.0 - water) - STEAM * water) as i64
    };
    let [low, high] = WOOD_GROSS_RANGE;
    Ok(Spread::new(net(low), net(WOOD_GROSS), net(high)))
}
