//! What rang on this device: durable, so that nothing rings twice and nothing is thought to have rung that did not.

use super::{Result, Store};
use rusqlite::params;
use std::collections::BTreeMap;

/// An alarm's id as it is kept.
pub type AlarmBytes = [u8; 16];

impl Store {
    /// Records that these rang, last, at `at`; `call` says whether it was a call, which are kept ten minutes apart.
    pub fn put_rung(&self, ids: &[AlarmBytes], at: i64, call: bool) -> Result<()> {
        let tx = self.conn.unchecked_transaction()?;
        for id in ids {
            tx.prepare_cached(
                "INSERT INTO rung (id, at, calls) VALUES (?, ?, ?) \
                 ON CONFLICT DO UPDATE SET at = max(at, excluded.at), calls = excluded.calls",
            )?
            .execute(params![id, at, call])?;
        }
        Ok(tx.commit()?)
    }

    /// Forgets what rang later than `at`.
    pub fn forget_rung_after(&self, at: i64) -> Result<()> {
        let mut any = self
            .conn
            .prepare_cached("SELECT 1 FROM rung WHERE at > ? LIMIT 1")?;
        if any.exists([at])? {
            self.conn.execute("DELETE FROM rung WHERE at > ?", [at])?;
        }
        Ok(())
    }

    /// All that rang since `since`: when, and whether it was a call.
    pub fn rung_since(&self, since: i64) -> Result<BTreeMap<AlarmBytes, (i64, bool)>> {
        let mut statement = self
            .conn
            .prepare_cached("SELECT id, at, calls FROM rung WHERE at >= ?")?;
        let rows =
            statement.query_map([since], |row| Ok((row.get(0)?, (row.get(1)?, row.get(2)?))))?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }

    /// Moves what the WAL holds into the database, without waiting for anybody.
    pub fn checkpoint(&self) -> Result<()> {
        Ok(self
            .conn
            .query_row("PRAGMA wal_checkpoint(PASSIVE)", [], |_| Ok(()))?)
    }
}
