//! What a kitchen types: amounts of things bought, shares, prices, small weights.

use super::{
    super::format::{CUP_MICROLITERS, POUND_E5_GRAMS, Round},
    Arg, Refused, Words,
    scan::{Fault, Thousandths, number, plain, quantities, quoted},
};
use crate::batch::CountedIn;
use std::ops::RangeInclusive;

/// Thousandths of a unit in what is kept, hundred-thousandths of it a unit.
const E5: i64 = 100_000;

/// Reads "2 lb", "1 lb 4 oz", "500 g", "3 cups", "½ gal", "750 ml", "2": pounds, grams and cups whatever the viewer's; a
/// plain number counts pieces.
pub fn amount(say: &Words<'_>, text: &str) -> Result<(i64, CountedIn), Refused> {
    let even = plain(text)
        .replace("fl. oz", "floz")
        .replace("fl oz", "floz");
    let unread = || {
        say.refuse(
            "batch-amount-unread",
            &[("typed", Arg::Text(&quoted(text)))],
        )
    };
    read(&even).map_err(|fault| fault.refused(say, text, unread))
}

fn read(text: &str) -> Result<(i64, CountedIn), Fault> {
    let mut all: Option<(i64, CountedIn)> = None;
    for (size, word) in quantities(text)? {
        let (each, unit) = unit(word).ok_or(Fault::Unread)?;
        let more = size.saturating_mul(each);
        all = Some(match all {
            None => (more, unit),
            Some((sum, same)) if same == unit && unit != CountedIn::Each => (sum + more, unit),
            Some(_) => return Err(Fault::Unread),
        });
    }
    let (sum, unit) = all.ok_or(Fault::Unread)?;
    let amount = Round::Nearest.divide(sum, E5 * 1000);
    match unit {
        CountedIn::Each if sum % (E5 * 1000) != 0 => Err(Fault::Unread),
        _ => Ok((amount, unit)),
    }
}

/// Hundred-thousandths of a gram, milliliter or piece in a unit. Volumes are US customary, of the cup.
fn unit(word: &str) -> Option<(i64, CountedIn)> {
    const ML: i64 = E5;
    const CUP: i64 = CUP_MICROLITERS * 100;
    Some(match word {
        "" => (E5, CountedIn::Each),
        "g" | "gr" | "gram" | "grams" | "gramo" | "gramos" => (E5, CountedIn::G),
        "kg" | "kilo" | "kilos" | "kilogram" | "kilograms" | "kilogramo" | "kilogramos" => {
            (1000 * E5, CountedIn::G)
        }
        "lb" | "lbs" | "pound" | "pounds" | "libra" | "libras" => (POUND_E5_GRAMS, CountedIn::G),
        "oz" | "ounce" | "ounces" | "onza" | "onzas" => (POUND_E5_GRAMS / 16, CountedIn::G),
        "ml" => (ML, CountedIn::Ml),
        "cl" => (10 * ML, CountedIn::Ml),
        "l" | "liter" | "liters" | "litro" | "litros" => (1000 * ML, CountedIn::Ml),
        "cup" | "cups" | "taza" | "tazas" => (CUP, CountedIn::Ml),
        "pt" | "pint" | "pints" | "pinta" | "pintas" => (2 * CUP, CountedIn::Ml),
        "qt" | "quart" | "quarts" | "cuarto" | "cuartos" => (4 * CUP, CountedIn::Ml),
        "gal" | "gallon" | "gallons" | "galón" | "galon" | "galones" => (16 * CUP, CountedIn::Ml),
        "floz" => (CUP / 8, CountedIn::Ml),
        "tbsp" | "tablespoon" | "tablespoons" | "cda" | "cdas" | "cucharada" | "cucharadas" => {
            (CUP / 16, CountedIn::Ml)
        }
        "tsp" | "teaspoon" | "teaspoons" | "cdta" | "cdtas" | "cucharadita" | "cucharaditas" => {
            (CUP / 48, CountedIn::Ml)
        }
        _ => return None,
    })
}

