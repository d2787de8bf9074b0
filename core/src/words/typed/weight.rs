//! Weights as typed.

use super::{
    super::{
        WeightUnit,
        format::{POUND_E5_GRAMS, Round},
    },
    Arg, Refused, Words,
    scan::{Fault, Thousandths, plain, quantities, quoted},
};
use std::ops::RangeInclusive;

/// What one meat may weigh, in grams: 30 g, a wing tip, to 60 kg, a whole hog. Common practice, no source.
pub const MEAT_GRAMS: RangeInclusive<i64> = 30..=60_000;

#[derive(Clone, Copy, PartialEq, Eq)]
enum Unit {
    Pound,
    Ounce,
    Kilogram,
    Gram,
}

/// Reads "8 lb 4 oz", "8.25", "3,7 kg", "850 g" to whole grams; without a unit, in the viewer's pounds or kilograms.
pub fn weight(
    say: &Words<'_>,
    text: &str,
    range_grams: &RangeInclusive<i64>,
) -> Result<i64, Refused> {
    let grams = read(&plain(text), say.viewer().weight)
        .map_err(|fault| fault.refused(say, text, || unread(say, text)))?;
    if range_grams.contains(&grams) {
        return Ok(grams);
    }
    let low = say.weight_rounded(*range_grams.start(), Round::Up);
    let high = say.weight_rounded(*range_grams.end(), Round::Down);
    let args = [
        ("typed", Arg::Text(&quoted(text))),
        ("low", Arg::Text(&low)),
        ("high", Arg::Text(&high)),
    ];
    Err(say.refuse("error-weight-range", &args))
}

fn unread(say: &Words<'_>, text: &str) -> Refused {
    let example = say.weight(3_742);
    say.refuse(
        "error-weight-unread",
        &[
            ("typed", Arg::Text(&quoted(text))),
            ("example", Arg::Text(&example)),
        ],
    )
}

fn read(text: &str, viewers: WeightUnit) -> Result<i64, Fault> {
    let bare = match viewers {
        WeightUnit::Pound => Unit::Pound,
        WeightUnit::Kilogram => Unit::Kilogram,
    };
    match quantities(text)?.as_slice() {
        [(size, "")] => Ok(grams(weighed(*size, bare))),
        [(size, word)] => Ok(grams(weighed(*size, unit(word).ok_or(Fault::Unread)?))),
        [(large, word), (small, less)] => {
            let large_unit = unit(word).ok_or(Fault::Unread)?;
            let small_unit = below(large_unit, *small).ok_or(Fault::Unread)?;
            let fits = less.is_empty() || unit(less) == Some(small_unit);
            let sum = weighed(*large, large_unit) + weighed(*small, small_unit);
            if fits {
                Ok(grams(sum))
            } else {
                Err(Fault::Unread)
            }
        }
        _ => Err(Fault::Unread),
    }
}

/// The unit that may follow `unit`, when `size` is less than one of the larger.
fn below(unit: Unit, size: Thousandths) -> Option<Unit> {
    match unit {
        Unit::Pound if size < 16_000 => Some(Unit::Ounce),
        Unit::Kilogram if size < 1_000_000 => Some(Unit::Gram),
        _ => None,
    }
}

fn unit(word: &str) -> Option<Unit> {
    match word {
        "lb" | "lbs" | "pound" | "pounds" | "libra" | "libras" => Some(Unit::Pound),
        "oz" | "ounce" | "ounces" | "onza" | "onzas" => Some(Unit::Ounce),
        "kg" | "kgs" | "kilo" | "kilos" | "kilogram" | "kilograms" | "kilogramo" | "kilogramos" => {
            Some(Unit::Kilogram)
        }
        "g" | "gr" | "gram" | "grams" | "gramo" | "gramos" => Some(Unit::Gram),
        _ => None,
    }
}

/// In 1/1,600,000,000 g, in which a thousandth of an ounce is whole: pounds and kilograms add up without rounding.
fn weighed(thousandths: Thousandths, unit: Unit) -> i64 {
    thousandths
        * match unit {
            Unit::Pound => 16 * POUND_E5_GRAMS,
            Unit::Ounce => POUND_E5_GRAMS,
            Unit::Kilogram => 1_600_000_000,
            Unit::Gram => 1_600_000,
        }
}

fn grams(weighed: i64) -> i64 {
    Round::Nearest.divide(weighed, 1_600_000_000)
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, metric_viewer, test_viewer};
    use super::*;

    #[test]
    fn a_weight_is_read_in_the_units_it_names_or_else_the_viewers() {
        let (us, metric) = (test_viewer(Locale::EnUs), metric_viewer(Locale::EsUs));
        let (us, metric) = (Words::of(&us), Words::of(&metric));
        for text in [
            "8 lb 4 oz",
            "8.25",
            "8,25 lbs.",
            "8lb4oz",
            "8 lb 4",
            "132 oz",
            "8 libras 4 onzas",
            "8 1/4",
            "8¼ lb",
            "3.742 kg",
        ] {
            assert_eq!(weight(&us, text, &MEAT_GRAMS), Ok(3_742), "{text}");
        }
        for text in ["3,7 kg", "3.7", "3700 g", "3 kg 700 g", "3 kilos 700"] {
            assert_eq!(weight(&metric, text, &MEAT_GRAMS), Ok(3_700), "{text}");
        }
    }

    #[test]
    fn a_meat_of_nothing_or_of_900_kg_is_told_what_fits() {
        let (us, metric) = (test_viewer(Locale::EnUs), metric_viewer(Locale::EsUs));
        let reason = |viewer, text| {
            weight(&Words::of(viewer), text, &MEAT_GRAMS)
                .unwrap_err()
                .reason
        };
        assert_eq!(
            reason(&us, "0"),
            "0 is outside what fits here. Type a weight from 2 oz to 132 lb 4 oz."
        );
        assert_eq!(
            reason(&metric, "900 kg"),
            "900 kg está fuera de lo que cabe aquí. Escribe un peso de 30 g a 60.0 kg."
        );
        assert_eq!(
            reason(&metric, "3,750 g"),
            "“3,750 g” se puede leer de dos maneras. Escribe 3.75 o 3750."
        );
        for text in [
            "",
            "-4",
            "8 oz 4 lb",
            "8 lb 17 oz",
            "8 stone",
            "8 lb 4 oz 2 g",
            "8 kg 4 oz",
        ] {
            assert!(reason(&us, text).contains("is not a weight"), "{text}");
        }
    }
}
