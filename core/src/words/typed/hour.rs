//! The words and figures of a time of day, before any date or zone: "2 pm", "14h05", "noon", "mañana a las 6 am".

use crate::words::HourCycle;
use chrono::NaiveTime;

/// A time of day as typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Typed {
    /// One time of the 24 hours.
    Sure(NaiveTime),
    /// "2:05" of a 12-hour clock: this, or twelve hours later.
    Half(NaiveTime),
}

/// The day named at the start, and the rest.
pub(super) fn day(text: &str) -> (Option<i64>, &str) {
    const DAYS: [(&str, i64); 7] = [
        ("today", 0),
        ("hoy", 0),
        ("tomorrow", 1),
        ("mañana", 1),
        ("manana", 1),
        ("yesterday", -1),
        ("ayer", -1),
    ];
    let named = DAYS
        .iter()
        .find_map(|&(word, days)| Some((days, text.strip_prefix(word)?)));
    let (day, rest) = named.map_or((None, text), |(days, rest)| {
        (Some(days), rest.trim_start_matches([' ', ',']))
    });
    let at = ["at ", "a las ", "a la "]
        .iter()
        .find_map(|word| rest.strip_prefix(word));
    (day, at.unwrap_or(rest))
}

/// Reads a time of day, for a viewer with `hours`.
pub(super) fn time_of_day(text: &str, hours: HourCycle) -> Option<Typed> {
    match text {
        "noon" | "mediodía" | "mediodia" => {
            return NaiveTime::from_hms_opt(12, 0, 0).map(Typed::Sure);
        }
        "midnight" | "medianoche" => return NaiveTime::from_hms_opt(0, 0, 0).map(Typed::Sure),
        _ => {}
    }
    let (hour, rest) = number(text, 1)?;
    let (minute, rest) = rest
        .strip_prefix([':', 'h'])
        .and_then(|rest| number(rest, 2))
        .unwrap_or((0, rest));
    let half: String = rest.chars().filter(|c| !matches!(c, ' ' | '.')).collect();
    time(hour, minute, &half, hours)
}

fn time(hour: u32, minute: u32, half: &str, hours: HourCycle) -> Option<Typed> {
    let twelve = (1..=12).contains(&hour);
    let at = |hour| NaiveTime::from_hms_opt(hour, minute, 0);
    match half {
        "am" | "a" if twelve => at(hour % 12).map(Typed::Sure),
        "pm" | "p" if twelve => at(hour % 12 + 12).map(Typed::Sure),
        "" if twelve && hours == HourCycle::Twelve => at(hour % 12).map(Typed::Half),
        "" | "h" | "hrs" => at(hour).map(Typed::Sure),
        _ => None,
    }
}

/// A number of at most two digits and at least `least` at the start, and the rest.
fn number(text: &str, least: usize) -> Option<(u32, &str)> {
    let (digits, rest) = text.split_at(
        text.find(|c: char| !c.is_ascii_digit())
            .unwrap_or(text.len()),
    );
    let fits = (least..=2).contains(&digits.len());
    Some((digits.parse().ok().filter(|_| fits)?, rest))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sure(hour: u32, minute: u32) -> Option<Typed> {
        NaiveTime::from_hms_opt(hour, minute, 0).map(Typed::Sure)
    }

    #[test]
    fn noon_and_midnight_are_where_a_12_hour_clock_has_them() {
        let read = |text| time_of_day(text, HourCycle::Twelve);
        assert_eq!(
            [
                read("12 pm"),
                read("noon"),
                read("mediodía"),
                read("12:00 p. m.")
            ],
            [sure(12, 0); 4]
        );
        assert_eq!(
            [
                read("12 am"),
                read("midnight"),
                read("0:00"),
                read("00:00 h")
            ],
            [sure(0, 0); 4]
        );
        assert_eq!(
            read("12:30"),
            NaiveTime::from_hms_opt(0, 30, 0).map(Typed::Half)
        );
        assert_eq!(time_of_day("12:30", HourCycle::TwentyFour), sure(12, 30));
    }

    #[test]
    fn a_day_is_taken_off_the_front() {
        assert_eq!(day("tomorrow at 2 pm"), (Some(1), "2 pm"));
        assert_eq!(day("ayer, a las 14:00"), (Some(-1), "14:00"));
        assert_eq!(day("a la 1 pm"), (None, "1 pm"));
    }
}
