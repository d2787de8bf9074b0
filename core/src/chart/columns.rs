//! What each column of a chart holds of one series. Start at [`Columns::of`].

use super::{GAP_MS, Span};
use crate::{readings::Reading, units::Mk};
use std::cmp::Reverse;

/// The readings of one column that are drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cell {
    /// The first of them.
    pub first: Reading,
    /// The last.
    pub last: Reading,
    /// The coldest; of several the first.
    pub coldest: Reading,
    /// The hottest; of several the first.
    pub hottest: Reading,
}

impl From<Reading> for Cell {
    fn from(reading: Reading) -> Self {
        Self {
            first: reading,
            last: reading,
            coldest: reading,
            hottest: reading,
        }
    }
}

impl Cell {
    /// Both in one. Neither order nor grouping matters, so a series may be taken in any parts.
    pub fn with(self, other: Self) -> Self {
        let hotness = |reading: &Reading| (reading.temp, Reverse(reading.at));
        Self {
            first: self.first.min(other.first),
            last: self.last.max(other.last),
            coldest: std::cmp::min_by_key(self.coldest, other.coldest, |r| (r.temp, r.at)),
            hottest: std::cmp::max_by_key(self.hottest, other.hottest, hotness),
        }
    }

    /// Its readings that are drawn, in order of time, each once.
    pub fn drawn(&self) -> impl Iterator<Item = Reading> + use<> {
        let mut all = [self.first, self.coldest, self.hottest, self.last];
        all.sort_unstable();
        let repeats = [false, all[1] == all[0], all[2] == all[1], all[3] == all[2]];
        all.into_iter()
            .zip(repeats)
            .filter(|(_, repeats)| !repeats)
            .map(|(reading, _)| reading)
    }
}

/// One series in columns.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Columns {
    /// Which stretch of time.
    pub span: Span,
    cells: Vec<Option<Cell>>,
}

impl Columns {
    /// The readings that lie in `span`, in whatever order; one an instant (see [`settle`](crate::readings::settle)).
    pub fn of(span: Span, readings: &[Reading]) -> Self {
        let mut columns = Self {
            span,
            cells: vec![None; span.columns as usize],
        };
        readings.iter().for_each(|reading| columns.take(*reading));
        columns
    }

    fn take(&mut self, reading: Reading) {
        if let Some(column) = self.span.column(reading.at) {
            self.put(column as usize, Cell::from(reading));
        }
    }

    fn put(&mut self, column: usize, cell: Cell) {
        let kept = &mut self.cells[column];
        *kept = Some(kept.map_or(cell, |kept| kept.with(cell)));
    }

    /// Takes in what another part of the series holds of the same span.
    pub fn join(&mut self, other: &Self) {
        for (column, cell) in other.filled() {
            if column < self.span.columns {
                self.put(column as usize, cell);
            }
        }
    }

    /// What a column holds, if anything.
    pub fn cell(&self, column: u32) -> Option<Cell> {
        self.cells.get(column as usize).copied().flatten()
    }

    /// The columns that hold something, in order of time.
    pub fn filled(&self) -> impl Iterator<Item = (u32, Cell)> + '_ {
        (0..)
            .zip(&self.cells)
            .filter_map(|(column, cell)| Some((column, (*cell)?)))
    }

    /// Everything in one cell; none where there is nothing.
    pub fn whole(&self) -> Option<Cell> {
        self.filled().map(|(_, cell)| cell).reduce(Cell::with)
    }

    /// The coldest and the hottest.
    pub fn range(&self) -> Option<(Mk, Mk)> {
        self.whole()
            .map(|cell| (cell.coldest.temp, cell.hottest.temp))
    }
}

/// A stretch without a reading, from the last before it to the first after it, milliseconds since 1970.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Gap {
    /// The last reading before it.
    pub from: i64,
    /// The first after it.
    pub to: i64,
}

/// The gaps between settled readings, in order.
pub fn gaps(readings: &[Reading]) -> Vec<Gap> {
    let pairs = readings.windows(2);
    pairs
        .filter(|pair| pair[1].at.saturating_sub(pair[0].at) > GAP_MS)
        .map(|pair| Gap {
            from: pair[0].at,
            to: pair[1].at,
        })
        .collect()
}
