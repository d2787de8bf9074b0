//! A straight line through the last half hour.

use super::{Known, fit};

/// Minutes to go; none where it does not rise.
pub fn to_go(known: &Known) -> Option<f64> {
    let points: Vec<_> = known
        .lately(30)
        .iter()
        .map(|one| (one.minute as f64, one.celsius))
        .collect();
    let (slope, now) = fit(&points, known.now as f64)?;
    (slope > 1e-3).then(|| ((known.aim - now) / slope).max(0.0))
}
