//! Times of day as typed, made into an instant near a moment of reference.

use super::{
    Arg, Refused, Words,
    date::{datetime_field, instant, read_time},
    hour::{Day, Typed, day, time_of_day},
    scan::{plain, quoted},
    spoken::in_figures,
};
use crate::{
    moment::MINUTE,
    words::zone::{instant_of, local},
};
use chrono::{Datelike, NaiveTime, TimeDelta, Timelike, Weekday};

/// Which of the occurrences of a time of day is meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Seek {
    /// The first one from the minute of reference on: serving, a reminder.
    Next,
    /// The one nearest to the reference, the later of two equals.
    Nearest,
    /// The last one up to the reference: when something was done.
    Last,
}

/// Reads "2 pm", "2:05 p. m.", "14:00", "noon", "tomorrow 6 am", "2 pm tomorrow", "sábado a las 6 am" in the viewer's zone. A bare "2:05"
/// is 02:05 to a viewer with a 24-hour clock; with a 12-hour clock it is whichever half of the day `seek` finds,
/// except with a day named, where it is refused. Gaps and repeated hours are as [`instant_of`] says.
pub fn clock(say: &Words<'_>, text: &str, reference_ms: i64, seek: Seek) -> Result<i64, Refused> {
    let plain = in_figures(&plain(text));
    let (day, time) = day(&plain);
    let typed = time_of_day(time, say.viewer().hours).ok_or_else(|| unread(say, text))?;
    at(say, text, (day, typed), reference_ms, seek)
}

/// The same, and a time that the clock skips on that day is refused with the nearest one there is.
pub fn clock_there(
    say: &Words<'_>,
    text: &str,
    reference_ms: i64,
    seek: Seek,
) -> Result<i64, Refused> {
    let at = clock(say, text, reference_ms, seek)?;
    let plain = in_figures(&plain(text));
    let shows = local(say.zone, at).time();
    let there = match time_of_day(day(&plain).1, say.viewer().hours) {
        Some(Typed::Half(time)) => time == shows || time + TimeDelta::hours(12) == shows,
        Some(Typed::Sure(time)) => time == shows,
        None => true,
    };
    if there {
        return Ok(at);
    }
    let nearest = say.clock_day(at, reference_ms);
    let args = [
        ("typed", Arg::Text(&quoted(text))),
        ("nearest", Arg::Text(&nearest)),
    ];
    Err(say.refuse("error-clock-skipped", &args))
}

/// The instant of what was read of `text`.
fn at(
    say: &Words<'_>,
    text: &str,
    read: (Option<Day>, Typed),
    reference_ms: i64,
    seek: Seek,
) -> Result<i64, Refused> {
    match read {
        (None, typed) => instant(say, sought(say, typed, reference_ms, seek)),
        (Some(Day::Off(days)), Typed::Sure(time)) => {
            instant(say, on_day(say, reference_ms, days, time))
        }
        (Some(Day::Named(weekday)), Typed::Sure(time)) => {
            instant(say, on_weekday(say, weekday, time, reference_ms, seek))
        }
        (Some(_), Typed::Half(time)) => Err(either_half(say, text, time)),
    }
}

/// Reads when a meal is to be: as [`clock`] reads the next one, or the value of a form's date-and-time field. With a day
/// named, a bare time from twelve to before six is after noon: nobody is called to table before dawn (common practice,
/// no source). Any other is still asked back.
pub fn when(say: &Words<'_>, text: &str, reference_ms: i64) -> Result<i64, Refused> {
    let is_date = |text: &str| text.starts_with(|c: char| c.is_ascii_digit()) && text.contains('-');
    match is_date(text.trim()) {
        true => datetime_field(say, text),
        false => meal(say, text, reference_ms),
    }
}

