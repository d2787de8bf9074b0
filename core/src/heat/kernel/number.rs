//! The numbers that the kernel reckons in: f32 for many members, f64 for the reference, the same lines for both.

use std::{
    fmt::Debug,
    ops::{Add, Div, Mul, Sub},
};

/// 1.5 × 2²³: added to a small f32 it leaves the nearest whole number in the lowest bits.
const ROUNDS: f32 = 12_582_912.0;
/// ln 2 in two parts, so that a whole multiple of it is taken off without rounding (the first has few digits).
const LN_2: (f32, f32) = (0.693_359_4, -2.121_944_4e-4);
/// Of eˣ on ±½ ln 2, lowest first: ours, fitted at Chebyshev points; relative error below 3e-7 in f32.
const EXP: [f32; 7] = [
    1.0,
    1.0,
    0.5,
    0.166_664_56,
    0.041_666_28,
    0.008_371_93,
    0.001_394_46,
];

/// A floating number with + − × ÷ and an exponential that is the same on every processor.
pub trait Real:
    Copy
    + Debug
    + PartialOrd
    + Add<Output = Self>
    + Sub<Output = Self>
    + Mul<Output = Self>
    + Div<Output = Self>
    + 'static
{
    /// Bytes of one.
    const BYTES: usize;
    /// The nearest to this.
    fn of(value: f64) -> Self;
    /// As f64.
    fn f64(self) -> f64;
    /// e to this.
    fn exp(self) -> Self;
    /// Appends its bytes, little end first.
    fn put(self, bytes: &mut Vec<u8>);
    /// Reads as many bytes as it has; there have to be so many.
    fn take(bytes: &[u8]) -> Self;

    /// The greater; the other where this is no number.
    #[inline(always)]
    fn at_least(self, low: Self) -> Self {
        if self > low { self } else { low }
    }

    /// The smaller; the other where this is no number.
    #[inline(always)]
    fn at_most(self, high: Self) -> Self {
        if self < high { self } else { high }
    }
}

impl Real for f32 {
    const BYTES: usize = 4;

    #[inline(always)]
    fn of(value: f64) -> Self {
        value as f32
    }

    #[inline(always)]
    fn f64(self) -> f64 {
        f64::from(self)
    }

    /// Without a branch, so that lanes stay together. Past ±86 it stays where it is there.
    #[inline(always)]
    fn exp(self) -> Self {
        let x = self.at_least(-86.0).at_most(86.0);
        let rounded = x * std::f32::consts::LOG2_E + ROUNDS;
        let whole = rounded - ROUNDS;
        let rest = x - whole * LN_2.0 - whole * LN_2.1;
        let power = f32::from_bits((rounded.to_bits() << 23).wrapping_add(1.0f32.to_bits()));
        power * EXP.iter().rev().fold(0.0, |sum, term| sum * rest + term)
    }

    fn put(self, bytes: &mut Vec<u8>) {
        bytes.extend_from_slice(&self.to_le_bytes());
    }

    fn take(bytes: &[u8]) -> Self {
        Self::from_le_bytes(bytes.try_into().expect("four bytes"))
    }
}

impl Real for f64 {
    const BYTES: usize = 8;

    fn of(value: f64) -> Self {
        value
    }

    fn f64(self) -> f64 {
        self
    }

    fn exp(self) -> Self {
        libm::exp(self)
    }

    fn put(self, bytes: &mut Vec<u8>) {
        bytes.extend_from_slice(&self.to_le_bytes());
    }

    fn take(bytes: &[u8]) -> Self {
        Self::from_le_bytes(bytes.try_into().expect("eight bytes"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_exponential_is_that_of_libm_to_the_digits_of_f32() {
        for step in -8_500..=8_500 {
            let x = step as f32 / 100.0;
            let exact = libm::exp(f64::from(x));
            assert!((f64::from(x.exp_of()) / exact - 1.0).abs() < 4e-7, "{x}");
        }
        assert_eq!(1_000.0.exp_of(), 86.0.exp_of());
    }

    trait Of {
        fn exp_of(self) -> Self;
    }

    impl Of for f32 {
        fn exp_of(self) -> Self {
            Real::exp(self)
        }
    }
}
