//! What was meant for a meat when it was planned.

use super::{Line, glance::Glance};
use crate::{log::Meant, moment::MINUTE};

impl Glance<'_> {
    /// A line for each thing that is meant for it.
    pub fn meant(&self, meant: &Meant) -> Vec<Line> {
        let wrap = meant.wrap.map(|wrap| self.wrap(wrap));
        let rest = meant
            .rest_min
            .map(|minutes| self.say.duration(minutes.saturating_mul(MINUTE)));
        let pit = meant
            .pit
            .map(|held| self.say.temperature_span(held.low, held.high));
        [
            wrap.map(|wrap| self.fact("fact-meant-wrap", wrap, String::new())),
            rest.map(|rest| self.fact("fact-meant-rest", rest, String::new())),
            pit.map(|pit| self.fact("fact-meant-pit", pit, String::new())),
        ]
        .into_iter()
        .flatten()
        .collect()
    }
}
