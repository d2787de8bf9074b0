//! What a food weighs, holds and conducts, of what it is made of (Choi and Okos). Start at [`Parts::properties`]; the sum is
//! [`food_properties`].
//!
//! Valid for food that is not frozen, 0 to 150 °C. Density and heat add up exactly (by mass); conductivity lies between the
//! parts side by side (parallel, the most) and one behind the other (series, the least). Meat measures near the upper.

mod coefficients;
mod sum;
#[cfg(test)]
mod tests;

pub use sum::{FoodInput, FoodProperties, NotAFood, food_properties};

use coefficients::{PARTS, at};

/// Shares of the mass: water, protein, fat, carbohydrate, ash. They add up to 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Parts([f64; 5]);

/// What a food is like at one temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Properties {
    /// kg/m³.
    pub density: f64,
    /// J/(kg K).
    pub heat: f64,
    /// W/(m K), its parts side by side.
    pub conducts_most: f64,
    /// W/(m K), its parts one behind the other.
    pub conducts_least: f64,
}

impl Parts {
    /// Of grams, in the order of [`Parts`]; what they miss of a whole, or have beyond it, is taken for rounding.
    pub fn of_grams(grams: [f64; 5]) -> Self {
        let all: f64 = grams.iter().sum();
        Self(grams.map(|part| part / all))
    }

    /// The share of water.
    pub fn water(&self) -> f64 {
        self.0[0]
    }

    /// At this many °C: 0 to 150.
    pub fn properties(&self, celsius: f64) -> Properties {
        let volumes = self.volumes(celsius);
        let (mut volume, mut heat, mut side, mut behind) = (0.0, 0.0, 0.0, 0.0);
        for (i, part) in PARTS.iter().enumerate() {
            let conducts = at(&part.conducts, celsius);
            volume += volumes[i];
            heat += self.0[i] * at(&part.holds, celsius) * 1000.0;
            side += volumes[i] * conducts;
            behind += volumes[i] / conducts;
        }
        Properties {
            density: 1.0 / volume,
            heat,
            conducts_most: side / volume,
            conducts_least: volume / behind,
        }
    }

    /// What water adds to the conductivity of the whole, its parts side by side, W/(m K).
    pub fn water_conducts(&self, celsius: f64) -> f64 {
        let volumes = self.volumes(celsius);
        volumes[0] * at(&PARTS[0].conducts, celsius) / volumes.iter().sum::<f64>()
    }

    /// Heat that all but the water holds in a kilogram of the whole, J/(kg K).
    pub fn dry_heat(&self, celsius: f64) -> f64 {
        let dry = self.0.iter().zip(&PARTS).skip(1);
        dry.map(|(share, part)| share * at(&part.holds, celsius) * 1000.0)
            .sum()
    }

    /// m³ of each part in a kilogram of the whole.
    fn volumes(&self, celsius: f64) -> [f64; 5] {
        std::array::from_fn(|i| self.0[i] / at(&PARTS[i].density, celsius))
    }
}

impl Properties {
    /// m²/s, its parts side by side.
    pub fn diffusivity(&self) -> f64 {
        self.conducts_most / (self.density * self.heat)
    }
}
