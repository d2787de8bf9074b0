//! What the clocks say.

use super::{Clocks, Spent};
use crate::{
    safety::{Source, food_log::Flag},
    units::Mk,
};
use serde::{Deserialize, Serialize};

/// One clock.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Clock {
    /// How long the food was, or may have been, where bacteria grow, milliseconds.
    pub spent_ms: i64,
    /// How much of that is not known, milliseconds.
    pub unknown_ms: i64,
    /// How long it may be there, milliseconds.
    pub limit_ms: i64,
    /// What is left of it, milliseconds; 0 when it has run out.
    pub left_ms: i64,
    /// Whether it has run out.
    pub is_over: bool,
    /// When it runs out if things stay as they are, milliseconds since 1970; none while it stands still or is over.
    pub runs_out_at: Option<i64>,
    /// Whether it is only told and never rings.
    pub is_silent: bool,
    /// Who published the limit.
    pub source: Source,
}

/// What all clocks of one food say.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ClocksAnswer {
    /// From the first reading until it was hot.
    pub coming_up: Clock,
    /// Since it was hot.
    pub standing: Clock,
    /// Whether it was ever hot, as far as can be believed.
    pub was_hot: bool,
    /// Whether it is hot now; none where that is not known.
    pub is_hot: Option<bool>,
    /// Above this it is hot, millikelvin.
    pub hot: Mk,
    /// Up to this it is cold, millikelvin.
    pub cold: Mk,
    /// What is not known, and why.
    pub flags: Vec<Flag>,
}

/// `then`: the clocks with the time since the last reading counted, which was `last` and whether it still tells.
pub(super) fn of(
    then: &Clocks,
    last: Mk,
    is_known: bool,
    now: i64,
    flags: Vec<Flag>,
) -> ClocksAnswer {
    let kept = then.kept;
    let runs = |(low, high): (Mk, Mk)| !is_known || (last > low && last < high);
    let clock = |spent: &Spent, (limit_ms, source): (i64, Source), runs: bool, is_silent| {
        let left_ms = (limit_ms - spent.ms).max(0);
        Clock {
            spent_ms: spent.ms,
            unknown_ms: spent.unknown_ms,
            limit_ms,
            left_ms,
            is_over: spent.ms >= limit_ms,
            runs_out_at: (runs && left_ms > 0).then_some(now + left_ms),
            is_silent,
            source,
        }
    };
    let up_runs = !then.was_hot && runs(kept.come_up_range());
    let stands = then.stands() && runs(kept.danger());
    let up = clock(&then.coming_up, kept.coming_up(), up_runs, kept.intact);
    ClocksAnswer {
        coming_up: up,
        standing: clock(&then.standing, kept.standing(), stands, false),
        was_hot: then.was_hot,
        is_hot: is_known.then_some(last >= kept.hot()),
        hot: kept.hot(),
        cold: kept.cold(),
        flags,
    }
}
