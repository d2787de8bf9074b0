//! Where entries are kept: one SQLite file, WAL, one writer, `synchronous=FULL` for what a person did.
//!
//! Start at [`Store::open`]. Law: what [`append`](Store::append) returned is on disk; nothing is ever deleted but what
//! somebody asked to erase; a database that cannot be read is set aside whole, and what is readable in it is taken over.

mod absorb;
mod append;
mod aside;
mod cache;
mod open;
mod read;
mod readings;
mod rung;
mod trouble;

pub use absorb::Absorbed;
pub use append::{Along, Recorded};
pub use aside::mark_damaged;
pub use cache::{CookLine, Group};
pub use open::{Opened, SCHEMA_VERSION, SQLITE_AT_LEAST};
pub use readings::{ChunkRow, Chunks, TailReading};
pub use trouble::StoreTrouble;

use crate::ids::{DeviceId, LogId};
use rusqlite::Connection;
use std::path::PathBuf;

/// An open database and who this device is in it.
pub struct Store {
    conn: Connection,
    /// Held so that no second program opens the same database; the system lets it go even after kill -9.
    _lock: Option<std::fs::File>,
    path: PathBuf,
    /// This device.
    pub device: DeviceId,
    /// The log it writes in.
    pub log: LogId,
}

type Result<T> = std::result::Result<T, StoreTrouble>;
