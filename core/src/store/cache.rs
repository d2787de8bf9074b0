//! Caches: folded state by group, and one line a cook. Dropping them loses nothing.

use super::{Result, Store, append::bytes};
use crate::{cook::FOLD_VERSION, ids::CookId};
use rusqlite::{Connection, OptionalExtension, params};
use serde::{Serialize, de::DeserializeOwned};

/// What is folded together: one cook, or all that belongs to none.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Group {
    /// What belongs to no cook.
    Crew,
    /// One cook.
    Cook(CookId),
}

impl From<Option<CookId>> for Group {
    fn from(cook: Option<CookId>) -> Self {
        cook.map_or(Self::Crew, Self::Cook)
    }
}

impl Group {
    /// Its cook, if it is one.
    pub fn cook(self) -> Option<CookId> {
        match self {
            Self::Crew => None,
            Self::Cook(id) => Some(id),
        }
    }

    fn name(self) -> Vec<u8> {
        match self {
            Self::Crew => b"crew".to_vec(),
            Self::Cook(id) => bytes(id.0).to_vec(),
        }
    }
}

/// One line of the list of cooks.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CookLine {
    /// Which one.
    pub cook: CookId,
    /// What it is called.
    pub name: String,
    /// When it began.
    pub started: i64,
    /// When it was ended.
    pub finished: Option<i64>,
    /// Whether it is invented.
    pub demo: bool,
}

impl Store {
    /// The cached state of a group with the arrival number it covers, if this version of the fold made it.
    pub fn cached<T: DeserializeOwned>(&self, group: Group) -> Result<Option<(T, i64)>> {
        let mut statement = self
            .conn
            .prepare_cached("SELECT seq, state FROM cache WHERE name = ? AND fold = ?")?;
        let row: Option<(i64, Vec<u8>)> = statement
            .query_row(params![group.name(), FOLD_VERSION], |row| {
                Ok((row.get(0)?, row.get(1)?))
            })
            .optional()?;
        Ok(row.and_then(|(seq, state)| Some((rmp_serde::from_slice(&state).ok()?, seq))))
    }

    /// Caches the state of a group as of an arrival number.
    pub fn put_cached<T: Serialize>(&self, group: Group, seq: i64, state: &T) -> Result<()> {
        let state = rmp_serde::to_vec_named(state)
            .map_err(|e| super::StoreTrouble::Other(e.to_string()))?;
        self.conn
            .prepare_cached(
                "INSERT OR REPLACE INTO cache (name, fold, seq, state) VALUES (?, ?, ?, ?)",
            )?
            .execute(params![group.name(), FOLD_VERSION, seq, state])?;
        Ok(())
    }

    /// What was kept under a name that is no group's, if this version of the fold kept it.
    pub fn kept<T: DeserializeOwned>(&self, name: &[u8]) -> Result<Option<T>> {
        let mut statement = self
            .conn
            .prepare_cached("SELECT state FROM cache WHERE name = ? AND fold = ?")?;
        let row: Option<Vec<u8>> = statement
            .query_row(params![name, FOLD_VERSION], |row| row.get(0))
            .optional()?;
        Ok(row.and_then(|state| rmp_serde::from_slice(&state).ok()))
    }

    /// Keeps something under a name that is no group's, in the place of what was there.
    pub fn keep<T: Serialize>(&self, name: &[u8], kept: &T) -> Result<()> {
        let state =
            rmp_serde::to_vec_named(kept).map_err(|e| super::StoreTrouble::Other(e.to_string()))?;
        self.conn
            .prepare_cached(
                "INSERT OR REPLACE INTO cache (name, fold, seq, state) VALUES (?, ?, 0, ?)",
            )?
            .execute(params![name, FOLD_VERSION, state])?;
        Ok(())
    }

    /// Drops what was kept under a name.
    pub fn drop_kept(&self, name: &[u8]) -> Result<()> {
        self.conn
            .prepare_cached("DELETE FROM cache WHERE name = ?")?
            .execute([name])?;
        Ok(())
    }

