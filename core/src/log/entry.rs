//! One entry: its name, its order, and its bytes as they came.

use super::{EntryKey, Meaning, Payload, Stamp};
use crate::ids::CookId;
use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;
use std::borrow::Cow;

/// The largest entry that is taken: far above any act, far below what would hurt.
pub const MAX_ENTRY_BYTES: usize = 256 * 1024;

/// One thing that happened. Equal entries are equal bytes.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Entry {
    /// Its name.
    pub key: EntryKey,
    /// Its place in the order (stamp, device, n).
    pub stamp: Stamp,
    /// What it says.
    pub body: Body,
}

/// The bytes of an entry, or the marker that they were erased for good.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Body {
    /// JSON, kept and passed on as it came.
    Raw(Vec<u8>),
    /// Erased on purpose: name and order stay, so that n has no gap and peers drop theirs too.
    Erased,
}

/// What every payload says of itself, readable even where the kind is not known.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Head<'a> {
    /// What kind of thing happened.
    #[serde(borrow)]
    pub kind: Cow<'a, str>,
    /// The version of that kind's shape.
    pub v: u32,
    /// Whether a reader that does not know the kind must not judge.
    pub must_understand: bool,
    /// The cook it belongs to, if to one.
    pub cook: Option<CookId>,
    /// When it happened, as claimed: milliseconds since 1970.
    pub at: i64,
    /// The shape that `kind` and `v` name.
    #[serde(borrow)]
    pub body: &'a RawValue,
}

/// Bytes that are no entry; `reason` says why.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("not an entry: {reason}")]
pub struct NotAnEntry {
    /// What is wrong with the bytes.
    pub reason: String,
}

/// What is about to be recorded: a payload with its cook and its claimed time.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Draft {
    /// The cook it belongs to, if to one.
    pub cook: Option<CookId>,
    /// When it happened, as claimed.
    pub at: i64,
    /// What happened.
    pub payload: Payload,
}

impl Entry {
    /// Reads the head of `raw`, whatever its kind.
    ///
    /// # Errors
    /// Where the bytes are too many, or no JSON object of this shape.
    pub fn head(raw: &[u8]) -> Result<Head<'_>, NotAnEntry> {
        if raw.len() > MAX_ENTRY_BYTES {
            return Err(NotAnEntry {
                reason: format!("{} bytes, more than {MAX_ENTRY_BYTES}", raw.len()),
            });
        }
        serde_json::from_slice(raw).map_err(|error| NotAnEntry {
            reason: error.to_string(),
        })
    }

    /// What the entry means to this version: known, to be skipped, or to be understood before judging.
    pub fn meaning(raw: &[u8]) -> Meaning {
        match Self::head(raw) {
            Ok(head) => Payload::read(&head),
            Err(_) => Meaning::Skipped,
        }
    }

    /// The order of entries: (stamp, device, n), the log last.
    pub fn order(&self) -> (Stamp, crate::ids::DeviceId, i64, crate::ids::LogId) {
        (self.stamp, self.key.device, self.key.n, self.key.log)
    }
}

impl Draft {
    /// The bytes to keep.
    pub fn raw(&self) -> Vec<u8> {
        #[derive(Serialize)]
        struct Out<'a> {
            kind: &'a str,
            v: u32,
            must_understand: bool,
            cook: Option<CookId>,
            at: i64,
            body: &'a Payload,
        }
        let payload = &self.payload;
        serde_json::to_vec(&Out {
            kind: payload.kind(),
            v: payload.version(),
            must_understand: payload.must_understand(),
            cook: self.cook,
            at: self.at,
            body: payload,
        })
        .expect("payloads are plain records of integers and text, which JSON always takes")
    }
}
