//! At which moments of a cook forecasts are scored: once in each tenth of it, and two hours before its end, on the grid of five
//! minutes. Where within the tenth is drawn.

use crate::{baselines::Known, invent::cook::Invented, rng::Rng};
use slowbend_core::checks::cuts::cut_facts;

/// Minutes of a cook and the tenth that is left then, 0 the last.
pub fn moments(cook: &Invented, number: usize) -> Vec<(usize, usize)> {
    let mut rng = Rng::new(0x5eed, number as u64);
    let mut all: Vec<usize> = (0..10)
        .map(|tenth| grid(cook.finished * (tenth as f64 + rng.unit()) / 10.0))
        .collect();
    if cook.finished > 150.0 {
        all.push(grid(cook.finished - 120.0));
    }
    all.retain(|now| *now >= 5 && (*now as f64) < cook.finished);
    all.sort_unstable();
    all.dedup();
    all.into_iter()
        .map(|now| (now, tenth_left(cook, now)))
        .collect()
}

fn tenth_left(cook: &Invented, now: usize) -> usize {
    ((1.0 - now as f64 / cook.finished) * 10.0).clamp(0.0, 9.0) as usize
}

fn grid(minute: f64) -> usize {
    (minute / 5.0) as usize * 5
}

/// What is known then.
pub fn known(cook: &Invented, now: usize) -> Known<'_> {
    let range = cut_facts(cook.meat.cut).done_range;
    let usual = (range.low.0 + range.high.0) as f64 / 2e3 - 273.15;
    Known {
        cook,
        now,
        aim: cook.target.unwrap_or(usual),
    }
}
