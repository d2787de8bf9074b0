//! Newton's law of cooling on the last hour's readings: near the end it is hard to beat. Start at [`to_go`].

use super::{DoneWhen, Follow, Told, prior::celsius};
use crate::{checks::cuts::cut_facts, units::Mk};

/// Readings of so many minutes are taken.
const MINUTES: i64 = 60;

/// Minutes to go by it, where feel decides to the middle of where the cut is usually done; none where nothing was read, it does not
/// rise, or the pit is too cold.
pub(super) fn to_go(follow: &Follow, told: &Told) -> Option<f64> {
    let range = cut_facts(told.cut).done_range;
    let aim = celsius(match told.done() {
        DoneWhen::Warm { temp } => temp,
        DoneWhen::Tender => Mk(range.low.0.midpoint(range.high.0)),
    });
    let now = follow.at();
    let (pit, _) = follow.steps().pit_lately(now, MINUTES);
    let read = smoothed(&follow.steps().probe_lately(now, MINUTES));
    if pit <= aim + 2.0 {
        return None;
    }
    let missing: Vec<(f64, f64)> = read
        .iter()
        .filter(|(_, celsius)| *celsius < pit - 2.0)
        .map(|(at, celsius)| (*at, libm::log(pit - celsius)))
        .collect();
    let (slope, here) = line(&missing)?;
    (slope < -1e-5).then(|| ((here - libm::log(pit - aim)) / -slope).max(0.0))
}

/// Each the middle one of three, so that a wild one is not believed.
fn smoothed(read: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let last = read.len().saturating_sub(1);
    let at = |i: usize| read[i.min(last)].1;
    let middle = |i: usize| {
        let mut three = [at(i.saturating_sub(1)), at(i), at(i + 1)];
        three.sort_by(f64::total_cmp);
        three[1]
    };
    (0..read.len()).map(|i| (read[i].0, middle(i))).collect()
}

/// Slope and height at 0 of the straight line that fits best; none for fewer than three points.
fn line(points: &[(f64, f64)]) -> Option<(f64, f64)> {
    let n = points.len() as f64;
    let x = points.iter().map(|point| point.0).sum::<f64>() / n;
    let y = points.iter().map(|point| point.1).sum::<f64>() / n;
    let wide: f64 = points
        .iter()
        .map(|point| (point.0 - x) * (point.0 - x))
        .sum();
    let along: f64 = points
        .iter()
        .map(|point| (point.0 - x) * (point.1 - y))
        .sum();
    (points.len() >= 3 && wide > 0.0).then(|| (along / wide, y - along / wide * x))
}
