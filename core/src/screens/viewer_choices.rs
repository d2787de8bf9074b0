//! How this viewer reads: language, scales, clock.

use super::{ChoiceOption, ViewerChoice, check::recorded, glance::Glance};
use crate::words::{HourCycle, Locale, TemperatureUnit, WeightUnit};

impl Glance<'_> {
    pub fn viewer_choices(&self) -> Vec<ViewerChoice> {
        let viewer = self.viewer;
        let option = |value: String, label: String, chosen| ChoiceOption {
            value,
            label,
            chosen,
        };
        let languages = Locale::ALL.map(|locale| {
            let label = match locale {
                Locale::EnUs => self.say.text("language-en"),
                Locale::EsUs => self.say.text("language-es"),
            };
            option(locale.tag().into(), label, locale == viewer.locale)
        });
        let scales = [TemperatureUnit::Fahrenheit, TemperatureUnit::Celsius].map(|unit| {
            let label = match unit {
                TemperatureUnit::Fahrenheit => "°F",
                TemperatureUnit::Celsius => "°C",
            };
            option(recorded(unit), label.into(), unit == viewer.temperature)
        });
        let weights = [WeightUnit::Pound, WeightUnit::Kilogram].map(|unit| {
            let label = match unit {
                WeightUnit::Pound => "lb",
                WeightUnit::Kilogram => "kg",
            };
            option(recorded(unit), label.into(), unit == viewer.weight)
        });
        let hours = [HourCycle::Twelve, HourCycle::TwentyFour].map(|hours| {
            let label = match hours {
                HourCycle::Twelve => self.say.text("hours-twelve"),
                HourCycle::TwentyFour => self.say.text("hours-twenty-four"),
            };
            option(recorded(hours), label, hours == viewer.hours)
        });
        [
            ("locale", "viewer-language", languages),
            ("temperature", "viewer-temperature", scales),
            ("weight", "viewer-weight", weights),
            ("hours", "viewer-hours", hours),
        ]
        .into_iter()
        .map(|(field, label, options)| ViewerChoice {
            field: field.into(),
            label: self.say.text(label),
            options: options.into(),
        })
        .collect()
    }
}
