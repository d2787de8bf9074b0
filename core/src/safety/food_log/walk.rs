//! A path that food can take, for the laws: warmer and colder by small steps, read often enough to be known.

use super::TempAt;
use crate::{moment::MINUTE, units::Mk};
use std::ops::RangeInclusive;

/// A reading each nine minutes, the first at `start` °F, each next one changed by so many °F and kept within `range`.
pub fn walk(start: i64, changes: &[i64], range: RangeInclusive<i64>) -> Vec<TempAt> {
    let within = |f: i64| f.clamp(*range.start(), *range.end());
    let later = changes.iter().scan(start, |f, change| {
        *f = within(*f + change);
        Some(*f)
    });
    let all = std::iter::once(start).chain(later);
    let at = |(n, f): (i64, i64)| TempAt {
        at: 9 * n * MINUTE,
        temp: Mk::from_f(f),
    };
    (0..).zip(all).map(at).collect()
}
