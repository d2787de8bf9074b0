//! Dates and times from a form's field, and the years that anything may happen in.

use super::{Arg, Refused, Words, scan::quoted};
use crate::words::zone::{instant_of, local};
use chrono::{Datelike, NaiveDate, NaiveDateTime, NaiveTime};
use std::ops::RangeInclusive;

/// The years that a typed instant may lie in: wide enough for any pit book, and shut to clocks that were never set
/// (1970) and to slips of the finger (2200). Common practice, no source. Zone rules are known to the end of 2099.
pub const YEARS: RangeInclusive<i32> = 2020..=2100;

/// Reads the value of a form's date-and-time field, "2026-06-13T14:00" (seconds may follow), in the viewer's zone.
/// Gaps and repeated hours are as [`instant_of`] says.
pub fn datetime_field(say: &Words<'_>, text: &str) -> Result<i64, Refused> {
    let wall = read(text.trim()).ok_or_else(|| {
        let args = [
            ("typed", Arg::Text(&quoted(text))),
            ("example", Arg::Text("2026-06-13T14:00")),
        ];
        say.refuse("error-datetime-unread", &args)
    })?;
    instant(say, instant_of(say.zone, wall))
}

/// Passes an instant that lies in [`YEARS`] by the viewer's calendar.
pub fn instant(say: &Words<'_>, utc_ms: i64) -> Result<i64, Refused> {
    if YEARS.contains(&local(say.zone, utc_ms).year()) {
        return Ok(utc_ms);
    }
    let (low, high) = (YEARS.start().to_string(), YEARS.end().to_string());
    Err(say.refuse(
        "error-year-range",
        &[("low", Arg::Text(&low)), ("high", Arg::Text(&high))],
    ))
}

fn read(text: &str) -> Option<NaiveDateTime> {
    let (date, time) = text.split_once(['T', ' '])?;
    let mut parts = date.splitn(3, '-');
    let (year, month, day) = (parts.next()?, parts.next()?, parts.next()?);
    let year = i32::try_from(digits(year, 4)?).ok()?;
    let date = NaiveDate::from_ymd_opt(year, digits(month, 2)?, digits(day, 2)?)?;
    Some(date.and_time(read_time(time)?))
}

/// "14:00", "14:00:30"; a fraction of a second is dropped.
pub(super) fn read_time(text: &str) -> Option<NaiveTime> {
    let mut parts = text.splitn(3, ':');
    let (hour, minute) = (digits(parts.next()?, 2)?, digits(parts.next()?, 2)?);
    let second = parts.next().map_or(Some(0), |seconds| {
        let (whole, fraction) = seconds.split_once('.').unwrap_or((seconds, "0"));
        fraction
            .bytes()
            .all(|byte| byte.is_ascii_digit())
            .then(|| digits(whole, 2))
            .flatten()
    })?;
    NaiveTime::from_hms_opt(hour, minute, second)
}

fn digits(text: &str, count: usize) -> Option<u32> {
    let fits = text.len() == count && text.bytes().all(|byte| byte.is_ascii_digit());
    fits.then(|| text.parse().ok()).flatten()
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, test_viewer};
    use super::*;

    #[test]
    fn a_field_is_read_in_the_viewers_zone() {
        let viewer = test_viewer(Locale::EnUs);
        let say = Words::of(&viewer);
        let lunch = 1_781_377_200_000;
        for text in [
            "2026-06-13T14:00",
            "2026-06-13 14:00",
            "2026-06-13T14:00:00",
            "2026-06-13T14:00:00.000",
        ] {
            assert_eq!(datetime_field(&say, text), Ok(lunch), "{text}");
        }
        for text in [
            "",
            "2026-06-13",
            "2026-6-13T14:00",
            "2026-02-30T14:00",
            "2026-06-13T24:00",
            "13/06/2026 14:00",
        ] {
            let reason = datetime_field(&say, text).unwrap_err().reason;
            assert!(
                reason.contains("Type one such as 2026-06-13T14:00."),
                "{text}: {reason}"
            );
        }
    }

    #[test]
    fn a_clock_never_set_and_a_far_century_are_refused() {
        let viewer = test_viewer(Locale::EnUs);
        let say = Words::of(&viewer);
        let expected = "The year must be from 2020 to 2100. Check the date and type it again.";
        for text in [
            "1970-01-01T00:00",
            "2200-06-13T14:00",
            "2019-12-31T23:59",
            "2101-01-01T00:00",
        ] {
            assert_eq!(
                datetime_field(&say, text).unwrap_err().reason,
                expected,
                "{text}"
            );
        }
        for text in ["2020-01-01T00:00", "2100-12-31T23:59"] {
            assert!(datetime_field(&say, text).is_ok(), "{text}");
        }
        assert!(
            [0, i64::MIN, i64::MAX]
                .iter()
                .all(|&ms| instant(&say, ms).is_err())
        );
    }
}
