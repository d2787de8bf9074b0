//! The Date Time (0x2A08) of the Bluetooth SIG: what a clock on the wall shows, without a zone. Start at
//! [`LocalTime::read`].
//!
//! Year as uint16, little endian, 1582 to 9999; then month, day, hour, minute and second, a byte each. A year, month or
//! day of 0 means that it is not known. Read in the documentation of the trouble-host crate, which is made from the SIG's
//! GATT Specification Supplement.

use chrono::{NaiveDate, NaiveDateTime};
use serde::{Deserialize, Serialize};
use std::fmt;

/// A day and a time of day by a clock that does not say its zone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct LocalTime {
    /// 1582 to 9999.
    pub year: u32,
    /// 1 to 12.
    pub month: u32,
    /// 1 to 31.
    pub day: u32,
    /// 0 to 23.
    pub hour: u32,
    /// 0 to 59.
    pub minute: u32,
    /// 0 to 59.
    pub second: u32,
}

/// No calendar or clock shows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct NoSuchTime;

impl LocalTime {
    /// Reads the seven bytes; none where the instrument does not know the day.
    pub(super) fn read(bytes: [u8; 7]) -> Result<Option<Self>, NoSuchTime> {
        let [low, high, month, day, hour, minute, second] = bytes.map(u32::from);
        let time = Self {
            year: high << 8 | low,
            month,
            day,
            hour,
            minute,
            second,
        };
        let year_is_sound = matches!(time.year, 0 | 1582..=9999);
        if !year_is_sound || month > 12 || day > 31 || hour > 23 || minute > 59 || second > 59 {
            return Err(NoSuchTime);
        }
        match time.year == 0 || month == 0 || day == 0 {
            true => Ok(None),
            false => time.wall().map(|_| Some(time)).ok_or(NoSuchTime),
        }
    }

    /// The same for the calendar; none where there is no such time.
    pub fn wall(self) -> Option<NaiveDateTime> {
        NaiveDate::from_ymd_opt(i32::try_from(self.year).ok()?, self.month, self.day)?.and_hms_opt(
            self.hour,
            self.minute,
            self.second,
        )
    }
}

/// Alike in every language: `2026-07-04 15:30:00`.
impl fmt::Display for LocalTime {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self {
            year,
            month,
            day,
            hour,
            minute,
            second,
        } = self;
        write!(
            f,
            "{year:04}-{month:02}-{day:02} {hour:02}:{minute:02}:{second:02}"
        )
    }
}
