//! What a kitchen weighs, measures and pays: grams and spoons, milliliters and cups, money, shares.

use super::{
    super::{Arg, WeightUnit, Words},
    POUND_E5_GRAMS, Round, decimal,
};
use crate::batch::CountedIn;

/// Thousandths of a milliliter in a US cup: a sixteenth of a gallon of 3.785412 l (NIST Special Publication 811, appendix
/// B, from memory).
pub(in super::super) const CUP_MICROLITERS: i64 = 236_588;
/// Quarters of a teaspoon in a cup: 16 tablespoons of 3 teaspoons.
const QUARTERS_A_CUP: i64 = 192;
/// The same in a quart, four cups.
const QUART: i64 = 4 * QUARTERS_A_CUP;

impl Words<'_> {
    /// What a scale shows: "4.5 g", "146 g", "1250 g". Tenths below 10 g.
    pub fn grams(&self, milligrams: i64) -> String {
        let grams = match milligrams {
            0..10_000 => decimal(Round::Nearest.divide(milligrams, 100)),
            _ => Round::Nearest.divide(milligrams, 1000).to_string(),
        };
        self.with("weight-grams", &[("grams", Arg::Text(&grams))])
    }

    /// A weight that is weighed out: "146 g", and in the viewer's pounds "5.1 oz (146 g)", "1 lb 4.6 oz (584 g)".
    pub fn weighed(&self, milligrams: i64) -> String {
        let grams = self.grams(milligrams);
        if self.viewer.weight == WeightUnit::Kilogram {
            return grams;
        }
        let tenths = Round::Nearest.divide(milligrams.saturating_mul(1_600), POUND_E5_GRAMS / 10);
        let (pounds, ounces) = (tenths / 160, decimal(tenths % 160));
        let ounces = match pounds {
            0 => self.with("weight-ounces", &[("ounces", Arg::Text(&ounces))]),
            _ => {
                let pounds = pounds.to_string();
                let args = [
                    ("pounds", Arg::Text(&pounds)),
                    ("ounces", Arg::Text(&ounces)),
                ];
                self.with("weight-pounds-ounces", &args)
            }
        };
        self.two_ways(&ounces, &grams)
    }

    /// A volume: "850 ml", "2.0 l"; with the viewer's pounds "3½ cups (828 ml)".
    pub fn volume(&self, milliliters: i64) -> String {
        let metric = match milliliters {
            0..1_000 => {
                let ml = milliliters.to_string();
                self.with("batch-milliliters", &[("ml", Arg::Text(&ml))])
            }
            _ => {
                let liters = decimal(Round::Nearest.divide(milliliters, 100));
                self.with("batch-liters", &[("liters", Arg::Text(&liters))])
            }
        };
        if self.viewer.weight == WeightUnit::Kilogram {
            return metric;
        }
        let quarters = milliliters.saturating_mul(1000 * QUARTERS_A_CUP);
        let quarters = Round::Nearest.divide(quarters, CUP_MICROLITERS);
        self.two_ways(&self.spoons(quarters), &metric)
    }

    /// The same mass by cups and spoons of what a cup weighs so many grams of; none for who weighs in kilograms, and for
    /// less than a pinch.
    pub fn by_spoon(&self, milligrams: i64, cup_g: i64) -> Option<String> {
        let cups = (cup_g > 0 && self.viewer.weight == WeightUnit::Pound).then_some(cup_g)?;
        let quarters = Round::Nearest.divide(
            milligrams.saturating_mul(QUARTERS_A_CUP),
            cups.saturating_mul(1000),
        );
        (quarters > 0).then(|| self.spoons(quarters))
    }

    /// Quarters of a teaspoon in what a kitchen has: quarts and their quarters from one up, below that cups and their
    /// quarters with the tablespoons that are left, below a quarter of a cup spoons.
    fn spoons(&self, quarters: i64) -> String {
        let tablespoons = Round::Nearest.divide(quarters, 12);
        match quarters {
            QUART.. => self.measured_in(
                Round::Nearest.divide(quarters, QUART / 4),
                super::super::key("batch-quarts"),
            ),
            48.. => {
                let cups = self.measured_in(tablespoons / 4, super::super::key("batch-cups"));
                match tablespoons % 4 {
                    0 => cups,
                    rest => {
                        let key = super::super::key("batch-tablespoons");
                        format!("{cups} + {}", self.measured_in(rest * 4, key))
                    }
                }
            }
            12.. => self.measured_in(
                Round::Nearest.divide(quarters, 3),
                super::super::key("batch-tablespoons"),
            ),
            _ => self.measured_in(quarters, super::super::key("batch-teaspoons")),
        }
    }

    /// Quarters of a measure: "½ cup", "1 cup", "3½ cups".
    fn measured_in(&self, quarters: i64, of: &'static str) -> String {
        let whole = quarters / 4;
        let part = ["", "¼", "½", "¾"][(quarters % 4) as usize];
        let amount = match whole {
            0 if !part.is_empty() => part.to_owned(),
            _ => format!("{whole}{part}"),
        };
        let one = quarters <= 4;
        let args = [
            ("amount", Arg::Text(&amount)),
            ("count", Arg::Number(if one { 1 } else { 2 })),
        ];
        self.with(of, &args)
    }

    fn two_ways(&self, own: &str, metric: &str) -> String {
        let args = [("own", Arg::Text(own)), ("metric", Arg::Text(metric))];
        self.with("batch-two-ways", &args)
    }

    /// So much of something bought.
    pub fn amount(&self, amount: i64, unit: CountedIn) -> String {
        match unit {
            CountedIn::G => self.weighed(amount.saturating_mul(1000)),
            CountedIn::Ml => self.volume(amount),
            CountedIn::Each => amount.to_string(),
        }
    }

    /// The same as it stands in a field and is read back to the gram: "1 lb", "450 g", "2 cups", "3".
    pub fn amount_field(&self, amount: i64, unit: CountedIn) -> String {
        let pounds = self.viewer.weight == WeightUnit::Pound;
        match unit {
            CountedIn::G if pounds => {
                let ounces =
                    Round::Nearest.divide(amount.saturating_mul(1_600_000), POUND_E5_GRAMS);
                let back = Round::Nearest.divide(ounces * POUND_E5_GRAMS, 1_600_000);
                match back == amount && ounces > 0 {
                    true => self.weight(amount),
                    false => format!("{amount} g"),
                }
            }
            CountedIn::G => format!("{amount} g"),
            CountedIn::Ml if pounds => {
                let quarters = Round::Nearest.divide(amount.saturating_mul(4_000), CUP_MICROLITERS);
                let back = Round::Nearest.divide(quarters * CUP_MICROLITERS, 4_000);
                let is_shown_whole = quarters < 16 || quarters % 4 == 0;
                match back == amount && quarters > 0 && is_shown_whole {
                    true => self.spoons(quarters * QUARTERS_A_CUP / 4),
                    false => format!("{amount} ml"),
                }
            }
            CountedIn::Ml => format!("{amount} ml"),
            CountedIn::Each => amount.to_string(),
        }
    }

    /// Money: "$12.50".
    pub fn money(&self, cents: i64) -> String {
        let amount = self.money_field(cents);
        self.with("batch-money", &[("amount", Arg::Text(&amount))])
    }

    /// The same without its sign.
    pub fn money_field(&self, cents: i64) -> String {
        format!("{}.{:02}", cents / 100, cents % 100)
    }

    /// Thousandths as percent: "1.5 %", "2 %".
    pub fn percent(&self, permille: i64) -> String {
        let percent = self.percent_field(permille);
        self.with("batch-percent", &[("percent", Arg::Text(&percent))])
    }

    /// The same without its sign.
    pub fn percent_field(&self, permille: i64) -> String {
        let percent = decimal(permille);
        percent
            .strip_suffix(".0")
            .map_or(percent.clone(), str::to_owned)
    }
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, metric_viewer, test_viewer, typed};
    use super::*;

    #[test]
    fn a_rub_and_a_mop_read_in_both_units() {
        let (us, metric) = (test_viewer(Locale::EnUs), metric_viewer(Locale::EsUs));
        let (us, metric) = (Words::of(&us), Words::of(&metric));
        // 146 g are 5.15 oz; a cup of table salt is 292 g.
        assert_eq!(us.weighed(146_000), "5.1 oz (146 g)");
        assert_eq!(us.weighed(584_000), "1 lb 4.6 oz (584 g)");
        assert_eq!(metric.weighed(146_000), "146 g");
        assert_eq!(metric.weighed(4_480), "4.5 g");
        assert_eq!(us.by_spoon(146_000, 292).as_deref(), Some("½ cup"));
        assert_eq!(us.by_spoon(18_250, 292).as_deref(), Some("1 tbsp"));
        assert_eq!(us.by_spoon(3_000, 292).as_deref(), Some("½ tsp"));
        assert_eq!(us.by_spoon(100, 292), None);
        assert_eq!(metric.by_spoon(146_000, 292), None);
        assert_eq!(us.volume(828), "3½ cups (828 ml)");
        assert_eq!(us.volume(324), "1¼ cups + 2 tbsp (324 ml)");
        assert_eq!(us.volume(3_785), "4 qt (3.8 l)");
        assert_eq!(metric.volume(1_970), "2.0 l");
        assert_eq!(us.money(1_205), "$12.05");
        assert_eq!([us.percent(15), us.percent(20)], ["1.5 %", "2 %"]);
    }

    #[test]
    fn what_stands_in_a_field_is_read_back_to_the_gram() {
        for viewer in [
            test_viewer(Locale::EnUs),
            metric_viewer(Locale::EsUs),
            test_viewer(Locale::EsUs),
        ] {
            let say = Words::of(&viewer);
            for unit in [CountedIn::G, CountedIn::Ml, CountedIn::Each] {
                for amount in (1..3_000).step_by(7).chain([454, 907, 237, 946]) {
                    let field = say.amount_field(amount, unit);
                    let back = typed::amount(&say, &field).unwrap();
                    assert_eq!(back, (amount, unit), "{field}");
                }
            }
        }
    }
}
