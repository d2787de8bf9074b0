//! The log: all that happens is an immutable entry, named by (log, device, n).
//!
//! Start at [`Entry`]; [`Stamp`] gives the order, [`Payload`] is what an entry says, [`void`] decides which entries
//! count. The bytes of an entry are kept as they came and passed on unchanged, understood or not.

mod courses;
mod entry;
mod fact;
mod job;
mod key;
mod payload;
mod plan;
mod stamp;
pub mod void;

pub use courses::{Course, Strain};
pub use entry::{Body, Draft, Entry, Head, MAX_ENTRY_BYTES, NotAnEntry};
pub use fact::*;
pub use job::Job;
pub use key::EntryKey;
pub use payload::{Meaning, Payload};
pub use plan::*;
pub use stamp::Stamp;
