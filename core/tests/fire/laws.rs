//! Laws over any input.

use proptest::prelude::*;
use slowbend_core::{fire::*, log::PitKind, units::Mk};

const KINDS: [PitKind; 6] = [
    PitKind::StickBurner,
    PitKind::Kettle,
    PitKind::Drum,
    PitKind::Ceramic,
    PitKind::Cabinet,
    PitKind::Pellet,
];

fn weather() -> impl Strategy<Value = Weather> {
    let of = |all| proptest::sample::select(all);
    (
        proptest::sample::select(Ambient::ALL),
        of(Wind::ALL),
        proptest::sample::select(Rain::ALL),
        proptest::sample::select(Sun::ALL),
    )
        .prop_map(|(ambient, wind, rain, sun)| Weather {
            ambient,
            wind,
            rain,
            sun,
        })
}

prop_compose! {
    fn inputs()(
        pit in proptest::sample::select(&KINDS),
        f in 180i64..400,
        weather in weather(),
        grate in proptest::option::of(500i64..20_000),
        meat_g in 0i64..60_000,
        minutes in 1i64..2_880,
    ) -> FuelInput {
        FuelInput {
            pit, grate_cm2: grate, pit_temp: Mk::from_f(f), weather: Some(weather), air: None, fuel: None,
            moisture_permille: None, wood_humidity_permille: None, meat_g, minutes, unit: None, unit_g: None,
        }
    }
}

fn is_in_order(spread: Spread) -> bool {
    0 <= spread.low && spread.low <= spread.likely && spread.likely <= spread.high
}

proptest! {
    #[test]
    fn energy_is_conserved_and_the_ends_lie_around_the_likely(input in inputs()) {
        let answer = fuel(&input).unwrap();
        let gives = answer.heat_kj_per_kg.unwrap();
        let burnt = answer.g_per_hour.unwrap();
        // Grams times kJ a kilogram are joules. Whole grams are off by half of one, whole watts by half of one each.
        let fire_w = (burnt.likely * gives.likely) as f64 / 3_600.0;
        let goes = (answer.walls_w + answer.meat_w + answer.smoke_w) as f64;
        let rounding = 0.5 * gives.likely as f64 / 3_600.0 + 1.5;
        prop_assert!((fire_w - goes).abs() <= rounding, "{fire_w} {goes}");
        for spread in [answer.need_w, burnt, answer.g.unwrap(), answer.quarters.unwrap(), answer.minutes_per_unit.unwrap()] {
            prop_assert!(is_in_order(spread), "{answer:?}");
        }
    }

    #[test]
    fn more_loss_never_takes_less_fuel(input in inputs(), hotter in 0i64..50, more_g in 0i64..20_000) {
        let burnt = |input: &FuelInput| fuel(input).unwrap().g_per_hour.unwrap();
        let least = burnt(&input);
        let weather = input.weather.unwrap();
        let worse = [
            FuelInput { pit_temp: Mk(input.pit_temp.0 + hotter * 500), ..input.clone() },
            FuelInput { meat_g: input.meat_g + more_g, ..input.clone() },
            FuelInput { weather: Some(Weather { wind: Wind::Windy, sun: Sun::Shade, ..weather }), ..input.clone() },
            FuelInput { weather: Some(Weather { rain: Rain::Wet, ..weather }), ..input.clone() },
            FuelInput { weather: Some(Weather { ambient: Ambient::Freezing, ..weather }), ..input.clone() },
        ];
        for worse in &worse {
            let more = burnt(worse);
            prop_assert!(more.low >= least.low && more.likely >= least.likely && more.high >= least.high, "{worse:?}");
        }
    }

    #[test]
    fn wetter_wood_never_gives_more(wet in 0i64..500, wetter in 0i64..500) {
        let of = |permille| heat_kj_per_kg(Fuel::Wood, Some(permille)).unwrap();
        let (dry, wet) = (of(wet.min(wetter)), of(wet.max(wetter)));
        prop_assert!(wet.low <= dry.low && wet.likely <= dry.likely && wet.high <= dry.high);
    }

    #[test]
    fn a_learned_interval_is_one_that_was_seen(gaps in prop::collection::vec(5i64..600, 1..12), past in prop::collection::vec(5i64..600, 0..6)) {
        let feeds = |gaps: &[i64]| {
            let mut at = 0;
            let ends = gaps.iter().map(|gap| { at += gap; at });
            [0].into_iter().chain(ends.collect::<Vec<_>>())
                .map(|at_min| Feed { at_min, kj: Some(9_000), loss_w: 700 }).collect::<Vec<_>>()
        };
        let next = rhythm(&feeds(&gaps), &[feeds(&past)], 700, true).unwrap();
        let all = || gaps.iter().chain(&past).copied();
        let (least, most) = (all().min().unwrap(), all().max().unwrap());
        prop_assert!(all().any(|gap| gap == next.lasts_min.likely));
        prop_assert!((least..=most).contains(&next.lasts_min.likely));
        prop_assert!(is_in_order(next.lasts_min));
        prop_assert_eq!(next.seen, gaps.len().min(7));
        prop_assert_eq!(next.past, past.len().min(7 - next.seen));
        // More loss never lets it be left for longer.
        let gale = rhythm(&feeds(&gaps), &[feeds(&past)], 900, true).unwrap();
        prop_assert!(gale.lasts_min.likely <= next.lasts_min.likely && gale.lasts_min.high <= next.lasts_min.high);
    }

    #[test]
    fn no_feed_breaks_the_rhythm(feeds in prop::collection::vec((any::<i64>(), proptest::option::of(any::<i64>()), any::<i64>()), 0..9), loss in any::<i64>()) {
        let feeds: Vec<Feed> = feeds.into_iter().map(|(at_min, kj, loss_w)| Feed { at_min, kj, loss_w }).collect();
        if let Some(next) = rhythm(&feeds, &[], loss, false) {
            prop_assert!(is_in_order(next.lasts_min) && next.next_min.low <= next.next_min.high);
        }
    }

    #[test]
    fn more_openings_never_cost_less(openings in 0i64..50, more in 0i64..50, seconds in 0i64..900, weather in weather()) {
        let of = |openings| {
            let cost = OpeningCost { pit: PitKind::Kettle, grate_cm2: None, pit_temp: Mk::from_f(300), openings, seconds };
            opening_cost(&cost, &weather)
        };
        prop_assert!(of(openings + more).likely >= of(openings).likely && is_in_order(of(openings)));
    }
}
