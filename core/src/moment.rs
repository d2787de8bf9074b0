//! When it is: an argument, never read. See "Time" in the design.

use serde::{Deserialize, Serialize};

/// One second, in the milliseconds that every instant and span of core is counted in.
pub const SECOND: i64 = 1_000;
/// One minute in milliseconds.
pub const MINUTE: i64 = 60 * SECOND;
/// One hour in milliseconds.
pub const HOUR: i64 = 60 * MINUTE;

/// The platform's answer to "when is it": made by the shell or the hub for each call.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Moment {
    /// Milliseconds since 1970 by the device's wall clock, which may be wrong.
    pub utc_ms: i64,
    /// IANA zone the device stands in, such as `America/Chicago`.
    pub zone: String,
    /// Changes with each start of the device.
    pub boot_id: String,
    /// Milliseconds since that start, sleep counted (elapsedRealtime, CLOCK_BOOTTIME, mach_continuous_time).
    pub since_boot_ms: i64,
}

impl Moment {
    /// A moment in `zone` for scripts and tests, on a clock that started when 1970 did.
    pub fn at(utc_ms: i64, zone: &str) -> Self {
        Self {
            utc_ms,
            zone: zone.into(),
            boot_id: "boot".into(),
            since_boot_ms: utc_ms,
        }
    }

    /// The same clock `ms` later.
    #[must_use]
    pub fn plus(&self, ms: i64) -> Self {
        Self {
            utc_ms: self.utc_ms + ms,
            since_boot_ms: self.since_boot_ms + ms,
            ..self.clone()
        }
    }
}
