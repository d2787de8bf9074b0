//! For tests only (feature `echo`): each record from JSON, and back to JSON after it was in the hands of the foreign
//! language. Law: the bytes that come back are those that Rust writes of the same value when it crosses no border.
//!
//! `KIND_from_json` makes the foreign record, `KIND_json` takes it back, `KIND_canon` is Rust alone. Of a screen, Rust
//! alone is [`screen_text`](screens::screen_text).

mod acts;
mod open;
mod screens;

pub use acts::*;
pub use open::*;
pub use screens::*;

use slowbend_core::error::Trouble;

fn read<T: serde::de::DeserializeOwned>(text: &str) -> Result<T, Trouble> {
    serde_json::from_str(text).map_err(|error| Trouble::Refused {
        reason: error.to_string(),
    })
}

fn write<T: serde::Serialize>(value: &T) -> String {
    serde_json::to_string(value)
        .expect("records hold integers, text and lists, which JSON always takes")
}

/// The three functions of one kind of record.
macro_rules! echo {
    ($kind:ident, $from_json:ident, $json:ident, $canon:ident) => {
        /// The foreign record of this JSON.
        #[uniffi::export]
        pub fn $from_json(text: &str) -> Result<$kind, Trouble> {
            super::read(text)
        }

        /// The JSON of a record that was in foreign hands.
        #[uniffi::export]
        pub fn $json(value: &$kind) -> String {
            super::write(value)
        }

        /// The same JSON as Rust writes it, no border crossed.
        #[uniffi::export]
        pub fn $canon(text: &str) -> Result<String, Trouble> {
            super::read::<$kind>(text).map(|value| super::write(&value))
        }
    };
}
use echo;
