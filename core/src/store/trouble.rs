//! What a database can do to us, by what can be done about it.

use crate::{error::Trouble, words::key};
use rusqlite::ErrorCode;

/// Why the store could not do as told.
#[derive(Debug, thiserror::Error)]
pub enum StoreTrouble {
    /// Another program holds the database.
    #[error(
        "another program is using this database: close it, or give this one a folder of its own"
    )]
    InUse,
    /// A newer version wrote the database.
    #[error(
        "a newer Slowbend wrote this database (schema {found}): update this one; nothing was changed"
    )]
    Newer {
        /// The schema version in the file.
        found: i64,
    },
    /// The folder or the file may not be written.
    #[error(
        "the folder or the database cannot be written: change its permissions, or choose another folder"
    )]
    ReadOnly,
    /// There is no room.
    #[error("the disk is full: make room, then do it again; nothing was recorded")]
    Full,
    /// The file is damaged.
    #[error(
        "the database is damaged: start Slowbend again; it sets the file aside and keeps what can be read"
    )]
    Damaged,
    /// Something else that SQLite or the file system said.
    #[error("the database could not be used ({0}): nothing was recorded; try again")]
    Other(String),
}

impl StoreTrouble {
    /// The key of the sentence in the words of the screens.
    pub fn key(&self) -> &'static str {
        match self {
            Self::InUse => key("store-in-use"),
            Self::Newer { .. } => key("store-newer"),
            Self::ReadOnly => key("store-read-only"),
            Self::Full => key("store-full"),
            Self::Damaged => key("store-damaged"),
            Self::Other(_) => key("store-other"),
        }
    }
}

impl From<rusqlite::Error> for StoreTrouble {
    fn from(error: rusqlite::Error) -> Self {
        match error.sqlite_error_code() {
            Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => Self::InUse,
            Some(ErrorCode::ReadOnly | ErrorCode::CannotOpen | ErrorCode::PermissionDenied) => {
                Self::ReadOnly
            }
            Some(ErrorCode::DiskFull) => Self::Full,
            Some(ErrorCode::NotADatabase | ErrorCode::DatabaseCorrupt) => Self::Damaged,
            _ => Self::Other(error.to_string()),
        }
    }
}

impl From<std::io::Error> for StoreTrouble {
    fn from(error: std::io::Error) -> Self {
        use std::io::ErrorKind;
        match error.kind() {
            ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => Self::ReadOnly,
            ErrorKind::StorageFull | ErrorKind::QuotaExceeded => Self::Full,
            _ => Self::Other(error.to_string()),
        }
    }
}

impl From<StoreTrouble> for Trouble {
    fn from(trouble: StoreTrouble) -> Self {
        let reason = trouble.to_string();
        trouble.with_reason(reason)
    }
}

impl StoreTrouble {
    /// The same kind of trouble for the caller, saying `reason`.
    pub fn with_reason(&self, reason: String) -> Trouble {
        match self {
            Self::InUse => Trouble::InUse { reason },
            Self::Newer { .. } => Trouble::Newer { reason },
            Self::ReadOnly | Self::Full | Self::Other(_) => Trouble::CannotWrite { reason },
            Self::Damaged => Trouble::Unreadable { reason },
        }
    }
}
