//! The words and figures of a time of day, before any date or zone: "2 pm", "14h05", "noon", "mañana a las 6 am".

use crate::words::HourCycle;
use chrono::{NaiveTime, Weekday};

/// A time of day as typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Typed {
    /// One time of the 24 hours.
    Sure(NaiveTime),
    /// "2:05" of a 12-hour clock: this, or twelve hours later.
    Half(NaiveTime),
}

/// A day as typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Day {
    /// So many days from the day of reference.
    Off(i64),
    /// The next one of that name.
    Named(Weekday),
}

/// The words that name a day.
const DAYS: [(&str, Day); 39] = [
    ("today", Day::Off(0)),
    ("hoy", Day::Off(0)),
    ("tomorrow", Day::Off(1)),
    ("mañana", Day::Off(1)),
    ("manana", Day::Off(1)),
    ("yesterday", Day::Off(-1)),
    ("ayer", Day::Off(-1)),
    ("monday", Day::Named(Weekday::Mon)),
    ("mon", Day::Named(Weekday::Mon)),
    ("lunes", Day::Named(Weekday::Mon)),
    ("lun", Day::Named(Weekday::Mon)),
    ("tuesday", Day::Named(Weekday::Tue)),
    ("tue", Day::Named(Weekday::Tue)),
    ("martes", Day::Named(Weekday::Tue)),
    ("mar", Day::Named(Weekday::Tue)),
    ("wednesday", Day::Named(Weekday::Wed)),
    ("wed", Day::Named(Weekday::Wed)),
    ("miércoles", Day::Named(Weekday::Wed)),
    ("miercoles", Day::Named(Weekday::Wed)),
    ("mié", Day::Named(Weekday::Wed)),
    ("mie", Day::Named(Weekday::Wed)),
    ("thursday", Day::Named(Weekday::Thu)),
    ("thu", Day::Named(Weekday::Thu)),
    ("jueves", Day::Named(Weekday::Thu)),
    ("jue", Day::Named(Weekday::Thu)),
    ("friday", Day::Named(Weekday::Fri)),
    ("fri", Day::Named(Weekday::Fri)),
    ("viernes", Day::Named(Weekday::Fri)),
    ("vie", Day::Named(Weekday::Fri)),
    ("saturday", Day::Named(Weekday::Sat)),
    ("sat", Day::Named(Weekday::Sat)),
    ("sábado", Day::Named(Weekday::Sat)),
    ("sabado", Day::Named(Weekday::Sat)),
    ("sáb", Day::Named(Weekday::Sat)),
    ("sab", Day::Named(Weekday::Sat)),
    ("sunday", Day::Named(Weekday::Sun)),
    ("sun", Day::Named(Weekday::Sun)),
    ("domingo", Day::Named(Weekday::Sun)),
    ("dom", Day::Named(Weekday::Sun)),
];

/// The day named before or after the time of day, and the rest: "tomorrow at 2 pm", "2 p.m. tomorrow", "sábado 14:00".
pub(super) fn day(text: &str) -> (Option<Day>, &str) {
    let at_the_end = |text: &'_ str| -> Option<(Day, usize)> {
        let (rest, word) = text.rsplit_once([' ', ','])?;
        Some((named(word)?, rest.len()))
    };
    let begins = text.find([' ', ',']).unwrap_or(text.len());
    let (day, rest) = match (named(&text[..begins]), at_the_end(text)) {
        (Some(day), _) => (Some(day), text[begins..].trim_start_matches([' ', ','])),
        (None, Some((day, end))) => (Some(day), text[..end].trim_end_matches([' ', ','])),
        (None, None) => (None, text),
    };
    let before = ["at ", "a las ", "a la ", "al ", "a ", "las ", "la "];
    let time = before.iter().find_map(|word| rest.strip_prefix(word));
    let time = time.unwrap_or(rest);
    (day, time.strip_suffix(" on").unwrap_or(time))
}

fn named(word: &str) -> Option<Day> {
    let known = DAYS.iter().find(|(known, _)| *known == word);
    known.map(|(_, day)| *day)
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
        assert_eq!(day("tomorrow at 2 pm"), (Some(Day::Off(1)), "2 pm"));
        assert_eq!(day("ayer, a las 14:00"), (Some(Day::Off(-1)), "14:00"));
        assert_eq!(day("a la 1 pm"), (None, "1 pm"));
    }

    #[test]
    fn a_day_is_taken_off_the_end_as_people_say_it() {
        assert_eq!(day("2 p.m. tomorrow"), (Some(Day::Off(1)), "2 p.m."));
        assert_eq!(day("a las 2 pm mañana"), (Some(Day::Off(1)), "2 pm"));
        let saturday = Some(Day::Named(Weekday::Sat));
        assert_eq!(day("2:30 pm on saturday"), (saturday, "2:30 pm"));
        assert_eq!(day("sáb 14:00"), (saturday, "14:00"));
        assert_eq!(day("sábado a mediodía"), (saturday, "mediodía"));
        assert_eq!(day("saturday"), (saturday, ""));
    }
}