fn meal(say: &Words<'_>, text: &str, reference_ms: i64) -> Result<i64, Refused> {
    let plain = in_figures(&plain(text));
    let (day, time) = day(&plain);
    let typed = match time_of_day(time, say.viewer().hours) {
        Some(Typed::Half(time)) if day.is_some() && time.hour() < 6 => {
            Typed::Sure(time + TimeDelta::hours(12))
        }
        Some(typed) => typed,
        None => return Err(unread(say, text)),
    };
    at(say, text, (day, typed), reference_ms, Seek::Next)
}

/// Reads the value of a form's time field, always "14:05" whatever the viewer's clock.
pub fn time_field(
    say: &Words<'_>,
    text: &str,
    reference_ms: i64,
    seek: Seek,
) -> Result<i64, Refused> {
    let time = read_time(text.trim()).ok_or_else(|| unread(say, text))?;
    instant(say, sought(say, Typed::Sure(time), reference_ms, seek))
}

fn unread(say: &Words<'_>, text: &str) -> Refused {
    let example = say.time_of(&(NaiveTime::MIN + TimeDelta::minutes(14 * 60 + 5)));
    say.refuse(
        "error-clock-unread",
        &[
            ("typed", Arg::Text(&quoted(text))),
            ("example", Arg::Text(&example)),
        ],
    )
}

fn either_half(say: &Words<'_>, text: &str, morning: NaiveTime) -> Refused {
    let afternoon = say.time_of(&(morning + TimeDelta::hours(12)));
    let morning = say.time_of(&morning);
    say.refuse(
        "error-clock-half",
        &[
            ("typed", Arg::Text(&quoted(text))),
            ("morning", Arg::Text(&morning)),
            ("afternoon", Arg::Text(&afternoon)),
        ],
    )
}

fn sought(say: &Words<'_>, typed: Typed, reference_ms: i64, seek: Seek) -> i64 {
    let times = match typed {
        Typed::Sure(time) => [time, time],
        Typed::Half(time) => [time, time + TimeDelta::hours(12)],
    };
    let found = (-2..=2).flat_map(|days| times.map(|time| on_day(say, reference_ms, days, time)));
    let minute = reference_ms.div_euclid(MINUTE).saturating_mul(MINUTE);
    let sought = match seek {
        Seek::Next => found.filter(|&ms| ms >= minute).min(),
        Seek::Last => found.filter(|&ms| ms <= reference_ms).max(),
        Seek::Nearest => found.min_by_key(|&ms| (ms.abs_diff(reference_ms), ms < reference_ms)),
    };
    sought.unwrap_or(reference_ms)
}

/// The instant of `time` on the weekday of that name that is sought.
fn on_weekday(
    say: &Words<'_>,
    weekday: Weekday,
    time: NaiveTime,
    reference_ms: i64,
    seek: Seek,
) -> i64 {
    let today = local(say.zone, reference_ms).date().weekday();
    let days = i64::from(weekday.num_days_from_monday()) - i64::from(today.num_days_from_monday());
    let found = [-7, 0, 7].map(|week| on_day(say, reference_ms, days + week, time));
    let minute = reference_ms.div_euclid(MINUTE).saturating_mul(MINUTE);
    let found = found.into_iter();
    let sought = match seek {
        Seek::Next => found.filter(|&ms| ms >= minute).min(),
        Seek::Last => found.filter(|&ms| ms <= reference_ms).max(),
        Seek::Nearest => found.min_by_key(|ms| ms.abs_diff(reference_ms)),
    };
    sought.unwrap_or(reference_ms)
}

