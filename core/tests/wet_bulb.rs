//! The wet bulb against CoolProp 8.0.0 (HumidAir), whose air is real: `published/wet_bulb_coolprop.csv`.

use proptest::prelude::*;
use slowbend_core::{
    air::{Air, NotAir, wet_bulb},
    units::Mk,
};

const ATMOSPHERE: i64 = 101_325;

fn air(dry_bulb: Mk, vapor_mg_per_kg: i64, pressure_pa: i64) -> Air {
    Air {
        dry_bulb,
        vapor_mg_per_kg,
        pressure_pa,
    }
}

#[test]
fn coolprop_at_the_temperatures_of_pits() {
    let rows = include_str!("published/wet_bulb_coolprop.csv")
        .lines()
        .skip(1);
    let mut seen = 0;
    for row in rows {
        let cells: Vec<f64> = row
            .split(',')
            .take(4)
            .map(|cell| cell.parse().expect("a number"))
            .collect();
        let [f, vapor, pressure, coolprop] = cells[..] else {
            panic!("four cells: {row}")
        };
        let air = air(
            Mk::from_f(f as i64),
            (vapor * 1e6).round() as i64,
            pressure as i64,
        );
        let ours = wet_bulb(&air).expect("air of a pit").wet_bulb.c_milli() as f64 / 1000.0;
        assert!((ours - coolprop).abs() < 0.1, "{row}: ours {ours}");
        seen += 1;
    }
    assert_eq!(seen, 41);
}

#[test]
fn what_is_no_air_is_refused() {
    let hot = Mk::from_f(250);
    for (air, why) in [
        (air(Mk::from_c_milli(-1), 0, ATMOSPHERE), NotAir::DryBulb),
        (
            air(Mk::from_c_milli(200_001), 0, ATMOSPHERE),
            NotAir::DryBulb,
        ),
        (air(hot, -1, ATMOSPHERE), NotAir::Vapor),
        (air(hot, 10_000, 49_999), NotAir::Pressure),
        (
            air(Mk::from_c_milli(20_000), 20_000, ATMOSPHERE),
            NotAir::Fog,
        ),
        (air(Mk::from_c_milli(2_000), 0, ATMOSPHERE), NotAir::Freezes),
    ] {
        assert_eq!(wet_bulb(&air), Err(why), "{air:?}");
    }
}

proptest! {
    /// Law: it is never above the dry bulb, and neither more vapor nor hotter air lowers it.
    #[test]
    fn it_rises_with_vapor_and_with_heat(
        milli_c in 20_000i64..190_000,
        vapor in 0i64..300_000,
        more in 1i64..50_000,
        hotter in 1i64..10_000,
        pressure in 60_000i64..=105_000,
    ) {
        let of = |milli_c, vapor| wet_bulb(&air(Mk::from_c_milli(milli_c), vapor, pressure)).map(|all| all.wet_bulb);
        if let Ok(here) = of(milli_c, vapor) {
            prop_assert!(here <= Mk::from_c_milli(milli_c + 1));
            prop_assert!(of(milli_c, vapor + more).is_ok_and(|wetter| wetter >= here) || of(milli_c, vapor + more).is_err());
            prop_assert!(of(milli_c + hotter, vapor).is_ok_and(|hotter| hotter >= here));
        }
    }
}
