//! Parts of the day, for times that are too far off to be told by the clock.

use super::{
    super::{Arg, Words, key, zone::local},
    day::days_between,
};
use chrono::Timelike;

/// From which hour of the wall clock on a part of the day is called so. Common practice, no source.
const PARTS: [(u32, &str); 8] = [
    (0, key("day-part-small-hours")),
    (5, key("day-part-early-morning")),
    (8, key("day-part-late-morning")),
    (11, key("day-part-midday")),
    (13, key("day-part-early-afternoon")),
    (15, key("day-part-late-afternoon")),
    (18, key("day-part-evening")),
    (22, key("day-part-late-evening")),
];

impl Words<'_> {
    /// "Early afternoon", with its day where that is not today: "tomorrow, late morning".
    pub fn day_part(&self, utc_ms: i64, now_ms: i64) -> String {
        let (then, now) = (local(self.zone, utc_ms), local(self.zone, now_ms));
        let begun = PARTS.iter().rev().find(|(from, _)| *from <= then.hour());
        let part = self.text(begun.unwrap_or(&PARTS[0]).1);
        if days_between(&now, &then) == 0 {
            return part;
        }
        let day = self.day_of(&then, &now);
        let args = [("day", Arg::Text(&day)), ("part", Arg::Text(&part))];
        self.with("day-part-on-day", &args)
    }

    /// From one part of the day to another, or the one that both lie in; `to_ms` itself is not included.
    pub fn day_parts(&self, from_ms: i64, to_ms: i64, now_ms: i64) -> String {
        let [from, to] = [from_ms, to_ms.saturating_sub(1)].map(|at| self.day_part(at, now_ms));
        match from == to {
            true => from,
            false => {
                let args = [("from", Arg::Text(&from)), ("to", Arg::Text(&to))];
                self.with("day-part-span", &args)
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, test_viewer};
    use super::*;
    use crate::moment::HOUR;

    /// Saturday 2026-06-13, midnight in Chicago.
    const MIDNIGHT: i64 = 1_781_326_800_000;

    #[test]
    fn every_hour_has_its_part_in_both_languages() {
        let parts = |locale| -> Vec<String> {
            let viewer = test_viewer(locale);
            let say = Words::of(&viewer);
            let mut all: Vec<String> = (0..24)
                .map(|hour| say.day_part(MIDNIGHT + hour * HOUR, MIDNIGHT))
                .collect();
            all.dedup();
            all
        };
        let english = [
            "the small hours",
            "early morning",
            "late morning",
            "midday",
            "early afternoon",
            "late afternoon",
            "evening",
            "late evening",
        ];
        assert_eq!(parts(Locale::EnUs), english);
        assert_eq!(parts(Locale::EsUs).len(), 8);
    }

    #[test]
    fn two_ends_in_one_part_are_one_and_another_day_is_named() {
        let (en, es) = (test_viewer(Locale::EnUs), test_viewer(Locale::EsUs));
        let (en, es) = (Words::of(&en), Words::of(&es));
        let at = |hour: i64| MIDNIGHT + hour * HOUR;
        assert_eq!(en.day_parts(at(13), at(15), at(8)), "early afternoon");
        assert_eq!(
            en.day_parts(at(11), at(14), at(8)),
            "midday to early afternoon"
        );
        assert_eq!(en.day_part(at(33), at(20)), "tomorrow, late morning");
        assert_eq!(
            es.day_parts(at(11), at(38), at(8)),
            "de mediodía a mañana, primeras horas de la tarde"
        );
    }
}
