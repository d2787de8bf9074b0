//! Opening: lock, check, migrate, and know who this device is.

use super::{Result, Store, StoreTrouble, aside};
use crate::ids::{DeviceId, LogId, Names};
use rusqlite::{Connection, OptionalExtension, params};
use std::{
    fs::{File, TryLockError},
    path::{Path, PathBuf},
    time::Duration,
};

/// The least SQLite that is safe to use: before it, a WAL could lose what was committed when two connections wrote and
/// checkpointed at once (the WAL-reset bug; sqlite.org's release notes for 3.51.3, from memory).
pub const SQLITE_AT_LEAST: i32 = 3_051_003;

/// The migrations, in order, each in a file of its own; a shipped one is never changed.
const MIGRATIONS: &[&str] = &[include_str!("schema/0001.sql")];

/// The schema that this version writes.
pub const SCHEMA_VERSION: i64 = MIGRATIONS.len() as i64;

/// A store, and what is to be told about its opening.
pub struct Opened {
    /// The store.
    pub store: Store,
    /// Where a damaged database was put, and how many entries of it could be taken over.
    pub set_aside: Option<(PathBuf, u64)>,
    /// Whether this is a copy of another installation's database, so that a new device id was made.
    pub cloned: bool,
}

impl Store {
    /// Opens or creates `slowbend.db` in the folder `place`.
    ///
    /// `install` lives outside backups: a database that names another one is a copy, and this device takes a new id.
    ///
    /// # Errors
    /// In use, newer, not writable, full; never because it is damaged, which sets it aside.
    pub fn open(place: &Path, install: &str, names: &mut Names, utc_ms: i64) -> Result<Opened> {
        assert!(
            rusqlite::version_number() >= SQLITE_AT_LEAST,
            "SQLite {} is too old",
            rusqlite::version()
        );
        std::fs::create_dir_all(place)?;
        match Self::open_once(place, install, names, utc_ms) {
            Err(StoreTrouble::Damaged) => {
                aside::mark_damaged(place)?;
                Self::open_once(place, install, names, utc_ms)
            }
            other => other,
        }
    }

    fn open_once(place: &Path, install: &str, names: &mut Names, utc_ms: i64) -> Result<Opened> {
        let lock = lock(&place.join("slowbend.lock"))?;
        let path = place.join("slowbend.db");
        let set_aside = aside::set_aside_if_marked(place, &path, utc_ms)?;
        let conn = connect(&path)?;
        let (device, cloned) = who(&conn, install, names, utc_ms)?;
        let log = log_of(&conn, names, utc_ms)?;
        let mut store = Self {
            conn,
            _lock: Some(lock),
            path,
            device,
            log,
        };
        let set_aside = match set_aside {
            Some(aside) => Some((aside.clone(), aside::salvage(&mut store, &aside)?)),
            None => None,
        };
        Ok(Opened {
            store,
            set_aside,
            cloned,
        })
    }

    /// The file.
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// The connection, for benches and tests that look at the file itself.
    pub fn connection(&self) -> &Connection {
        &self.conn
    }
}

fn lock(path: &Path) -> Result<File> {
    let file = File::options()
        .create(true)
        .truncate(false)
        .write(true)
        .open(path)?;
    match file.try_lock() {
        Ok(()) => Ok(file),
        Err(TryLockError::WouldBlock) => Err(StoreTrouble::InUse),
        Err(TryLockError::Error(error)) => Err(error.into()),
    }
}

fn connect(path: &Path) -> Result<Connection> {
    if aside::is_cut_short(path) {
        return Err(StoreTrouble::Damaged);
    }
    let mut conn = Connection::open(path)?;
    conn.busy_timeout(Duration::from_secs(2))?;
    conn.pragma_update(None, "journal_mode", "WAL")?;
    conn.pragma_update(None, "synchronous", "FULL")?;
    if cfg!(target_vendor = "apple") {
        conn.pragma_update(None, "fullfsync", true)?;
        conn.pragma_update(None, "checkpoint_fullfsync", true)?;
    }
    // Checkpoints belong to `work`; this is only the bound for a shell that never calls it.
    conn.pragma_update(None, "wal_autocheckpoint", 8_000)?;
    conn.set_prepared_statement_cache_capacity(64);
    migrate(&mut conn)?;
    // Reads a row of each table that the first screen needs, so that damage there is met here.
    conn.query_row(
        "SELECT count(*) FROM (SELECT 1 FROM entries ORDER BY seq DESC LIMIT 8)",
        [],
        |_| Ok(()),
    )?;
    Ok(conn)
}

/// Brings the schema up to date, all or nothing.
fn migrate(conn: &mut Connection) -> Result<()> {
    let found: i64 = conn.pragma_query_value(None, "user_version", |row| row.get(0))?;
    if found > SCHEMA_VERSION {
        return Err(StoreTrouble::Newer { found });
    }
    if found == SCHEMA_VERSION {
        return Ok(());
    }
    let tx = conn.transaction()?;
    for step in &MIGRATIONS[found as usize..] {
        tx.execute_batch(step)?;
    }
    tx.pragma_update(None, "user_version", SCHEMA_VERSION)?;
    Ok(tx.commit()?)
}

fn who(
    conn: &Connection,
    install: &str,
    names: &mut Names,
    utc_ms: i64,
) -> Result<(DeviceId, bool)> {
    let before: Option<String> = meta(conn, "install")?;
    let device = match (&before, meta(conn, "device")?) {
        (Some(known), Some(device)) if known == install => return Ok((parse(&device)?, false)),
        _ => DeviceId(names.next(utc_ms)),
    };
    set_meta(conn, "device", &device.to_string())?;
    set_meta(conn, "install", install)?;
    Ok((device, before.is_some()))
}

fn log_of(conn: &Connection, names: &mut Names, utc_ms: i64) -> Result<LogId> {
    if let Some(log) = meta(conn, "log")? {
        return parse(&log);
    }
    let log = LogId(names.next(utc_ms));
    set_meta(conn, "log", &log.to_string())?;
    Ok(log)
}

fn parse<T: std::str::FromStr>(text: &str) -> Result<T> {
    text.parse().map_err(|_| StoreTrouble::Damaged)
}

/// A single value by name.
pub(super) fn meta(conn: &Connection, name: &str) -> Result<Option<String>> {
    let bytes: Option<Vec<u8>> = conn
        .query_row("SELECT value FROM meta WHERE name = ?", [name], |row| {
            row.get(0)
        })
        .optional()?;
    bytes
        .map(String::from_utf8)
        .transpose()
        .map_err(|_| StoreTrouble::Damaged)
}

/// Sets a single value by name.
pub(super) fn set_meta(conn: &Connection, name: &str, value: &str) -> Result<()> {
    conn.execute(
        "INSERT OR REPLACE INTO meta (name, value) VALUES (?, ?)",
        params![name, value.as_bytes()],
    )?;
    Ok(())
}
