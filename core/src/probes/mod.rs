//! What Bluetooth probes say, byte by byte. Start at [`decode`]; [`heard`] makes a reading of it.
//!
//! Only two services that the Bluetooth SIG publishes are read: Health Thermometer (0x1809) and Environmental Sensing
//! (0x181A). Their layouts are in [`health_thermometer`] and [`environmental`], their numbers in [`ieee11073`].
//!
//! Laws: no bytes panic. Bytes of the wrong length, a time that no calendar has and a temperature that no probe shows are
//! refused as [`NotAWord`]; a probe that says it has no reading is believed ([`WhyNot`]), and none is made up. A decoded
//! temperature is the exact value rounded once to the nearest millikelvin.
//!
//! A characteristic more is a function here, a line in [`decode`], and rows in `core/tests/published/probe_words.csv`.

mod body_place;
pub mod environmental;
pub mod health_thermometer;
mod heard;
mod hearing;
pub mod ieee11073;
mod in_hex;
mod local_time;
mod refused;
#[cfg(test)]
mod tests;
mod why_not;

pub use body_place::BodyPlace;
pub use heard::{AHEAD_MAX_MS, KEPT_MAX_MS, heard, why_none};
pub use hearing::{HeardSource, HeardWord, Hearing, RadioState, Reach};
pub use in_hex::{WordInHex, probe_word};
pub use local_time::LocalTime;
pub use refused::NotAWord;
pub use why_not::WhyNot;

use crate::{
    readings::refusals::{COLDEST_MK, HOTTEST_MK},
    units::Mk,
};
use serde::{Deserialize, Serialize};

/// What one message of a probe says. Law: there is a temperature or a reason why not, never both and never neither.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ProbeWord {
    /// How hot, millikelvin: −60 to 800 °C, as for every reading.
    pub temp: Option<Mk>,
    /// Why it says no temperature.
    pub why_not: Option<WhyNot>,
    /// When the probe claims to have read it, by its own clock on the wall; none where it does not say or does not know.
    pub claimed_at: Option<LocalTime>,
    /// Where on a body it claims to sit. None of the places means meat, so nothing is decided by it.
    pub place: Option<BodyPlace>,
    /// How often it reads on its own, seconds, 1 to 65,535; 0 for never, none where it does not say.
    pub every_s: Option<u32>,
}

impl ProbeWord {
    /// A word without a temperature.
    fn without(why_not: WhyNot) -> Self {
        Self {
            temp: None,
            why_not: Some(why_not),
            claimed_at: None,
            place: None,
            every_s: None,
        }
    }

    /// A word with a temperature, where a probe can show it.
    fn of(temp: Mk) -> Result<Self, NotAWord> {
        match temp.0 {
            ..COLDEST_MK => Err(NotAWord::TooCold),
            COLDEST_MK..=HOTTEST_MK => Ok(Self {
                temp: Some(temp),
                why_not: None,
                claimed_at: None,
                place: None,
                every_s: None,
            }),
            _ => Err(NotAWord::TooHot),
        }
    }
}

/// Reads the value of a characteristic, given by its 16-bit number.
///
/// ```
/// use slowbend_core::{probes::decode, units::Mk};
/// let word = decode(0x2A1C, &[0x01, 0xDA, 0x03, 0x00, 0xFF]).unwrap();
/// assert_eq!(word.temp, Some(Mk::from_f_tenths(986)));
/// ```
///
/// # Errors
/// [`NotAWord`] where it is none of the characteristics that are read here, or not a sound value of one.
pub fn decode(characteristic: u16, bytes: &[u8]) -> Result<ProbeWord, NotAWord> {
    match characteristic {
        health_thermometer::TEMPERATURE_MEASUREMENT
        | health_thermometer::INTERMEDIATE_TEMPERATURE => health_thermometer::measurement(bytes),
        health_thermometer::TEMPERATURE_TYPE => health_thermometer::place(bytes),
        health_thermometer::MEASUREMENT_INTERVAL => health_thermometer::interval(bytes),
        environmental::TEMPERATURE => environmental::temperature(bytes),
        characteristic => Err(NotAWord::Unread { characteristic }),
    }
}

/// The first `N` bytes, which are taken off.
fn take<const N: usize>(bytes: &mut &[u8]) -> Option<[u8; N]> {
    let (head, rest) = bytes.split_first_chunk()?;
    *bytes = rest;
    Some(*head)
}

/// The value of a characteristic that always has `N` bytes.
fn exactly<const N: usize>(bytes: &[u8]) -> Result<[u8; N], NotAWord> {
    bytes
        .try_into()
        .map_err(|_| NotAWord::length(N, bytes.len()))
}
