//! Chance out of a seed: SplitMix64 (Steele, Lea, Flood, "Fast Splittable Pseudorandom Number Generators", OOPSLA 2014;
//! constants from memory). Written for the invented cooks alone, so that they share nothing with the estimator.

/// A source of numbers; the same seed gives the same ones.
#[derive(Clone, Debug)]
pub struct Rng(u64);

impl Rng {
    /// Starts at a seed and the number of a cook.
    pub fn new(seed: u64, cook: u64) -> Self {
        let mut rng = Self(seed ^ cook.wrapping_mul(0xd134_2543_de82_ef95));
        rng.any();
        rng
    }

    /// Any number.
    pub fn any(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// From 0 to 1, evenly.
    pub fn unit(&mut self) -> f64 {
        (self.any() >> 11) as f64 / (1u64 << 53) as f64
    }

    /// Between two numbers, evenly.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.unit()
    }

    /// Around 0 with a spread of 1 (Box and Muller).
    pub fn normal(&mut self) -> f64 {
        let (radius, turn) = (1.0 - self.unit(), self.unit());
        (-2.0 * radius.ln()).sqrt() * (std::f64::consts::TAU * turn).cos()
    }

    /// Around a number, by a factor: nine in ten lie within `spread` × 1.64 in the logarithm.
    pub fn about(&mut self, middle: f64, spread: f64) -> f64 {
        middle * (spread * self.normal()).exp()
    }

    /// True this share of the time.
    pub fn chance(&mut self, share: f64) -> bool {
        self.unit() < share
    }

    /// A number below `count`, which is at least 1.
    pub fn below(&mut self, count: usize) -> usize {
        (self.any() % count.max(1) as u64) as usize
    }
}
