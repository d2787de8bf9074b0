//! The rule of thumb: so many minutes for the cut, or for each pound of it (common practice, no source; the catalogue's).

use super::Known;
use slowbend_core::checks::cuts::cut_facts;

/// Minutes to go: the middle of what is usual less what is over, and never less than five.
pub fn to_go(known: &Known) -> Option<f64> {
    let usual = cut_facts(known.cook.meat.cut)
        .cook_time
        .for_grams(known.cook.meat.grams as i64);
    Some(((usual.least + usual.most) as f64 / 2.0 - known.now as f64).max(5.0))
}
