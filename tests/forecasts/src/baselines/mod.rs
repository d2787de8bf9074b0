//! What anybody could do without a model of heat: three forecasts to beat. Each gives one number; [`spread`] makes a distribution
//! of it from how wrong it was on the tuning family, which also takes out what it is wrong by on the whole.

pub mod all;
pub mod line;
pub mod newton;
pub mod spread;
pub mod weight;

use crate::{invent::cook::Invented, invent::probe::Reading};

/// What is known at one moment of a cook.
#[derive(Clone, Copy, Debug)]
pub struct Known<'a> {
    /// The cook, of which only what lies before `now` may be looked at.
    pub cook: &'a Invented,
    /// Minutes since the meat came on.
    pub now: usize,
    /// What is aimed at, °C: where feel decides, the middle of the range where it usually is done.
    pub aim: f64,
}

impl Known<'_> {
    /// Readings of the last so many minutes, each the middle one of three, so that a wild one is not believed.
    pub fn lately(&self, minutes: usize) -> Vec<Reading> {
        let from = self.now.saturating_sub(minutes);
        middle_of_three(&self.cook.core_said, from, self.now)
    }

    /// What the pit's thermometer said on average over the last hour, °C.
    pub fn pit(&self) -> Option<f64> {
        let from = self.now.saturating_sub(60);
        let said = middle_of_three(&self.cook.pit_said, from, self.now);
        (!said.is_empty())
            .then(|| said.iter().map(|one| one.celsius).sum::<f64>() / said.len() as f64)
    }
}

fn middle_of_three(said: &[Reading], from: usize, now: usize) -> Vec<Reading> {
    let till = said.partition_point(|one| one.minute <= now);
    let first = said.partition_point(|one| one.minute < from);
    (first..till)
        .map(|i| {
            let mut three = [
                said[i.saturating_sub(1)],
                said[i],
                said[(i + 1).min(till - 1)],
            ]
            .map(|one| one.celsius);
            three.sort_by(f64::total_cmp);
            Reading {
                minute: said[i].minute,
                celsius: three[1],
            }
        })
        .collect()
}

/// Slope and value at `at` of the straight line that fits best; none for fewer than three points.
pub fn fit(points: &[(f64, f64)], at: f64) -> Option<(f64, f64)> {
    let n = points.len() as f64;
    let (x, y) = points.iter().fold((0.0, 0.0), |(x, y), point| {
        (x + point.0 / n, y + point.1 / n)
    });
    let (mut xx, mut xy) = (0.0, 0.0);
    for point in points {
        xx += (point.0 - x) * (point.0 - x);
        xy += (point.0 - x) * (point.1 - y);
    }
    (points.len() >= 3 && xx > 0.0).then(|| (xy / xx, y + xy / xx * (at - x)))
}
