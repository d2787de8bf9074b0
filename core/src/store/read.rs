//! Reading entries back.

use super::{Group, Result, Store, append::bytes, aside::entry};
use crate::{
    ids::{CookId, DeviceId, LogId},
    log::{Entry, EntryKey, Stamp},
};
use rusqlite::{OptionalExtension, params};

impl Store {
    /// The entries of a group that arrived after `seq`, in order of arrival, with the last arrival number.
    pub fn entries_of(&self, group: Group, seq: i64) -> Result<(Vec<Entry>, i64)> {
        let mut statement = self.conn.prepare_cached(
            "SELECT log, device, n, stamp, raw, seq FROM entries WHERE cook IS ? AND seq > ? ORDER BY seq",
        )?;
        let cook = group.cook().map(|cook| bytes(cook.0));
        let mut rows = statement.query(params![cook, seq])?;
        let (mut entries, mut last) = (Vec::new(), seq);
        while let Some(row) = rows.next()? {
            entries.push(entry(row)?);
            last = row.get(5)?;
        }
        Ok((entries, last))
    }

    /// The arrival number of the last entry of a cook; 0 where it has none.
    pub fn last_of(&self, cook: CookId) -> Result<i64> {
        let mut statement = self
            .conn
            .prepare_cached("SELECT coalesce(max(seq), 0) FROM entries WHERE cook = ?")?;
        Ok(statement.query_row([bytes(cook.0)], |row| row.get(0))?)
    }

    /// One entry with the cook it belongs to.
    pub fn entry(&self, key: &EntryKey) -> Result<Option<(Entry, Option<CookId>)>> {
        let mut statement = self.conn.prepare_cached(
            "SELECT log, device, n, stamp, raw, cook FROM entries WHERE log = ? AND device = ? AND n = ?",
        )?;
        let found = statement
            .query_row(
                params![bytes(key.log.0), bytes(key.device.0), key.n],
                |row| {
                    let cook: Option<[u8; 16]> = row.get(5)?;
                    Ok((
                        entry(row)?,
                        cook.map(|id| CookId(uuid::Uuid::from_bytes(id))),
                    ))
                },
            )
            .optional()?;
        Ok(found)
    }

    /// All cooks that any entry names.
    pub fn cooks_named(&self) -> Result<Vec<CookId>> {
        let mut statement = self
            .conn
            .prepare("SELECT DISTINCT cook FROM entries WHERE cook IS NOT NULL ORDER BY cook")?;
        let ids = statement.query_map([], |row| {
            row.get(0).map(|id| CookId(uuid::Uuid::from_bytes(id)))
        })?;
        Ok(ids.collect::<rusqlite::Result<_>>()?)
    }

    /// For each log and device: its greatest number and the stamp of that entry. Steps through the index, so it costs
    /// by device and not by entry.
    pub fn heads(&self) -> Result<Vec<(LogId, DeviceId, i64, Stamp)>> {
        let mut last = self.conn.prepare_cached(
            "SELECT n, stamp FROM entries WHERE log = ? AND device = ? ORDER BY n DESC LIMIT 1",
        )?;
        let mut heads = Vec::new();
        let mut at = self.next_writer(&[], &[])?;
        while let Some((log, device)) = at {
            let (n, stamp) =
                last.query_row(params![log, device], |row| Ok((row.get(0)?, row.get(1)?)))?;
            let (of, by) = (uuid::Uuid::from_bytes(log), uuid::Uuid::from_bytes(device));
            heads.push((LogId(of), DeviceId(by), n, Stamp(stamp)));
            at = self.next_writer(&log, &device)?;
        }
        Ok(heads)
    }

    /// The next log and device after these: of the same log, or the first of the next. Two steps, because the one
    /// comparison of both columns, `(log, device) > (?, ?)`, reads every entry of the writer it starts from.
    fn next_writer(&self, log: &[u8], device: &[u8]) -> Result<Option<([u8; 16], [u8; 16])>> {
        let mut of_log = self.conn.prepare_cached(
            "SELECT log, device FROM entries WHERE log = ? AND device > ? ORDER BY device LIMIT 1",
        )?;
        let mut of_next = self.conn.prepare_cached(
            "SELECT log, device FROM entries WHERE log > ? ORDER BY log, device LIMIT 1",
        )?;
        let pair = |row: &rusqlite::Row<'_>| Ok((row.get(0)?, row.get(1)?));
        Ok(
            match of_log.query_row(params![log, device], pair).optional()? {
                Some(found) => Some(found),
                None => of_next.query_row([log], pair).optional()?,
            },
        )
    }

    /// How many entries are held, those set aside not counted.
    pub fn count(&self) -> Result<i64> {
        Ok(self
            .conn
            .query_row("SELECT count(*) FROM entries", [], |row| row.get(0))?)
    }

    /// How many entries came under a name already taken, and lost.
    pub fn forks(&self) -> Result<i64> {
        Ok(self
            .conn
            .query_row("SELECT count(*) FROM forks", [], |row| row.get(0))?)
    }

    /// Names the log that this device writes in from now on.
    pub fn set_log(&mut self, log: LogId) -> Result<()> {
        super::open::set_meta(&self.conn, "log", &log.to_string())?;
        self.log = log;
        Ok(())
    }
}
