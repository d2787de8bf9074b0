//! Lengths and areas that settings ask for, in the viewer's units: grates and heights above the sea. Kept in metric.
//!
//! Start at [`Measure`]. Who weighs in pounds measures in square inches and feet.

use super::{WeightUnit, Words, format::Round};
use std::ops::RangeInclusive;

/// What is measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Measure {
    /// A grate, kept in square centimeters, 100 to 100,000: 10 cm × 10 cm to 10 m². Common practice, no source.
    Grate,
    /// A height above the sea, kept in meters, −500 to 6,000: the Dead Sea's shore to above the highest town, which the
    /// boiling points cover. Common practice, no source.
    Altitude,
}

impl Measure {
    /// What is taken, both ends included, as kept.
    pub const fn range(self) -> RangeInclusive<i64> {
        match self {
            Self::Grate => 100..=100_000,
            Self::Altitude => -500..=6_000,
        }
    }

    /// Ten-thousandths of the kept unit in one of the viewer's: an inch is 2.54 cm and a foot 0.3048 m exactly (NIST
    /// Special Publication 811, appendix B, from memory).
    pub(super) const fn in_kept(self, viewers: WeightUnit) -> i64 {
        match (self, viewers) {
            (Self::Grate, WeightUnit::Pound) => 64_516,
            (Self::Altitude, WeightUnit::Pound) => 3_048,
            (_, WeightUnit::Kilogram) => 10_000,
        }
    }

    const fn unit(self, viewers: WeightUnit) -> &'static str {
        match (self, viewers) {
            (Self::Grate, WeightUnit::Pound) => "in²",
            (Self::Grate, WeightUnit::Kilogram) => "cm²",
            (Self::Altitude, WeightUnit::Pound) => "ft",
            (Self::Altitude, WeightUnit::Kilogram) => "m",
        }
    }
}

impl Words<'_> {
    /// The sign of the viewer's unit: "in²", "ft"; "cm²", "m".
    pub fn measure_unit(&self, of: Measure) -> &'static str {
        of.unit(self.viewer().weight)
    }

    /// What is `kept` as a whole number of the viewer's units, for a form's field: "341".
    pub fn measure_field(&self, of: Measure, kept: i64) -> String {
        self.measured(of, kept, Round::Nearest).to_string()
    }

    pub(super) fn measured(&self, of: Measure, kept: i64, round: Round) -> i64 {
        round.divide(
            kept.saturating_mul(10_000),
            of.in_kept(self.viewer().weight),
        )
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Locale, metric_viewer, test_viewer, typed::measure as typed};
    use super::*;

    #[test]
    fn what_a_field_shows_can_be_typed_back_in_both_systems() {
        let (us, metric) = (test_viewer(Locale::EnUs), metric_viewer(Locale::EsUs));
        let (us, metric) = (Words::of(&us), Words::of(&metric));
        // 22.5 in (57.15 cm) across: 397.6 in² by hand.
        assert_eq!(us.measure_field(Measure::Grate, 2_565), "398");
        assert_eq!(typed(&us, Measure::Grate, "398"), Ok(2_568));
        assert_eq!(us.measure_field(Measure::Altitude, 1_609), "5279");
        assert_eq!(typed(&us, Measure::Altitude, "5280 ft"), Ok(1_609));
        assert_eq!(typed(&metric, Measure::Altitude, "-12"), Ok(-12));
        for say in [us, metric] {
            assert_eq!(typed(&say, Measure::Grate, "2200 cm²"), Ok(2_200));
            assert_eq!(typed(&say, Measure::Grate, "341 in2"), Ok(2_200));
            assert_eq!(typed(&say, Measure::Altitude, "1609 m"), Ok(1_609));
            for of in [Measure::Grate, Measure::Altitude] {
                for kept in (100..6_000).step_by(7) {
                    let shown = say.measure_field(of, kept);
                    let back = typed(&say, of, &shown).unwrap();
                    assert!((back - kept).abs() <= 3, "{shown} from {kept} to {back}");
                    assert_eq!(say.measure_field(of, back), shown);
                }
            }
        }
    }

    #[test]
    fn what_does_not_fit_is_told_in_the_viewers_units() {
        let us = test_viewer(Locale::EnUs);
        let us = Words::of(&us);
        for text in ["", "wide", "3 ft", "9999999", "-40"] {
            let refused = typed(&us, Measure::Grate, text).unwrap_err();
            assert_eq!(refused.reason, "Type a number from 16 to 15500 in².");
        }
        let metric = metric_viewer(Locale::EsUs);
        let refused = typed(&Words::of(&metric), Measure::Altitude, "7000");
        let reason = refused.unwrap_err().reason;
        assert_eq!(reason, "Escribe un número de -500 a 6000 m.");
    }
}
