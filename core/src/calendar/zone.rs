//! A zone described as far as its events reach (RFC 5545, 3.6.5): the offset in force at the first of them, and each change
//! up to the last.

use super::line::Lines;
use crate::words::zone::local;
use chrono::{DateTime, Offset, TimeZone};
use chrono_tz::{OffsetComponents, OffsetName, Tz};

const SECOND: i64 = 1_000;
const DAY: i64 = 86_400 * SECOND;
/// How far before the first event the last change is sought: longer than any zone with changes of the year keeps one offset.
const BACK_DAYS: i64 = 400;

/// One change of offset.
struct Change {
    /// When, milliseconds since 1970.
    at: i64,
    /// Seconds east of UTC before it.
    from: i32,
    /// The same after it.
    to: i32,
    /// Whether what begins is summer time.
    summer: bool,
    /// What the zone calls it; may be empty.
    name: String,
}

/// Writes what a reader has to know of `zone` between `first` and `last`.
pub(super) fn describe(lines: &mut Lines, zone: Tz, first: i64, last: i64) {
    let begin = first - BACK_DAYS * DAY;
    let all: Vec<Change> = (0..)
        .map(|day| begin + day * DAY)
        .take_while(|day| *day <= last)
        .filter_map(|day| change(zone, day, (day + DAY).min(last)))
        .collect();
    let before = all.iter().rposition(|change| change.at <= first);
    lines.plain("BEGIN:VTIMEZONE");
    lines.plain(&format!("TZID:{}", zone.name()));
    match before {
        Some(before) => all[before..]
            .iter()
            .for_each(|change| observance(lines, change)),
        None => {
            observance(lines, &standing(zone, first));
            all.iter().for_each(|change| observance(lines, change));
        }
    }
    lines.plain("END:VTIMEZONE");
}

/// A zone that has not changed for long: as if it had begun with 1970.
fn standing(zone: Tz, at: i64) -> Change {
    let offset = offset(zone, at);
    Change {
        at: -i64::from(offset) * SECOND,
        from: offset,
        to: offset,
        summer: is_summer(zone, at),
        name: name(zone, at),
    }
}

/// The change after `from` and up to `to`, to the second.
fn change(zone: Tz, from: i64, to: i64) -> Option<Change> {
    let (mut early, mut late) = (from, to);
    let before = offset(zone, early);
    if late <= early || offset(zone, late) == before {
        return None;
    }
    while late - early > SECOND {
        let middle = early + (late - early) / (2 * SECOND) * SECOND;
        match offset(zone, middle) == before {
            true => early = middle,
            false => late = middle,
        }
    }
    let at = late.div_euclid(SECOND) * SECOND;
    Some(Change {
        at,
        from: before,
        to: offset(zone, late),
        summer: is_summer(zone, late),
        name: name(zone, late),
    })
}

fn observance(lines: &mut Lines, change: &Change) {
    let kind = if change.summer {
        "DAYLIGHT"
    } else {
        "STANDARD"
    };
    let wall = local(Tz::UTC, change.at + i64::from(change.from) * SECOND);
    lines.plain(&format!("BEGIN:{kind}"));
    lines.plain(&format!("DTSTART:{}", wall.format("%Y%m%dT%H%M%S")));
    lines.plain(&format!("TZOFFSETFROM:{}", written(change.from)));
    lines.plain(&format!("TZOFFSETTO:{}", written(change.to)));
    if !change.name.is_empty() {
        lines.value("TZNAME", &change.name);
    }
    lines.plain(&format!("END:{kind}"));
}

/// "-0600"; with seconds where an offset has any.
fn written(seconds: i32) -> String {
    let sign = if seconds < 0 { '-' } else { '+' };
    let (all, rest) = (seconds.abs() / 60, seconds.abs() % 60);
    let rest = if rest == 0 {
        String::new()
    } else {
        format!("{rest:02}")
    };
    format!("{sign}{:02}{:02}{rest}", all / 60, all % 60)
}

fn in_force(zone: Tz, at: i64) -> <Tz as TimeZone>::Offset {
    let utc = DateTime::from_timestamp_millis(at).unwrap_or_default();
    zone.offset_from_utc_datetime(&utc.naive_utc())
}

fn offset(zone: Tz, at: i64) -> i32 {
    in_force(zone, at).fix().local_minus_utc()
}

fn is_summer(zone: Tz, at: i64) -> bool {
    !in_force(zone, at).dst_offset().is_zero()
}

fn name(zone: Tz, at: i64) -> String {
    in_force(zone, at)
        .abbreviation()
        .unwrap_or_default()
        .to_owned()
}
