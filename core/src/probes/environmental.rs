//! The temperature of the Environmental Sensing service (0x181A).

use super::{NotAWord, ProbeWord, WhyNot, exactly};
use crate::units::Mk;

/// Temperature: sint16, little endian, hundredths of a degree Celsius; 0x8000 where it is not known. Read in the
/// documentation of the trouble-host crate, which is made from the SIG's GATT Specification Supplement.
pub const TEMPERATURE: u16 = 0x2A6E;

/// How hot; up to 327.67 °C.
///
/// # Errors
/// A wrong length, or colder than any probe shows.
pub fn temperature(bytes: &[u8]) -> Result<ProbeWord, NotAWord> {
    match i16::from_le_bytes(exactly(bytes)?) {
        i16::MIN => Ok(ProbeWord::without(WhyNot::NotKnown)),
        hundredths => ProbeWord::of(Mk::from_c_milli(i64::from(hundredths) * 10)),
    }
}
