//! Days in the viewer's zone, the nearer the shorter.

use super::super::{Arg, Words, key, zone::local};
use chrono::{Datelike, NaiveDateTime};

const WEEKDAYS: [&str; 7] = [
    key("weekday-1"),
    key("weekday-2"),
    key("weekday-3"),
    key("weekday-4"),
    key("weekday-5"),
    key("weekday-6"),
    key("weekday-7"),
];

const MONTHS: [&str; 12] = [
    key("month-1"),
    key("month-2"),
    key("month-3"),
    key("month-4"),
    key("month-5"),
    key("month-6"),
    key("month-7"),
    key("month-8"),
    key("month-9"),
    key("month-10"),
    key("month-11"),
    key("month-12"),
];

impl Words<'_> {
    /// The day alone: "today", "tomorrow", "Sat", "Jun 13", "Jun 13, 2027".
    pub fn day(&self, utc_ms: i64, now_ms: i64) -> String {
        self.day_of(&local(self.zone, utc_ms), &local(self.zone, now_ms))
    }

    /// A day as a heading: "Today, Sat, Jun 13", "Sat, Jun 6".
    pub fn day_heading(&self, utc_ms: i64, now_ms: i64) -> String {
        let (then, now) = (local(self.zone, utc_ms), local(self.zone, now_ms));
        let weekday = self.text(WEEKDAYS[then.weekday().num_days_from_monday() as usize]);
        let date = self.date_of(&then, &now);
        let (weekday, date) = (("weekday", Arg::Text(&weekday)), ("date", Arg::Text(&date)));
        let said = self.with("day-heading", &[weekday, date]);
        let near = match days_between(&now, &then) {
            0 => self.text("day-heading-today"),
            -1 => self.text("day-heading-yesterday"),
            1 => self.text("day-heading-tomorrow"),
            _ => return said,
        };
        self.with(
            "day-heading-near",
            &[("near", Arg::Text(&near)), ("day", Arg::Text(&said))],
        )
    }

    pub(super) fn day_of(&self, then: &NaiveDateTime, now: &NaiveDateTime) -> String {
        match days_between(now, then) {
            0 => self.text("day-today"),
            1 => self.text("day-tomorrow"),
            -1 => self.text("day-yesterday"),
            -6..=6 => self.text(WEEKDAYS[then.weekday().num_days_from_monday() as usize]),
            _ => self.date_of(then, now),
        }
    }

    fn date_of(&self, then: &NaiveDateTime, now: &NaiveDateTime) -> String {
        let (month, day) = (
            self.text(MONTHS[then.month0() as usize]),
            then.day().to_string(),
        );
        let (month, day) = (("month", Arg::Text(&month)), ("day", Arg::Text(&day)));
        if then.year() == now.year() {
            return self.with("day-date", &[month, day]);
        }
        let year = then.year().to_string();
        self.with("day-date-year", &[month, day, ("year", Arg::Text(&year))])
    }
}

/// Midnights of the wall calendar from one to the other.
pub(super) fn days_between(from: &NaiveDateTime, to: &NaiveDateTime) -> i64 {
    (to.date() - from.date()).num_days()
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, test_viewer};
    use super::*;

    #[test]
    fn every_day_and_month_has_its_name() {
        let (en, es) = (test_viewer(Locale::EnUs), test_viewer(Locale::EsUs));
        let (en, es) = (Words::of(&en), Words::of(&es));
        // Monday 2026-06-15, noon in Chicago.
        let (monday, day) = (1_781_542_800_000, 86_400_000);
        let week = |say: &Words<'_>| {
            (0..7)
                .map(|n| say.day(monday + n * day, monday - 2 * day))
                .collect::<Vec<_>>()
        };
        assert_eq!(week(&en)[..5], ["Mon", "Tue", "Wed", "Thu", "Fri"]);
        assert_eq!(week(&es)[..5], ["lun", "mar", "mié", "jue", "vie"]);
        let month =
            |say: &Words<'_>, n: i64| say.day(monday + (n - 5) * 30 * day, monday + 400 * day);
        assert_eq!(en.day_heading(monday, monday), "Today, Mon, Jun 15");
        assert_eq!(es.day_heading(monday, monday + day), "Ayer, lun, 15 jun");
        assert_eq!(en.day_heading(monday, monday + 9 * day), "Mon, Jun 15");
        assert_eq!(month(&en, 0), "Jan 16, 2026");
        assert_eq!(month(&es, 11), "12 dic 2026");
    }
}
