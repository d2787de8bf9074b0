//! Taking entries of other devices: any order, split, repeated.
//!
//! Law: what is held after absorbing depends on the set of entries that came, not on their coming. Where two came under
//! one name (a device that was copied), the one with the greater (stamp, bytes) counts and the other is kept aside; an
//! erased one outranks both. What an entry erases is erased even where the entry itself is kept aside.

use super::{Result, Store, append};
use crate::{
    ids::{CookId, DeviceId, LogId},
    log::{Body, Entry, EntryKey, Meaning, Payload, Stamp},
};
use rusqlite::{Connection, OptionalExtension, Statement, TransactionBehavior, params};
use std::collections::BTreeSet;

/// The greatest number of an entry that is taken, so that a device that is told of its own numbers can count on.
const N_MAX: i64 = 1 << 48;

/// What came of absorbing.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Absorbed {
    /// Entries that were not here before.
    pub fresh: u64,
    /// Entries that were here already.
    pub repeated: u64,
    /// Entries that were none: not JSON of the right shape, a stamp out of range, too large.
    pub refused: u64,
    /// Entries that came under a name already taken by another.
    pub forked: u64,
    /// Whose state changed: cooks, and what belongs to none (`None`).
    pub touched: BTreeSet<Option<CookId>>,
    /// The greatest stamp among them.
    pub stamp: Stamp,
}

impl Store {
    /// Takes entries, all of them in one transaction.
    pub fn absorb(&self, entries: &[Entry]) -> Result<Absorbed> {
        let tx = rusqlite::Transaction::new_unchecked(&self.conn, TransactionBehavior::Immediate)?;
        let mut told = Absorbed::default();
        let mut erased_any = any_erased(&tx)?;
        let mut insert = tx.prepare_cached(append::INSERT)?;
        for entry in entries {
            take(&tx, &mut insert, entry, &mut erased_any, &mut told)?;
        }
        drop(insert);
        for group in &told.touched {
            super::cache::forget(&tx, (*group).into())?;
        }
        if told.touched.iter().any(Option::is_some) {
            super::cache::lines_are_wrong(&tx)?;
        }
        tx.commit()?;
        Ok(told)
    }

    /// All entries with a number above what `have` says for their log and device, in order of arrival.
    pub fn entries_after(&self, have: impl Fn(LogId, DeviceId) -> i64) -> Result<Vec<Entry>> {
        let mut statement = self
            .conn
            .prepare_cached("SELECT log, device, n, stamp, raw FROM entries ORDER BY seq")?;
        let all = statement.query_map([], super::aside::entry)?;
        let wanted = |entry: &Entry| entry.key.n > have(entry.key.log, entry.key.device);
        Ok(all
            .filter(|entry| entry.as_ref().map_or(true, wanted))
            .collect::<rusqlite::Result<_>>()?)
    }
}

fn any_erased(conn: &Connection) -> Result<bool> {
    Ok(conn.query_row("SELECT EXISTS (SELECT 1 FROM erased)", [], |row| row.get(0))?)
}

fn take(
    conn: &Connection,
    insert: &mut Statement<'_>,
    entry: &Entry,
    erased_any: &mut bool,
    told: &mut Absorbed,
) -> Result<()> {
    let Some((cook, erases)) = check(entry) else {
        told.refused += 1;
        return Ok(());
    };
    told.stamp = told.stamp.max(entry.stamp);
    let gone = *erased_any && is_erased(conn, &entry.key)?;
    let entry = if gone {
        &Entry {
            body: Body::Erased,
            ..entry.clone()
        }
    } else {
        entry
    };
    let cook = if entry.body == Body::Erased {
        None
    } else {
        cook
    };
    if append::insert_with(insert, entry, cook)? == 0 {
        meet(conn, entry, cook, told)?;
    } else {
        told.fresh += 1;
        told.touched.insert(cook);
    }
    *erased_any |= !erases.is_empty();
    for target in &erases {
        told.touched.insert(cook_of(conn, target)?);
    }
    Ok(append::erase(conn, &erases)?)
}

