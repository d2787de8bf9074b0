//! Lengths of time as typed.

use super::{
    super::format::Round,
    Arg, Refused, Words,
    scan::{Fault, plain, quantities, quoted},
};
use crate::moment::{HOUR, MINUTE, SECOND};
use std::ops::RangeInclusive;

/// What any length of time typed must lie in, in milliseconds: none to 14 days, a long cure. Common practice, no
/// source. Callers pass narrower ranges.
pub const DURATION_MS: RangeInclusive<i64> = 0..=14 * 24 * HOUR;

/// Reads "90" (minutes), "1 h 20 min", "1:20", "1.5 h", "2 días 3 h" to milliseconds. `range_ms` narrows [`DURATION_MS`].
pub fn duration(
    say: &Words<'_>,
    text: &str,
    range_ms: &RangeInclusive<i64>,
) -> Result<i64, Refused> {
    let ms = read(&plain(text)).map_err(|fault| fault.refused(say, text, || unread(say, text)))?;
    if range_ms.contains(&ms) && DURATION_MS.contains(&ms) {
        return Ok(ms);
    }
    let low = say.duration(*range_ms.start().max(DURATION_MS.start()));
    let high = say.duration(*range_ms.end().min(DURATION_MS.end()));
    let args = [
        ("typed", Arg::Text(&quoted(text))),
        ("low", Arg::Text(&low)),
        ("high", Arg::Text(&high)),
    ];
    Err(say.refuse("error-duration-range", &args))
}

fn unread(say: &Words<'_>, text: &str) -> Refused {
    let example = say.duration(80 * MINUTE);
    say.refuse(
        "error-duration-unread",
        &[
            ("typed", Arg::Text(&quoted(text))),
            ("example", Arg::Text(&example)),
        ],
    )
}

fn read(text: &str) -> Result<i64, Fault> {
    if let Some((hours, minutes)) = text.split_once(':') {
        return colon(hours, minutes).ok_or(Fault::Unread);
    }
    let parts = quantities(text)?;
    let mut total = 0;
    let mut larger = i64::MAX;
    for (size, word) in parts {
        let unit = if word.is_empty() {
            bare(larger)
        } else {
            unit(word)
        }
        .ok_or(Fault::Unread)?;
        let part = Round::Nearest.divide(size * unit, 1_000);
        if unit >= larger || (larger < i64::MAX && part >= larger) {
            return Err(Fault::Unread);
        }
        (total, larger) = (total + part, unit);
    }
    Ok(total)
}

/// "1:20" is an hour and twenty minutes.
fn colon(hours: &str, minutes: &str) -> Option<i64> {
    let whole = |text: &str, digits: RangeInclusive<usize>| {
        let fits = digits.contains(&text.len()) && text.bytes().all(|byte| byte.is_ascii_digit());
        fits.then(|| text.parse::<i64>().ok()).flatten()
    };
    let (hours, minutes) = (whole(hours, 1..=3)?, whole(minutes, 2..=2)?);
    (minutes < 60).then_some(hours * HOUR + minutes * MINUTE)
}

/// A number alone counts minutes, and after hours too ("1 h 20").
fn bare(larger: i64) -> Option<i64> {
    matches!(larger, HOUR | i64::MAX).then_some(MINUTE)
}

fn unit(word: &str) -> Option<i64> {
    match word {
        "d" | "day" | "days" | "día" | "días" | "dia" | "dias" => Some(24 * HOUR),
        "h" | "hr" | "hrs" | "hour" | "hours" | "hora" | "horas" => Some(HOUR),
        "m" | "min" | "mins" | "minute" | "minutes" | "minuto" | "minutos" => Some(MINUTE),
        "s" | "sec" | "secs" | "second" | "seconds" | "seg" | "segundo" | "segundos" => {
            Some(SECOND)
        }
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, test_viewer};
    use super::*;

    #[test]
    fn lengths_are_read_as_cooks_write_them() {
        let viewer = test_viewer(Locale::EnUs);
        let say = Words::of(&viewer);
        let read = |text| duration(&say, text, &DURATION_MS);
        for text in [
            "80",
            "80 min",
            "1 h 20 min",
            "1h20",
            "1:20",
            "1 hora 20 minutos",
            "1 hr. 20",
            "4800 s",
        ] {
            assert_eq!(read(text), Ok(80 * MINUTE), "{text}");
        }
        assert_eq!(read("1,5 h"), Ok(90 * MINUTE));
        assert_eq!(read("2 días 3 h"), Ok(51 * HOUR));
        for text in [
            "",
            "soon",
            "-5",
            "20 min 1 h",
            "1 h 90 min",
            "1:60",
            "1:2",
            "1 day 4",
            "1:20 h",
            "1 h 1 h",
        ] {
            assert!(
                read(text)
                    .unwrap_err()
                    .reason
                    .contains("Type minutes, or 1 h 20 min."),
                "{text}"
            );
        }
    }

    #[test]
    fn what_is_too_long_is_told_what_fits() {
        let viewer = test_viewer(Locale::EsUs);
        let reason = duration(&Words::of(&viewer), "400", &(5 * MINUTE..=4 * HOUR))
            .unwrap_err()
            .reason;
        assert_eq!(
            reason,
            "400 está fuera de lo que cabe aquí. Escribe un tiempo de 5 min a 4 h."
        );
        assert!(duration(&Words::of(&viewer), "15 d", &(0..=i64::MAX)).is_err());
    }
}
