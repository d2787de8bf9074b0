//! Times as other instruments write them, read by hand from bytes: start at [`read`].
//!
//! A cell either states an instant (epoch, offset, `Z`, time since a known start) or a wall clock reading, which
//! [`ZoneClock`](super::zones::ZoneClock) turns into an instant. Which of month and day comes first is never guessed
//! here: the format says it.

use super::{civil, cursor::Cursor, numbers, refusals::Fault};
use crate::moment::{HOUR, MINUTE, SECOND};
use serde::{Deserialize, Serialize};

/// How a file writes its times.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum TimeFormat {
    /// Year first: `2026-06-13T05:00:00`, with `Z` or an offset, or without (then the plan's zone); seconds may lack.
    Iso,
    /// `06/13/2026 5:00 AM`: month, day, year (US). Seconds and AM/PM may lack; two-digit years are 2000 to 2099.
    MonthFirst,
    /// `13/06/2026 17:00`: day, month, year.
    DayFirst,
    /// Seconds since 1970, UTC; decimals allowed.
    EpochSeconds,
    /// Milliseconds since 1970, UTC.
    EpochMillis,
    /// Time since a start that the caller knows.
    Elapsed {
        /// How the time since is written.
        unit: ElapsedUnit,
        /// When it started, ms UTC.
        start: i64,
    },
}

/// How a time since the start is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum ElapsedUnit {
    /// `H:MM:SS`.
    Clock,
    /// A number of seconds.
    Seconds,
    /// A number of minutes.
    Minutes,
}

/// What a time cell states.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stated {
    /// An instant, ms since 1970 UTC.
    Instant(i64),
    /// What a clock on the wall showed, as ms since 1970 on that wall.
    Wall(i64),
}

/// Reads a time cell, refused when it is none, does not exist, or lies outside 2000 to 2100.
#[inline]
pub fn read(format: TimeFormat, cell: &[u8], comma: bool) -> Result<Stated, Fault> {
    let cell = cell.trim_ascii();
    if cell.is_empty() {
        return Err(Fault::NoTime);
    }
    let stated = match format {
        TimeFormat::Iso => year_first(cell)?,
        TimeFormat::MonthFirst => year_last(cell, false)?,
        TimeFormat::DayFirst => year_last(cell, true)?,
        TimeFormat::EpochSeconds => Stated::Instant(whole::<3>(cell, comma)?),
        TimeFormat::EpochMillis => Stated::Instant(whole::<0>(cell, comma)?),
        TimeFormat::Elapsed { unit, start } => {
            Stated::Instant(start.saturating_add(elapsed(unit, cell, comma)?))
        }
    };
    in_range(stated)
}

#[inline]
fn in_range(stated: Stated) -> Result<Stated, Fault> {
    let (Stated::Instant(ms) | Stated::Wall(ms)) = stated;
    match (civil::EARLIEST..civil::LATEST).contains(&ms) {
        true => Ok(stated),
        false => Err(Fault::Year),
    }
}

#[inline]
fn year_first(cell: &[u8]) -> Result<Stated, Fault> {
    let mut at = Cursor(cell);
    let year = at.digits(4, 4)?;
    let mark = at.one_of(b"-/.")?;
    let month = at.digits(1, 2)?;
    at.exactly(mark)?;
    let day = at.digits(1, 2)?;
    at.between()?;
    on(civil::days(year, month, day), at)
}

fn year_last(cell: &[u8], day_first: bool) -> Result<Stated, Fault> {
    let mut at = Cursor(cell);
    let one = at.digits(1, 2)?;
    let mark = at.one_of(b"-/.")?;
    let two = at.digits(1, 2)?;
    at.exactly(mark)?;
    let year = at.year()?;
    at.between()?;
    let (month, day) = if day_first { (two, one) } else { (one, two) };
    on(civil::days(year, month, day), at)
}

/// The rest of a cell whose date is read: clock, AM or PM, offset.
#[inline]
fn on(days: Option<i64>, mut at: Cursor<'_>) -> Result<Stated, Fault> {
    let clock = at.clock()?;
    let offset = at.offset()?;
    at.end()?;
    let wall = days.ok_or(Fault::NoSuchTime)? * 24 * HOUR + clock;
    Ok(offset.map_or(Stated::Wall(wall), |offset| Stated::Instant(wall - offset)))
}

fn elapsed(unit: ElapsedUnit, cell: &[u8], comma: bool) -> Result<i64, Fault> {
    match unit {
        ElapsedUnit::Seconds => whole::<3>(cell, comma),
        ElapsedUnit::Minutes => Ok(whole::<6>(cell, comma)? * 60 / 1_000),
        ElapsedUnit::Clock => since(cell),
    }
}

fn since(cell: &[u8]) -> Result<i64, Fault> {
    let mut at = Cursor(cell);
    let hours = at.digits(1, 4)?;
    at.exactly(b':')?;
    let minutes = at.digits(2, 2)?;
    at.exactly(b':')?;
    let seconds = at.digits(2, 2)?;
    let thousandths = at.thousandths()?;
    at.end()?;
    match minutes < 60 && seconds < 60 {
        true => Ok(hours * HOUR + minutes * MINUTE + seconds * SECOND + thousandths),
        false => Err(Fault::NoSuchTime),
    }
}

/// A number alone in its cell, in units of 10^−D; at most 10^14 so that sums stay in range.
fn whole<const D: usize>(cell: &[u8], comma: bool) -> Result<i64, Fault> {
    match numbers::fixed::<D>(cell, comma) {
        Some((value, [])) if value.abs() <= 100_000_000_000_000 => Ok(value),
        Some((_, [])) => Err(Fault::Year),
        _ => Err(Fault::NotATime),
    }
}

#[cfg(test)]
#[path = "times_tests.rs"]
mod tests;
