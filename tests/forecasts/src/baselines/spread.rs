//! A distribution for a forecast of one number: what the truth was as a multiple of such a number on the tuning family.

use crate::measure::POINTS;

/// Ends of the classes of what was forecast, minutes.
const CLASSES: [f64; 8] = [10.0, 25.0, 50.0, 100.0, 180.0, 300.0, 480.0, f64::INFINITY];
/// Added on both sides of the ratio, minutes, so that nothing is divided by nothing.
const PLUS: f64 = 5.0;
/// No forecast looks further, minutes.
const MOST: f64 = 1_440.0;

/// How wrong one forecast was, by how much it said.
#[derive(Clone, Debug, Default)]
pub struct Spread {
    ratios: [Vec<f64>; CLASSES.len()],
}

impl Spread {
    /// Takes one more pair of what was said and what was true, minutes.
    pub fn learn(&mut self, said: f64, was: f64) {
        self.ratios[class(said)].push(((was + PLUS) / (said.min(MOST) + PLUS)).ln());
    }

    /// Sorts what was taken; to be called before [`Self::points`].
    pub fn sort(&mut self) {
        for ratios in &mut self.ratios {
            ratios.sort_by(f64::total_cmp);
        }
    }

    /// The distribution of the truth where `said` is said, as evenly weighted points in order.
    pub fn points(&self, said: f64) -> Vec<f64> {
        let ratios = &self.ratios[class(said)];
        (0..POINTS)
            .map(|i| {
                let at = (i as f64 + 0.5) / POINTS as f64 * ratios.len() as f64;
                let ratio = ratios.get(at as usize).copied().unwrap_or(0.0);
                ((said.min(MOST) + PLUS) * ratio.exp() - PLUS).clamp(0.0, MOST)
            })
            .collect()
    }
}

fn class(said: f64) -> usize {
    CLASSES
        .iter()
        .position(|end| said < *end)
        .unwrap_or(CLASSES.len() - 1)
}
