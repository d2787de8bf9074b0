//! Decimal numbers and temperatures out of cells, to integers by hand: no float, no allocation.

use crate::units::Mk;
use serde::{Deserialize, Serialize};

/// The scale a column is written in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "ffi", uniffi(name = "ReadingUnit"))]
pub enum Unit {
    /// Degrees Fahrenheit.
    Fahrenheit,
    /// Degrees Celsius.
    Celsius,
    /// Kelvin.
    Kelvin,
}

impl Unit {
    /// As it is written after a number.
    pub const fn sign(self) -> &'static str {
        match self {
            Self::Fahrenheit => "°F",
            Self::Celsius => "°C",
            Self::Kelvin => "K",
        }
    }

    /// From millionths of a degree, to the nearest millikelvin (ties up). K = °C + 273.15 = (°F + 459.67) × 5/9, exact
    /// by definition of the scales.
    #[inline]
    pub const fn mk(self, micro: i64) -> Mk {
        Mk(match self {
            Self::Fahrenheit => ((micro + 459_670_000) * 5 + 4_500).div_euclid(9_000),
            Self::Celsius => (micro + 273_150_000 + 500).div_euclid(1_000),
            Self::Kelvin => (micro + 500).div_euclid(1_000),
        })
    }
}

/// What a temperature cell holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cell {
    /// Nothing: the probe was not heard. Not an error.
    Blank,
    /// Millionths of a degree, and the unit if the cell itself carries one.
    Degrees(i64, Option<Unit>),
    /// Something else.
    Other,
}

/// What instruments write when a probe is unplugged. From memory of common exports, no source.
const BLANKS: [&[u8]; 7] = [b"-", b"--", b"---", b"nan", b"n/a", b"null", b"none"];

/// Reads a temperature cell. `comma`: a decimal comma is taken as well as a point.
#[inline]
pub fn degrees(cell: &[u8], comma: bool) -> Cell {
    let cell = cell.trim_ascii();
    match fixed::<6>(cell, comma) {
        Some((micro, [])) => Cell::Degrees(micro, None),
        Some((micro, rest)) => {
            unit(rest).map_or(Cell::Other, |unit| Cell::Degrees(micro, Some(unit)))
        }
        None if is_blank(cell) => Cell::Blank,
        None => Cell::Other,
    }
}

fn is_blank(cell: &[u8]) -> bool {
    cell.is_empty() || BLANKS.iter().any(|blank| cell.eq_ignore_ascii_case(blank))
}

/// A unit as it follows a number: `F`, `°F`, `ºF`, and the degree sign of Latin-1.
fn unit(rest: &[u8]) -> Option<Unit> {
    let rest = rest.trim_ascii_start();
    let signs: [&[u8]; 3] = ["°".as_bytes(), "º".as_bytes(), b"\xb0"];
    let letter = signs
        .iter()
        .find_map(|sign| rest.strip_prefix(*sign))
        .unwrap_or(rest);
    match letter.trim_ascii_start() {
        b"F" | b"f" => Some(Unit::Fahrenheit),
        b"C" | b"c" => Some(Unit::Celsius),
        b"K" | b"k" => Some(Unit::Kelvin),
        _ => None,
    }
}

/// A decimal number at the front of `cell`, in units of 10^−D, and what follows it. Digits beyond D are dropped.
#[inline]
pub fn fixed<const D: usize>(cell: &[u8], comma: bool) -> Option<(i64, &[u8])> {
    let (negative, body) = sign(cell);
    let whole_len = run_of_digits(body);
    if whole_len > 18 - D {
        return None;
    }
    let (whole, mut rest) = body.split_at(whole_len);
    let mut value = whole
        .iter()
        .fold(0i64, |value, digit| value * 10 + i64::from(digit - b'0'));
    let mut decimals = &rest[..0];
    if let [mark, after @ ..] = rest
        && (*mark == b'.' || (comma && *mark == b','))
    {
        (decimals, rest) = after.split_at(run_of_digits(after));
    }
    for place in 0..D {
        value = value * 10
            + decimals
                .get(place)
                .map_or(0, |digit| i64::from(digit - b'0'));
    }
    let any = !whole.is_empty() || !decimals.is_empty();
    any.then_some((if negative { -value } else { value }, rest))
}

#[inline]
fn sign(cell: &[u8]) -> (bool, &[u8]) {
    match cell {
        [b'-', body @ ..] => (true, body),
        [b'+', body @ ..] => (false, body),
        [0xe2, 0x88, 0x92, body @ ..] => (true, body),
        body => (false, body),
    }
}

#[inline]
fn run_of_digits(bytes: &[u8]) -> usize {
    bytes
        .iter()
        .take_while(|byte| byte.is_ascii_digit())
        .count()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn read(cell: &str) -> Cell {
        degrees(cell.as_bytes(), true)
    }

    #[test]
    fn numbers_as_instruments_write_them() {
        assert_eq!(read("225.4"), Cell::Degrees(225_400_000, None));
        assert_eq!(read(" 107,25 "), Cell::Degrees(107_250_000, None));
        assert_eq!(read("-.5"), Cell::Degrees(-500_000, None));
        assert_eq!(read("\u{2212}3"), Cell::Degrees(-3_000_000, None));
        assert_eq!(
            read("225.43°F"),
            Cell::Degrees(225_430_000, Some(Unit::Fahrenheit))
        );
        assert_eq!(
            read("107 ºC"),
            Cell::Degrees(107_000_000, Some(Unit::Celsius))
        );
        assert_eq!(
            degrees(b"107\xb0C", false),
            Cell::Degrees(107_000_000, Some(Unit::Celsius))
        );
        for blank in ["", "  ", "--", "NaN", "n/a"] {
            assert_eq!(read(blank), Cell::Blank, "{blank}");
        }
        for other in [
            "abc",
            "1.2.3",
            "1,234.5",
            "12 13",
            "1e2",
            "-",
            "+",
            ".",
            "9999999999999",
            "0x10",
        ] {
            let expected = if other == "-" {
                Cell::Blank
            } else {
                Cell::Other
            };
            assert_eq!(read(other), expected, "{other}");
        }
        assert_eq!(
            degrees(b"107,2", false),
            Cell::Other,
            "no decimal comma between commas"
        );
    }

    #[test]
    fn the_scales_meet_where_they_are_known_to() {
        assert_eq!(Unit::Fahrenheit.mk(32_000_000), Unit::Celsius.mk(0));
        assert_eq!(
            Unit::Fahrenheit.mk(212_000_000),
            Unit::Celsius.mk(100_000_000)
        );
        assert_eq!(
            Unit::Fahrenheit.mk(-40_000_000),
            Unit::Celsius.mk(-40_000_000)
        );
        assert_eq!(Unit::Kelvin.mk(273_150_000), Mk(273_150));
    }

    proptest! {
        #[test]
        fn agrees_with_the_units_of_the_house(tenths in -1_000i64..20_000, milli in -60_000i64..800_000) {
            prop_assert_eq!(Unit::Fahrenheit.mk(tenths * 100_000), Mk::from_f_tenths(tenths));
            prop_assert_eq!(Unit::Celsius.mk(milli * 1_000), Mk::from_c_milli(milli));
        }

        #[test]
        fn any_bytes_are_read_or_not(cell in prop::collection::vec(any::<u8>(), 0..40), comma: bool) {
            degrees(&cell, comma);
            fixed::<3>(&cell, comma);
        }
    }
}
