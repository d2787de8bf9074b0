//! Temperatures in the viewer's scale.

use super::{
    super::{Arg, TemperatureUnit, Words},
    Round, decimal,
};
use crate::units::Mk;

impl Words<'_> {
    /// A temperature in whole degrees, as screens show it: "203 °F", "95 °C".
    pub fn temperature(&self, at: Mk) -> String {
        self.temperature_rounded(at, Round::Nearest)
    }

    /// A temperature to a tenth, for what stands close to a limit: "164.6 °F" is not "165 °F". Rounded down, so that
    /// nothing is shown as reached that is not.
    pub fn temperature_fine(&self, at: Mk) -> String {
        self.degrees(&decimal(degrees(
            at,
            self.viewer.temperature,
            10,
            Round::Down,
        )))
    }

    /// A difference of temperatures in whole degrees: "25 °F", "-14 °C". No offset between the scales applies.
    pub fn temperature_difference(&self, difference: Mk) -> String {
        let (number, divisor) = match self.viewer.temperature {
            TemperatureUnit::Fahrenheit => (difference.0.saturating_mul(9), 5_000),
            TemperatureUnit::Celsius => (difference.0, 1_000),
        };
        self.degrees(&Round::Nearest.divide(number, divisor).to_string())
    }

    /// A band: "225–250 °F".
    pub fn temperature_span(&self, low: Mk, high: Mk) -> String {
        let unit = self.viewer.temperature;
        let [low, high] = [low, high].map(|at| degrees(at, unit, 1, Round::Nearest).to_string());
        let args = [("low", Arg::Text(&low)), ("high", Arg::Text(&high))];
        match unit {
            TemperatureUnit::Fahrenheit => self.with("temperature-span-fahrenheit", &args),
            TemperatureUnit::Celsius => self.with("temperature-span-celsius", &args),
        }
    }

    /// A temperature as a number alone, for a form's field: "203".
    pub fn temperature_field(&self, at: Mk) -> String {
        degrees(at, self.viewer.temperature, 1, Round::Nearest).to_string()
    }

    pub(in super::super) fn temperature_rounded(&self, at: Mk, round: Round) -> String {
        self.degrees(&degrees(at, self.viewer.temperature, 1, round).to_string())
    }

    fn degrees(&self, degrees: &str) -> String {
        let args = [("degrees", Arg::Text(degrees))];
        match self.viewer.temperature {
            TemperatureUnit::Fahrenheit => self.with("temperature-fahrenheit", &args),
            TemperatureUnit::Celsius => self.with("temperature-celsius", &args),
        }
    }
}

/// Degrees in parts of 1/`parts`: °F = mK × 9 / 5000 − 459.67, °C = mK / 1000 − 273.15, exact by definition of the
/// scales. One rounding only. Absurd temperatures stop at the integer's end and never overflow.
///
/// A whole °F is stored up to 4/9 mK off, so rounding up or down first forgives that much: 165 °F is not 166, nor 164.
fn degrees(at: Mk, unit: TemperatureUnit, parts: i64, round: Round) -> i64 {
    let (number, divisor, stored_off) = match unit {
        TemperatureUnit::Fahrenheit => (at.0.saturating_mul(9).saturating_sub(2_298_350), 5_000, 4),
        TemperatureUnit::Celsius => (at.0.saturating_sub(273_150), 1_000, 0),
    };
    let number = match round {
        Round::Nearest => number,
        Round::Up => number.saturating_sub(stored_off),
        Round::Down => number.saturating_add(stored_off),
    };
    round.divide(number.saturating_mul(parts), divisor)
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, metric_viewer, test_viewer};
    use super::*;

    #[test]
    fn a_pull_temperature_reads_in_both_scales() {
        let (us, metric) = (test_viewer(Locale::EnUs), metric_viewer(Locale::EsUs));
        let (us, metric) = (Words::of(&us), Words::of(&metric));
        assert_eq!(us.temperature(Mk::from_f(203)), "203 °F");
        assert_eq!(metric.temperature(Mk::from_f(203)), "95 °C");
        assert_eq!(us.temperature(Mk::from_c_milli(-20_000)), "-4 °F");
        assert_eq!(metric.temperature(Mk::from_c_milli(0)), "0 °C");
        assert_eq!(us.temperature_difference(Mk(10_000)), "18 °F");
        assert_eq!(metric.temperature_difference(Mk(-10_000)), "-10 °C");
        assert_eq!(
            us.temperature_span(Mk::from_f(225), Mk::from_f(250)),
            "225–250 °F"
        );
        assert_eq!(us.temperature_field(Mk::from_f(165)), "165");
    }

    #[test]
    fn just_below_a_limit_is_never_shown_as_reached_to_a_tenth() {
        let viewer = test_viewer(Locale::EnUs);
        let say = Words::of(&viewer);
        assert_eq!(say.temperature_fine(Mk::from_f(165)), "165.0 °F");
        assert_eq!(say.temperature_fine(Mk(Mk::from_f(165).0 - 1)), "164.9 °F");
    }

    #[test]
    fn whole_degrees_survive_the_store_and_absurd_ones_do_not_panic() {
        for f in -460..=1000 {
            assert_eq!(
                degrees(
                    Mk::from_f(f),
                    TemperatureUnit::Fahrenheit,
                    1,
                    Round::Nearest
                ),
                f
            );
        }
        let viewer = test_viewer(Locale::EnUs);
        for mk in [i64::MIN, i64::MAX] {
            let say = Words::of(&viewer);
            assert!(
                !say.temperature(Mk(mk)).is_empty()
                    && !say.temperature_difference(Mk(mk)).is_empty()
            );
        }
    }
}