    /// Whether the list of cooks was made by this version of the fold.
    pub fn lines_are_current(&self) -> Result<bool> {
        Ok(super::open::meta(&self.conn, "lines")?.as_deref() == Some(&FOLD_VERSION.to_string()))
    }

    /// Replaces the whole list of cooks, all caches with it.
    pub fn put_all_lines(&self, lines: &[CookLine]) -> Result<()> {
        let tx = self.conn.unchecked_transaction()?;
        tx.execute("DELETE FROM cooks", [])?;
        tx.execute("DELETE FROM cache WHERE fold <> ?", [FOLD_VERSION])?;
        put_lines(&tx, lines)?;
        super::open::set_meta(&tx, "lines", &FOLD_VERSION.to_string())?;
        Ok(tx.commit()?)
    }

    /// Puts or replaces `lines`, drops those of cooks whose beginning was taken back, and says that the list is right
    /// again, all at once: until then an open makes it anew (`lines_are_wrong`).
    pub fn settle_lines(&self, lines: &[CookLine], dropped: &[CookId]) -> Result<()> {
        let tx = self.conn.unchecked_transaction()?;
        for cook in dropped {
            tx.prepare_cached("DELETE FROM cooks WHERE cook = ?")?
                .execute([bytes(cook.0)])?;
        }
        put_lines(&tx, lines)?;
        super::open::set_meta(&tx, "lines", &FOLD_VERSION.to_string())?;
        Ok(tx.commit()?)
    }

    /// The cooks under way.
    pub fn open_lines(&self) -> Result<Vec<CookLine>> {
        let mut statement = self.conn.prepare_cached(
            "SELECT cook, name, started, finished, demo FROM cooks WHERE finished IS NULL ORDER BY started, cook",
        )?;
        Ok(statement
            .query_map([], line)?
            .collect::<rusqlite::Result<_>>()?)
    }

    /// Past cooks, latest first, those begun before `before`: `limit` of them, and those begun at the last one's
    /// instant, so that a page never parts them.
    pub fn past_lines(&self, before: i64, limit: i64) -> Result<Vec<CookLine>> {
        let mut statement = self.conn.prepare_cached(
            "SELECT cook, name, started, finished, demo FROM cooks \
             WHERE finished IS NOT NULL AND started < ?1 AND started >= ( \
               SELECT min(started) FROM ( \
                 SELECT started FROM cooks WHERE finished IS NOT NULL AND started < ?1 \
                 ORDER BY started DESC LIMIT ?2)) \
             ORDER BY started DESC, cook",
        )?;
        Ok(statement
            .query_map([before, limit], line)?
            .collect::<rusqlite::Result<_>>()?)
    }
}

fn line(row: &rusqlite::Row<'_>) -> rusqlite::Result<CookLine> {
    Ok(CookLine {
        cook: CookId(uuid::Uuid::from_bytes(row.get(0)?)),
        name: row.get(1)?,
        started: row.get(2)?,
        finished: row.get(3)?,
        demo: row.get(4)?,
    })
}

/// Says, in the transaction that makes it so, that the list of cooks does not tell the entries' story: were the process
/// killed before [`Store::settle_lines`], a cook would be missing from it, and with the cook its alarms.
pub(super) fn lines_are_wrong(conn: &Connection) -> rusqlite::Result<()> {
    conn.prepare_cached("DELETE FROM meta WHERE name = 'lines'")?
        .execute([])?;
    Ok(())
}

/// Puts or replaces lines of the list of cooks.
pub(super) fn put_lines(conn: &Connection, lines: &[CookLine]) -> rusqlite::Result<()> {
    for line in lines {
        conn.prepare_cached(
            "INSERT OR REPLACE INTO cooks (cook, name, started, finished, demo) VALUES (?, ?, ?, ?, ?)",
        )?
        .execute(params![bytes(line.cook.0), line.name, line.started, line.finished, line.demo])?;
    }
    Ok(())
}

/// Drops the cached state of a group.
pub(super) fn forget(conn: &Connection, group: Group) -> rusqlite::Result<()> {
    conn.prepare_cached("DELETE FROM cache WHERE name = ?")?
        .execute([group.name()])?;
    Ok(())
}
