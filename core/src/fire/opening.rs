//! What the openings of a pit cost: a plain estimate from the heat balance, rough.

use super::{PitLoss, Spread, Weather};
use crate::{log::PitKind, units::Mk};

/// Openings that move the finish by no more than so many minutes are not spoken of.
pub const COST_SHOWN_MIN: i64 = 10;
/// What an open lid loses, W a m² and kelvin. No source.
const OPEN: f64 = 25.0;
/// Heat of a m³ of hot air, kJ a kelvin.
const AIR: f64 = 0.9;
/// The share of its own power that a fire has to spare for getting hot again. Common practice, no source.
const SPARE: f64 = 0.3;

/// Openings of a pit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OpeningCost {
    /// What the pit is.
    pub pit: PitKind,
    /// Its grate, cm².
    pub grate_cm2: Option<i64>,
    /// What it is held at.
    pub pit_temp: Mk,
    /// How many openings.
    pub openings: i64,
    /// How long each lasts, seconds.
    pub seconds: i64,
}

/// By how many minutes they move the finish: while the lid is off nothing cooks, and while the pit gets hot again, half as
/// fast. Between half and twice the likely.
pub fn opening_cost(of: &OpeningCost, weather: &Weather) -> Spread {
    let pit = of.pit_temp.c_milli() as f64 / 1_000.0;
    let loss = PitLoss::of(of.pit, of.grate_cm2);
    let air = weather.ambient.temp().c_milli() as f64 / 1_000.0;
    let hotter = (pit - air).max(0.0);
    let seconds = of.seconds.max(0) as f64;
    let lost_j = (OPEN * loss.lid_m2 * seconds + AIR * loss.air_m3 * 1_000.0) * hotter;
    let spare = (loss.walls_w(pit, weather) * SPARE).max(1.0);
    let each = seconds / 60.0 + lost_j / spare / 60.0 / 2.0;
    let all = each * of.openings.max(0) as f64;
    let whole = |value: f64| libm::round(value) as i64;
    Spread::new(whole(all / 2.0), whole(all), whole(all * 2.0))
}
