//! The grid of temperature, between two round numbers of the viewer's scale.

use super::HEIGHT;
use crate::{units::Mk, words::TemperatureUnit};

/// Between how many lines a chart is cut at the most.
const LINES_MOST: i64 = 6;
/// Degrees from one line to the next.
const STEPS: [i64; 10] = [1, 2, 5, 10, 20, 25, 50, 100, 200, 500];

/// The lines of a chart: whole degrees of the viewer's scale, so many apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Step {
    /// The lowest line, degrees.
    pub first: i64,
    /// From one to the next, degrees.
    pub by: i64,
    /// How many lines.
    pub lines: i64,
}

/// From temperatures to steps of the grid.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Scale {
    low: Mk,
    high: Mk,
    unit: TemperatureUnit,
    /// Its lines.
    pub step: Step,
}

impl Scale {
    /// A scale that holds both, on round numbers of `unit`.
    pub fn holding(low: Mk, high: Mk, unit: TemperatureUnit) -> Self {
        let (bottom, top) = (degrees_below(low, unit), degrees_above(high.max(low), unit));
        let step_at = |by: i64| {
            let first = bottom.div_euclid(by) * by;
            let last = (top + by - 1).div_euclid(by) * by;
            Step {
                first,
                by,
                lines: (last - first) / by + 1,
            }
        };
        let fits = |step: &Step| step.lines <= LINES_MOST;
        let chosen = STEPS.into_iter().map(step_at).find(fits);
        let mut step = chosen.unwrap_or_else(|| step_at(STEPS[STEPS.len() - 1]));
        step.lines = step.lines.max(2);
        let last = step.first + (step.lines - 1) * step.by;
        Self {
            low: of_degrees(step.first, unit),
            high: of_degrees(last, unit),
            unit,
            step,
        }
    }

    /// Steps from the bottom; beyond the grid its end.
    pub fn y(&self, temp: Mk) -> i32 {
        let (part, whole) = (temp.0.saturating_sub(self.low.0), self.high.0 - self.low.0);
        let y = (part
            .saturating_mul(2 * i64::from(HEIGHT))
            .saturating_add(whole))
        .div_euclid(2 * whole);
        i32::try_from(y.clamp(0, i64::from(HEIGHT))).unwrap_or(HEIGHT)
    }

    /// The temperature of each line, from the lowest.
    pub fn lines(&self) -> impl Iterator<Item = Mk> + use<> {
        let (step, unit) = (self.step, self.unit);
        (0..step.lines).map(move |n| of_degrees(step.first + n * step.by, unit))
    }
}

/// Whole degrees not above: °F = mK × 9 / 5000 − 459.67, °C = mK / 1000 − 273.15, exact by definition of the scales. A
/// whole °F is stored up to 4/9 mK off, which is forgiven.
fn degrees_below(at: Mk, unit: TemperatureUnit) -> i64 {
    match unit {
        TemperatureUnit::Fahrenheit => {
            at.0.saturating_mul(9)
                .saturating_sub(2_298_350 - 4)
                .div_euclid(5_000)
        }
        TemperatureUnit::Celsius => at.0.saturating_sub(273_150).div_euclid(1_000),
    }
}

/// Whole degrees not below.
fn degrees_above(at: Mk, unit: TemperatureUnit) -> i64 {
    match unit {
        TemperatureUnit::Fahrenheit => {
            at.0.saturating_mul(9)
                .saturating_sub(2_298_350 + 4)
                .saturating_add(4_999)
                .div_euclid(5_000)
        }
        TemperatureUnit::Celsius => {
            at.0.saturating_sub(273_150)
                .saturating_add(999)
                .div_euclid(1_000)
        }
    }
}

const fn of_degrees(degrees: i64, unit: TemperatureUnit) -> Mk {
    match unit {
        TemperatureUnit::Fahrenheit => Mk::from_f(degrees),
        TemperatureUnit::Celsius => Mk::from_c_milli(degrees * 1_000),
    }
}
