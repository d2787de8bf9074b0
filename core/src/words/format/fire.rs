//! What hands do at a fire, in words.

use super::super::{Arg, Words, key};
use crate::{
    fire::{Ambient, FireDid, FuelUnit, Rain, SmokeSeen, SmokeWood, Sun, Vent, WeatherTap, Wind},
    units::Mk,
};

impl Words<'_> {
    /// Quarters of a unit: "½ chimney", "1 split", "2 splits".
    pub fn fuel(&self, unit: FuelUnit, quarters: i64) -> String {
        let unit = match unit {
            FuelUnit::Split => key("fuel-split"),
            FuelUnit::Chunk => key("fuel-chunk"),
            FuelUnit::Chimney => key("fuel-chimney"),
            FuelUnit::Basket => key("fuel-basket"),
            FuelUnit::Hopper => key("fuel-hopper"),
        };
        let amount = quarters_of_one(quarters);
        let count = if quarters <= 4 { 1 } else { 2 };
        let args = [
            ("count", Arg::Number(count)),
            ("amount", Arg::Text(&amount)),
        ];
        self.with(unit, &args)
    }

    /// "Lower vent".
    pub fn vent(&self, vent: Vent) -> String {
        self.text(match vent {
            Vent::Lower => key("vent-lower"),
            Vent::Upper => key("vent-upper"),
        })
    }

    /// How far a vent is open: "shut", "½ open".
    pub fn open_by(&self, quarters: i64) -> String {
        self.text(match quarters {
            ..=0 => key("vent-shut"),
            1 => key("vent-quarter"),
            2 => key("vent-half"),
            3 => key("vent-three-quarters"),
            _ => key("vent-open"),
        })
    }

    /// What was done at a fire: "ash out".
    pub fn fire_did(&self, did: FireDid) -> String {
        self.text(match did {
            FireDid::Lit => key("fire-did-lit"),
            FireDid::CoalsReady => key("fire-did-coals-ready"),
            FireDid::Water => key("fire-did-water"),
            FireDid::Ash => key("fire-did-ash"),
            FireDid::Grease => key("fire-did-grease"),
            FireDid::ShutDown => key("fire-did-shut-down"),
        })
    }

    /// Which wood.
    pub fn wood(&self, wood: SmokeWood) -> String {
        self.text(match wood {
            SmokeWood::Fruit => key("wood-fruit"),
            SmokeWood::Mild => key("wood-mild"),
            SmokeWood::Oak => key("wood-oak"),
            SmokeWood::Pecan => key("wood-pecan"),
            SmokeWood::Hickory => key("wood-hickory"),
            SmokeWood::Mesquite => key("wood-mesquite"),
            SmokeWood::Unknown => key("wood-unknown"),
        })
    }

    /// What is seen or smelled of smoke.
    pub fn smoke_seen(&self, seen: SmokeSeen) -> String {
        self.text(match seen {
            SmokeSeen::Nothing => key("smoke-nothing"),
            SmokeSeen::ThinBlue => key("smoke-thin-blue"),
            SmokeSeen::White => key("smoke-white"),
            SmokeSeen::GrayOrYellow => key("smoke-gray"),
            SmokeSeen::Black => key("smoke-black"),
            SmokeSeen::Stings => key("smoke-stings"),
        })
    }

    /// One tap of the weather: "50–68 °F", "breeze", "dry", "shade".
    pub fn weather_tap(&self, tap: WeatherTap) -> String {
        match tap {
            WeatherTap::Air(ambient) => self.ambient(ambient),
            WeatherTap::Blows(wind) => self.wind(wind),
            WeatherTap::Falls(rain) => self.rain(rain),
            WeatherTap::Shines(sun) => self.sun(sun),
        }
    }

    /// How warm the air is.
    fn ambient(&self, ambient: Ambient) -> String {
        let [freezing, cold, cool, warm] = [0, 10, 20, 30].map(|c| Mk::from_c_milli(c * 1_000));
        let between = |low, high| {
            let span = self.temperature_span(low, high);
            self.with("weather-between", &[("span", Arg::Text(&span))])
        };
        match ambient {
            Ambient::Freezing => {
                let cold = self.temperature(freezing);
                self.with("weather-freezing", &[("cold", Arg::Text(&cold))])
            }
            Ambient::Cold => between(freezing, cold),
            Ambient::Cool => between(cold, cool),
            Ambient::Warm => between(cool, warm),
            Ambient::Hot => {
                let hot = self.temperature(warm);
                self.with("weather-hot", &[("hot", Arg::Text(&hot))])
            }
        }
    }

    /// How it blows.
    fn wind(&self, wind: Wind) -> String {
        self.text(match wind {
            Wind::Still => key("weather-still"),
            Wind::Breeze => key("weather-breeze"),
            Wind::Windy => key("weather-windy"),
        })
    }

    /// Whether it rains.
    fn rain(&self, rain: Rain) -> String {
        self.text(match rain {
            Rain::Dry => key("weather-dry"),
            Rain::Wet => key("weather-wet"),
        })
    }

    /// Whether the sun is on it.
    fn sun(&self, sun: Sun) -> String {
        self.text(match sun {
            Sun::Shade => key("weather-shade"),
            Sun::Sunny => key("weather-sunny"),
        })
    }
}

/// "¼", "1", "1½".
fn quarters_of_one(quarters: i64) -> String {
    let part = ["", "¼", "½", "¾"][quarters.rem_euclid(4) as usize];
    match quarters.div_euclid(4) {
        0 if !part.is_empty() => part.to_owned(),
        whole => format!("{whole}{part}"),
    }
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, metric_viewer, test_viewer};
    use super::*;

    #[test]
    fn amounts_and_weather_are_said_as_hands_count_them() {
        let (us, metric) = (test_viewer(Locale::EnUs), metric_viewer(Locale::EsUs));
        let (us, metric) = (Words::of(&us), Words::of(&metric));
        assert_eq!(us.fuel(FuelUnit::Chimney, 2), "½ chimney");
        assert_eq!(us.fuel(FuelUnit::Split, 4), "1 split");
        assert_eq!(us.fuel(FuelUnit::Split, 8), "2 splits");
        assert_eq!(us.fuel(FuelUnit::Basket, 6), "1½ baskets");
        assert_eq!(metric.fuel(FuelUnit::Split, 8), "2 rajas");
        let taps = [
            WeatherTap::Air(Ambient::Cool),
            WeatherTap::Blows(Wind::Still),
            WeatherTap::Falls(Rain::Dry),
            WeatherTap::Shines(Sun::Shade),
        ];
        let said = taps.map(|tap| us.weather_tap(tap)).join(", ");
        assert_eq!(said, "50–68 °F, still, dry, shade");
        assert_eq!(
            metric.weather_tap(WeatherTap::Air(Ambient::Hot)),
            "más de 30 °C"
        );
    }
}
