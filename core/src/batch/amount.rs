//! Amounts, whole and with a unit. They add up within their own kind only.

use serde::{Deserialize, Serialize};
use std::{iter::Sum, ops::Add};

macro_rules! amounts {
    ($($(#[$meta:meta])* $name:ident,)+) => { $(
        $(#[$meta])*
        #[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
        #[serde(transparent)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        pub struct $name(pub i64);

        #[cfg(feature = "ffi")]
        uniffi::custom_type!($name, i64, { lower: |amount| amount.0, try_lift: |amount| Ok($name(amount)) });

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }

        impl Sum for $name {
            fn sum<I: Iterator<Item = Self>>(all: I) -> Self {
                all.fold(Self(0), Add::add)
            }
        }
    )+ };
}

amounts! {
    /// A mass in grams.
    Grams,
    /// A mass in milligrams, where a gram is too coarse: salt, sodium, the small parts of a rub.
    Milligrams,
    /// A volume in milliliters.
    Milliliters,
    /// Money in hundredths of whatever the prices are in.
    Cents,
}

impl Grams {
    /// The same mass in milligrams.
    pub const fn milligrams(self) -> Milligrams {
        Milligrams(self.0 * 1000)
    }
}

/// `a × b ÷ by`, rounded up; none of them negative, and `by` not 0.
pub(super) fn up(a: i64, b: i64, by: i64) -> i64 {
    let product = i128::from(a) * i128::from(b);
    ((product + i128::from(by) - 1) / i128::from(by)) as i64
}

/// `a × b ÷ by`, rounded down; none of them negative, and `by` not 0.
pub(super) fn down(a: i64, b: i64, by: i64) -> i64 {
    (i128::from(a) * i128::from(b) / i128::from(by)) as i64
}
