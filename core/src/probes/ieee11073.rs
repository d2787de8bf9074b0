//! The numbers of IEEE 11073-20601: a mantissa times a power of ten, in 32 bits (FLOAT) or 16 bits (SFLOAT). Start at
//! [`float`].
//!
//! The exponent is in the high 8 (4) bits and the mantissa in the low 24 (12), both as two's complement: read in the HL7
//! Personal Health Device guide, page "IEEE 11073 FLOATs and SFLOATs". The five mantissas next to the ends stand for what
//! is no number; the standard writes them with exponent 0 (from memory), and with another exponent they are no number
//! either, because finite mantissas end at ±(2²³ − 3) and ±(2¹¹ − 3) (from memory; the values in
//! `core/tests/published/ieee11073_float_sfloat.csv` agree).

use crate::{units::Mk, words::TemperatureUnit};

/// `mantissa` × 10^`exponent`, exact.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Decimal {
    /// −8,388,605 to 8,388,605.
    pub mantissa: i32,
    /// −128 to 127.
    pub exponent: i8,
}

/// What stands in the place of a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Special {
    /// NaN: there is no value.
    NotANumber,
    /// NRes: there is a value, which this resolution cannot write.
    NotAtThisResolution,
    /// +INFINITY: above what the instrument measures.
    Above,
    /// −INFINITY: below what it measures.
    Below,
    /// Kept for later by the standard, or a special value with an exponent.
    Reserved,
}

/// The number of a 32-bit FLOAT.
///
/// # Errors
/// The special value that stands there.
pub const fn float(bits: u32) -> Result<Decimal, Special> {
    number((bits << 8) as i32 >> 8, (bits >> 24) as i8, 1 << 23)
}

/// The number of a 16-bit SFLOAT; its exponent is −8 to 7.
///
/// # Errors
/// The special value that stands there.
pub const fn sfloat(bits: u16) -> Result<Decimal, Special> {
    let mantissa = (bits << 4) as i16 >> 4;
    number(mantissa as i32, (bits as i16 >> 12) as i8, 1 << 11)
}

/// `end` is one more than the greatest mantissa that the width can hold.
const fn number(mantissa: i32, exponent: i8, end: i32) -> Result<Decimal, Special> {
    if mantissa.abs() <= end - 3 {
        return Ok(Decimal { mantissa, exponent });
    }
    Err(match (exponent, end - mantissa.abs(), mantissa > 0) {
        (0, 1, true) => Special::NotANumber,
        (0, 0, false) => Special::NotAtThisResolution,
        (0, 2, true) => Special::Above,
        (0, 2, false) => Special::Below,
        _ => Special::Reserved,
    })
}

/// Beyond this power of ten every number but 0 is past any integer, and every fraction is far below half a millikelvin.
const POWER_MAX: i8 = 20;

impl Decimal {
    /// This many degrees of a scale, to the nearest millikelvin, ties up; none where no 64-bit integer holds it.
    ///
    /// mK = °C × 1000 + 273,150 and mK = (°F × 5000 + 2,298,350) ÷ 9, exact by definition of the scales.
    pub fn degrees(self, unit: TemperatureUnit) -> Option<Mk> {
        let (factor, zero, divisor) = match unit {
            TemperatureUnit::Celsius => (1_000, 273_150, 1),
            TemperatureUnit::Fahrenheit => (5_000, 2_298_350, 9),
        };
        let mantissa = i128::from(self.mantissa) * factor;
        if mantissa != 0 && self.exponent > POWER_MAX {
            return None;
        }
        let power = 10_i128.pow(u32::from(self.exponent.unsigned_abs().min(POWER_MAX as u8)));
        let (number, divisor) = match self.exponent {
            0.. => (mantissa * power + zero, divisor),
            _ => (mantissa + zero * power, divisor * power),
        };
        let nearest = (2 * number + divisor).div_euclid(2 * divisor);
        i64::try_from(nearest).ok().map(Mk)
    }
}
