//! From the bytes of a probe to a reading. Start at [`heard`].
//!
//! A probe that says no time was read when it was heard. One that says a time is believed, because a thermometer keeps
//! what it read while nobody listened and sends it later: what it kept must not pass for what is hot now. Its clock
//! shows the time of the place; an hour that comes twice is the later one that has come.

use super::{LocalTime, NotAWord, decode};
use crate::{
    moment::{HOUR, MINUTE, Moment},
    readings::{Reading, Told},
    words::{Viewer, Words, zone::instant_of},
};
use chrono::TimeZone;
use chrono_tz::Tz;

/// How far ahead a probe's clock may be, milliseconds; what it read counts as now. As for every reading. Common practice,
/// no source.
pub const AHEAD_MAX_MS: i64 = 10 * MINUTE;
/// How long ago a probe may have read what it sends, milliseconds. Earlier, its clock is wrong. Common practice, no source.
pub const KEPT_MAX_MS: i64 = 24 * HOUR;

/// The reading that a probe sent, heard at `moment`; none where the probe says no temperature.
///
/// # Errors
/// [`NotAWord`] where the bytes are not sound, or the probe's clock is too far off to tell when it was.
pub fn heard(
    characteristic: u16,
    bytes: &[u8],
    moment: &Moment,
) -> Result<Option<Reading>, NotAWord> {
    let word = decode(characteristic, bytes)?;
    let Some(temp) = word.temp else {
        return Ok(None);
    };
    let at = when(word.claimed_at, moment)?;
    Ok(Some(Reading { at, temp }))
}

/// Why [`heard`] makes no reading of these bytes and what can be done, in the viewer's language; none where it makes one.
pub fn why_none(
    viewer: &Viewer,
    characteristic: u16,
    bytes: &[u8],
    moment: &Moment,
) -> Option<String> {
    let say = Words::of(viewer);
    let word = match decode(characteristic, bytes) {
        Ok(word) => word,
        Err(not) => return Some(not.said(&say)),
    };
    match word.why_not {
        Some(why) => Some(say.text(why.key())),
        None => when(word.claimed_at, moment)
            .err()
            .map(|not| not.said(&say)),
    }
}

fn when(claimed: Option<LocalTime>, moment: &Moment) -> Result<i64, NotAWord> {
    let now = moment.utc_ms;
    let Some(claimed) = claimed else {
        return Ok(now);
    };
    let at = instant(claimed, moment).ok_or(NotAWord::NoSuchTime)?;
    match (now.saturating_sub(KEPT_MAX_MS)..=now.saturating_add(AHEAD_MAX_MS)).contains(&at) {
        true => Ok(at.min(now)),
        false => Err(NotAWord::ClockOff { claimed }),
    }
}

/// The instant at which a clock where this device stands shows it. A zone that is not known here is taken as UTC.
fn instant(claimed: LocalTime, moment: &Moment) -> Option<i64> {
    let (wall, zone) = (claimed.wall()?, moment.zone.parse().unwrap_or(Tz::UTC));
    let latest = moment.utc_ms.saturating_add(AHEAD_MAX_MS);
    let second = zone.from_local_datetime(&wall).latest();
    second
        .map(|second| second.timestamp_millis())
        .filter(|second| *second <= latest)
        .or_else(|| Some(instant_of(zone, wall)))
}
