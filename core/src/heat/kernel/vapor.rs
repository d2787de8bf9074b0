//! Vapor over a wet surface, fast: a polynomial in place of IAPWS's roots, held to [`crate::air::saturation_pa`].

use super::{lanes::Lanes, number::Real};

/// The logarithm of the pressure in pascal, in u = (°C − 70) / 75, lowest first: ours, fitted to IAPWS SR1-86(1992) at
/// −5 to 145 °C; relative error of the pressure below 3e-5.
const LN_PA: [f64; 7] = [
    10.348_244_387_4,
    3.243_556_855_4,
    -0.812_753_290_5,
    0.193_291_679_9,
    -0.042_278_492_5,
    0.009_689_270_5,
    -0.002_097_629_4,
];
/// Of its slope.
const SLOPE: [f64; 6] = [
    LN_PA[1],
    2.0 * LN_PA[2],
    3.0 * LN_PA[3],
    4.0 * LN_PA[4],
    5.0 * LN_PA[5],
    6.0 * LN_PA[6],
];
/// Mass of a molecule of water over that of dry air, as in [`crate::air`].
const WATER_TO_AIR: f64 = 0.621_945;
/// The least share of dry air that is left over a wet surface, so that a surface near boiling gives much vapor and not
/// infinitely much.
pub(super) const AIR_LEFT: f64 = 0.1;

/// Vapor in air that touches water of some temperature: kg a kg of dry air, and its rise a kelvin. −5 to 145 °C, held there.
#[inline(always)]
pub fn saturated<F: Real, const L: usize>(
    celsius: Lanes<F, L>,
    pressure_pa: f64,
) -> (Lanes<F, L>, Lanes<F, L>) {
    let u = (celsius.at_least(-5.0).at_most(145.0) - 70.0) * (1.0 / 75.0);
    let pa = u.polynomial(&LN_PA).exp();
    let rise = pa * u.polynomial(&SLOPE) * (1.0 / 75.0);
    let left = (Lanes::all(pressure_pa) - pa).at_least(AIR_LEFT * pressure_pa);
    let each = Lanes::all(WATER_TO_AIR) / left;
    let open = (Lanes::all((1.0 - AIR_LEFT) * pressure_pa) - pa)
        .positive(Lanes::all(pressure_pa) / left, Lanes::all(1.0));
    (pa * each, rise * each * open)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::air::saturation_pa;

    #[test]
    fn it_is_the_saturation_of_the_air_module() {
        for celsius in 0..=95 {
            let pa = saturation_pa(f64::from(celsius));
            let exact = WATER_TO_AIR * pa / (101_325.0 - pa).max(10_132.5);
            let (ours, rise) = saturated(Lanes::<f32, 1>::all(f64::from(celsius)), 101_325.0);
            assert!((ours.0[0].f64() / exact - 1.0).abs() < 3e-4, "{celsius}");
            let (next, _) = saturated(Lanes::<f64, 1>::all(f64::from(celsius) + 1e-4), 101_325.0);
            let (here, _) = saturated(Lanes::<f64, 1>::all(f64::from(celsius) - 1e-4), 101_325.0);
            let slope = (next.0[0] - here.0[0]) / 2e-4;
            assert!((rise.0[0].f64() / slope - 1.0).abs() < 1e-3, "{celsius}");
        }
    }
}
