//! Properties of meat as this simulator has them, not by Choi and Okos: conductivity as 0.080 + 0.52 × water (Sweat), heat
//! capacity as 837 + 3,349 × water (Siebel), density by parts of water, protein and fat; all from memory. Conductivity rises by
//! 0.15 % a kelvin, and a broad hump of heat is taken where protein and collagen change, both invented.

/// Properties of one meat.
#[derive(Clone, Copy, Debug)]
pub struct Food {
    /// W/(m K) at 20 °C.
    conductivity: f64,
    /// J/(m³ K).
    capacity: f64,
    /// kg/m³.
    pub density: f64,
    /// Share of water.
    pub water: f64,
}

impl Food {
    /// Of shares of water, protein and fat, and a factor on conduction.
    pub fn of([water, protein, fat]: [f64; 3], conducts: f64) -> Self {
        let rest = (1.0 - water - protein - fat).max(0.0);
        let density = 1.0 / (water / 998.0 + protein / 1_330.0 + fat / 925.0 + rest / 2_400.0);
        Self {
            conductivity: conducts * (0.080 + 0.52 * water),
            capacity: density * (837.0 + 3_349.0 * water),
            density,
            water,
        }
    }

    /// W/(m K).
    pub fn conductivity(&self, celsius: f64) -> f64 {
        self.conductivity * (1.0 + 0.0015 * (celsius - 20.0))
    }

    /// J/(m³ K), with the hump of change around 64 °C (about 8 kJ/kg in all).
    pub fn capacity(&self, celsius: f64) -> f64 {
        let off = (celsius - 64.0) / 9.0;
        self.capacity + self.density * 500.0 / (1.0 + off * off)
    }

    /// The largest step, s, that an explicit scheme takes with cells of this size, m.
    pub fn step(&self, dx: f64, dy: f64) -> f64 {
        let spread = self.conductivity(110.0) / self.capacity;
        0.4 / (2.0 * spread * (1.0 / (dx * dx) + 1.0 / (dy * dy)))
    }
}
