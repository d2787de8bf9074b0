//! A database that cannot be read is set aside with its -wal and -shm, never deleted, and what is readable in it is
//! taken over.

use super::{Result, Store};
use crate::log::{Body, Entry, EntryKey, Stamp};
use rusqlite::{Connection, OpenFlags};
use std::{
    io::Read,
    path::{Path, PathBuf},
};

/// Whether the file is shorter than its own header says, while no WAL holds the rest.
///
/// Header layout: sqlite.org, "Database File Format", section 1.3 (from memory): page size at 16, pages at 28.
pub fn is_cut_short(path: &Path) -> bool {
    let mut header = [0u8; 100];
    let Ok(mut file) = std::fs::File::open(path) else {
        return false;
    };
    let Ok(size) = file.metadata().map(|meta| meta.len()) else {
        return false;
    };
    if size == 0
        || beside(path, "-wal")
            .metadata()
            .is_ok_and(|meta| meta.len() > 0)
    {
        return false;
    }
    if file.read_exact(&mut header).is_err() {
        return true;
    }
    let page = match u16::from_be_bytes([header[16], header[17]]) {
        1 => 65_536,
        bytes => u64::from(bytes),
    };
    size < page
        * u64::from(u32::from_be_bytes([
            header[28], header[29], header[30], header[31],
        ]))
}

/// Beside a database in which damage was met, so that the next opening sets it aside: damage may lie where no opening
/// looks.
const MARK: &str = "slowbend.damaged";

/// Leaves the mark.
pub fn mark_damaged(place: &Path) -> Result<()> {
    Ok(std::fs::write(place.join(MARK), b"")?)
}

/// Sets the file aside if it was marked, and takes the mark away; answers with the file's new name.
pub fn set_aside_if_marked(place: &Path, path: &Path, utc_ms: i64) -> Result<Option<PathBuf>> {
    let mark = place.join(MARK);
    if !mark.exists() {
        return Ok(None);
    }
    let aside = path.exists().then(|| set_aside(path, utc_ms)).transpose()?;
    std::fs::remove_file(mark)?;
    Ok(aside)
}

/// Renames the file and its companions; answers with the new name.
fn set_aside(path: &Path, utc_ms: i64) -> Result<PathBuf> {
    let aside = (0..)
        .map(|i| path.with_file_name(format!("slowbend-aside-{}-{i}.db", utc_ms.max(0))))
        .find(|candidate| !candidate.exists())
        .expect("some number is free");
    for companion in ["-wal", "-shm"] {
        let from = beside(path, companion);
        if from.exists() {
            std::fs::rename(from, beside(&aside, companion))?;
        }
    }
    std::fs::rename(path, &aside)?;
    Ok(aside)
}

fn beside(path: &Path, companion: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(companion);
    name.into()
}

/// Takes over all that can still be read: the crew's log, the readings, and every entry, from both ends of the table.
/// Answers with how many entries.
///
/// The device is a new one all the same: of its old one, what was last written may be lost, and no number may be used
/// twice.
pub fn salvage(store: &mut Store, aside: &Path) -> Result<u64> {
    let Ok(damaged) = Connection::open_with_flags(aside, OpenFlags::SQLITE_OPEN_READ_WRITE) else {
        return Ok(0);
    };
    // Without this SQLite reads nothing at all of a file that is shorter than its header says. Nothing is written.
    let _best_effort = damaged.pragma_update(None, "writable_schema", true);
    if let Ok(Some(log)) = super::open::meta(&damaged, "log")
        && let Ok(log) = log.parse()
    {
        store.set_log(log)?;
    }
    store.salvage_readings(&damaged)?;
    let mut found = Vec::new();
    for order in ["ASC", "DESC"] {
        read_while_possible(&damaged, order, &mut found);
    }
    Ok(store.absorb(&found)?.fresh)
}

fn read_while_possible(damaged: &Connection, order: &str, found: &mut Vec<Entry>) {
    let sql =
        format!("SELECT log, device, n, stamp, raw FROM entries NOT INDEXED ORDER BY seq {order}");
    let Ok(mut statement) = damaged.prepare(&sql) else {
        return;
    };
    let Ok(mut rows) = statement.query([]) else {
        return;
    };
    while let Ok(Some(row)) = rows.next() {
        match entry(row) {
            Ok(entry) => found.push(entry),
            Err(_) => return,
        }
    }
}

/// An entry out of a row of log, device, n, stamp, raw.
pub(super) fn entry(row: &rusqlite::Row<'_>) -> rusqlite::Result<Entry> {
    let id = |i: usize| row.get::<_, [u8; 16]>(i).map(uuid::Uuid::from_bytes);
    let raw: Option<Vec<u8>> = row.get(4)?;
    Ok(Entry {
        key: EntryKey {
            log: crate::ids::LogId(id(0)?),
            device: crate::ids::DeviceId(id(1)?),
            n: row.get(2)?,
        },
        stamp: Stamp(row.get(3)?),
        body: raw.map_or(Body::Erased, Body::Raw),
    })
}
