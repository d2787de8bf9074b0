//! What is drawn of readings, in whole numbers: columns of time, a grid of temperature, and the points of a curve on it.
//! No storage, no words. Start at [`Span::over`], then [`Columns::of`], then [`curve()`].
//!
//! Law: whatever is left out of a curve, its spikes are not. Of each column the first, the coldest, the hottest and the
//! last reading are kept, so the coldest and the hottest of any stretch of columns are those of its readings; and no line
//! joins two readings that lie further apart than [`GAP_MS`].

mod columns;
mod curve;
mod scale;
mod span;
#[cfg(test)]
mod tests;
mod trend;

pub use columns::{Cell, Columns, Gap, gaps};
pub use curve::{Points, curve, dots};
pub use scale::{Scale, Step};
pub use span::{LONGEST_MS, Span};
pub use trend::per_hour;

/// Readings of one probe further apart than this have a gap between them: as long as a probe may say nothing before it is
/// called silent, milliseconds. Common practice, no source.
pub const GAP_MS: i64 = crate::alarms::SILENT_MS;

/// How many steps a chart is high.
pub const HEIGHT: i32 = 1_000;
