//! Lengths of time.

use super::{
    super::{Arg, Words},
    Round,
};
use crate::moment::{HOUR, MINUTE};

impl Words<'_> {
    /// A length of time to the nearest minute: "12 min", "1 h 20 min", "2 h", from two days up "2 days 3 h"; below
    /// half a minute "under 1 min". The sign is not shown.
    pub fn duration(&self, ms: i64) -> String {
        let minutes = Round::Nearest.divide(ms.saturating_abs(), MINUTE);
        match (minutes / 60, minutes % 60) {
            (0, 0) => self.text("duration-none"),
            (48.., _) => self.days(ms),
            (0, minutes) => self.with("duration-minutes", &[("minutes", Arg::Number(minutes))]),
            (hours, 0) => self.with("duration-hours", &[("hours", Arg::Number(hours))]),
            (hours, minutes) => self.with(
                "duration-hours-minutes",
                &[
                    ("hours", Arg::Number(hours)),
                    ("minutes", Arg::Number(minutes)),
                ],
            ),
        }
    }

    /// When something is, from now: "in 12 min", "now" within half a minute, "12 min ago" for what is past (`ms` < 0).
    pub fn until(&self, ms: i64) -> String {
        let duration = self.duration(ms);
        match Round::Nearest.divide(ms.saturating_abs(), MINUTE) {
            0 => self.text("relative-now"),
            _ if ms < 0 => self.with("relative-ago", &[("duration", Arg::Text(&duration))]),
            _ => self.with("relative-in", &[("duration", Arg::Text(&duration))]),
        }
    }

    /// How long ago something was: "12 min ago", "just now" within half a minute; what is yet to come is said so.
    pub fn ago(&self, ms: i64) -> String {
        match Round::Nearest.divide(ms.saturating_abs(), MINUTE) {
            0 => self.text("relative-past-now"),
            _ => self.until(ms.saturating_neg()),
        }
    }

    /// The same in the huge figures of a propped phone: hours and minutes left, "0:42", "1:05". Whole minutes rounded
    /// up, so that "0:00" stands only when it is time; what is overdue counts on as "-0:05".
    pub fn countdown(&self, ms: i64) -> String {
        let minutes = Round::Up.divide(ms, MINUTE);
        let (sign, size) = (if minutes < 0 { "-" } else { "" }, minutes.unsigned_abs());
        format!("{sign}{}:{:02}", size / 60, size % 60)
    }

    fn days(&self, ms: i64) -> String {
        let hours = Round::Nearest.divide(ms.saturating_abs(), HOUR);
        let days = ("days", Arg::Number(hours / 24));
        match hours % 24 {
            0 => self.with("duration-days", &[days]),
            hours => self.with(
                "duration-days-hours",
                &[days, ("hours", Arg::Number(hours))],
            ),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, test_viewer};
    use super::*;
    use crate::moment::SECOND;

    #[test]
    fn lengths_read_as_a_cook_says_them() {
        let (en, es) = (test_viewer(Locale::EnUs), test_viewer(Locale::EsUs));
        let (en, es) = (Words::of(&en), Words::of(&es));
        let lengths = [
            29 * SECOND,
            12 * MINUTE,
            80 * MINUTE,
            2 * HOUR,
            47 * HOUR,
            48 * HOUR,
            51 * HOUR,
        ];
        let said = [
            "under 1 min",
            "12 min",
            "1 h 20 min",
            "2 h",
            "47 h",
            "2 days",
            "2 days 3 h",
        ];
        assert_eq!(lengths.map(|ms| en.duration(ms)), said);
        assert_eq!(es.duration(51 * HOUR), "2 días 3 h");
        assert_eq!(
            [0, 12 * MINUTE, -HOUR].map(|ms| en.until(ms)),
            ["now", "in 12 min", "1 h ago"]
        );
        assert_eq!(
            [0, 12 * MINUTE, -HOUR].map(|ms| en.ago(ms)),
            ["just now", "12 min ago", "in 1 h"]
        );
        assert_eq!(
            [0, 12 * MINUTE, -HOUR].map(|ms| es.until(ms)),
            ["ahora", "en 12 min", "hace 1 h"]
        );
    }

    #[test]
    fn a_countdown_reaches_zero_only_when_it_is_time() {
        let viewer = test_viewer(Locale::EnUs);
        let say = Words::of(&viewer);
        let left = [
            42 * MINUTE,
            65 * MINUTE,
            1,
            0,
            -59 * SECOND,
            -MINUTE,
            -65 * MINUTE,
        ];
        assert_eq!(
            left.map(|ms| say.countdown(ms)),
            ["0:42", "1:05", "0:01", "0:00", "0:00", "-0:01", "-1:05"]
        );
    }

    #[test]
    fn absurd_lengths_do_not_panic() {
        let viewer = test_viewer(Locale::EsUs);
        let say = Words::of(&viewer);
        for ms in [i64::MIN, i64::MAX] {
            assert!(
                !say.until(ms).is_empty()
                    && !say.countdown(ms).is_empty()
                    && !say.ago(ms).is_empty()
            );
        }
    }
}