/// Reads a share in percent, "1.5", "20 %", as thousandths within `range`.
pub fn permille(say: &Words<'_>, text: &str, range: &RangeInclusive<i64>) -> Result<i64, Refused> {
    let low = say.percent_field(*range.start());
    let high = say.percent_field(*range.end());
    let args = [("low", Arg::Text(&low)), ("high", Arg::Text(&high))];
    let unfit = || say.refuse("batch-percent-range", &args);
    let even = plain(text);
    let size = alone(even.trim_end_matches('%').trim_end());
    let size = size.map_err(|fault| fault.refused(say, text, unfit))?;
    let permille = Round::Nearest.divide(size, 100);
    match range.contains(&permille) {
        true => Ok(permille),
        false => Err(unfit()),
    }
}

/// Reads a price, "3.49", "$12", in cents.
pub fn cents(say: &Words<'_>, text: &str) -> Result<i64, Refused> {
    let unread = || say.refuse("batch-price-unread", &[("typed", Arg::Text(&quoted(text)))]);
    let even = plain(text);
    let size = alone(even.trim_start_matches('$').trim_start());
    let size = size.map_err(|fault| fault.refused(say, text, unread))?;
    Ok(Round::Nearest.divide(size, 10))
}

/// Reads a whole number within `range`, "12", or grams with their sign, "292 g".
pub fn whole(say: &Words<'_>, text: &str, range: &RangeInclusive<i64>) -> Result<i64, Refused> {
    let (low, high) = (range.start().to_string(), range.end().to_string());
    let args = [("low", Arg::Text(&low)), ("high", Arg::Text(&high))];
    let even = plain(text);
    let digits = even.trim_end_matches('g').trim_end_matches('%').trim_end();
    let read = digits.parse::<i64>().ok();
    read.filter(|read| range.contains(read))
        .ok_or_else(|| say.refuse("batch-number-range", &args))
}

fn alone(text: &str) -> Result<Thousandths, Fault> {
    match number(text)? {
        (size, "") => Ok(size),
        _ => Err(Fault::Unread),
    }
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, test_viewer};
    use super::*;

    #[test]
    fn amounts_are_read_as_a_shop_writes_them() {
        let viewer = test_viewer(Locale::EsUs);
        let say = Words::of(&viewer);
        for (text, kept) in [
            ("2 lb", (907, CountedIn::G)),
            ("1 lb 4 oz", (567, CountedIn::G)),
            ("½ kg", (500, CountedIn::G)),
            ("3 tazas", (710, CountedIn::Ml)),
            ("1/2 gal", (1_893, CountedIn::Ml)),
            ("12 fl oz", (355, CountedIn::Ml)),
            ("2", (2, CountedIn::Each)),
        ] {
            assert_eq!(amount(&say, text), Ok(kept), "{text}");
        }
        for text in ["", "some", "2 lb 3 cups", "2 3", "1.5", "-4 lb"] {
            assert!(amount(&say, text).is_err(), "{text}");
        }
    }

    #[test]
    fn shares_and_prices_are_read_or_told() {
        let viewer = test_viewer(Locale::EnUs);
        let say = Words::of(&viewer);
        assert_eq!(permille(&say, "1.5 %", &(1..=50)), Ok(15));
        let refused = permille(&say, "12", &(1..=50)).unwrap_err();
        assert_eq!(refused.reason, "Type a share from 0.1 to 5 %.");
        assert_eq!(cents(&say, "$12.05"), Ok(1_205));
        assert_eq!(cents(&say, "3,5"), Ok(350));
        assert!(cents(&say, "free").unwrap_err().reason.contains("“free”"));
        assert_eq!(whole(&say, "292 g", &(1..=1_000)), Ok(292));
        let refused = whole(&say, "0", &(1..=1_000)).unwrap_err();
        assert_eq!(refused.reason, "Type a whole number from 1 to 1000.");
    }
}
