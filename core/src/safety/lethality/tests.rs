//! Laws of the sum, whatever the readings. The published cells are in `core/tests/lethality.rs`.

use super::*;
use crate::moment::{MINUTE, SECOND};
use proptest::prelude::*;

const PORK: PasteurizedFood = PasteurizedFood::Meat {
    logs: Logs::SixAndAHalf,
};
const FOODS: [PasteurizedFood; 4] = [
    PORK,
    PasteurizedFood::Chicken {
        fat_percent: Some(3),
    },
    PasteurizedFood::Turkey { fat_percent: None },
    PasteurizedFood::OtherPoultry {
        fat_percent: Some(12),
    },
];

fn at(second: i64, f_tenths: i64) -> TempAt {
    TempAt {
        at: second * SECOND,
        temp: Mk::from_f_tenths(f_tenths),
    }
}

fn ask(food: PasteurizedFood, readings: Vec<TempAt>) -> LethalityAnswer {
    lethality(&LethalityInput { food, readings }).unwrap()
}

#[test]
fn one_reading_at_an_instant_row_earns_nothing_and_two_earn_all() {
    assert_eq!(ask(PORK, vec![at(0, 1700)]).credit_permille, 0);
    let two = ask(PORK, vec![at(0, 1580), at(5, 1580)]);
    assert_eq!(
        (two.credit_permille, two.reached_at),
        (1000, Some(5 * SECOND))
    );
    let one_below = ask(PORK, vec![at(0, 1579), at(5, 1700)]);
    assert_eq!(one_below.reached_at, None, "{one_below:?}");
}

#[test]
fn below_the_lowest_row_nothing_is_earned_however_long() {
    let night = (0..2_000).map(|n| at(n * 60, 1299)).collect();
    assert_eq!(ask(PORK, night).credit_permille, 0);
}

#[test]
fn a_slow_come_up_is_told() {
    let slow: Vec<_> = (0..=400).map(|n| at(n * 60, 600 + n)).collect();
    let answer = ask(PORK, slow);
    assert_eq!(answer.come_up_ms, 400 * MINUTE);
    assert!(!answer.come_up_within);
}

#[test]
fn a_probe_pulled_into_the_air_earns_nothing() {
    let mut readings = vec![at(0, 1200), at(30, 1210)];
    readings.extend((2..200).map(|n| at(n * 30, 2200)));
    let answer = ask(PORK, readings);
    assert_eq!((answer.credit_permille, answer.reached_at), (0, None));
    assert_eq!(answer.unknown_ms, 198 * 30 * SECOND);
}

prop_compose! {
    fn a_night()(
        start in 320i64..1500,
        steps in prop::collection::vec((1i64..900, -60i64..90), 1..60),
    ) -> Vec<TempAt> {
        let (mut second, mut f) = (0, start);
        let mut night = vec![at(second, f)];
        for (seconds, warmer) in steps {
            second += seconds;
            f = (f + warmer).clamp(330, 2250);
            night.push(at(second, f));
        }
        night
    }
}

proptest! {
    #[test]
    fn credit_never_falls(night in a_night()) {
        for food in FOODS {
            let mut so_far = Lethality::of(food);
            let mut before = 0;
            for reading in &night {
                so_far.push(*reading).unwrap();
                let credit = so_far.answer(vec![]).credit_permille;
                prop_assert!(credit >= before);
                before = credit;
            }
        }
    }

    #[test]
    fn colder_readings_never_earn_more(night in a_night(), colder in 1i64..80) {
        let same: Vec<_> = night.iter().map(|one| TempAt { temp: Mk(one.temp.0 - colder * 100), ..*one }).collect();
        for food in FOODS {
            prop_assert!(ask(food, same.clone()).credit_permille <= ask(food, night.clone()).credit_permille);
        }
    }

    #[test]
    fn hotter_never_takes_longer(low in 1300i64..1650, up in 0i64..50) {
        for food in FOODS {
            let of = |tenths| food.seconds(Mk::from_f_tenths(tenths));
            if let (Some(cold), Some(hot)) = (of(low), of(low + up)) {
                prop_assert!(hot <= cold);
            }
        }
    }
}
