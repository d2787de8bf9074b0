//! Weights in pounds and ounces, or kilograms.

use super::{
    super::{Arg, WeightUnit, Words},
    Round, decimal,
};

/// Hundred-thousandths of a gram in a pound: a pound is 453.59237 g exactly (international pound, NIST Special Publication 811,
/// appendix B, from memory).
pub(in super::super) const POUND_E5_GRAMS: i64 = 45_359_237;

impl Words<'_> {
    /// A weight: "8 lb 4 oz", "12 oz"; "3.7 kg", "850 g". Whole ounces, or hundreds of grams from a kilogram up.
    pub fn weight(&self, grams: i64) -> String {
        self.weight_rounded(grams, Round::Nearest)
    }

    pub(in super::super) fn weight_rounded(&self, grams: i64, round: Round) -> String {
        match self.viewer.weight {
            WeightUnit::Pound => self.pounds(grams, round),
            WeightUnit::Kilogram => self.kilograms(grams, round),
        }
    }

    fn pounds(&self, grams: i64, round: Round) -> String {
        let ounces = round.divide(grams.saturating_mul(16 * 100_000), POUND_E5_GRAMS);
        let (pounds, ounces) = ((ounces / 16).to_string(), ounces % 16);
        let rest = ounces.to_string();
        match (pounds.as_str(), ounces) {
            ("0", _) => self.with("weight-ounces", &[("ounces", Arg::Text(&rest))]),
            (_, 0) => self.with("weight-pounds", &[("pounds", Arg::Text(&pounds))]),
            _ => self.with(
                "weight-pounds-ounces",
                &[("pounds", Arg::Text(&pounds)), ("ounces", Arg::Text(&rest))],
            ),
        }
    }

    fn kilograms(&self, grams: i64, round: Round) -> String {
        if grams.saturating_abs() < 1_000 {
            return self.with("weight-grams", &[("grams", Arg::Text(&grams.to_string()))]);
        }
        let kilograms = decimal(round.divide(grams, 100));
        self.with("weight-kilograms", &[("kilograms", Arg::Text(&kilograms))])
    }
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, metric_viewer, test_viewer};
    use super::*;

    #[test]
    fn a_shoulder_reads_in_both_units() {
        let (us, metric) = (test_viewer(Locale::EnUs), metric_viewer(Locale::EnUs));
        let (us, metric) = (Words::of(&us), Words::of(&metric));
        assert_eq!(
            [3742, 3629, 340, 0, 454].map(|g| us.weight(g)),
            ["8 lb 4 oz", "8 lb", "12 oz", "0 oz", "1 lb"]
        );
        assert_eq!(
            [3742, 850, 1000, 999].map(|g| metric.weight(g)),
            ["3.7 kg", "850 g", "1.0 kg", "999 g"]
        );
    }

    #[test]
    fn ounces_never_reach_sixteen() {
        let viewer = test_viewer(Locale::EnUs);
        let say = Words::of(&viewer);
        assert!((0..3_000).all(|grams| !say.weight(grams).contains("16 oz")));
    }

    #[test]
    fn absurd_weights_do_not_panic() {
        for viewer in [test_viewer(Locale::EnUs), metric_viewer(Locale::EnUs)] {
            assert!(
                [i64::MIN + 1, i64::MAX]
                    .iter()
                    .all(|&g| !Words::of(&viewer).weight(g).is_empty())
            );
        }
    }
}
