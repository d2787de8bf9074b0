//! Recording what this device did: all or nothing, on disk when it returns.

use super::{Result, Store, StoreTrouble, cache::CookLine};
use crate::{
    ids::CookId,
    log::{Body, Draft, Entry, EntryKey, Payload, Stamp},
};
use rusqlite::{Connection, OptionalExtension, Statement, TransactionBehavior, params};

/// Entries that were just recorded, with the arrival number of the last.
#[derive(Clone, Debug)]
pub struct Recorded {
    /// The entries.
    pub entries: Vec<Entry>,
    /// The arrival number of the last.
    pub seq: i64,
}

/// What goes on disk together with the entries of an act.
#[derive(Default)]
pub struct Along<'a> {
    /// The token of the act and its answer.
    pub once: Option<(&'a str, i64, String)>,
    /// Lines of the list of cooks that are new.
    pub lines: &'a [CookLine],
    /// Whether other lines change by it, which [`Store::settle_lines`] has to follow.
    pub changes_lines: bool,
    /// Sealed readings that the entries announce.
    pub chunks: super::readings::Chunks<'a>,
}

impl Store {
    /// The number of this device's next entry.
    pub fn next_n(&self) -> Result<i64> {
        let sql = "SELECT max(n) FROM entries WHERE log = ? AND device = ?";
        let last: Option<i64> = self.conn.query_row(
            sql,
            params![bytes(self.log.0), bytes(self.device.0)],
            |row| row.get(0),
        )?;
        Ok(last.unwrap_or(0) + 1)
    }

    /// Writes `drafts` as this device's entries from number `n` on, stamped from `stamps`, in one transaction.
    pub fn append(
        &mut self,
        drafts: &[Draft],
        n: i64,
        stamps: &[Stamp],
        along: Along<'_>,
    ) -> Result<Recorded> {
        let (log, device) = (self.log, self.device);
        let tx = self
            .conn
            .transaction_with_behavior(TransactionBehavior::Immediate)?;
        let mut recorded = Recorded {
            entries: Vec::with_capacity(drafts.len()),
            seq: 0,
        };
        for (i, draft) in drafts.iter().enumerate() {
            let key = EntryKey {
                log,
                device,
                n: n + i as i64,
            };
            let entry = Entry {
                key,
                stamp: stamps[i],
                body: Body::Raw(draft.raw()),
            };
            if insert(&tx, &entry, draft.cook)? == 0 {
                return Err(StoreTrouble::Other(format!("entry {key} is there already")));
            }
            if let Payload::ErasedFor(erased) = &draft.payload {
                erase(&tx, &erased.targets)?;
                super::cache::forget(&tx, draft.cook.into())?;
            }
            recorded.entries.push(entry);
        }
        recorded.seq = tx.last_insert_rowid();
        if let Some((token, at, outcome)) = &along.once {
            tx.prepare_cached("INSERT INTO once (token, at, outcome) VALUES (?, ?, ?)")?
                .execute(params![token, at, outcome])?;
        }
        super::cache::put_lines(&tx, along.lines)?;
        if along.changes_lines {
            super::cache::lines_are_wrong(&tx)?;
        }
        super::readings::put_chunks(&tx, along.chunks)?;
        tx.commit()?;
        Ok(recorded)
    }

    /// What an act with this token answered, if it was done before.
    pub fn answered_before(&self, token: &str) -> Result<Option<String>> {
        let mut statement = self
            .conn
            .prepare_cached("SELECT outcome FROM once WHERE token = ?")?;
        Ok(statement.query_row([token], |row| row.get(0)).optional()?)
    }
}

/// What [`insert_with`] wants prepared.
pub(super) const INSERT: &str =
    "INSERT OR IGNORE INTO entries (log, device, n, stamp, cook, raw) VALUES (?, ?, ?, ?, ?, ?)";

/// Inserts one entry.
pub(super) fn insert(
    conn: &Connection,
    entry: &Entry,
    cook: Option<CookId>,
) -> rusqlite::Result<usize> {
    insert_with(&mut *conn.prepare_cached(INSERT)?, entry, cook)
}

/// Inserts one of many entries.
pub(super) fn insert_with(
    statement: &mut Statement<'_>,
    entry: &Entry,
    cook: Option<CookId>,
) -> rusqlite::Result<usize> {
    let raw = match &entry.body {
        Body::Raw(raw) => Some(raw),
        Body::Erased => None,
    };
    statement.execute(params![
        bytes(entry.key.log.0),
        bytes(entry.key.device.0),
        entry.key.n,
        entry.stamp.0,
        cook.map(|cook| bytes(cook.0)),
        raw
    ])
}

/// Drops the bytes of entries, those that are here and those that will come.
pub(super) fn erase(conn: &Connection, targets: &[EntryKey]) -> rusqlite::Result<()> {
    for key in targets {
        let name = params![bytes(key.log.0), bytes(key.device.0), key.n];
        conn.prepare_cached("INSERT OR IGNORE INTO erased (log, device, n) VALUES (?, ?, ?)")?
            .execute(name)?;
        conn.prepare_cached(
            "UPDATE entries SET raw = NULL, cook = NULL WHERE log = ? AND device = ? AND n = ?",
        )?
        .execute(name)?;
        conn.prepare_cached("DELETE FROM forks WHERE log = ? AND device = ? AND n = ?")?
            .execute(name)?;
    }
    Ok(())
}

/// The bytes under which an id is kept.
pub(super) fn bytes(id: uuid::Uuid) -> [u8; 16] {
    id.into_bytes()
}
