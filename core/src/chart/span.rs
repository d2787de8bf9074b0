//! A stretch of time cut into columns.

use crate::moment::{HOUR, MINUTE, SECOND};

/// How wide one column may be, milliseconds: steps that a clock has, so that a chart that grows by a minute keeps its
/// columns. None is wider than a gap, so a gap is never hidden within one.
const WIDTHS: [i64; 10] = [
    SECOND,
    2 * SECOND,
    5 * SECOND,
    10 * SECOND,
    30 * SECOND,
    MINUTE,
    2 * MINUTE,
    5 * MINUTE,
    10 * MINUTE,
    15 * MINUTE,
];

/// The longest stretch that is drawn: 7 days. Common practice, no source.
pub const LONGEST_MS: i64 = 7 * 24 * HOUR;

/// A stretch of time in columns of one width.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Span {
    /// Where it begins, milliseconds since 1970: a whole number of widths.
    pub from: i64,
    /// How wide a column is, milliseconds.
    pub width: i64,
    /// How many columns there are, 1 or more.
    pub columns: u32,
}

impl Span {
    /// From `from` to `to`, not included, in at most `most` columns of a round width; of a longer stretch than
    /// [`LONGEST_MS`] its end. `most` is 2 or more, and with at least 700 the longest stretch fits.
    pub fn over(from: i64, to: i64, most: u32) -> Self {
        let to = to.max(from.saturating_add(1));
        let from = from.max(to.saturating_sub(LONGEST_MS));
        let fits = |width: &i64| columns(from, to, *width) <= i64::from(most.max(2));
        let widest = WIDTHS[WIDTHS.len() - 1];
        Self::in_steps(from, to, WIDTHS.into_iter().find(fits).unwrap_or(widest))
    }

    /// The same in columns of `width` milliseconds, 1 or more.
    pub fn in_steps(from: i64, to: i64, width: i64) -> Self {
        let width = width.max(1);
        Self {
            from: from.div_euclid(width).saturating_mul(width),
            width,
            columns: u32::try_from(columns(from, to, width).max(1)).unwrap_or(u32::MAX),
        }
    }

    /// Where it ends, not included.
    pub const fn to(&self) -> i64 {
        self.start_of(self.columns)
    }

    /// Where a column begins.
    pub const fn start_of(&self, column: u32) -> i64 {
        self.from
            .saturating_add((column as i64).saturating_mul(self.width))
    }

    /// The column that `at` lies in, if it lies in one.
    pub fn column(&self, at: i64) -> Option<u32> {
        let column = at.checked_sub(self.from)?.div_euclid(self.width);
        u32::try_from(column)
            .ok()
            .filter(|column| *column < self.columns)
    }
}

fn columns(from: i64, to: i64, width: i64) -> i64 {
    let (first, last) = (
        from.div_euclid(width),
        to.saturating_sub(1).div_euclid(width),
    );
    last.saturating_sub(first).saturating_add(1)
}
