//! Who is looking: the choices in their cookie, else what their browser asks for. Start at [`Reader`].

use crate::{home::Home, zone};
use axum::{
    extract::FromRequestParts,
    http::{HeaderMap, header, request::Parts},
};
use slowbend_core::words::{HourCycle, Locale, TemperatureUnit, Viewer, WeightUnit};
use std::{convert::Infallible, sync::Arc};

/// The name of the cookie of choices.
pub const COOKIE: &str = "slowbend-viewer";
/// How long a choice lasts, seconds: a year. Common practice, no source.
const LASTS_S: u32 = 365 * 24 * 3600;

/// Who is looking, and whether their zone was chosen or is only the machine's.
#[derive(Clone, Debug)]
pub struct Reader {
    /// For core.
    pub viewer: Viewer,
    /// Whether a zone was chosen.
    pub zone_chosen: bool,
}

impl FromRequestParts<Arc<Home>> for Reader {
    type Rejection = Infallible;
    async fn from_request_parts(parts: &mut Parts, home: &Arc<Home>) -> Result<Self, Infallible> {
        Ok(Self::of(&parts.headers, home))
    }
}

impl Reader {
    /// Reads the cookie first, then Accept-Language; the rest is as usual in the United States.
    pub fn of(headers: &HeaderMap, home: &Home) -> Self {
        let viewer = Viewer {
            locale: asked(headers),
            zone: home.zone.clone(),
            ..Viewer::default_for(home.device)
        };
        let mut reader = Self {
            viewer,
            zone_chosen: false,
        };
        for (name, value) in cookie(headers, COOKIE)
            .unwrap_or("")
            .split('|')
            .filter_map(|part| part.split_once(':'))
        {
            reader.choose(name, value);
        }
        reader
    }

    /// Takes one choice; one that does not exist leaves things as they are.
    pub fn choose(&mut self, name: &str, value: &str) {
        match name {
            "locale" => take(&mut self.viewer.locale, value),
            "temperature" => take(&mut self.viewer.temperature, value),
            "weight" => take(&mut self.viewer.weight, value),
            "hours" => take(&mut self.viewer.hours, value),
            "zone" if zone::is_known(value) => {
                self.viewer.zone = value.into();
                self.zone_chosen = true;
            }
            _ => {}
        }
    }

    /// The cookie that brings these choices back: for this site only, and out of reach of scripts.
    pub fn set_cookie(&self) -> String {
        let Viewer {
            locale,
            temperature,
            weight,
            hours,
            zone,
            ..
        } = &self.viewer;
        let mut choices = format!(
            "locale:{}|temperature:{}|weight:{}|hours:{}",
            locale.tag(),
            temperature_tag(*temperature),
            weight_tag(*weight),
            hours_tag(*hours)
        );
        if self.zone_chosen {
            choices.push_str("|zone:");
            choices.push_str(zone);
        }
        format!("{COOKIE}={choices}; Path=/; Max-Age={LASTS_S}; SameSite=Strict; HttpOnly")
    }
}

fn take<T: serde::de::DeserializeOwned>(field: &mut T, value: &str) {
    if let Ok(known) = serde_json::from_value(value.into()) {
        *field = known;
    }
}

const fn temperature_tag(unit: TemperatureUnit) -> &'static str {
    match unit {
        TemperatureUnit::Fahrenheit => "fahrenheit",
        TemperatureUnit::Celsius => "celsius",
    }
}

const fn weight_tag(unit: WeightUnit) -> &'static str {
    match unit {
        WeightUnit::Pound => "pound",
        WeightUnit::Kilogram => "kilogram",
    }
}

const fn hours_tag(hours: HourCycle) -> &'static str {
    match hours {
        HourCycle::Twelve => "twelve",
        HourCycle::TwentyFour => "twentyfour",
    }
}

fn asked(headers: &HeaderMap) -> Locale {
    let asked = headers.get(header::ACCEPT_LANGUAGE);
    Locale::from_tag(asked.and_then(|value| value.to_str().ok()).unwrap_or(""))
}

/// The value of the cookie `name`, as sent.
pub fn cookie<'a>(headers: &'a HeaderMap, name: &str) -> Option<&'a str> {
    let all = headers.get_all(header::COOKIE).iter();
    all.filter_map(|value| value.to_str().ok())
        .flat_map(|value| value.split(';'))
        .filter_map(|pair| pair.trim().split_once('='))
        .find_map(|(known, value)| (known == name).then_some(value))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tests::home;

    fn reader(home: &Home, headers: &[(header::HeaderName, &str)]) -> Reader {
        let pairs = headers
            .iter()
            .map(|(name, value)| (name.clone(), value.parse().unwrap()));
        Reader::of(&pairs.collect(), home)
    }

    #[test]
    fn a_choice_comes_back_as_it_was_made() {
        let (_folder, home) = home();
        let mut chosen = reader(&home, &[]);
        for (name, value) in [
            ("locale", "es-US"),
            ("temperature", "celsius"),
            ("weight", "kilogram"),
            ("hours", "twentyfour"),
            ("zone", "America/Mexico_City"),
        ] {
            chosen.choose(name, value);
        }
        let set = chosen.set_cookie();
        let back = reader(&home, &[(header::COOKIE, set.split(';').next().unwrap())]);
        assert_eq!(back.viewer, chosen.viewer);
        assert!(back.zone_chosen);
        assert!(set.contains("SameSite=Strict; HttpOnly"));
    }

    #[test]
    fn without_a_choice_the_browser_is_asked_and_nonsense_is_passed_over() {
        let (_folder, home) = home();
        let spanish = reader(
            &home,
            &[(header::ACCEPT_LANGUAGE, "es-MX,es;q=0.9,en;q=0.5")],
        );
        assert_eq!(spanish.viewer.locale, Locale::EsUs);
        let broken = reader(
            &home,
            &[(
                header::COOKIE,
                "slowbend-viewer=locale:xx|zone:Mars|hours:|; a",
            )],
        );
        assert_eq!(broken.viewer, reader(&home, &[]).viewer);
        assert!(!broken.zone_chosen);
    }
}
