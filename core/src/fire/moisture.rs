//! How wet wood gets in the air it lies in.
//!
//! The equation is that of Hailwood and Horrobin with the coefficients of the USDA Forest Products Laboratory
//! (FPL-GTR-282 chapter 4; Simpson 1998; read in three independent copies in public source text). It is held to the five
//! values of Wood Handbook Table 4-2 that were read and to 40 computed rows (`core/tests/published/wood_moisture.csv`).

use super::{NotAFire, refused};
use crate::units::Mk;

/// Water in wood that has lain long in such air, thousandths of the *dry* mass. The table's own range: −1.1 to 54 °C (30 to
/// 130 °F), humidity 50 to 950 ‰.
///
/// ```
/// use slowbend_core::{fire::moisture_permille, units::Mk};
/// assert_eq!(moisture_permille(Mk::from_f(70), 650), Ok(120)); // Wood Handbook: 12.0 %
/// ```
///
/// # Errors
/// Outside that range.
pub fn moisture_permille(air: Mk, humidity_permille: i64) -> Result<i64, NotAFire> {
    let t = refused::celsius(
        "The air that the wood lay in, millikelvin,",
        air,
        -1_150,
        54_500,
    )?;
    let h = refused::within("The humidity, thousandths,", humidity_permille, 50, 950)? as f64 / 1e3;
    let w = 349.0 + 1.29 * t + 0.0135 * t * t;
    let k = 0.805 + 0.000_736 * t - 0.000_002_73 * t * t;
    let k1 = 6.27 - 0.009_38 * t - 0.000_303 * t * t;
    let k2 = 1.91 + 0.0407 * t - 0.000_293 * t * t;
    let kh = k * h;
    let bound = (k1 * kh + 2.0 * k1 * k2 * kh * kh) / (1.0 + k1 * kh + k1 * k2 * kh * kh);
    let percent = 1_800.0 / w * (kh / (1.0 - kh) + bound);
    Ok(libm::round(percent * 10.0) as i64)
}

/// Thousandths of the wet mass, of thousandths of the dry mass (0 or more): 250 ‰ of the dry are 200 ‰ of the wet.
pub const fn wet_basis_permille(dry_basis: i64) -> i64 {
    (dry_basis * 1_000 + (1_000 + dry_basis) / 2) / (1_000 + dry_basis)
}
