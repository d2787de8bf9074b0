//! What the cells of a column look like as times, and whether they show if the day comes before the month.

use super::{
    civil, numbers,
    refusals::Fault,
    times::{self, ElapsedUnit, TimeFormat},
};

/// What cells look like as times, the surest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Shape {
    /// A date that begins with its year.
    YearFirst,
    /// A date that ends with its year.
    YearLast,
    /// Seconds since 1970.
    EpochSeconds,
    /// Milliseconds since 1970.
    EpochMillis,
    /// `H:MM:SS` since a start.
    Clock,
    /// A number since a start.
    Number,
}

const SHAPES: [Shape; 6] = [
    Shape::YearFirst,
    Shape::YearLast,
    Shape::EpochSeconds,
    Shape::EpochMillis,
    Shape::Clock,
    Shape::Number,
];

/// The surest shape that at least half of the cells have.
pub fn shape(cells: &[&str], comma: bool) -> Option<Shape> {
    let most = |shape: &Shape| {
        let fits = cells
            .iter()
            .filter(|cell| has_shape(cell, *shape, comma))
            .count();
        fits > 0 && 2 * fits >= cells.len()
    };
    SHAPES.into_iter().find(most)
}

/// Dates of an instrument that has lost its clock are dates: the import tells them one by one.
fn has_shape(cell: &str, shape: Shape, comma: bool) -> bool {
    let read = |format| times::read(format, cell.as_bytes(), comma);
    let dated = |format| matches!(read(format), Ok(_) | Err(Fault::Year));
    match shape {
        Shape::YearFirst => dated(TimeFormat::Iso),
        Shape::YearLast => dated(TimeFormat::MonthFirst) || dated(TimeFormat::DayFirst),
        Shape::EpochSeconds => read(TimeFormat::EpochSeconds).is_ok(),
        Shape::EpochMillis => read(TimeFormat::EpochMillis).is_ok(),
        Shape::Clock => {
            let start = civil::EARLIEST;
            read(TimeFormat::Elapsed {
                unit: ElapsedUnit::Clock,
                start,
            })
            .is_ok()
        }
        Shape::Number => matches!(numbers::fixed::<3>(cell.as_bytes(), comma), Some((0.., []))),
    }
}

/// Evidence only: some date can be read one way and none the other way alone.
pub fn day_first(cells: &[&str], comma: bool) -> Option<bool> {
    let reads = |format, cell: &str| times::read(format, cell.as_bytes(), comma).is_ok();
    let mut only = (false, false);
    for cell in cells {
        match (
            reads(TimeFormat::DayFirst, cell),
            reads(TimeFormat::MonthFirst, cell),
        ) {
            (true, false) => only.0 = true,
            (false, true) => only.1 = true,
            _ => {}
        }
    }
    match only {
        (true, false) => Some(true),
        (false, true) => Some(false),
        _ => None,
    }
}
