//! The weather in four taps, and what it does to a pit.

use super::choices::choices;
use crate::units::Mk;
use serde::{Deserialize, Serialize};

choices! {
    /// How warm the air is around the pit.
    Ambient {
        /// Below 32 °F (0 °C).
        Freezing,
        /// 32 to 50 °F (0 to 10 °C).
        Cold,
        /// 50 to 68 °F (10 to 20 °C).
        Cool,
        /// 68 to 86 °F (20 to 30 °C).
        Warm,
        /// Above 86 °F (30 °C).
        Hot,
    }
    /// How it blows.
    Wind {
        /// Smoke rises straight.
        Still,
        /// Leaves move.
        Breeze,
        /// Branches move.
        Windy,
    }
    /// Whether the pit gets wet.
    Rain {
        /// It is dry.
        Dry,
        /// Rain or snow falls on it.
        Wet,
    }
    /// Whether the sun stands on the pit.
    Sun {
        /// Shade, clouds or night.
        Shade,
        /// Full sun.
        Sunny,
    }
}

/// The weather at a pit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Weather {
    /// How warm it is.
    pub ambient: Ambient,
    /// How it blows.
    pub wind: Wind,
    /// Whether it rains.
    pub rain: Rain,
    /// Whether the sun is on it.
    pub sun: Sun,
}

/// One of the four taps that say the weather.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "tap", content = "is")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum WeatherTap {
    /// How warm it is.
    Air(Ambient),
    /// How it blows.
    Blows(Wind),
    /// Whether it rains.
    Falls(Rain),
    /// Whether the sun is on it.
    Shines(Sun),
}

impl Weather {
    /// The same after that tap.
    pub const fn tapped(self, tap: WeatherTap) -> Self {
        match tap {
            WeatherTap::Air(ambient) => Self { ambient, ..self },
            WeatherTap::Blows(wind) => Self { wind, ..self },
            WeatherTap::Falls(rain) => Self { rain, ..self },
            WeatherTap::Shines(sun) => Self { sun, ..self },
        }
    }

    /// What is reckoned with where nobody said: a mild, still, dry day in the shade.
    pub const FAIR: Self = Self {
        ambient: Ambient::Cool,
        wind: Wind::Still,
        rain: Rain::Dry,
        sun: Sun::Shade,
    };
}

impl Ambient {
    /// The middle of the span, for the ends what is common there.
    pub const fn temp(self) -> Mk {
        Mk::from_c_milli(match self {
            Self::Freezing => -5_000,
            Self::Cold => 5_000,
            Self::Cool => 15_000,
            Self::Warm => 25_000,
            Self::Hot => 34_000,
        })
    }
}

/// What still, dry air and the sky take from a wall, W a m² and kelvin: see [`outer`].
pub(super) const OUTER_STILL: f64 = outer(Wind::Still, Rain::Dry);

/// What the air outside and the sky take from a wall, W a m² and kelvin: 5.7 + 3.8 × wind in m/s (McAdams; from memory), 6
/// for what it radiates, 20 more where rain wets it (no source). Still, breeze and windy are 0.5, 3 and 8 m/s.
pub(super) const fn outer(wind: Wind, rain: Rain) -> f64 {
    let speed = match wind {
        Wind::Still => 0.5,
        Wind::Breeze => 3.0,
        Wind::Windy => 8.0,
    };
    let wet = match rain {
        Rain::Dry => 0.0,
        Rain::Wet => 20.0,
    };
    5.7 + 3.8 * speed + 6.0 + wet
}

/// What the sun puts on a wall, W/m² of all its surface: a quarter of 600, of which 0.7 are taken up. No source.
pub(super) const fn sunshine(weather: &Weather) -> f64 {
    match (weather.sun, weather.rain) {
        (Sun::Sunny, Rain::Dry) => 105.0,
        _ => 0.0,
    }
}
