//! Newton's law of cooling, fitted to the last hour with the pit's temperature known: what is missing to it shrinks by the same
//! share each minute.

use super::{Known, fit};

/// Minutes to go; none where it does not rise or the pit is no warmer than the aim.
pub fn to_go(known: &Known) -> Option<f64> {
    let pit = known.pit().filter(|pit| *pit > known.aim + 2.0)?;
    let points: Vec<_> = known
        .lately(60)
        .iter()
        .filter(|one| one.celsius < pit - 2.0)
        .map(|one| (one.minute as f64, (pit - one.celsius).ln()))
        .collect();
    let (slope, now) = fit(&points, known.now as f64)?;
    (slope < -1e-5).then(|| ((now - (pit - known.aim).ln()) / -slope).max(0.0))
}
