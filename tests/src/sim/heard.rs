//! What probes said, as it lies on disk: read past the door, to measure what the door says.

use super::Told;
use rusqlite::Connection;
use slowbend_core::{
    readings::{Tails, chunk},
    units::Mk,
};
use std::path::Path;

/// The last hours of every probe in the database `file`.
///
/// # Errors
/// When it cannot be read.
pub fn on_disk(file: &Path) -> Told<Tails> {
    let mut tails = Tails::default();
    read(file, &mut tails).map_err(|error| format!("law 1: no readings to look at: {error}"))?;
    Ok(tails)
}

fn read(file: &Path, tails: &mut Tails) -> rusqlite::Result<()> {
    let conn = Connection::open(file)?;
    let mut live = conn.prepare("SELECT source, sensor, at, temp FROM live")?;
    let mut rows = live.query([])?;
    while let Some(row) = rows.next()? {
        let (source, sensor): (String, String) = (row.get(0)?, row.get(1)?);
        tails.take(&source, &sensor, row.get(2)?, Mk(row.get(3)?));
    }
    let mut sealed = conn.prepare("SELECT source, sensor, bytes FROM chunks")?;
    let mut rows = sealed.query([])?;
    while let Some(row) = rows.next()? {
        let (source, sensor): (String, String) = (row.get(0)?, row.get(1)?);
        let bytes: Vec<u8> = row.get(2)?;
        for reading in chunk::decode(&bytes).expect("what was sealed can be read") {
            tails.take(&source, &sensor, reading.at, reading.temp);
        }
    }
    Ok(())
}
