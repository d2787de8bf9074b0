//! Numbers against exact rationals.
//!
//! The oracle is not the sum again but what rounding means: r is the nearest integer to n/d, ties up, exactly when
//! −d ≤ 2(n − r·d) < d. It holds in i128 from ten to the −30th to the 27th; past that, an argument of size tells.

use super::super::ieee11073::{Decimal, Special, float, sfloat};
use crate::{units::Mk, words::TemperatureUnit};
use proptest::prelude::*;

const MANTISSA_MAX: i32 = (1 << 23) - 3;

/// The bits of a FLOAT, by the published layout.
fn encoded(mantissa: i32, exponent: i8) -> u32 {
    u32::from(exponent as u8) << 24 | mantissa as u32 & 0x00FF_FFFF
}

/// Degrees as a rational number of millikelvin.
fn exact(number: Decimal, unit: TemperatureUnit) -> (i128, i128) {
    let (up, down) = match number.exponent {
        0.. => (10_i128.pow(number.exponent as u32), 1),
        _ => (1, 10_i128.pow(number.exponent.unsigned_abs().into())),
    };
    let degrees = i128::from(number.mantissa) * up;
    match unit {
        TemperatureUnit::Celsius => (degrees * 1_000 + 273_150 * down, down),
        TemperatureUnit::Fahrenheit => (degrees * 5_000 + 2_298_350 * down, 9 * down),
    }
}

fn is_nearest(rounded: Mk, (number, divisor): (i128, i128)) -> bool {
    let off = 2 * (number - i128::from(rounded.0) * divisor);
    (-divisor..divisor).contains(&off)
}

fn units() -> impl Strategy<Value = TemperatureUnit> {
    prop_oneof![
        Just(TemperatureUnit::Celsius),
        Just(TemperatureUnit::Fahrenheit)
    ]
}

/// Large, small, and those that end in zeros or a five, where ties are.
fn mantissas() -> impl Strategy<Value = i32> {
    let short = (-838_860..=838_860, prop_oneof![Just(1), Just(5), Just(10)]);
    prop_oneof![
        -MANTISSA_MAX..=MANTISSA_MAX,
        -100_000..=100_000,
        short.prop_map(|(n, by)| n * by)
    ]
}

proptest! {
    #[test]
    fn what_is_encoded_is_decoded_and_rounded_as_the_exact_rational(
        mantissa in mantissas(), exponent in -30..=27_i8, unit in units(),
    ) {
        let number = float(encoded(mantissa, exponent)).unwrap();
        prop_assert_eq!(number, Decimal { mantissa, exponent });
        let exact = exact(number, unit);
        match number.degrees(unit) {
            Some(rounded) => prop_assert!(is_nearest(rounded, exact), "{:?} of {:?}", rounded, exact),
            None => prop_assert!((2 * exact.0 / exact.1).unsigned_abs() >= u64::MAX.into()),
        }
    }

    /// At 10^−31 the greatest mantissa is below 10^−20 mK, and 273,150 and 255,372 2/9 are no ties.
    #[test]
    fn a_power_past_all_integers_is_none_and_a_vanishing_one_is_zero_degrees(
        mantissa in mantissas(), above in 28..=127_i8, below in -128..=-31_i8, unit in units(),
    ) {
        let zero = match unit {
            TemperatureUnit::Celsius => Mk(273_150),
            TemperatureUnit::Fahrenheit => Mk(255_372),
        };
        let small = float(encoded(mantissa, below)).unwrap();
        prop_assert_eq!(small.degrees(unit), Some(zero));
        let large = float(encoded(mantissa, above)).unwrap();
        prop_assert_eq!(large.degrees(unit), (mantissa == 0).then_some(zero));
    }

    #[test]
    fn a_special_mantissa_with_an_exponent_is_no_number(
        mantissa in MANTISSA_MAX + 1..=MANTISSA_MAX + 2, exponent in any::<i8>(), sign in prop_oneof![Just(1), Just(-1)],
    ) {
        let special = float(encoded(sign * mantissa, exponent)).unwrap_err();
        prop_assert!(exponent == 0 || special == Special::Reserved, "{:?}", special);
    }
}

#[test]
fn every_short_number_is_rounded_as_the_exact_rational() {
    let mut specials = 0;
    for bits in 0..=u16::MAX {
        let Ok(number) = sfloat(bits) else {
            specials += 1;
            continue;
        };
        let again = (number.exponent as u16) << 12 | number.mantissa as u16 & 0x0FFF;
        assert_eq!(again, bits);
        for unit in [TemperatureUnit::Celsius, TemperatureUnit::Fahrenheit] {
            let rounded = number.degrees(unit).unwrap();
            assert!(is_nearest(rounded, exact(number, unit)), "{number:?}");
        }
    }
    assert_eq!(specials, 5 * 16);
}

#[test]
fn tenths_are_what_the_rest_of_core_makes_of_them() {
    for tenths in -760..=14_720 {
        let number = Decimal {
            mantissa: tenths,
            exponent: -1,
        };
        let tenths = i64::from(tenths);
        let fahrenheit = number.degrees(TemperatureUnit::Fahrenheit);
        assert_eq!(fahrenheit, Some(Mk::from_f_tenths(tenths)));
        let celsius = number.degrees(TemperatureUnit::Celsius);
        assert_eq!(celsius, Some(Mk::from_c_milli(tenths * 100)));
    }
}

#[test]
fn a_tie_goes_up() {
    let number = |mantissa| Decimal {
        mantissa,
        exponent: -4,
    };
    let celsius = |mantissa| number(mantissa).degrees(TemperatureUnit::Celsius);
    assert_eq!(celsius(5), Some(Mk(273_151)));
    assert_eq!(celsius(-5), Some(Mk(273_150)));
    assert_eq!(celsius(4), Some(Mk(273_150)));
}
