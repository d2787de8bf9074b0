//! Probe readings beside the log: first row by row, then sealed in chunks that entries announce.

use super::{Result, Store};
use crate::{
    readings::{Reading, tails::TAIL_MS},
    units::Mk,
};
use rusqlite::{Connection, params};

/// One reading of a series.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct TailReading {
    /// The instrument.
    pub source: String,
    /// Its channel.
    pub sensor: String,
    /// When, milliseconds since 1970.
    pub at: i64,
    /// How hot, millikelvin.
    pub temp: i64,
}

/// A sealed run of readings.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ChunkRow {
    /// BLAKE3 of the bytes.
    pub hash: [u8; 32],
    /// The instrument.
    pub source: String,
    /// Its channel.
    pub sensor: String,
    /// The first reading.
    pub first: i64,
    /// The last.
    pub last: i64,
    /// How many.
    pub count: i64,
    /// The readings.
    pub bytes: Vec<u8>,
}

/// Sealed runs on their way to disk.
#[derive(Clone, Copy, Debug, Default)]
pub struct Chunks<'a> {
    /// The runs.
    pub rows: &'a [ChunkRow],
    /// The unsealed rows that they take the place of; none for those of a file, which replace nothing.
    pub instead_of: &'a [TailReading],
}

impl Store {
    /// Writes readings that are not sealed yet, all in one transaction.
    pub fn put_live(&self, readings: &[TailReading]) -> Result<()> {
        let tx = self.conn.unchecked_transaction()?;
        for reading in readings {
            tx.prepare_cached(
                "INSERT OR IGNORE INTO live (source, sensor, at, temp) VALUES (?, ?, ?, ?)",
            )?
            .execute(params![
                reading.source,
                reading.sensor,
                reading.at,
                reading.temp
            ])?;
        }
        Ok(tx.commit()?)
    }

    /// The readings not sealed yet, by series and time.
    pub fn live(&self) -> Result<Vec<TailReading>> {
        let mut statement = self.conn.prepare_cached(
            "SELECT source, sensor, at, temp FROM live ORDER BY source, sensor, at, temp",
        )?;
        let rows = statement.query_map([], live_row)?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }

    /// The chunks of a series that reach into the last six hours before its newest up to `latest`, and no more than 64.
    pub fn last_chunks(&self, source: &str, sensor: &str, latest: i64) -> Result<Vec<ChunkRow>> {
        let mut statement = self.conn.prepare_cached(
            "SELECT hash, source, sensor, first, last, count, bytes FROM chunks WHERE source = ?1 AND sensor = ?2 \
             AND first <= ?4 AND last >= \
             (SELECT max(min(last, ?4)) FROM chunks WHERE source = ?1 AND sensor = ?2 AND first <= ?4) - ?3 \
             ORDER BY last DESC, hash LIMIT 64",
        )?;
        let rows = statement.query_map(params![source, sensor, TAIL_MS, latest], chunk)?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }

    /// The chunks of a series that reach into `from` to `to`, both included, by their last reading. What ended before
    /// `from` is not touched: the index begins there.
    pub fn chunks_between(
        &self,
        source: &str,
        sensor: &str,
        from: i64,
        to: i64,
    ) -> Result<Vec<ChunkRow>> {
        let mut statement = self.conn.prepare_cached(
            "SELECT hash, source, sensor, first, last, count, bytes FROM chunks WHERE source = ?1 AND sensor = ?2 \
             AND last >= ?3 AND first <= ?4 ORDER BY last, hash",
        )?;
        let rows = statement.query_map(params![source, sensor, from, to], chunk)?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }

    /// The readings of a series from `from` to `to`, both included, that are not sealed yet, by time.
    pub fn live_between(
        &self,
        source: &str,
        sensor: &str,
        from: i64,
        to: i64,
    ) -> Result<Vec<Reading>> {
        let mut statement = self.conn.prepare_cached(
            "SELECT at, temp FROM live WHERE source = ? AND sensor = ? AND at BETWEEN ? AND ? ORDER BY at, temp",
        )?;
        let rows = statement.query_map(params![source, sensor, from, to], |row| {
            Ok(Reading {
                at: row.get(0)?,
                temp: Mk(row.get(1)?),
            })
        })?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }

    /// How many sealed readings there are.
    pub fn sealed_count(&self) -> Result<i64> {
        Ok(self
            .conn
            .query_row("SELECT coalesce(sum(count), 0) FROM chunks", [], |row| {
                row.get(0)
            })?)
    }
}

fn chunk(row: &rusqlite::Row<'_>) -> rusqlite::Result<ChunkRow> {
    Ok(ChunkRow {
        hash: row.get(0)?,
        source: row.get(1)?,
        sensor: row.get(2)?,
        first: row.get(3)?,
        last: row.get(4)?,
        count: row.get(5)?,
        bytes: row.get(6)?,
    })
}

fn live_row(row: &rusqlite::Row<'_>) -> rusqlite::Result<TailReading> {
    Ok(TailReading {
        source: row.get(0)?,
        sensor: row.get(1)?,
        at: row.get(2)?,
        temp: row.get(3)?,
    })
}

impl Store {
    /// Takes over the readings of a damaged database that can still be read.
    pub(super) fn salvage_readings(&self, damaged: &Connection) -> Result<()> {
        let live = "SELECT source, sensor, at, temp FROM live";
        self.put_live(&while_readable(damaged, live, live_row))?;
        let sealed = "SELECT hash, source, sensor, first, last, count, bytes FROM chunks";
        let sealed = while_readable(damaged, sealed, chunk);
        let sound = |row: &ChunkRow| blake3::hash(&row.bytes) == row.hash;
        let sealed: Vec<ChunkRow> = sealed.into_iter().filter(sound).collect();
        let chunks = Chunks {
            rows: &sealed,
            instead_of: &[],
        };
        Ok(put_chunks(&self.conn, chunks)?)
    }
}

fn while_readable<T>(
    conn: &Connection,
    sql: &str,
    read: impl FnMut(&rusqlite::Row<'_>) -> rusqlite::Result<T>,
) -> Vec<T> {
    let Ok(mut statement) = conn.prepare(sql) else {
        return vec![];
    };
    let Ok(rows) = statement.query_map([], read) else {
        return vec![];
    };
    rows.map_while(rusqlite::Result::ok).collect()
}

/// Puts sealed runs, and drops the unsealed rows that they take the place of.
pub(super) fn put_chunks(conn: &Connection, chunks: Chunks<'_>) -> rusqlite::Result<()> {
    for chunk in chunks.rows {
        conn.prepare_cached(
            "INSERT OR IGNORE INTO chunks (hash, source, sensor, first, last, count, bytes) VALUES (?, ?, ?, ?, ?, ?, ?)",
        )?
        .execute(params![chunk.hash, chunk.source, chunk.sensor, chunk.first, chunk.last, chunk.count, chunk.bytes])?;
    }
    for row in chunks.instead_of {
        conn.prepare_cached(
            "DELETE FROM live WHERE source = ? AND sensor = ? AND at = ? AND temp = ?",
        )?
        .execute(params![row.source, row.sensor, row.at, row.temp])?;
    }
    Ok(())
}
