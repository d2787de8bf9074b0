use super::*;
use crate::safety::food_log::walk::walk;
use crate::{
    moment::{HOUR, MINUTE},
    safety::Source,
};
use proptest::prelude::*;

const HALF_BIRD: Kept = Kept {
    rules: Rules::Consumer,
    hot_air: false,
    intact: false,
    was_hot: false,
};

fn at(minute: i64, f: i64) -> TempAt {
    TempAt {
        at: minute * MINUTE,
        temp: Mk::from_f(f),
    }
}

/// A reading each minute, from one temperature to another in a straight line.
fn line(minutes: std::ops::Range<i64>, from: i64, to: i64) -> Vec<TempAt> {
    let length = minutes.end - minutes.start;
    let f = |minute: i64| from + (to - from) * (minute - minutes.start) / length;
    minutes
        .clone()
        .map(|minute| at(minute, f(minute)))
        .collect()
}

fn ask(kept: Kept, readings: Vec<TempAt>, minute: i64) -> ClocksAnswer {
    clocks(&ClocksInput {
        kept,
        readings,
        now: minute * MINUTE,
    })
    .unwrap()
}

#[test]
fn half_a_chicken_that_comes_up_in_an_hour_has_spent_that_hour() {
    let answer = ask(HALF_BIRD, line(0..61, 40, 162), 60);
    assert!(answer.was_hot);
    assert!(
        (45..=52).contains(&(answer.coming_up.spent_ms / MINUTE)),
        "{answer:?}"
    );
    assert_eq!(answer.coming_up.runs_out_at, None);
    assert_eq!(answer.standing.spent_ms, 0);
}

#[test]
fn a_cold_pit_that_holds_an_injected_butt_under_140_rings_before_four_hours_and_an_intact_one_is_only_told()
 {
    let night = line(0..211, 45, 120);
    let injected = ask(HALF_BIRD, night.clone(), 210);
    assert_eq!(injected.coming_up.runs_out_at, Some(240 * MINUTE));
    assert!(!injected.coming_up.is_silent);
    let intact = ask(
        Kept {
            intact: true,
            ..HALF_BIRD
        },
        night,
        210,
    );
    assert!(intact.coming_up.is_silent && !intact.coming_up.is_over);
    assert_eq!(intact.coming_up.limit_ms, 6 * HOUR);
}

#[test]
fn what_stood_on_the_table_keeps_its_minutes_when_it_is_warmed_again() {
    let mut readings = line(0..10, 165, 160);
    readings.extend(line(10..20, 135, 120));
    readings.extend(line(20..80, 119, 100));
    readings.extend(line(80..110, 100, 165));
    let warm = ask(HALF_BIRD, readings.clone(), 110);
    assert_eq!(warm.is_hot, Some(true));
    assert!(warm.standing.spent_ms >= 80 * MINUTE, "{warm:?}");
    readings.extend(line(110..160, 130, 90));
    let again = ask(HALF_BIRD, readings, 160);
    assert!(again.standing.is_over, "{again:?}");
}

#[test]
fn hot_air_leaves_one_hour_and_the_food_code_four() {
    let standing = |rules, hot_air| {
        let kept = Kept {
            rules,
            hot_air,
            was_hot: true,
            ..HALF_BIRD
        };
        let answer = ask(kept, line(0..30, 120, 110), 30);
        (answer.standing.limit_ms / HOUR, answer.standing.source)
    };
    assert_eq!(standing(Rules::Consumer, false), (2, Source::UsdaTwoHours));
    assert_eq!(standing(Rules::Consumer, true), (1, Source::UsdaTwoHours));
    assert_eq!(standing(Rules::FoodCode, false), (4, Source::FoodCodeTime));
    assert_eq!(standing(Rules::FoodCode, true), (1, Source::UsdaTwoHours));
}

#[test]
fn a_probe_in_the_air_neither_ends_the_way_up_nor_stops_the_clock() {
    let mut readings = line(0..60, 40, 100);
    readings.extend(line(60..200, 215, 225));
    let answer = ask(HALF_BIRD, readings, 200);
    assert!(!answer.was_hot);
    assert_eq!(answer.is_hot, None);
    assert!(answer.coming_up.spent_ms >= 198 * MINUTE, "{answer:?}");
}

#[test]
fn silence_counts_as_spent_and_is_told_as_not_known() {
    let answer = ask(HALF_BIRD, vec![at(0, 150), at(1, 150)], 90);
    assert_eq!(answer.standing.unknown_ms, 89 * MINUTE);
    assert_eq!(answer.standing.runs_out_at, Some((90 + 31) * MINUTE));
}

#[test]
fn no_reading_and_a_reading_from_the_future_are_refused() {
    let input = |readings| ClocksInput {
        kept: HALF_BIRD,
        readings,
        now: 0,
    };
    assert_eq!(clocks(&input(vec![])), Err(NotALog::Empty));
    assert_eq!(clocks(&input(vec![at(-1, 900)])), Err(NotALog::Empty));
    assert_eq!(clocks(&input(vec![at(1, 100)])), Err(NotALog::OutOfOrder));
}

proptest! {
    /// Law: a gap is never milder than any path that food could have taken through it.
    #[test]
    fn a_gap_is_as_bad_as_any_path_through_it(
        start in 40i64..170,
        changes in prop::collection::vec(-60i64..60, 2..24),
        intact: bool,
        was_hot: bool,
    ) {
        let kept = Kept { intact, was_hot, ..HALF_BIRD };
        let path = walk(start, &changes, 40..=170);
        let now = 9 * changes.len() as i64;
        let gap = ask(kept, vec![path[0], path[changes.len()]], now);
        let known = ask(kept, path, now);
        prop_assert_eq!(&known.flags, &vec![]);
        let spent = |answer: &ClocksAnswer| answer.coming_up.spent_ms + answer.standing.spent_ms;
        prop_assert!(spent(&gap) >= spent(&known));
    }

    /// Law: no clock ever goes back.
    #[test]
    fn no_clock_goes_back(temps in prop::collection::vec(30i64..240, 1..80), intact: bool) {
        let mut so_far = Clocks::of(Kept { intact, ..HALF_BIRD });
        let mut before = (0, 0);
        for (minute, f) in (0..).zip(temps) {
            so_far.push(at(minute, f)).unwrap();
            if let Some(answer) = so_far.answer(minute * MINUTE, vec![]) {
                let spent = (answer.coming_up.spent_ms, answer.standing.spent_ms);
                prop_assert!(spent.0 >= before.0 && spent.1 >= before.1);
                before = spent;
            }
        }
    }
}
