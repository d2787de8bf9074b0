//! As many numbers side by side as there are members in a block. Each lane is reckoned alone and in the same order, so a
//! member comes to the same bytes whichever lane it sits in; the compiler makes vector instructions of the loops.

use super::number::Real;
use std::ops::{Add, Div, Mul, Sub};

/// One number of each lane.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(transparent)]
pub struct Lanes<F, const L: usize>(pub [F; L]);

impl<F: Real, const L: usize> Lanes<F, L> {
    /// The same in every lane.
    #[inline(always)]
    pub fn all(value: f64) -> Self {
        Self([F::of(value); L])
    }

    /// What comes of each lane.
    #[inline(always)]
    pub fn each(mut self, of: impl Fn(F) -> F) -> Self {
        for lane in 0..L {
            self.0[lane] = of(self.0[lane]);
        }
        self
    }

    /// What comes of each lane with its fellow in the other.
    #[inline(always)]
    pub fn with(mut self, other: Self, of: impl Fn(F, F) -> F) -> Self {
        for lane in 0..L {
            self.0[lane] = of(self.0[lane], other.0[lane]);
        }
        self
    }

    /// No smaller than this.
    #[inline(always)]
    pub fn at_least(self, low: f64) -> Self {
        self.each(|lane| lane.at_least(F::of(low)))
    }

    /// No greater than this.
    #[inline(always)]
    pub fn at_most(self, high: f64) -> Self {
        self.each(|lane| lane.at_most(F::of(high)))
    }

    /// The first where this is above nothing, else the second.
    #[inline(always)]
    pub fn positive(self, then: Self, otherwise: Self) -> Self {
        let mut chosen = otherwise;
        for lane in 0..L {
            if self.0[lane] > F::of(0.0) {
                chosen.0[lane] = then.0[lane];
            }
        }
        chosen
    }

    /// A polynomial of it, lowest coefficient first.
    #[inline(always)]
    pub fn polynomial(self, terms: &[f64]) -> Self {
        let mut sum = Self::all(0.0);
        for term in terms.iter().rev() {
            sum = sum * self + Self::all(*term);
        }
        sum
    }

    /// e to this.
    #[inline(always)]
    pub fn exp(self) -> Self {
        self.each(Real::exp)
    }
}

macro_rules! operator {
    ($trait:ident, $verb:ident, $sign:tt) => {
        impl<F: Real, const L: usize> $trait for Lanes<F, L> {
            type Output = Self;

            #[inline(always)]
            fn $verb(self, other: Self) -> Self {
                self.with(other, |a, b| a $sign b)
            }
        }

        impl<F: Real, const L: usize> $trait<f64> for Lanes<F, L> {
            type Output = Self;

            #[inline(always)]
            fn $verb(self, other: f64) -> Self {
                self.each(|lane| lane $sign F::of(other))
            }
        }
    };
}

operator!(Add, add, +);
operator!(Sub, sub, -);
operator!(Mul, mul, *);
operator!(Div, div, /);
