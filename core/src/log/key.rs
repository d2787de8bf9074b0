//! The name of an entry.

use crate::ids::{DeviceId, LogId};
use serde::{Deserialize, Serialize};
use std::{fmt, str::FromStr};

/// (log, device, n): n counts from 1 without a gap for each log and device, so a missing entry is seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub struct EntryKey {
    /// The crew's log.
    pub log: LogId,
    /// Who wrote it.
    pub device: DeviceId,
    /// Which of that device's entries in this log, from 1.
    pub n: i64,
}

impl fmt::Display for EntryKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}/{}/{}", self.log, self.device, self.n)
    }
}

impl FromStr for EntryKey {
    type Err = String;
    fn from_str(text: &str) -> Result<Self, String> {
        let broken = || format!("'{text}' is not the name of an entry (log/device/n)");
        let mut parts = text.split('/');
        let mut next = || parts.next().ok_or_else(broken);
        Ok(Self {
            log: next()?.parse().map_err(|_| broken())?,
            device: next()?.parse().map_err(|_| broken())?,
            n: next()?.parse().map_err(|_| broken())?,
        })
    }
}

#[cfg(feature = "ffi")]
uniffi::custom_type!(EntryKey, String, {
    lower: |key| key.to_string(),
    try_lift: |text| text.parse::<EntryKey>().map_err(|reason| uniffi::deps::anyhow::anyhow!(reason)),
});
