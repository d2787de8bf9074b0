//! What can go wrong, told as what the caller can do now.

use serde::{Deserialize, Serialize};

/// Why an act, a file or a sum was not taken, in the words of the person who asked. Nothing was changed.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error, Serialize, Deserialize)]
#[error("{reason}")]
pub struct Refused {
    /// A sentence that says what to do instead.
    pub reason: String,
}

impl Refused {
    /// A refusal that reads `reason`.
    pub fn new(reason: impl Into<String>) -> Self {
        Self {
            reason: reason.into(),
        }
    }
}

impl From<crate::words::Refused> for Refused {
    fn from(refused: crate::words::Refused) -> Self {
        Self {
            reason: refused.reason,
        }
    }
}

/// What the one door answers when it cannot do as told: only the kinds that a caller acts on differently.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[cfg_attr(feature = "ffi", derive(uniffi::Error))]
pub enum Trouble {
    /// The act itself was not possible: show `reason`, change nothing.
    #[error("{reason}")]
    Refused {
        /// A sentence that says what to do instead.
        reason: String,
    },
    /// Another program holds the database: try again, or close the other one.
    #[error("{reason}")]
    InUse {
        /// A sentence that says what to do now.
        reason: String,
    },
    /// The disk is full or cannot be written: nothing was recorded.
    #[error("{reason}")]
    CannotWrite {
        /// A sentence that says what to do now.
        reason: String,
    },
    /// A newer Slowbend wrote this database: update this one.
    #[error("{reason}")]
    Newer {
        /// A sentence that says what to do now.
        reason: String,
    },
    /// The database cannot be read any more; it was left as it is.
    #[error("{reason}")]
    Unreadable {
        /// A sentence that says what to do now.
        reason: String,
    },
}

impl Trouble {
    /// The sentence to show.
    pub fn reason(&self) -> &str {
        match self {
            Self::Refused { reason }
            | Self::InUse { reason }
            | Self::CannotWrite { reason }
            | Self::Newer { reason }
            | Self::Unreadable { reason } => reason,
        }
    }
}

impl From<Refused> for Trouble {
    fn from(refused: Refused) -> Self {
        Self::Refused {
            reason: refused.reason,
        }
    }
}
