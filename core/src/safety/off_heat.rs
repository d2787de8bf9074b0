//! How long cooked food has stood, or may have stood, where bacteria grow since it came off the heat. Start at [`off_heat`].
//!
//! [`clocks`](super::clocks) takes all silence for spent. Here one thing more is known: nothing warms the food, so that between
//! two readings that are both hot it was hot. Laws: the answer is never milder than any course of food that only cools; what
//! is warmed again keeps what was spent; whoever reads nothing has it counted from the time it came off.

use super::{
    clocks::{Clock, Kept},
    food_log::{FASTEST, FOOD, GAP_MS, NOISE, TempAt},
};
use crate::moment::MINUTE;

/// What is asked.
#[derive(Clone, Copy, Debug)]
pub struct OffHeat<'a> {
    /// How the food is kept.
    pub kept: Kept,
    /// When it came off, milliseconds since 1970: it was hot then.
    pub since: i64,
    /// What was read of its coldest place since, oldest first.
    pub readings: &'a [TempAt],
    /// When it was warmed again, each time.
    pub warmed: &'a [i64],
    /// When it is.
    pub now: i64,
}

/// How food stands since it came off.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StandsOff {
    /// What it has spent between hot and cold.
    pub clock: Clock,
    /// When it was last known to be hot.
    pub hot_at: i64,
    /// Since when readings have shown it below the hot limit, if they do.
    pub below_since: Option<TempAt>,
    /// The last that was read and believed.
    pub last: Option<TempAt>,
}

/// How it stands at `now`; none where it came off later than that.
pub fn off_heat(input: &OffHeat<'_>) -> Option<StandsOff> {
    if input.since > input.now {
        return None;
    }
    let hot = input.kept.hot();
    let mut so_far = SoFar {
        kept: input.kept,
        at: input.since,
        last: None,
        spent: 0,
        unknown: 0,
        hot_at: input.since,
        below_since: None,
    };
    for reading in input.readings {
        let in_time = (so_far.at..=input.now).contains(&reading.at);
        if in_time && so_far.believes(*reading) {
            let is_warmed = input
                .warmed
                .iter()
                .any(|at| *at > so_far.at && *at <= reading.at);
            so_far.take(*reading, is_warmed);
        }
    }
    let last = so_far.last;
    so_far.wait(input.now);
    let (limit_ms, source) = input.kept.standing();
    let left_ms = (limit_ms - so_far.spent).max(0);
    let is_cold = last.is_some_and(|last| last.temp <= input.kept.cold());
    let clock = Clock {
        spent_ms: so_far.spent,
        unknown_ms: so_far.unknown,
        limit_ms,
        left_ms,
        is_over: so_far.spent >= limit_ms,
        runs_out_at: (left_ms > 0 && !is_cold).then_some(input.now + left_ms),
        is_silent: false,
        source,
    };
    Some(StandsOff {
        clock,
        hot_at: match last {
            Some(last) if last.temp >= hot => last.at,
            _ => so_far.hot_at,
        },
        below_since: so_far.below_since,
        last,
    })
}

struct SoFar {
    kept: Kept,
    /// Up to when it is counted.
    at: i64,
    last: Option<TempAt>,
    spent: i64,
    unknown: i64,
    hot_at: i64,
    below_since: Option<TempAt>,
}

impl SoFar {
    /// Food does not fall, or rise, faster than it can: what does was pulled out or moved.
    fn believes(&self, reading: TempAt) -> bool {
        let most = |since: i64| NOISE + FASTEST * ((reading.at - since) / MINUTE + 1);
        let jumps = self
            .last
            .is_some_and(|last| (last.temp.0 - reading.temp.0).abs() > most(last.at));
        FOOD.contains(&reading.temp) && !jumps
    }

    fn was_hot(&self) -> bool {
        self.last.is_none_or(|last| last.temp >= self.kept.hot())
    }

    fn take(&mut self, reading: TempAt, is_warmed: bool) {
        let (hot, cold) = (self.kept.hot(), self.kept.cold());
        let length = reading.at - self.at;
        let stayed_hot = self.was_hot() && reading.temp >= hot && !is_warmed;
        let stayed_cold =
            self.last.is_some_and(|last| last.temp <= cold) && reading.temp <= cold && !is_warmed;
        if !stayed_hot && !stayed_cold {
            self.spent += length;
            let is_known = length <= GAP_MS && self.last.is_some();
            self.unknown += if is_known { 0 } else { length };
        }
        match reading.temp >= hot {
            true => (self.hot_at, self.below_since) = (reading.at, None),
            false => {
                self.below_since.get_or_insert(reading);
            }
        }
        (self.at, self.last) = (reading.at, Some(reading));
    }

    /// From the last reading to now: nobody knows, but that what is cold stays so.
    fn wait(&mut self, now: i64) {
        let length = now - self.at;
        if self.last.is_some_and(|last| last.temp <= self.kept.cold()) {
            return;
        }
        self.spent += length;
        let is_known = length <= GAP_MS && !self.was_hot();
        self.unknown += if is_known { 0 } else { length };
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        moment::HOUR,
        safety::{Source, clocks::Rules},
        units::Mk,
    };
    use proptest::prelude::*;

    const HOME: Kept = Kept {
        rules: Rules::Consumer,
        hot_air: false,
        intact: true,
        was_hot: true,
    };

