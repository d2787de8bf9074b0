//! How good a forecast was. All are proper scores or counts; a forecast is [`POINTS`] evenly weighted points in order.

pub mod bootstrap;
pub mod table;

/// Points of a forecast.
pub const POINTS: usize = 40;

/// One forecast against what happened.
#[derive(Clone, Copy, Debug)]
pub struct Scored {
    /// Which cook.
    pub cook: usize,
    /// Tenth of the cook that was left: 0 is the last one.
    pub tenth: usize,
    /// Minutes that were left.
    pub to_go: f64,
    /// Continuous ranked probability score, minutes.
    pub crps: f64,
    /// Absolute error of the middle, minutes.
    pub error: f64,
    /// Signed error of the middle, minutes.
    pub late: f64,
    /// Pinball losses at 10, 50 and 90 %, minutes.
    pub pinball: [f64; 3],
    /// Whether the truth lay in the middle half.
    pub in_50: bool,
    /// Whether it lay in the middle four fifths.
    pub in_80: bool,
}

/// Scores points, in order, against the truth.
pub fn score(cook: usize, tenth: usize, points: &[f64], truth: f64) -> Scored {
    let [low, quarter, middle, more, high] =
        [0.1, 0.25, 0.5, 0.75, 0.9].map(|share| quantile(points, share));
    let pinball = |share: f64, said: f64| {
        if truth >= said {
            share * (truth - said)
        } else {
            (1.0 - share) * (said - truth)
        }
    };
    Scored {
        cook,
        tenth,
        to_go: truth,
        crps: crps(points, truth),
        error: (middle - truth).abs(),
        late: middle - truth,
        pinball: [pinball(0.1, low), pinball(0.5, middle), pinball(0.9, high)],
        in_50: (quarter..=more).contains(&truth),
        in_80: (low..=high).contains(&truth),
    }
}

/// A quantile of points in order, straight between them; points stand in the middle of their share.
pub fn quantile(points: &[f64], share: f64) -> f64 {
    let at = (share * points.len() as f64 - 0.5).clamp(0.0, points.len() as f64 - 1.0);
    let low = (at as usize).min(points.len().saturating_sub(2));
    let part = at - low as f64;
    points[low] * (1.0 - part) + points[(low + 1).min(points.len() - 1)] * part
}

/// The mean distance to the truth less half the mean distance between two points (Gneiting and Raftery 2007; from memory).
pub fn crps(points: &[f64], truth: f64) -> f64 {
    let n = points.len() as f64;
    let away: f64 = points
        .iter()
        .map(|point| (point - truth).abs())
        .sum::<f64>()
        / n;
    let apart: f64 = points
        .iter()
        .enumerate()
        .map(|(i, point)| (2.0 * i as f64 + 1.0 - n) * point)
        .sum::<f64>();
    away - apart / (n * n)
}

/// The mean.
pub fn mean(of: impl Iterator<Item = f64>) -> f64 {
    let (n, all) = of.fold((0.0, 0.0), |(n, all), one| (n + 1.0, all + one));
    if n > 0.0 { all / n } else { f64::NAN }
}

/// The middle one.
pub fn median(mut of: Vec<f64>) -> f64 {
    of.sort_by(f64::total_cmp);
    if of.is_empty() {
        f64::NAN
    } else {
        quantile(&of, 0.5)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// For a normal distribution with mean 0 and spread 1 and truth 0 the score is (√2 − 1)/√π = 0.23370 (closed form; from
    /// memory). Here by points at its quantiles, which three hundred of come within a hundredth of.
    #[test]
    fn the_score_of_a_normal_distribution_is_its_closed_form() {
        let points: Vec<f64> = (0..1_001)
            .map(|i| normal_quantile((i as f64 + 0.5) / 1_001.0))
            .collect();
        assert!((crps(&points, 0.0) - 0.233_70).abs() < 2e-3);
    }

    /// By halving the distribution function, itself by Simpson's rule.
    fn normal_quantile(share: f64) -> f64 {
        let (mut low, mut high) = (-6.0f64, 6.0f64);
        for _ in 0..40 {
            let middle = (low + high) / 2.0;
            if below(middle) < share {
                low = middle
            } else {
                high = middle
            }
        }
        low
    }

    fn below(x: f64) -> f64 {
        let (steps, density) = (200, |x: f64| {
            (-x * x / 2.0).exp() / std::f64::consts::TAU.sqrt()
        });
        let h = (x + 8.0) / steps as f64;
        let weight = |i: usize| {
            if i == 0 || i == steps {
                1.0
            } else if i % 2 == 1 {
                4.0
            } else {
                2.0
            }
        };
        (0..=steps)
            .map(|i| weight(i) * density(-8.0 + i as f64 * h))
            .sum::<f64>()
            * h
            / 3.0
    }

    #[test]
    fn one_point_is_scored_by_its_distance() {
        assert_eq!(crps(&[3.0; 40], 10.0), 7.0);
        assert_eq!(quantile(&[1.0, 2.0, 3.0], 0.5), 2.0);
    }
}
