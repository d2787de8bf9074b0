//! How long food takes to get cold, by how deep it lies. Start at [`forecast`].
//!
//! A range, not a moment: how the air of a refrigerator moves, what lies beside and whether a lid is on are not known. Its
//! short end is a pan that loses heat above and below, its long end one that loses it above alone.

use super::{COLD, FIRST_TO, slab::Slab};
use crate::units::Mk;
use serde::{Deserialize, Serialize};

/// What food cools in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Surroundings {
    /// Still or moved air at 38 °F.
    Refrigerator,
    /// Ice and water around the pan, stirred now and then, at 32 °F.
    IceBath,
}

impl Surroundings {
    const fn temp(self) -> Mk {
        match self {
            Self::Refrigerator => Mk::from_f(38),
            Self::IceBath => Mk::from_f(32),
        }
    }

    /// What the surface gives off, least and most, W/(m² K): textbook ranges of air and of water that moves little; from
    /// memory.
    const fn surface(self) -> (f64, f64) {
        match self {
            Self::Refrigerator => (5.0, 20.0),
            Self::IceBath => (100.0, 500.0),
        }
    }
}

/// Cooked meat: the ends of what Choi and Okos give for the cuts here between 5 and 60 °C (computed from their polynomials
/// and USDA SR26), W/(m K) and m²/s.
const CONDUCTIVITY: (f64, f64) = (0.40, 0.50);
const DIFFUSIVITY: (f64, f64) = (1.2e-7, 1.45e-7);

/// A pan of food.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Pan {
    /// How deep the food lies, millimeters, 5 to 300.
    pub depth_mm: i64,
    /// What it stands in.
    pub surroundings: Surroundings,
    /// How hot it is, where no reading says, millikelvin.
    #[serde(default)]
    pub temp: Option<Mk>,
}

/// How long it takes from now, milliseconds: least and most.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Forecast {
    /// Until 70 °F, at best.
    pub first_ms_least: i64,
    /// Until 70 °F, at worst.
    pub first_ms_most: i64,
    /// Until 41 °F, at best.
    pub cold_ms_least: i64,
    /// Until 41 °F, at worst.
    pub cold_ms_most: i64,
}

/// How long this pan takes from `read`, or from its own temperature; none where there is neither, or the depth is none that
/// food lies in.
pub fn forecast(pan: &Pan, read: Option<Mk>) -> Option<Forecast> {
    let from = read.or(pan.temp)?;
    if !(5..=300).contains(&pan.depth_mm) {
        return None;
    }
    let depth = pan.depth_mm as f64 / 1000.0;
    let (surface_least, surface_most) = pan.surroundings.surface();
    let best = Slab {
        length: depth / 2.0,
        conductivity: CONDUCTIVITY.1,
        diffusivity: DIFFUSIVITY.1,
        surface: surface_most,
    };
    let worst = Slab {
        length: depth,
        conductivity: CONDUCTIVITY.0,
        diffusivity: DIFFUSIVITY.0,
        surface: surface_least,
    };
    let around = pan.surroundings.temp();
    let ms = |slab: &Slab, to: Mk| {
        let (left, all) = (to.0 - around.0, from.0 - around.0);
        match left >= all {
            true => 0,
            false => libm::ceil(slab.seconds_to(left as f64 / all as f64)) as i64 * 1000,
        }
    };
    Some(Forecast {
        first_ms_least: ms(&best, FIRST_TO),
        first_ms_most: ms(&worst, FIRST_TO),
        cold_ms_least: ms(&best, COLD),
        cold_ms_most: ms(&worst, COLD),
    })
}
