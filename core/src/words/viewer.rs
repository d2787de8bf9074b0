//! Who is reading: language, units, hours and zone. An argument of every screen, so that one process serves Spanish
//! and English at once.

use crate::ids::DeviceId;
use serde::{Deserialize, Serialize};

/// A language with its regional usage. To add one, see [the module](crate::words).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Locale {
    /// English as written in the United States.
    #[serde(rename = "en-US")]
    EnUs,
    /// Spanish as written in the United States and Mexico.
    #[serde(rename = "es-US")]
    EsUs,
}

impl Locale {
    /// Every language there is.
    pub const ALL: [Self; 2] = [Self::EnUs, Self::EsUs];

    /// The BCP 47 tag, for a page's `lang`.
    pub const fn tag(self) -> &'static str {
        match self {
            Self::EnUs => "en-US",
            Self::EsUs => "es-US",
        }
    }

    /// The nearest language to what a platform or browser asks for: one tag (`es-MX`, `es_419`) or a whole
    /// Accept-Language value (`de, es;q=0.8, en;q=0.5`), read by weight, the earlier of two equals first.
    /// What is not spoken here is passed over; when nothing is left, English.
    pub fn from_tag(tags: &str) -> Self {
        let mut best: Option<(u32, Self)> = None;
        for (locale, weight) in tags.split(',').filter_map(asked) {
            if best.is_none_or(|(most, _)| weight > most) {
                best = Some((weight, locale));
            }
        }
        best.map_or(Self::EnUs, |(_, locale)| locale)
    }
}

/// One part of an Accept-Language value with its weight in thousandths; none when not spoken here or weighed 0.
fn asked(part: &str) -> Option<(Locale, u32)> {
    let (tag, rest) = part.split_once(';').unwrap_or((part, ""));
    let language = tag
        .trim()
        .split(['-', '_'])
        .next()
        .unwrap_or_default()
        .to_ascii_lowercase();
    let locale = match language.as_str() {
        "es" | "spa" => Locale::EsUs,
        "en" | "eng" => Locale::EnUs,
        _ => return None,
    };
    let weight = rest.trim().strip_prefix("q=").map_or(1000, thousandths);
    (weight > 0).then_some((locale, weight))
}

/// A weight such as `0.85` in thousandths (RFC 9110 section 12.4.2, from memory: at most three decimals).
/// What cannot be read weighs as if nothing had been said.
fn thousandths(text: &str) -> u32 {
    let (whole, decimals) = text.trim().split_once('.').unwrap_or((text.trim(), ""));
    let padded: String = decimals.chars().chain("000".chars()).take(3).collect();
    match (whole.parse::<u32>(), padded.parse::<u32>()) {
        (Ok(0), Ok(part)) => part,
        _ => 1000,
    }
}

/// The scale temperatures are shown and typed in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum TemperatureUnit {
    /// °F
    Fahrenheit,
    /// °C
    Celsius,
}

/// What weights are shown and typed in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum WeightUnit {
    /// Avoirdupois pounds and ounces.
    Pound,
    /// Kilograms and grams.
    Kilogram,
}

/// How a clock is shown, and how a bare "2:05" is read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum HourCycle {
    /// 2:05 PM
    Twelve,
    /// 14:05
    TwentyFour,
}

/// Who is looking at a screen.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Viewer {
    /// The language.
    pub locale: Locale,
    /// The scale of temperatures.
    pub temperature: TemperatureUnit,
    /// What weights are in.
    pub weight: WeightUnit,
    /// How clocks are written.
    pub hours: HourCycle,
    /// IANA zone, such as `America/Chicago`. An unknown one is shown as UTC, and said
    /// ([`Words::zone_note`](super::Words::zone_note)).
    pub zone: String,
    /// The device whose screen this is.
    pub device: DeviceId,
}

impl Viewer {
    /// US English, °F, pounds and a 12-hour clock in UTC: what a device shows until it has said otherwise.
    pub fn default_for(device: DeviceId) -> Self {
        Self {
            locale: Locale::EnUs,
            temperature: TemperatureUnit::Fahrenheit,
            weight: WeightUnit::Pound,
            hours: HourCycle::Twelve,
            zone: "UTC".into(),
            device,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn spanish_of_any_region_is_spanish_and_what_is_not_spoken_is_passed_over() {
        for tag in [
            "es",
            "es-MX",
            "es_419",
            "ES-us",
            "spa",
            "de, es;q=0.8, en;q=0.5",
            "en;q=0.2,es;q=0.9",
        ] {
            assert_eq!(Locale::from_tag(tag), Locale::EsUs, "{tag}");
        }
        for tag in [
            "",
            "en",
            "en-GB",
            "fr",
            "*",
            "est",
            "en,es",
            "es;q=0,fr",
            "es;q=0.5,en;q=0.51",
            ";;,,q=",
        ] {
            assert_eq!(Locale::from_tag(tag), Locale::EnUs, "{tag}");
        }
    }

    #[test]
    fn a_viewer_is_written_in_plain_words() {
        let viewer = Viewer::default_for(DeviceId(uuid::Uuid::nil()));
        let json = serde_json::to_value(&viewer).unwrap();
        assert_eq!(json["locale"], "en-US");
        assert_eq!(json["temperature"], "fahrenheit");
        assert_eq!(json["hours"], "twelve");
        assert_eq!(serde_json::from_value::<Viewer>(json).unwrap(), viewer);
    }
}
