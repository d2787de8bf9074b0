//! The points of a curve on the grid of a chart.

use super::{Columns, GAP_MS, Span};
use crate::{readings::Reading, units::Mk};

/// Points of one curve, as one value for the border: `at` is x, y, x, y…, x a column from the left, y a step from the
/// bottom. `runs` says how many points each unbroken piece has; where one ends and the next begins there is a gap.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Points {
    /// x and y in turns.
    pub at: Vec<i32>,
    /// How many points each piece has, 1 or more.
    pub runs: Vec<u32>,
}

impl Points {
    fn begin(&mut self) {
        self.runs.push(0);
    }

    fn put(&mut self, x: u32, y: i32) {
        let x = i32::try_from(x).unwrap_or(i32::MAX);
        let begun = self.runs.last().is_some_and(|run| *run > 0);
        if begun && self.at.ends_with(&[x, y]) {
            return;
        }
        self.at.extend([x, y]);
        if let Some(run) = self.runs.last_mut() {
            *run += 1;
        }
    }
}

/// The curve of one series, broken at its gaps: at most four points a column. `y` places a temperature on the grid.
pub fn curve(columns: &Columns, y: impl Fn(Mk) -> i32) -> Points {
    let mut points = Points::default();
    let mut before: Option<i64> = None;
    for (x, cell) in columns.filled() {
        let near = |last: i64| cell.first.at.saturating_sub(last) <= GAP_MS;
        if !before.is_some_and(near) {
            points.begin();
        }
        cell.drawn()
            .for_each(|reading| points.put(x, y(reading.temp)));
        before = Some(cell.last.at);
    }
    points
}

/// Readings that nothing joins, each a piece of its own.
pub fn dots(span: &Span, readings: &[Reading], y: impl Fn(Mk) -> i32) -> Points {
    let mut points = Points::default();
    for reading in readings {
        if let Some(x) = span.column(reading.at) {
            points.begin();
            points.put(x, y(reading.temp));
        }
    }
    points
}
