//! Choi and Okos (1986): what each part of a food weighs, holds and conducts, as parabolas in °C, −40 to 150 °C (water 0 to
//! 150 °C). Read in four independent public transcriptions that agree (ASHRAE Refrigeration, table 1 and 2 of its chapter on
//! foods); copied to `core/tests/published/choi_okos_coefficients.csv`, which the tests hold these lines to. Their
//! polynomials of diffusivity are from memory and not used: it is k / (ρ c).

/// One part of a food.
pub struct Part {
    /// W/(m K).
    pub conducts: [f64; 3],
    /// kg/m³.
    pub density: [f64; 3],
    /// kJ/(kg K).
    pub holds: [f64; 3],
}

/// Water, protein, fat, carbohydrate, ash: the order of [`Parts`](super::Parts).
pub const PARTS: [Part; 5] = [
    Part {
        conducts: [5.7109e-1, 1.7625e-3, -6.7036e-6],
        density: [9.9718e2, 3.1439e-3, -3.7574e-3],
        holds: [4.1762, -9.0864e-5, 5.4731e-6],
    },
    Part {
        conducts: [1.7881e-1, 1.1958e-3, -2.7178e-6],
        density: [1.3299e3, -5.1840e-1, 0.0],
        holds: [2.0082, 1.2089e-3, -1.3129e-6],
    },
    Part {
        conducts: [1.8071e-1, -2.7604e-4, -1.7749e-7],
        density: [9.2559e2, -4.1757e-1, 0.0],
        holds: [1.9842, 1.4733e-3, -4.8008e-6],
    },
    Part {
        conducts: [2.0141e-1, 1.3874e-3, -4.3312e-6],
        density: [1.5991e3, -3.1046e-1, 0.0],
        holds: [1.5488, 1.9625e-3, -5.9399e-6],
    },
    Part {
        conducts: [3.2962e-1, 1.4011e-3, -2.9069e-6],
        density: [2.4238e3, -2.8063e-1, 0.0],
        holds: [1.0926, 1.8896e-3, -3.6817e-6],
    },
];

/// A parabola at this temperature.
pub fn at(terms: &[f64; 3], celsius: f64) -> f64 {
    terms[0] + celsius * (terms[1] + celsius * terms[2])
}
