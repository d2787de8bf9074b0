//! How loudly something rings.

use serde::{Deserialize, Serialize};

/// How loudly something rings.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Urgency {
    /// Safety, fire, pull point: rings whoever sleeps, again and again until it is answered.
    Wake,
    /// Sounds while its hearer is awake, silent in sleep; at most one in ten minutes.
    Call,
    /// Shown, never heard.
    Quiet,
}
