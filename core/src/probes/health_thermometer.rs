//! The characteristics of the Health Thermometer service (0x1809). Start at [`measurement`].
//!
//! | Temperature Measurement, Intermediate Temperature | bytes | there |
//! |---|---|---|
//! | flags: bit 0 Fahrenheit, bit 1 time stamp, bit 2 place | 1 | always |
//! | IEEE 11073 FLOAT, little endian | 4 | always |
//! | time stamp: a [`LocalTime`] | 7 | by bit 1 |
//! | place: a [`BodyPlace`] | 1 | by bit 2 |
//!
//! Read in the documentation of the trouble-host crate, which is made from the SIG's GATT Specification Supplement; that
//! the intermediate temperature has the same layout, and the numbers of the other three characteristics, are from memory.
//! The other five flags are kept for later; they are passed over, as the core specification asks of receivers (from
//! memory).

use super::{BodyPlace, LocalTime, NotAWord, ProbeWord, WhyNot, exactly, ieee11073, take};
use crate::{units::Mk, words::TemperatureUnit};

/// Temperature Measurement: a finished reading, also one that was kept while nobody listened.
pub const TEMPERATURE_MEASUREMENT: u16 = 0x2A1C;
/// Temperature Type: where the thermometer sits, where that never changes.
pub const TEMPERATURE_TYPE: u16 = 0x2A1D;
/// Intermediate Temperature: a reading under way.
pub const INTERMEDIATE_TEMPERATURE: u16 = 0x2A1E;
/// Measurement Interval: seconds between finished readings, uint16, little endian; 0 for none on its own (read in the
/// manual page org.bluez.Thermometer).
pub const MEASUREMENT_INTERVAL: u16 = 0x2A21;

const FAHRENHEIT: u8 = 1 << 0;
const TIME_STAMP: u8 = 1 << 1;
const PLACE: u8 = 1 << 2;

/// A finished reading or one under way, as its bytes lie.
struct Laid {
    flags: u8,
    bits: u32,
    time: Option<[u8; 7]>,
    place: Option<u8>,
}

/// A finished reading or one under way.
///
/// # Errors
/// A wrong length, a time that no calendar has, a temperature that no probe shows.
pub fn measurement(bytes: &[u8]) -> Result<ProbeWord, NotAWord> {
    let laid = lay(bytes).ok_or_else(|| NotAWord::length(wanted(bytes), bytes.len()))?;
    let claimed_at = laid.time.map(LocalTime::read).transpose()?.flatten();
    Ok(ProbeWord {
        claimed_at,
        place: laid.place.map(BodyPlace::of),
        ..heat(laid.flags, laid.bits)?
    })
}

/// Where the thermometer sits.
///
/// # Errors
/// A wrong length.
pub fn place(bytes: &[u8]) -> Result<ProbeWord, NotAWord> {
    let [code] = exactly(bytes)?;
    Ok(ProbeWord {
        place: Some(BodyPlace::of(code)),
        ..ProbeWord::without(WhyNot::NotCarried)
    })
}

/// How often it reads on its own.
///
/// # Errors
/// A wrong length.
pub fn interval(bytes: &[u8]) -> Result<ProbeWord, NotAWord> {
    let seconds = u16::from_le_bytes(exactly(bytes)?);
    Ok(ProbeWord {
        every_s: Some(u32::from(seconds)),
        ..ProbeWord::without(WhyNot::NotCarried)
    })
}

fn heat(flags: u8, bits: u32) -> Result<ProbeWord, NotAWord> {
    let unit = match flags & FAHRENHEIT {
        0 => TemperatureUnit::Celsius,
        _ => TemperatureUnit::Fahrenheit,
    };
    match ieee11073::float(bits) {
        Ok(number) => {
            let past = if number.mantissa < 0 {
                i64::MIN
            } else {
                i64::MAX
            };
            ProbeWord::of(number.degrees(unit).unwrap_or(Mk(past)))
        }
        Err(special) => Ok(ProbeWord::without(special.into())),
    }
}

/// None where the bytes are not as many as the flags say.
fn lay(mut bytes: &[u8]) -> Option<Laid> {
    let [flags] = take(&mut bytes)?;
    let bits = u32::from_le_bytes(take(&mut bytes)?);
    let time = match flags & TIME_STAMP {
        0 => None,
        _ => Some(take(&mut bytes)?),
    };
    let place = match flags & PLACE {
        0 => None,
        _ => Some(take::<1>(&mut bytes)?[0]),
    };
    bytes.is_empty().then_some(Laid {
        flags,
        bits,
        time,
        place,
    })
}

/// As many bytes as the flags say; without any, the fewest there can be.
fn wanted(bytes: &[u8]) -> usize {
    let flags = bytes.first().copied().unwrap_or_default();
    let has = |flag| usize::from(flags & flag != 0);
    5 + 7 * has(TIME_STAMP) + has(PLACE)
}
