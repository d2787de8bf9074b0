//! Integers with a unit. Entries carry no floats: temperatures are millikelvin, weights grams, times milliseconds.

use serde::{Deserialize, Serialize};

/// A temperature in millikelvin.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Mk(pub i64);

impl Mk {
    /// From whole tenths of a degree Fahrenheit, rounded to the nearest millikelvin (ties up).
    /// K = (°F + 459.67) × 5/9, exact by definition of the two scales.
    pub const fn from_f_tenths(tenths: i64) -> Self {
        Self((tenths * 500 + 2_298_350 + 4).div_euclid(9))
    }

    /// From whole degrees Fahrenheit.
    pub const fn from_f(degrees: i64) -> Self {
        Self::from_f_tenths(degrees * 10)
    }

    /// From whole thousandths of a degree Celsius. K = °C + 273.15.
    pub const fn from_c_milli(milli: i64) -> Self {
        Self(milli + 273_150)
    }

    /// Tenths of a degree Fahrenheit, rounded to the nearest (ties up).
    pub const fn f_tenths(self) -> i64 {
        (self.0 * 18 - 4_596_700 + 500).div_euclid(1000)
    }

    /// Thousandths of a degree Celsius.
    pub const fn c_milli(self) -> i64 {
        self.0 - 273_150
    }
}

#[cfg(feature = "ffi")]
uniffi::custom_type!(Mk, i64, { lower: |mk| mk.0, try_lift: |mk| Ok(Mk(mk)) });