/// The instant of `time` on the viewer's day of reference, or so many days from it.
fn on_day(say: &Words<'_>, reference_ms: i64, days: i64, time: NaiveTime) -> i64 {
    let date = local(say.zone, reference_ms).date() + TimeDelta::days(days);
    instant_of(say.zone, date.and_time(time))
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, Viewer, metric_viewer, test_viewer};
    use super::*;
    use crate::moment::HOUR;

    /// Saturday 2026-06-13 09:00 in Chicago (UTC−5).
    const MORNING: i64 = 1_781_359_200_000;

    fn hours_from_morning(viewer: &Viewer, text: &str, seek: Seek) -> Result<i64, Refused> {
        clock(&Words::of(viewer), text, MORNING, seek).map(|ms| (ms - MORNING) / HOUR)
    }

    #[test]
    fn two_o_clock_is_read_in_every_usage() {
        let viewer = test_viewer(Locale::EnUs);
        for text in [
            "2 pm",
            "2:00 PM",
            "2:00 p. m.",
            "2:00\u{a0}p.\u{a0}m.",
            "2p",
            "14:00",
            "14 h",
            "14h00",
            "2",
            "2:00",
            "a las 2 pm",
        ] {
            assert_eq!(
                hours_from_morning(&viewer, text, Seek::Next),
                Ok(5),
                "{text}"
            );
        }
        assert_eq!(hours_from_morning(&viewer, "noon", Seek::Next), Ok(3));
        assert_eq!(hours_from_morning(&viewer, "12 am", Seek::Next), Ok(15));
        assert_eq!(
            hours_from_morning(&viewer, "tomorrow 2:00 PM", Seek::Next),
            Ok(29)
        );
        assert_eq!(
            hours_from_morning(&viewer, "mañana, a las 2 pm", Seek::Next),
            Ok(29)
        );
        assert_eq!(
            hours_from_morning(&viewer, "ayer 11 pm", Seek::Next),
            Ok(-10)
        );
        for text in [
            "", "2:5", "25:00", "13 pm", "0 am", "14:60", "2 pm!", "2.05", "123", "zwei", "2:",
            "14 h 5",
        ] {
            assert!(
                hours_from_morning(&viewer, text, Seek::Next).is_err(),
                "{text}"
            );
        }
    }

    #[test]
    fn a_day_may_stand_after_the_time_and_have_a_name() {
        let viewer = test_viewer(Locale::EnUs);
        for (text, hours) in [
            ("2 p.m. tomorrow", 29),
            ("noon tomorrow", 27),
            ("Saturday 2 pm", 5),
            ("sábado a las 2 pm", 5),
            ("Sat 8:00 AM", 7 * 24 - 1),
            ("Sunday noon", 27),
            ("2 pm on Friday", 6 * 24 + 5),
        ] {
            let read = hours_from_morning(&viewer, text, Seek::Next);
            assert_eq!(read, Ok(hours), "{text}");
        }
        assert_eq!(
            hours_from_morning(&viewer, "Fri 11 pm", Seek::Last),
            Ok(-10)
        );
        assert!(hours_from_morning(&viewer, "Saturday", Seek::Next).is_err());
        assert!(hours_from_morning(&viewer, "sat 2:00", Seek::Next).is_err());
    }

    #[test]
    fn what_is_written_of_the_days_ahead_can_be_typed_back() {
        let hours = |hours: i64| MORNING + hours * HOUR;
        for viewer in [Locale::EnUs, Locale::EsUs].map(test_viewer) {
            let say = Words::of(&viewer);
            for at in [5, 20, 29, 50, 6 * 24].map(hours) {
                let written = say.clock_day(at, MORNING);
                assert_eq!(when(&say, &written, MORNING), Ok(at), "{written}");
            }
        }
    }

    #[test]
    fn a_meal_is_read_as_it_is_said() {
        for viewer in [Locale::EnUs, Locale::EsUs].map(test_viewer) {
            let say = Words::of(&viewer);
            for (text, hours) in [
                ("two", 5),
                ("doce", 3),
                ("a las dos de la tarde", 5),
                ("half past two", 5),
                ("tomorrow at two", 29),
                ("mañana a las dos", 29),
                ("mañana a las dos de la tarde", 29),
                ("mañana al mediodía", 27),
                ("el domingo a la una", 28),
                ("tomorrow at 7 in the evening", 34),
            ] {
                let read = when(&say, text, MORNING).map(|ms| (ms - MORNING) / HOUR);
                assert_eq!(read, Ok(hours), "{text}");
            }
            assert!(when(&say, "mañana a las siete", MORNING).is_err());
        }
    }

    #[test]
    fn when_takes_a_date_as_well() {
        let viewer = test_viewer(Locale::EnUs);
        let say = Words::of(&viewer);
        let two = Ok(MORNING + 5 * HOUR);
        assert_eq!(when(&say, "2026-06-13T14:00", MORNING), two);
        assert_eq!(when(&say, " 2 pm", MORNING), two);
    }

    #[test]
    fn a_bare_time_is_the_half_of_the_day_that_is_sought() {
        let (twelve, day) = (test_viewer(Locale::EnUs), metric_viewer(Locale::EnUs));
        let each = |viewer, text| {
            [Seek::Next, Seek::Nearest, Seek::Last]
                .map(|seek| hours_from_morning(viewer, text, seek))
        };
        assert_eq!(each(&twelve, "8:00"), [Ok(11), Ok(-1), Ok(-1)]);
        assert_eq!(each(&day, "8:00"), [Ok(23), Ok(-1), Ok(-1)]);
        assert_eq!(each(&twelve, "9:00"), [Ok(0), Ok(0), Ok(0)]);
        assert_eq!(each(&day, "21:00"), [Ok(12), Ok(12), Ok(-12)]);
    }

    #[test]
    fn a_named_day_with_half_a_clock_is_asked_back() {
        let viewer = test_viewer(Locale::EnUs);
        assert_eq!(
            hours_from_morning(&viewer, "tomorrow 6:30", Seek::Next)
                .unwrap_err()
                .reason,
            "“tomorrow 6:30” can be morning or afternoon. Type it with 6:30 AM or 6:30 PM."
        );
    }

    #[test]
    fn what_is_no_time_of_day_is_shown_one_in_the_viewers_usage() {
        for (viewer, example) in [
            (test_viewer(Locale::EnUs), "Type one such as 2:05 PM."),
            (
                test_viewer(Locale::EsUs),
                "Escribe una, por ejemplo 2:05 p. m.",
            ),
            (
                metric_viewer(Locale::EsUs),
                "Escribe una, por ejemplo 14:05.",
            ),
        ] {
            let reason = hours_from_morning(&viewer, "lunch", Seek::Next)
                .unwrap_err()
                .reason;
            assert!(reason.ends_with(example), "{reason}");
        }
    }

    #[test]
    fn a_time_that_the_night_skips_is_an_hour_later_by_the_clock() {
        let viewer = Viewer {
            zone: "America/New_York".into(),
            ..test_viewer(Locale::EnUs)
        };
        let say = Words::of(&viewer);
        let evening = super::super::datetime_field(&say, "2026-03-07T20:00").unwrap();
        let skipped = clock(&say, "2:30 am", evening, Seek::Next).unwrap();
        assert_eq!(say.datetime_field(skipped), "2026-03-08T03:30");
    }

    #[test]
    fn a_form_field_is_of_24_hours_for_every_viewer() {
        let viewer = test_viewer(Locale::EnUs);
        let say = Words::of(&viewer);
        assert_eq!(
            time_field(&say, "11:00", MORNING, Seek::Last),
            Ok(MORNING - 22 * HOUR)
        );
        assert!(time_field(&say, "2 pm", MORNING, Seek::Last).is_err());
    }

    #[test]
    fn a_reference_outside_all_years_is_refused_and_does_not_panic() {
        let viewer = test_viewer(Locale::EnUs);
        for reference in [i64::MIN, 0, i64::MAX] {
            for seek in [Seek::Next, Seek::Nearest, Seek::Last] {
                assert!(clock(&Words::of(&viewer), "2:05", reference, seek).is_err());
            }
        }
    }
}
