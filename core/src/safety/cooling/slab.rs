//! The hottest place of a slab that cools in surroundings of one temperature: the first term of the exact series.
//!
//! With L the way from the coldest face to the hottest place: ζ tan ζ = Bi = hL/k, C = 4 sin ζ / (2ζ + sin 2ζ), and the
//! share of the difference that is left after t is C exp(−ζ² αt/L²). Known from any textbook of heat transfer; the numbers
//! are held to `core/tests/published/one_term_coefficients.csv`. Before αt/L² = 0.2 the first term alone is some percent too
//! warm, so the time it gives is too long rather than too short.

/// ζ and C for this Biot number, above 0.
pub fn first_term(biot: f64) -> (f64, f64) {
    let (mut low, mut high) = (0.0, core::f64::consts::FRAC_PI_2);
    // ζ sin ζ − Bi cos ζ rises from −Bi to π/2: halving 60 times finds its zero to the last bits.
    for _ in 0..60 {
        let middle = (low + high) / 2.0;
        match middle * libm::sin(middle) < biot * libm::cos(middle) {
            true => low = middle,
            false => high = middle,
        }
    }
    let zeta = (low + high) / 2.0;
    let c = 4.0 * libm::sin(zeta) / (2.0 * zeta + libm::sin(2.0 * zeta));
    (zeta, c)
}

/// A slab and what it cools in.
#[derive(Clone, Copy, Debug)]
pub struct Slab {
    /// From the coldest face to the hottest place, meters.
    pub length: f64,
    /// Of the food, W/(m K).
    pub conductivity: f64,
    /// Of the food, m²/s.
    pub diffusivity: f64,
    /// At the face, W/(m² K).
    pub surface: f64,
}

impl Slab {
    /// Seconds until so large a share (0 to 1) of the first difference is left.
    pub fn seconds_to(&self, share: f64) -> f64 {
        let (zeta, c) = first_term(self.surface * self.length / self.conductivity);
        let fourier = libm::log(c / share) / (zeta * zeta);
        fourier.max(0.0) * self.length * self.length / self.diffusivity
    }
}
