//! What carries a forecast: the one door between following a cook and the sums of `finish`.

use super::{Facts, Forecast};
use crate::finish::Habits;

/// One meat, followed from one instant of the grid to the next. Law: what it comes to depends on the facts it was shown
/// and on nothing else, so its bytes, read back, go on as it would have.
pub trait Estimator: Send {
    /// Takes in what is new in `facts` since the last time, in at most `steps` bounded steps; answers whether there is more.
    fn absorb(&mut self, facts: &Facts, steps: u32) -> bool;
    /// Forecasts from there in at most `steps` bounded steps; none = more steps are needed.
    fn forecast(&mut self, facts: &Facts, steps: u32) -> Option<Forecast>;
    /// All of it, to go on from after the process was killed.
    fn to_bytes(&self) -> Vec<u8>;
}

/// An estimator of whatever kind.
pub type AnyEstimator = Box<dyn Estimator>;

/// How estimators are made.
#[derive(Clone, Copy)]
pub struct Made {
    /// Changes whenever the same facts come to something else: what was kept of another version is thrown away.
    pub version: i64,
    /// One that has seen nothing yet; none where such a meat cannot be followed.
    pub begin: fn(&Facts) -> Option<AnyEstimator>,
    /// One that was kept after it took in just these facts; none where the bytes are not its own.
    pub read: fn(&[u8], &Facts) -> Option<AnyEstimator>,
    /// What is known of the pit and the cut after a meat that was done then, by all facts up to it.
    pub taught: fn(&Facts, i64) -> Option<Habits>,
}
