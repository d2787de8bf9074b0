//! The chance that all is ready. Start at [`of_all`].
//!
//! Model: what makes the time of a meat differ is partly the pit's (the same for all that is in it) and partly its own, both
//! normal; the share of the pit is [`Household::shared_permille`]. So each meat has a normal score that goes with its minutes,
//! read between the quantiles in straight lines of the logarithm of time, and the scores of meats of one pit are correlated by
//! that share (a one-factor Gaussian copula; meats of different pits are independent). For each pit the product of the chances
//! of its meats is integrated over the pit's own score by Simpson's rule on [`POINTS`] points from −6 to 6.

use super::{answer::MeatPlan, household::Household, times::Four};

/// Points of the rule; odd.
const POINTS: usize = 121;
/// Scores of the normal distribution at 10, 50, 80 and 90 % (computed with libm's erfc, and as in any table).
const SCORES: [f64; 4] = [
    -1.281_551_565_544_600_4,
    0.0,
    0.841_621_233_572_914_3,
    1.281_551_565_544_600_4,
];

/// The score that goes with so many minutes; beyond the quantiles the nearest line goes on.
fn score(times: &Four, minutes: i64) -> f64 {
    let log = |minutes: i64| libm::log(minutes.max(1) as f64);
    let at = log(minutes);
    let part = match minutes {
        m if m < times[1] => 0,
        m if m < times[2] => 1,
        _ => 2,
    };
    let (low, high) = (log(times[part]), log(times[part + 1]));
    if high <= low {
        return if at >= high { 6.0 } else { -6.0 };
    }
    SCORES[part] + (SCORES[part + 1] - SCORES[part]) * (at - low) / (high - low)
}

/// The normal distribution.
fn normal(score: f64) -> f64 {
    0.5 * libm::erfc(-score / core::f64::consts::SQRT_2)
}

/// The chance that one meat takes no longer than `minutes`, permille, rounded down; what is off is ready.
pub(super) fn of_one(times: Option<&Four>, minutes: i64) -> i64 {
    times.map_or(1_000, |times| permille(normal(score(times, minutes))))
}

/// Never 1,000: nothing is certain.
fn permille(chance: f64) -> i64 {
    (libm::floor(chance * 1_000.0 + 1e-9) as i64).clamp(0, 999)
}

/// The chance that every meat is ready: each with its times and the minutes it has.
pub(super) fn of_all(
    household: &Household,
    meats: &[MeatPlan],
    has: &[Option<(Four, i64)>],
) -> i64 {
    let mut all = 1.0;
    for pit in 0..household.pits.len() {
        let scores: Vec<f64> = meats
            .iter()
            .zip(has)
            .filter(|(meat, _)| meat.pit == Some(pit))
            .filter_map(|(_, has)| has.map(|(times, minutes)| score(&times, minutes)))
            .collect();
        all *= together(&scores, household.shared_permille as f64 / 1_000.0);
    }
    match has.iter().all(Option::is_none) {
        true => 1_000,
        false => permille(all),
    }
}

/// The chance that all scores hold at once, where they are correlated by `shared`.
fn together(scores: &[f64], shared: f64) -> f64 {
    if scores.is_empty() {
        return 1.0;
    }
    let (pits, own) = (shared.sqrt(), (1.0 - shared).sqrt());
    let step = 12.0 / (POINTS - 1) as f64;
    let mut sum = 0.0;
    for point in 0..POINTS {
        let pit = -6.0 + step * point as f64;
        let all: f64 = scores
            .iter()
            .map(|score| normal((score - pits * pit) / own))
            .product();
        let weight = match point {
            0 => 1.0,
            last if last == POINTS - 1 => 1.0,
            odd if odd % 2 == 1 => 4.0,
            _ => 2.0,
        };
        sum += weight * all * libm::exp(-0.5 * pit * pit);
    }
    sum * step / 3.0 / (2.0 * core::f64::consts::PI).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Sheppard 1899 in any text on the normal law: for score 0 twice, the chance is 1/4 + asin(correlation) / 2π.
    #[test]
    fn two_meats_of_one_pit_are_ready_together_as_sheppard_says() {
        for shared in [0.0f64, 0.25, 0.5, 0.8, 0.95] {
            let exact = 0.25 + libm::asin(shared) / (2.0 * core::f64::consts::PI);
            assert!(
                (together(&[0.0, 0.0], shared) - exact).abs() < 1e-6,
                "{shared}"
            );
        }
    }

    #[test]
    fn a_meat_alone_has_the_chance_of_its_quantiles() {
        let times = [480, 600, 690, 740];
        for (minutes, chance) in [(480, 100), (600, 500), (690, 800), (740, 900)] {
            assert!(
                (of_one(Some(&times), minutes) - chance).abs() <= 1,
                "{minutes}"
            );
            let alone = together(&[score(&times, minutes)], 0.5);
            assert!((alone * 1000.0 - chance as f64).abs() < 0.1, "{minutes}");
        }
        assert!(of_one(Some(&times), 10_000) < 1_000);
    }
}
