use super::{slab::first_term, *};
use crate::moment::MINUTE;
use crate::safety::food_log::walk::walk;
use proptest::prelude::*;

fn at(minute: i64, f: i64) -> TempAt {
    TempAt {
        at: minute * MINUTE,
        temp: Mk::from_f(f),
    }
}

fn ask(readings: Vec<TempAt>, minute: i64) -> CoolingAnswer {
    cooling(&CoolingInput {
        readings,
        now: minute * MINUTE,
        pan: None,
    })
    .unwrap()
}

/// A reading each five minutes from one temperature to another in a straight line.
fn line(from: (i64, i64), to: (i64, i64)) -> Vec<TempAt> {
    let f = |minute: i64| from.1 + (to.1 - from.1) * (minute - from.0) / (to.0 - from.0);
    (from.0..=to.0)
        .step_by(5)
        .map(|minute| at(minute, f(minute)))
        .collect()
}

#[test]
fn the_first_term_is_the_published_one() {
    let text = include_str!("../../../tests/published/one_term_coefficients.csv");
    let rows = text.lines().skip(1).map(|line| {
        let cells: Vec<&str> = line.split(',').collect();
        [0, 1, 2].map(|cell: usize| cells[cell].parse::<f64>().unwrap())
    });
    let mut seen = 0;
    for [biot, zeta, c] in rows {
        let ours = first_term(biot);
        assert!(
            (ours.0 - zeta).abs() < 1e-6 && (ours.1 - c).abs() < 1e-6,
            "Bi {biot}: {ours:?}"
        );
        seen += 1;
    }
    assert_eq!(seen, 35);
}

#[test]
fn pulled_pork_in_shallow_pans_is_cold_in_time() {
    let mut readings = line((0, 160), (60, 100));
    readings.extend(line((65, 95), (120, 68)));
    readings.extend(line((125, 67), (300, 41)));
    let answer = ask(readings, 300);
    assert_eq!(answer.state, CoolingState::Cold);
    assert!(answer.began_at < answer.first_at && answer.first_at < answer.cold_at);
}

#[test]
fn a_deep_pot_that_is_at_90_after_two_hours_is_thrown_away_and_stays_so() {
    let mut readings = line((0, 134), (120, 90));
    assert_eq!(
        ask(readings.clone(), 120).state,
        CoolingState::First { by: 120 * MINUTE }
    );
    assert_eq!(ask(readings.clone(), 121).state, CoolingState::TooLong);
    readings.extend(line((125, 89), (300, 41)));
    assert_eq!(ask(readings.clone(), 300).state, CoolingState::TooLong);
    readings.extend(line((305, 45), (400, 165)));
    assert_eq!(ask(readings, 400).state, CoolingState::TooLong);
}

#[test]
fn the_second_stage_has_six_hours_from_the_start() {
    let mut readings = line((0, 134), (60, 69));
    readings.extend(line((65, 68), (200, 55)));
    assert_eq!(
        ask(readings.clone(), 200).state,
        CoolingState::Second { by: 360 * MINUTE }
    );
    assert_eq!(ask(readings, 361).state, CoolingState::TooLong);
}

#[test]
fn what_is_hot_does_not_run_and_nothing_is_not_called_well() {
    assert_eq!(ask(line((0, 170), (60, 150)), 60).state, CoolingState::Hot);
    let nothing = CoolingInput {
        readings: vec![],
        now: 0,
        pan: None,
    };
    assert_eq!(cooling(&nothing), Err(NotALog::Empty));
}

fn pan(depth_mm: i64, surroundings: Surroundings) -> Option<Forecast> {
    let temp = Some(Mk::from_f(140));
    forecast::forecast(
        &Pan {
            depth_mm,
            surroundings,
            temp,
        },
        None,
    )
}

#[test]
fn two_inches_in_a_refrigerator_take_hours_and_absurd_depths_none() {
    let two_inches = pan(51, Surroundings::Refrigerator).unwrap();
    assert!(two_inches.first_ms_least > 30 * MINUTE, "{two_inches:?}");
    assert!(two_inches.first_ms_most > FIRST_MS, "{two_inches:?}");
    assert_eq!(pan(4, Surroundings::IceBath), None);
    assert_eq!(pan(301, Surroundings::IceBath), None);
}

proptest! {
    #[test]
    fn deeper_is_never_sooner_and_ice_never_later(depth in 5i64..=299) {
        let of = |depth, around| pan(depth, around).unwrap();
        let (here, deeper) = (of(depth, Surroundings::Refrigerator), of(depth + 1, Surroundings::Refrigerator));
        prop_assert!(deeper.cold_ms_least >= here.cold_ms_least && deeper.cold_ms_most >= here.cold_ms_most);
        prop_assert!(here.first_ms_least <= here.first_ms_most && here.cold_ms_least <= here.cold_ms_most);
        let ice = of(depth, Surroundings::IceBath);
        prop_assert!(ice.first_ms_most <= here.first_ms_most && ice.cold_ms_most <= here.cold_ms_most);
    }

    /// Law: readings that are left out never make it milder.
    #[test]
    fn a_gap_is_as_bad_as_any_path(
        start in 35i64..150,
        changes in prop::collection::vec(-60i64..60, 2..30),
        keep in 1usize..28,
    ) {
        let all = walk(start, &changes, 35..=150);
        let mut fewer = all.clone();
        fewer.drain(1..keep.min(changes.len()));
        let now = 9 * changes.len() as i64;
        let (all, fewer) = (ask(all, now), ask(fewer, now));
        let never = i64::MAX;
        prop_assert!(fewer.began_at.unwrap_or(never) <= all.began_at.unwrap_or(never));
        prop_assert!(fewer.cold_at.unwrap_or(never) >= all.cold_at.unwrap_or(never));
    }
}
