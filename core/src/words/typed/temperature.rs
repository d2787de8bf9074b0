//! Temperatures as typed.

use super::{
    super::{TemperatureUnit, format::Round},
    Arg, Refused, Words,
    scan::{Fault, Thousandths, number, plain, quoted},
};
use crate::units::Mk;
use std::ops::RangeInclusive;

/// What any temperature typed must lie in, −20 to 500 °C (−4 to 932 °F): from a freezer to the hottest fire a pit
/// holds. Common practice, no source. Callers pass narrower ranges.
pub const TEMPERATURE: RangeInclusive<Mk> = Mk::from_c_milli(-20_000)..=Mk::from_c_milli(500_000);

/// Reads "203", "203F", "95,5 °C"; without a unit, in the viewer's scale. `range` narrows [`TEMPERATURE`].
pub fn temperature(say: &Words<'_>, text: &str, range: &RangeInclusive<Mk>) -> Result<Mk, Refused> {
    let at = read(&plain(text), say.viewer().temperature)
        .map_err(|fault| fault.refused(say, text, || unread(say, text)))?;
    if range.contains(&at) && TEMPERATURE.contains(&at) {
        return Ok(at);
    }
    let low = say.temperature_rounded(*range.start().max(TEMPERATURE.start()), Round::Up);
    let high = say.temperature_rounded(*range.end().min(TEMPERATURE.end()), Round::Down);
    let args = [
        ("typed", Arg::Text(&quoted(text))),
        ("low", Arg::Text(&low)),
        ("high", Arg::Text(&high)),
    ];
    Err(say.refuse("error-temperature-range", &args))
}

fn unread(say: &Words<'_>, text: &str) -> Refused {
    let example = say.temperature(Mk::from_f(203));
    say.refuse(
        "error-temperature-unread",
        &[
            ("typed", Arg::Text(&quoted(text))),
            ("example", Arg::Text(&example)),
        ],
    )
}

fn read(text: &str, viewers: TemperatureUnit) -> Result<Mk, Fault> {
    let (below_zero, size) = text
        .strip_prefix('-')
        .map_or((false, text), |rest| (true, rest.trim_start()));
    let (size, rest) = number(size)?;
    let unit = unit(rest, viewers).ok_or(Fault::Unread)?;
    Ok(kelvin(if below_zero { -size } else { size }, unit))
}

fn unit(word: &str, viewers: TemperatureUnit) -> Option<TemperatureUnit> {
    let word: String = word
        .chars()
        .filter(|c| !matches!(c, ' ' | '.' | '°'))
        .collect();
    match word.as_str() {
        "" | "deg" | "degrees" | "grados" => Some(viewers),
        "f" | "℉" | "fahrenheit" | "degf" | "degreesf" | "gradosf" | "degreesfahrenheit"
        | "gradosfahrenheit" => Some(TemperatureUnit::Fahrenheit),
        "c" | "℃" | "celsius" | "centigrade" | "centígrados" | "centigrados" | "degc"
        | "degreesc" | "gradosc" | "degreescelsius" | "gradoscelsius" | "gradoscentígrados"
        | "gradoscentigrados" => Some(TemperatureUnit::Celsius),
        _ => None,
    }
}

/// mK = (°F + 459.67) × 5/9, °C + 273.15, rounded once.
fn kelvin(thousandths: Thousandths, unit: TemperatureUnit) -> Mk {
    match unit {
        TemperatureUnit::Fahrenheit => Mk(Round::Nearest.divide((thousandths + 459_670) * 5, 9)),
        TemperatureUnit::Celsius => Mk::from_c_milli(thousandths),
    }
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, metric_viewer, test_viewer};
    use super::*;

    #[test]
    fn a_temperature_is_read_in_the_scale_it_names_or_else_the_viewers() {
        let (us, metric) = (test_viewer(Locale::EnUs), metric_viewer(Locale::EsUs));
        let (us, metric) = (Words::of(&us), Words::of(&metric));
        let f203 = Ok(Mk::from_f(203));
        for text in [
            "203",
            " 203 ",
            "203F",
            "203 °F",
            "203\u{a0}ºf",
            "203.0 degrees F",
            "203 °",
            "203℉",
        ] {
            assert_eq!(temperature(&us, text, &TEMPERATURE), f203, "{text}");
        }
        let c95 = Ok(Mk::from_c_milli(95_500));
        for text in ["95,5 °C", "95.5", "95,50 grados", "95.5 °C", "95.5 Celsius"] {
            assert_eq!(temperature(&metric, text, &TEMPERATURE), c95, "{text}");
        }
        assert_eq!(temperature(&metric, "203 F", &TEMPERATURE), f203);
        assert_eq!(
            temperature(&us, "−4", &TEMPERATURE),
            Ok(Mk::from_c_milli(-20_000))
        );
    }

    #[test]
    fn a_pit_at_nine_thousand_degrees_is_told_what_fits() {
        let (us, es) = (test_viewer(Locale::EnUs), test_viewer(Locale::EsUs));
        let grate = Mk::from_f(100)..=Mk::from_f(700);
        let reason = |viewer, text| {
            temperature(&Words::of(viewer), text, &grate)
                .unwrap_err()
                .reason
        };
        assert_eq!(
            reason(&us, "9,000.5"),
            "“9,000.5” is not a temperature. Type a number such as 203 °F."
        );
        assert_eq!(
            reason(&us, "9000 °F"),
            "9000 °F is outside what fits here. Type a temperature from 100 °F to 700 °F."
        );
        assert_eq!(
            reason(&us, "9,000"),
            "“9,000” can be read in two ways. Type 9 or 9000."
        );
        assert_eq!(
            reason(&es, "caliente"),
            "“caliente” no es una temperatura. Escribe un número, por ejemplo 203 °F."
        );
    }

    #[test]
    fn a_wider_range_than_any_temperature_does_not_widen_it() {
        let viewer = metric_viewer(Locale::EnUs);
        let any = Mk(0)..=Mk(i64::MAX);
        let reason = temperature(&Words::of(&viewer), "501", &any)
            .unwrap_err()
            .reason;
        assert!(reason.ends_with("from -20 °C to 500 °C."), "{reason}");
    }
}
