//! Why a sound message of a probe has no temperature.

use super::ieee11073::Special;
use crate::safety::keyed::keyed;

keyed! {
    /// What the probe says instead of a temperature.
    WhyNot {
        /// It has no reading (NaN).
        NotANumber = "probe-none-not-a-number",
        /// Its reading does not fit the resolution it writes with (NRes).
        NotAtThisResolution = "probe-none-resolution",
        /// Hotter than it measures (+INFINITY).
        Above = "probe-none-above",
        /// Colder than it measures (−INFINITY).
        Below = "probe-none-below",
        /// A value without a meaning.
        Reserved = "probe-none-reserved",
        /// The temperature is not known (0x8000).
        NotKnown = "probe-none-not-known",
        /// The characteristic is about something else.
        NotCarried = "probe-none-not-carried",
    }
}

impl From<Special> for WhyNot {
    fn from(special: Special) -> Self {
        match special {
            Special::NotANumber => Self::NotANumber,
            Special::NotAtThisResolution => Self::NotAtThisResolution,
            Special::Above => Self::Above,
            Special::Below => Self::Below,
            Special::Reserved => Self::Reserved,
        }
    }
}