/// What of an entry the store needs: its cook, and what it erases. None where it is no entry.
fn check(entry: &Entry) -> Option<(Option<CookId>, Vec<EntryKey>)> {
    if !entry.stamp.is_sound() || !(1..=N_MAX).contains(&entry.key.n) {
        return None;
    }
    let Body::Raw(raw) = &entry.body else {
        return Some((None, vec![]));
    };
    let head = Entry::head(raw).ok()?;
    let erases = if head.kind == "erased" {
        erased_by(&head)
    } else {
        vec![]
    };
    Some((head.cook, erases))
}

fn erased_by(head: &crate::log::Head<'_>) -> Vec<EntryKey> {
    match Payload::read(head) {
        Meaning::Known(Payload::ErasedFor(erased)) => erased.targets,
        _ => vec![],
    }
}

fn is_erased(conn: &Connection, key: &EntryKey) -> Result<bool> {
    let mut statement =
        conn.prepare_cached("SELECT 1 FROM erased WHERE log = ? AND device = ? AND n = ?")?;
    Ok(statement.exists(name(key))?)
}

fn cook_of(conn: &Connection, key: &EntryKey) -> Result<Option<CookId>> {
    let mut statement =
        conn.prepare_cached("SELECT cook FROM entries WHERE log = ? AND device = ? AND n = ?")?;
    let cook: Option<Option<[u8; 16]>> = statement
        .query_row(name(key), |row| row.get(0))
        .optional()?;
    Ok(cook.flatten().map(|id| CookId(uuid::Uuid::from_bytes(id))))
}

/// An entry of that name is here: the same, an erasing of it, or another one.
fn meet(conn: &Connection, entry: &Entry, cook: Option<CookId>, told: &mut Absorbed) -> Result<()> {
    let mut statement = conn.prepare_cached(
        "SELECT log, device, n, stamp, raw FROM entries WHERE log = ? AND device = ? AND n = ?",
    )?;
    let held = statement.query_row(name(&entry.key), super::aside::entry)?;
    if held == *entry {
        told.repeated += 1;
        return Ok(());
    }
    match (&held.body, &entry.body) {
        (Body::Erased, _) => {
            lift(conn, entry)?;
            told.repeated += 1;
        }
        (_, Body::Erased) => {
            told.touched.insert(cook_of(conn, &entry.key)?);
            append::erase(conn, &[entry.key])?;
            lift(conn, entry)?;
            told.fresh += 1;
        }
        (Body::Raw(ours), Body::Raw(theirs)) => {
            let wins = (entry.stamp, theirs) > (held.stamp, ours);
            put_aside(conn, if wins { &held } else { entry })?;
            if wins {
                told.touched.extend([cook_of(conn, &entry.key)?, cook]);
                replace(conn, entry, cook)?;
            }
            told.forked += 1;
        }
    }
    Ok(())
}

/// Of all that came under the name of an erased entry the greatest stamp stays, whichever came first.
fn lift(conn: &Connection, entry: &Entry) -> Result<()> {
    let (log, device, n) = name(&entry.key);
    conn.prepare_cached(
        "UPDATE entries SET stamp = max(stamp, ?4) WHERE log = ?1 AND device = ?2 AND n = ?3",
    )?
    .execute(params![log, device, n, entry.stamp.0])?;
    Ok(())
}

fn replace(conn: &Connection, entry: &Entry, cook: Option<CookId>) -> Result<()> {
    conn.prepare_cached("DELETE FROM entries WHERE log = ? AND device = ? AND n = ?")?
        .execute(name(&entry.key))?;
    append::insert(conn, entry, cook)?;
    Ok(())
}

fn put_aside(conn: &Connection, entry: &Entry) -> Result<()> {
    let Body::Raw(raw) = &entry.body else {
        return Ok(());
    };
    let (log, device) = (
        append::bytes(entry.key.log.0),
        append::bytes(entry.key.device.0),
    );
    conn.prepare_cached(
        "INSERT OR IGNORE INTO forks (log, device, n, stamp, raw) VALUES (?, ?, ?, ?, ?)",
    )?
    .execute(params![log, device, entry.key.n, entry.stamp.0, raw])?;
    Ok(())
}

fn name(key: &EntryKey) -> ([u8; 16], [u8; 16], i64) {
    (append::bytes(key.log.0), append::bytes(key.device.0), key.n)
}

#[cfg(test)]
mod tests;
