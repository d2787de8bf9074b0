//! Events as a calendar file that other programs read (RFC 5545, read at www.rfc-editor.org/rfc/rfc5545). Start at [`calendar()`].
//!
//! Times are written with their zone, and the zone is described in the file as far as its events reach. Laws: the same
//! events give the same bytes; a reader of the file finds each event at its instant, also in a night when the clock
//! changes: a wall time that comes twice means its first occurrence (3.3.5), so the second is written in UTC.
//!
//! No library: those that write this format read a clock, which nothing in here may (see `bindings/tests/tree.rs`).

mod line;
mod zone;

use crate::words::zone::{instant_of, local};
use chrono_tz::Tz;
use line::Lines;
use serde::{Deserialize, Serialize};

/// One event.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Event {
    /// Its name among all events, the same whenever it is written again.
    pub uid: String,
    /// When it begins, milliseconds since 1970.
    pub at: i64,
    /// When it is over; at `at` or before, it has no length.
    pub until: i64,
    /// What it is.
    pub summary: String,
    /// More on it; may be empty.
    pub description: String,
    /// Whether a calendar is asked to ring when it begins.
    pub rings: bool,
}

/// A calendar.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Calendar {
    /// What it is called.
    pub name: String,
    /// The IANA zone that its times are written in, such as `America/Chicago`.
    pub zone: String,
    /// When it was made, milliseconds since 1970.
    pub made: i64,
    /// Rises with each time that its events are written anew.
    pub sequence: i64,
    /// Its events.
    pub events: Vec<Event>,
}

/// A calendar file.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct File {
    /// Its text, lines ended by CRLF.
    pub text: String,
}

/// A zone that is not known here.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("“{zone}” is no zone that is known here: name one as America/Chicago")]
pub struct UnknownZone {
    /// What was named.
    pub zone: String,
}

/// The calendar as a file.
///
/// # Errors
/// Where its zone is not known here.
pub fn calendar(calendar: &Calendar) -> Result<File, UnknownZone> {
    let zone = calendar.zone.parse::<Tz>().map_err(|_| UnknownZone {
        zone: calendar.zone.clone(),
    })?;
    Ok(File {
        text: file(calendar, zone),
    })
}

fn file(calendar: &Calendar, zone: Tz) -> String {
    let mut lines = Lines::default();
    lines.plain("BEGIN:VCALENDAR");
    lines.plain("VERSION:2.0");
    lines.plain("PRODID:-//Slowbend//Slowbend//EN");
    lines.plain("CALSCALE:GREGORIAN");
    lines.plain("METHOD:PUBLISH");
    // RFC 7986, 5.1: from memory.
    lines.value("NAME", &calendar.name);
    let begins = calendar.events.iter().map(|event| event.at).min();
    let ends = calendar
        .events
        .iter()
        .map(|event| event.until.max(event.at))
        .max();
    if let (Some(first), Some(last), true) = (begins, ends, zone != Tz::UTC) {
        zone::describe(&mut lines, zone, first, last);
    }
    for event in &calendar.events {
        write(&mut lines, calendar, zone, event);
    }
    lines.plain("END:VCALENDAR");
    lines.done()
}

fn write(lines: &mut Lines, calendar: &Calendar, zone: Tz, event: &Event) {
    lines.plain("BEGIN:VEVENT");
    lines.value("UID", &event.uid);
    lines.plain(&format!("DTSTAMP:{}", utc(calendar.made)));
    lines.plain(&format!("SEQUENCE:{}", calendar.sequence.max(0)));
    lines.plain(&time("DTSTART", zone, event.at));
    if event.until > event.at {
        lines.plain(&time("DTEND", zone, event.until));
    }
    lines.value("SUMMARY", &event.summary);
    if !event.description.is_empty() {
        lines.value("DESCRIPTION", &event.description);
    }
    if event.rings {
        lines.plain("BEGIN:VALARM");
        lines.plain("ACTION:DISPLAY");
        lines.plain("TRIGGER:PT0S");
        lines.value("DESCRIPTION", &event.summary);
        lines.plain("END:VALARM");
    }
    lines.plain("END:VEVENT");
}

/// An instant by the wall clock of its zone, or in UTC where the wall clock would mean another.
fn time(name: &str, zone: Tz, at: i64) -> String {
    let whole = at.div_euclid(1_000) * 1_000;
    let wall = local(zone, whole);
    match zone == Tz::UTC || instant_of(zone, wall) != whole {
        true => format!("{name}:{}", utc(at)),
        false => format!(
            "{name};TZID={}:{}",
            zone.name(),
            wall.format("%Y%m%dT%H%M%S")
        ),
    }
}

fn utc(at: i64) -> String {
    local(Tz::UTC, at).format("%Y%m%dT%H%M%SZ").to_string()
}

#[cfg(test)]
mod tests;
