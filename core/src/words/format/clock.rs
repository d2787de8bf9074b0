//! Clock times in the viewer's zone, with their days where that is needed.

use super::{
    super::{Arg, HourCycle, Words, zone::local},
    day::days_between,
};
use chrono::Timelike;

impl Words<'_> {
    /// The time of day: "2:05 PM", "2:05 p. m.", "14:05".
    pub fn clock(&self, utc_ms: i64) -> String {
        self.time_of(&local(self.zone, utc_ms))
    }

    /// The time of day as short as it can be said, for the line of a chart: "2 PM", "2:05 PM", "14:00".
    pub fn hour(&self, utc_ms: i64) -> String {
        let at = local(self.zone, utc_ms);
        if at.minute() != 0 || self.viewer.hours == HourCycle::TwentyFour {
            return self.time_of(&at);
        }
        let (afternoon, hour) = at.hour12();
        let (hour, half) = (hour.to_string(), if afternoon { "pm" } else { "am" });
        self.with(
            "clock-hour",
            &[("hour", Arg::Text(&hour)), ("half", Arg::Text(half))],
        )
    }

    /// The time of day with its day where that is not today: "2:05 PM", "tomorrow 2:05 PM", "Sat 2:05 PM" within six
    /// days, "Jun 13, 2:05 PM" beyond, the year where it is another.
    pub fn clock_day(&self, utc_ms: i64, now_ms: i64) -> String {
        let (then, now) = (local(self.zone, utc_ms), local(self.zone, now_ms));
        let time = self.time_of(&then);
        let days = days_between(&now, &then);
        if days == 0 {
            return time;
        }
        let day = self.day_of(&then, &now);
        let args = [("day", Arg::Text(&day)), ("time", Arg::Text(&time))];
        if days.abs() <= 6 {
            self.with("clock-on-day", &args)
        } else {
            self.with("clock-on-date", &args)
        }
    }

    /// The time of day as it stands after "at", "since", "until": "2:05 PM", "las 2:05 p. m.", "la 1:00 p. m.".
    pub fn the_clock(&self, utc_ms: i64) -> String {
        let at = local(self.zone, utc_ms);
        let hour = match self.viewer.hours {
            HourCycle::Twelve => at.hour12().1,
            HourCycle::TwentyFour => at.hour(),
        };
        let (hour, time) = (Arg::Number(i64::from(hour)), self.time_of(&at));
        self.with("clock-the", &[("hour", hour), ("time", Arg::Text(&time))])
    }

    /// The same with its day where that is not today: "tomorrow 2:05 PM", "mañana a las 2:05 p. m.".
    pub fn the_clock_day(&self, utc_ms: i64, now_ms: i64) -> String {
        let (then, now) = (local(self.zone, utc_ms), local(self.zone, now_ms));
        let time = self.the_clock(utc_ms);
        if days_between(&now, &then) == 0 {
            return time;
        }
        let day = self.day_of(&then, &now);
        let args = [("day", Arg::Text(&day)), ("time", Arg::Text(&time))];
        self.with("clock-the-day", &args)
    }

    /// From one time to another: "11:10 AM–12:05 PM"; with days where either is not today.
    pub fn clock_span(&self, from_ms: i64, to_ms: i64, now_ms: i64) -> String {
        let days = [from_ms, to_ms, now_ms].map(|ms| local(self.zone, ms).date());
        let (from, to) = (
            self.clock_day(from_ms, now_ms),
            self.clock_day(to_ms, now_ms),
        );
        let args = [("from", Arg::Text(&from)), ("to", Arg::Text(&to))];
        if days[0] == days[2] && days[1] == days[2] {
            self.with("clock-span", &args)
        } else {
            self.with("clock-span-days", &args)
        }
    }

    /// The value of a form's date-and-time field: "2026-06-13T14:00", in the viewer's zone.
    pub fn datetime_field(&self, utc_ms: i64) -> String {
        local(self.zone, utc_ms)
            .format("%Y-%m-%dT%H:%M")
            .to_string()
    }

    /// The value of a form's time field: "14:00", in the viewer's zone.
    pub fn time_field(&self, utc_ms: i64) -> String {
        local(self.zone, utc_ms).format("%H:%M").to_string()
    }

    /// A time of day by the wall clock, before any zone.
    pub(in super::super) fn time_of(&self, at: &impl Timelike) -> String {
        let minute = format!("{:02}", at.minute());
        match self.viewer.hours {
            HourCycle::Twelve => {
                let (afternoon, hour) = at.hour12();
                let (hour, half) = (hour.to_string(), if afternoon { "pm" } else { "am" });
                let args = [
                    ("hour", Arg::Text(&hour)),
                    ("minute", Arg::Text(&minute)),
                    ("half", Arg::Text(half)),
                ];
                self.with("clock-twelve", &args)
            }
            HourCycle::TwentyFour => {
                let hour = format!("{:02}", at.hour());
                self.with(
                    "clock-twenty-four",
                    &[("hour", Arg::Text(&hour)), ("minute", Arg::Text(&minute))],
                )
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, Viewer, metric_viewer, test_viewer};
    use super::*;
    use crate::moment::{HOUR, MINUTE};

    /// Saturday 2026-06-13 14:05 in Chicago (UTC−5).
    const LUNCH: i64 = 1_781_377_500_000;
    const DAY: i64 = 24 * HOUR;

    fn all(write: impl Fn(&Words<'_>) -> String) -> [String; 4] {
        let viewers =
            [Locale::EnUs, Locale::EsUs].map(|locale| [test_viewer(locale), metric_viewer(locale)]);
        let [[a, b], [c, d]] = &viewers;
        [a, c, b, d].map(|viewer| write(&Words::of(viewer)))
    }

    #[test]
    fn a_spanish_hour_after_a_preposition_has_its_article() {
        let one = LUNCH - HOUR;
        let the = |at| all(|say| say.the_clock(at));
        assert_eq!(the(one), ["1:05 PM", "la 1:05 p. m.", "13:05", "las 13:05"]);
        assert_eq!(the(one + 12 * HOUR)[3], "la 01:05");
        assert_eq!(the(LUNCH)[1], "las 2:05 p. m.");
        assert_eq!(
            all(|say| say.the_clock_day(one + DAY, LUNCH))[1],
            "mañana a la 1:05 p. m."
        );
    }

    #[test]
    fn the_serving_hour_reads_in_each_usage() {
        assert_eq!(
            all(|say| say.clock(LUNCH)),
            ["2:05 PM", "2:05 p. m.", "14:05", "14:05"]
        );
        let midnight = LUNCH - 14 * HOUR - 5 * MINUTE;
        assert_eq!(
            all(|say| say.clock(midnight)),
            ["12:00 AM", "12:00 a. m.", "00:00", "00:00"]
        );
        assert_eq!(
            all(|say| say.hour(LUNCH - 5 * MINUTE)),
            ["2 PM", "2 p. m.", "14:00", "14:00"]
        );
        assert_eq!(all(|say| say.hour(LUNCH))[0], "2:05 PM");
        assert_eq!(all(|say| say.datetime_field(LUNCH))[0], "2026-06-13T14:05");
        assert_eq!(all(|say| say.time_field(LUNCH))[0], "14:05");
    }

    #[test]
    fn another_day_is_named_the_nearer_the_shorter() {
        let say = |days: i64| all(|say| say.clock_day(LUNCH, LUNCH - days * DAY)).map(|text| text);
        assert_eq!(say(0)[..2], ["2:05 PM", "2:05 p. m."]);
        assert_eq!(say(1)[..2], ["tomorrow 2:05 PM", "mañana 2:05 p. m."]);
        assert_eq!(say(-1)[..2], ["yesterday 2:05 PM", "ayer 2:05 p. m."]);
        assert_eq!(say(6)[..2], ["Sat 2:05 PM", "sáb 2:05 p. m."]);
        assert_eq!(say(7)[..2], ["Jun 13, 2:05 PM", "13 jun, 2:05 p. m."]);
        assert_eq!(
            say(-300)[2..],
            ["Jun 13, 2026, 14:05", "13 jun 2026, 14:05"]
        );
    }

    #[test]
    fn a_day_ends_at_the_viewers_midnight_not_after_24_hours() {
        let viewer = test_viewer(Locale::EnUs);
        let say = Words::of(&viewer);
        let late = LUNCH + 9 * HOUR;
        assert_eq!(say.clock_day(late + HOUR, late), "tomorrow 12:05 AM");
        let tokyo = Viewer {
            zone: "Asia/Tokyo".into(),
            ..viewer.clone()
        };
        assert_eq!(Words::of(&tokyo).clock_day(late + HOUR, late), "2:05 PM");
    }

    #[test]
    fn a_span_carries_days_only_when_it_leaves_today() {
        let viewer = test_viewer(Locale::EnUs);
        let say = Words::of(&viewer);
        assert_eq!(
            say.clock_span(LUNCH - 3 * HOUR, LUNCH, LUNCH),
            "11:05 AM–2:05 PM"
        );
        assert_eq!(
            say.clock_span(LUNCH, LUNCH + 11 * HOUR, LUNCH),
            "2:05 PM to tomorrow 1:05 AM"
        );
        assert_eq!(say.day(LUNCH, LUNCH), "today");
    }

    #[test]
    fn absurd_instants_do_not_panic() {
        for ms in [i64::MIN, i64::MAX] {
            assert!(
                all(|say| say.clock_day(ms, 0))
                    .iter()
                    .all(|text| !text.is_empty())
            );
        }
    }
}
