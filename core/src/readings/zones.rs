//! From what a clock on the wall showed to the instant it was, by the zone the clock stood in.
//!
//! A wall time that the zone skips in spring takes the offset before the gap, and one that comes twice in fall is the
//! first (RFC 5545 section 3.3.5, rule text from memory) – unless the file's own order says the second: rows that ran
//! forward until now and would jump back an hour are in the second pass (and the other way round in a file that runs
//! backward).

use super::times::Stated;
use crate::moment::{HOUR, MINUTE};
use chrono::{DateTime, LocalResult, NaiveDateTime, Offset, TimeZone};
use chrono_tz::Tz;

/// Turns stated times of one file into instants, row after row.
pub struct ZoneClock {
    zone: Tz,
    /// The last wall hour that has one offset throughout, and that offset in ms.
    hour: Option<(i64, i64)>,
    before: Option<i64>,
    backward: bool,
}

impl ZoneClock {
    /// A clock that stood in `zone`.
    pub fn new(zone: Tz) -> Self {
        Self {
            zone,
            hour: None,
            before: None,
            backward: false,
        }
    }

    /// The instant that the next row states, ms UTC.
    #[inline]
    pub fn instant(&mut self, stated: Stated) -> i64 {
        let at = match stated {
            Stated::Instant(at) => at,
            Stated::Wall(wall) => self.unwall(wall),
        };
        self.before = Some(at);
        at
    }

    #[inline]
    fn unwall(&mut self, wall: i64) -> i64 {
        match self.hour {
            Some((hour, offset)) if (0..HOUR).contains(&wall.wrapping_sub(hour)) => {
                self.plain(wall - offset)
            }
            _ => self.ask(wall),
        }
    }

    /// An instant that is in no doubt shows which way the file runs.
    #[inline]
    fn plain(&mut self, at: i64) -> i64 {
        self.backward = self.before.is_some_and(|before| at < before);
        at
    }

    fn ask(&mut self, wall: i64) -> i64 {
        match offsets(self.zone, wall) {
            LocalResult::Single(offset) => {
                self.hour = whole_hour(self.zone, wall).or(self.hour);
                self.plain(wall - offset)
            }
            LocalResult::Ambiguous(first, second) => self.of_two(wall - first, wall - second),
            LocalResult::None => self.plain(wall - offset_before_gap(self.zone, wall)),
        }
    }

    /// Of two instants, `first` earlier: the one that goes on the way the file runs.
    fn of_two(&self, first: i64, second: i64) -> i64 {
        match self.before {
            Some(before) if self.backward && second > before => first,
            Some(_) if self.backward => second,
            Some(before) if first < before && second >= before => second,
            _ => first,
        }
    }
}

/// The wall hour around `wall` and its offset, if it has only one.
fn whole_hour(zone: Tz, wall: i64) -> Option<(i64, i64)> {
    let hour = wall - wall.rem_euclid(HOUR);
    match (offsets(zone, hour), offsets(zone, hour + HOUR - 1)) {
        (LocalResult::Single(a), LocalResult::Single(b)) if a == b => Some((hour, a)),
        _ => None,
    }
}

/// The offset in force before the clock was put forward over `wall`: that of the nearest quarter hour that exists.
fn offset_before_gap(zone: Tz, wall: i64) -> i64 {
    (1..=100)
        .find_map(
            |quarters| match offsets(zone, wall - quarters * 15 * MINUTE) {
                LocalResult::Single(offset) | LocalResult::Ambiguous(_, offset) => Some(offset),
                LocalResult::None => None,
            },
        )
        .unwrap_or(0)
}

fn offsets(zone: Tz, wall: i64) -> LocalResult<i64> {
    let wall: NaiveDateTime = DateTime::from_timestamp_millis(wall)
        .unwrap_or_default()
        .naive_utc();
    zone.offset_from_local_datetime(&wall)
        .map(|offset| i64::from(offset.fix().local_minus_utc()) * 1_000)
}

#[cfg(test)]
#[path = "zones_tests.rs"]
mod tests;
