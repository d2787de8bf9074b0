//! The sum `food-properties`: integers in and out.

use super::Parts;
use crate::units::Mk;
use serde::{Deserialize, Serialize};

/// What a food is made of, hundredths of a gram in 100 g, and how warm it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct FoodInput {
    /// Water.
    pub water: i64,
    /// Protein.
    pub protein: i64,
    /// Fat.
    pub fat: i64,
    /// Carbohydrate, as the sugar of a cure; meat has none.
    #[serde(default)]
    pub carbohydrate: i64,
    /// Ash.
    pub ash: i64,
    /// Its temperature, millikelvin: 0 to 150 °C.
    pub temp: Mk,
}

/// What it is like.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct FoodProperties {
    /// Grams a cubic meter.
    pub density_g_per_m3: i64,
    /// Millijoules a kilogram and kelvin.
    pub heat_mj_per_kg_k: i64,
    /// Microwatts a meter and kelvin, its parts side by side: the most.
    pub conducts_most_uw_per_m_k: i64,
    /// Microwatts a meter and kelvin, its parts one behind the other: the least.
    pub conducts_least_uw_per_m_k: i64,
    /// Square micrometers a second, by the greater conductivity.
    pub diffusivity_um2_per_s: i64,
}

/// Why something is no food that can be reckoned with.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NotAFood {
    /// The parts are no parts of 100 g.
    #[error(
        "Water, protein, fat, carbohydrate and ash have to be 0 or more and come to 98 to 102 g together (9800 to 10200 hundredths)."
    )]
    Parts,
    /// The temperature is out of range.
    #[error("The temperature has to be between 0 and 150 °C (273150 to 423150 millikelvin).")]
    Temp,
}

/// What a food weighs, holds and conducts, by Choi and Okos.
///
/// # Errors
/// Parts that are none, or a temperature out of range.
pub fn food_properties(input: &FoodInput) -> Result<FoodProperties, NotAFood> {
    let parts = [
        input.water,
        input.protein,
        input.fat,
        input.carbohydrate,
        input.ash,
    ];
    if parts.iter().any(|part| !(0..=10_200).contains(part))
        || !(9_800..=10_200).contains(&parts.iter().sum::<i64>())
    {
        return Err(NotAFood::Parts);
    }
    if !(0..=150_000).contains(&input.temp.c_milli()) {
        return Err(NotAFood::Temp);
    }
    let at = Parts::of_grams(parts.map(|part| part as f64))
        .properties(input.temp.c_milli() as f64 / 1000.0);
    let round = |value: f64| libm::round(value) as i64;
    Ok(FoodProperties {
        density_g_per_m3: round(at.density * 1e3),
        heat_mj_per_kg_k: round(at.heat * 1e3),
        conducts_most_uw_per_m_k: round(at.conducts_most * 1e6),
        conducts_least_uw_per_m_k: round(at.conducts_least * 1e6),
        diffusivity_um2_per_s: round(at.diffusivity() * 1e12),
    })
}