    fn at(minute: i64, f: i64) -> TempAt {
        TempAt {
            at: minute * MINUTE,
            temp: Mk::from_f(f),
        }
    }

    fn stands(kept: Kept, readings: &[TempAt], warmed: &[i64], minute: i64) -> StandsOff {
        off_heat(&OffHeat {
            kept,
            since: 0,
            readings,
            warmed,
            now: minute * MINUTE,
        })
        .unwrap()
    }

    #[test]
    fn who_reads_nothing_has_two_hours_from_the_time_it_came_off() {
        let unread = stands(HOME, &[], &[], 90);
        assert_eq!(unread.clock.runs_out_at, Some(120 * MINUTE));
        assert_eq!(unread.clock.unknown_ms, 90 * MINUTE);
        assert!(stands(HOME, &[], &[], 120).clock.is_over);
        assert_eq!(unread.clock.source, Source::UsdaTwoHours);
    }

    #[test]
    fn a_butt_read_hot_in_its_box_three_hours_later_was_hot_all_along() {
        let held = stands(HOME, &[at(180, 152)], &[], 185);
        assert_eq!(held.clock.spent_ms, 5 * MINUTE);
        assert_eq!(held.hot_at, 180 * MINUTE);
        assert_eq!(held.below_since, None);
    }

    #[test]
    fn below_the_hot_limit_all_counts_since_it_was_last_hot_and_warming_sets_nothing_back() {
        let readings = [at(60, 150), at(90, 131)];
        let under = stands(HOME, &readings, &[], 95);
        assert_eq!(under.clock.spent_ms, 35 * MINUTE);
        assert_eq!(under.below_since, Some(at(90, 131)));
        let again = [at(60, 150), at(90, 131), at(130, 168)];
        let warmed = stands(HOME, &again, &[100 * MINUTE], 131);
        assert_eq!(warmed.below_since, None);
        assert_eq!(warmed.clock.spent_ms, 71 * MINUTE);
    }

    #[test]
    fn two_hot_readings_around_a_warming_prove_nothing_about_between() {
        let readings = [at(10, 160), at(100, 166)];
        let unsaid = stands(HOME, &readings, &[], 100);
        let warmed = stands(HOME, &readings, &[80 * MINUTE], 100);
        assert_eq!(unsaid.clock.spent_ms, 0);
        assert_eq!(warmed.clock.spent_ms, 90 * MINUTE);
    }

    #[test]
    fn a_probe_pulled_out_is_not_believed_and_what_is_cold_stays_so() {
        let pulled = stands(HOME, &[at(10, 180), at(12, 80)], &[], 15);
        assert_eq!(pulled.last, Some(at(10, 180)));
        let mut cold = vec![at(10, 150), at(60, 90), at(110, 39)];
        let away = stands(HOME, &cold, &[], 600);
        assert_eq!(away.clock.spent_ms, 100 * MINUTE);
        cold.push(at(590, 38));
        assert_eq!(stands(HOME, &cold, &[], 600).clock, away.clock);
    }

    #[test]
    fn hot_air_leaves_one_hour_and_the_public_four() {
        let limit = |rules, hot_air| {
            let kept = Kept {
                rules,
                hot_air,
                ..HOME
            };
            stands(kept, &[], &[], 1).clock.limit_ms / HOUR
        };
        assert_eq!(limit(Rules::Consumer, true), 1);
        assert_eq!(limit(Rules::FoodCode, false), 4);
        assert_eq!(limit(Rules::FoodCode, true), 1);
    }

    proptest! {
        /// Law: reading some of a course that only cools is never milder than the course itself.
        #[test]
        fn never_milder_than_food_that_only_cools(
            start in 140i64..205,
            falls in prop::collection::vec(0i64..8, 1..40),
            read in prop::collection::vec(any::<bool>(), 40),
        ) {
            let mut temp = start;
            let course: Vec<TempAt> = (1..).zip(&falls).map(|(step, fall)| {
                temp = (temp - fall).max(60);
                at(5 * step, temp)
            }).collect();
            let now = 5 * falls.len() as i64;
            let below = course.iter().find(|one| one.temp < HOME.hot());
            let truly = below.map_or(0, |one| now * MINUTE - one.at);
            let seen: Vec<TempAt> = course.iter().zip(&read).filter(|(_, read)| **read).map(|(one, _)| *one).collect();
            let answer = stands(HOME, &seen, &[], now);
            prop_assert!(answer.clock.spent_ms >= truly, "{answer:?}");
            prop_assert!(answer.clock.unknown_ms <= answer.clock.spent_ms);
        }

        /// Law: what was read below the hot limit is counted for good.
        #[test]
        fn what_is_known_to_be_spent_stays_spent(temps in prop::collection::vec(-40i64..240, 1..60)) {
            let readings: Vec<TempAt> = (1..).zip(temps).map(|(minute, f)| at(minute, f)).collect();
            let mut before = 0;
            for (count, reading) in (1..).zip(&readings) {
                let now = stands(HOME, &readings[..count], &[], reading.at / MINUTE);
                if now.last == Some(*reading) {
                    let sure = now.clock.spent_ms - now.clock.unknown_ms;
                    prop_assert!(sure >= before, "{now:?}");
                    before = sure;
                }
            }
        }
    }
}
