//! How much vapor air can hold.

const CRITICAL_K: f64 = 647.096;
const CRITICAL_PA: f64 = 22.064e6;
/// Coefficients and exponents of IAPWS SR1-86(1992), from memory; held to its boiling points below.
const TERMS: [(f64, f64); 6] = [
    (-7.859_517_83, 1.0),
    (1.844_082_59, 1.5),
    (-11.786_649_7, 3.0),
    (22.680_741_1, 3.5),
    (-15.961_871_9, 4.0),
    (1.801_225_02, 7.5),
];

/// The pressure of saturated vapor over water, pascal, at 0 to 373 °C.
pub fn saturation_pa(celsius: f64) -> f64 {
    let kelvin = celsius + 273.15;
    let below = 1.0 - kelvin / CRITICAL_K;
    let sum: f64 = TERMS
        .iter()
        .map(|(a, power)| a * libm::pow(below, *power))
        .sum();
    CRITICAL_PA * libm::exp(sum * CRITICAL_K / kelvin)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// One atmosphere boils water at 99.974 °C; the triple point is 611.657 Pa at 0.01 °C (both from memory).
    #[test]
    fn water_boils_at_one_atmosphere_and_meets_its_triple_point() {
        assert!((saturation_pa(99.974) - 101_325.0).abs() < 10.0);
        assert!((saturation_pa(0.01) - 611.657).abs() < 0.1);
    }
}
