//! Humid air, also as hot as a pit's. Start at [`wet_bulb`].
//!
//! A wet surface in hot air cools towards the wet-bulb temperature, so humidity decides how fast meat warms and how hot its
//! outside gets. The equations are published: saturation by IAPWS SR1-86(1992) (Wagner and Pruß), and the balance at a wet
//! thermometer as the ASHRAE Handbook, Fundamentals, gives it (both from memory). They are held to CoolProp's real air at
//! 200 to 325 °F and up to 0.36 kg of water a kg of dry air (`core/tests/wet_bulb.rs`): no row differs by 0.1 K. Nearly
//! saturated air below 200 °F, which no pit holds, is up to 0.13 K off (`tests/oracles/test_air.py`).
//!
//! Mind: outdoor air heated to 225–300 °F has a wet bulb of only 33 to 45 °C, far below where meat stalls.

mod refused;
mod saturation;

pub use refused::NotAir;
pub use saturation::saturation_pa;

use crate::units::Mk;
use serde::{Deserialize, Serialize};

/// Mass of a molecule of water over that of dry air: 18.015268 / 28.966.
const WATER_TO_AIR: f64 = 0.621_945;
/// Steps of halving: the last one is far below a thousandth of a kelvin.
const HALVINGS: u32 = 60;

/// Air at one place.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Air {
    /// What a dry thermometer shows, millikelvin: 0 to 200 °C.
    pub dry_bulb: Mk,
    /// Water vapor, milligrams a kilogram of dry air: 0 to 1,000,000.
    pub vapor_mg_per_kg: i64,
    /// Its pressure, pascal: 50,000 to 110,000.
    pub pressure_pa: i64,
}

/// What air comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct WetBulb {
    /// What a wet thermometer shows, millikelvin.
    pub wet_bulb: Mk,
    /// The pressure of its vapor, thousandths of the most that it can have at its dry bulb; above the boiling point that is
    /// more than all of it being steam.
    pub relative_permille: i64,
}

/// What a wet thermometer shows in this air.
///
/// ```
/// use slowbend_core::{air::{Air, wet_bulb}, units::Mk};
/// // A pit at 250 °F with nothing but the air of a summer day in it.
/// let pit = Air { dry_bulb: Mk::from_f(250), vapor_mg_per_kg: 10_000, pressure_pa: 101_325 };
/// assert_eq!(wet_bulb(&pit).unwrap().wet_bulb.c_milli() / 100, 385);
/// ```
///
/// # Errors
/// Outside the ranges of [`Air`], with more vapor than it can hold, or where the wet thermometer would freeze.
pub fn wet_bulb(air: &Air) -> Result<WetBulb, NotAir> {
    refused::check(air)?;
    let (t, p) = (celsius(air.dry_bulb), air.pressure_pa as f64);
    let vapor = air.vapor_mg_per_kg as f64 / 1e6;
    let pressure = p * vapor / (WATER_TO_AIR + vapor);
    let most = saturation_pa(t);
    if pressure > most * 1.000_001 {
        return Err(NotAir::Fog);
    }
    if vapor_at(t, 0.0, p) > vapor {
        return Err(NotAir::Freezes);
    }
    let (mut low, mut high) = (0.0, t);
    for _ in 0..HALVINGS {
        let middle = (low + high) / 2.0;
        match vapor_at(t, middle, p) > vapor {
            true => high = middle,
            false => low = middle,
        }
    }
    Ok(WetBulb {
        wet_bulb: Mk::from_c_milli(libm::round(low * 1000.0) as i64),
        relative_permille: libm::round(1000.0 * pressure / most) as i64,
    })
}

fn celsius(temp: Mk) -> f64 {
    temp.c_milli() as f64 / 1000.0
}

/// The vapor, kg a kg of dry air, of air at `t` whose wet bulb is `wet`, both °C; rises with `wet`. At or above the boiling
/// point no finite amount is enough.
fn vapor_at(t: f64, wet: f64, p: f64) -> f64 {
    let most = saturation_pa(wet);
    if most >= p {
        return f64::INFINITY;
    }
    let saturated = WATER_TO_AIR * most / (p - most);
    ((2501.0 - 2.326 * wet) * saturated - 1.006 * (t - wet)) / (2501.0 + 1.86 * t - 4.186 * wet)
}
