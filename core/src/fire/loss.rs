//! What a pit loses through its walls, by kind.
//!
//! A wall passes what its resistance lets through; the weather changes the outer part of it only, so that wind costs a bare
//! drum much and an insulated box little. Walls, sizes and excess of air are common practice, no source: [`WIDE`] says how
//! wrong they may be.

use super::weather::{OUTER_STILL, Weather, outer, sunshine};
use crate::{log::PitKind, units::Mk};

/// The loss may be so many times smaller or larger. No source.
pub(super) const WIDE: f64 = 1.5;

/// How a kind of pit loses heat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PitLoss {
    /// All its outside, m².
    pub area_m2: f64,
    /// What a m² of it passes in still, dry air, W a kelvin.
    pub wall: f64,
    /// How many times the air that the fuel needs goes through.
    pub excess: f64,
    /// What is opened to reach the meat, m².
    pub lid_m2: f64,
    /// The air in it, m³.
    pub air_m3: f64,
}

/// A bare steel wall passes no more than the air on both its sides lets through: about 8 W a m² and kelvin in still air.
///
/// Grate in cm² that such a pit usually has, its outside in grates, wall, excess of air. Common practice, no source.
const fn usual(kind: PitKind) -> (i64, f64, f64, f64) {
    match kind {
        PitKind::StickBurner => (5_000, 9.0, 8.0, 6.0),
        PitKind::Kettle => (2_300, 6.0, 8.0, 4.0),
        PitKind::Drum => (2_400, 9.0, 8.0, 4.0),
        PitKind::Ceramic => (1_700, 7.0, 6.5, 2.5),
        PitKind::Cabinet => (8_000, 4.0, 2.5, 3.0),
        PitKind::Pellet => (4_000, 6.0, 7.0, 5.0),
        PitKind::Electric => (3_000, 6.0, 3.0, 1.0),
    }
}

impl PitLoss {
    /// Of that kind, with so much grate in cm² where it is known.
    pub fn of(kind: PitKind, grate_cm2: Option<i64>) -> Self {
        let (grate, outside, wall, excess) = usual(kind);
        let grate_m2 = grate_cm2.unwrap_or(grate) as f64 / 10_000.0;
        Self {
            area_m2: outside * grate_m2,
            wall,
            excess,
            lid_m2: grate_m2,
            air_m3: grate_m2 * 0.5,
        }
    }

    /// What goes through its walls at `pit` °C, in W: below 0 where the sun heats it more than it loses.
    pub fn walls_w(&self, pit: f64, weather: &Weather) -> f64 {
        self.walls_at(pit, celsius(weather.ambient.temp()), weather)
    }

    /// The same with the air's own temperature in °C, where it was measured.
    pub(super) fn walls_at(&self, pit: f64, air: f64, weather: &Weather) -> f64 {
        let outside = outer(weather.wind, weather.rain);
        let resistance = 1.0 / self.wall - 1.0 / OUTER_STILL + 1.0 / outside;
        // Sol-air temperature (ASHRAE; from memory): what the sun adds counts as warmer air.
        let felt = air + sunshine(weather) / outside;
        self.area_m2 / resistance * (pit - felt)
    }
}

pub(super) fn celsius(temp: Mk) -> f64 {
    temp.c_milli() as f64 / 1_000.0
}
