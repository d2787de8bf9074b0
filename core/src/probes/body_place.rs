//! The Temperature Type of the Bluetooth SIG: where on a body a thermometer sits.

use serde::{Deserialize, Serialize};

/// Where on a body. Codes 1 to 9 were read in the documentation of the trouble-host crate, which is made from the SIG's
/// GATT Specification Supplement; none means meat.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum BodyPlace {
    /// 1.
    Armpit,
    /// 2, in general.
    Body,
    /// 3, usually the lobe.
    Ear,
    /// 4.
    Finger,
    /// 5, gastrointestinal tract.
    Gut,
    /// 6.
    Mouth,
    /// 7.
    Rectum,
    /// 8.
    Toe,
    /// 9, the ear drum.
    Tympanum,
    /// A code that was kept for later when this was written.
    Other {
        /// 0, or 10 to 255.
        code: u32,
    },
}

impl BodyPlace {
    /// The place of a code.
    pub(super) const fn of(code: u8) -> Self {
        match code {
            1 => Self::Armpit,
            2 => Self::Body,
            3 => Self::Ear,
            4 => Self::Finger,
            5 => Self::Gut,
            6 => Self::Mouth,
            7 => Self::Rectum,
            8 => Self::Toe,
            9 => Self::Tympanum,
            _ => Self::Other { code: code as u32 },
        }
    }
}
