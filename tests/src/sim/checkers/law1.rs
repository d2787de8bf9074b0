//! Law 1, nothing lost: every entry that a device was told is recorded is there, byte for byte.
//!
//! Two things may stand in its place: the marker of an erasing that somebody asked for, and, where two devices wrote
//! under one name (a copied database), the other one, and then this one is kept aside.

use crate::sim::{Told, device::Device};
use slowbend_core::log::{Body, Entry, EntryKey};
use std::{
    collections::{BTreeMap, BTreeSet},
    path::Path,
};

/// Checks `held`, all entries of `device`, against what it was told.
///
/// # Errors
/// The first entry that is missing or not the same.
pub fn check(device: &Device, held: &[Entry], erased: &BTreeSet<EntryKey>) -> Told<()> {
    let held: BTreeMap<EntryKey, &Entry> = held.iter().map(|entry| (entry.key, entry)).collect();
    for (key, told) in &device.acked {
        let fault = match held.get(key) {
            Some(entry) if *entry == told => continue,
            Some(entry) if entry.body == Body::Erased && erased.contains(key) => continue,
            Some(_) if told.body == Body::Erased || is_aside(&device.file(), told)? => continue,
            Some(entry) => format!("reads {entry:?} and not {told:?}"),
            None => "is gone".into(),
        };
        return Err(format!(
            "law 1: on device {} the entry {key} {fault}",
            device.name
        ));
    }
    gapless(device, held.keys())
}

/// n has no gap in what a device was told of itself: each log and device of which it holds number n that it wrote.
fn gapless<'a>(device: &Device, keys: impl Iterator<Item = &'a EntryKey>) -> Told<()> {
    for key in keys {
        if key.n < 1 {
            return Err(format!(
                "law 6: device {} holds number {}",
                device.name, key.n
            ));
        }
    }
    Ok(())
}

/// Whether the entry lies among those that came under a name already taken.
fn is_aside(file: &Path, entry: &Entry) -> Told<bool> {
    let Body::Raw(raw) = &entry.body else {
        return Ok(false);
    };
    let look = || {
        let conn = rusqlite::Connection::open(file)?;
        let key = &entry.key;
        let sql = "SELECT count(*) FROM forks WHERE log = ? AND device = ? AND n = ? AND raw = ?";
        let (log, device) = (key.log.0.into_bytes(), key.device.0.into_bytes());
        conn.query_row(sql, rusqlite::params![log, device, key.n, raw], |row| {
            row.get::<_, i64>(0)
        })
    };
    look()
        .map(|count| count > 0)
        .map_err(|error| format!("law 1: no forks to look at: {error}"))
}
