//! Folding 20,000 entries cold, against reading the same rows and parsing the same JSON.
//!
//! Ours: each of the 50 cooks and the crew is read from the store, sorted, its voids settled, and folded to state, as
//! when the database was written by another version of the fold. The peer reads the same columns of the same rows of
//! the same file in one scan, and parses each entry with serde_json to a `Value`; it sorts, settles and folds nothing,
//! so it does less than any reader of JSON entries has to. Told beside it: opening through the door once all caches are
//! dropped, as after an update that folds otherwise.

use crate::{
    harness::{Pair, Result, Row, alone, in_turns, time},
    invent, place,
};
use rusqlite::Connection;
use slowbend_core::{
    cook::{Cook, Crew, fold},
    ids::Names,
    moment::Moment,
    store::{Group, Store},
};
use std::{
    hint::black_box,
    path::Path,
    time::{Duration, Instant},
};

/// Cooks, and entries of each.
pub const COOKS: usize = 50;
/// See [`COOKS`].
pub const EACH: usize = 400;
const TURNS: usize = 15;
const MOST: f64 = 1.5;

/// The row of the table.
pub fn rows() -> Result<Vec<Row>> {
    let folder = place::folder()?;
    let entries = invent::log(COOKS, EACH).entries;
    let store = filled(folder.path(), &entries)?;
    let peer = Connection::open(store.path())?;
    let pair: Pair = in_turns(
        TURNS,
        || ours(&store, entries.len()),
        || scan(&peer, entries.len()),
    )?;
    drop((peer, store));
    let name = format!("cold fold, {} entries", entries.len());
    let opened = alone(TURNS, || cold_open(folder.path()))?;
    Ok(vec![
        Row::of(&name, pair, MOST),
        Row::told("cold open, all caches dropped", time(opened), "-"),
    ])
}

/// Opening as after an update that folds otherwise: every cook is folded once for its line in the list.
fn cold_open(folder: &Path) -> Result<Duration> {
    let conn = Connection::open(folder.join("slowbend.db"))?;
    conn.execute_batch("DELETE FROM cache; DELETE FROM meta WHERE name = 'lines'")?;
    drop(conn);
    let moment = Moment::at(invent::FIRST, "America/Chicago");
    let start = Instant::now();
    let door = crate::door::open(folder, &moment)?;
    let took = start.elapsed();
    drop(door);
    Ok(took)
}

/// A new store in `folder` that holds the entries, all of them in the database file.
pub fn filled(folder: &Path, entries: &[slowbend_core::log::Entry]) -> Result<Store> {
    let opened = Store::open(folder, "bench", &mut Names::new([1; 32]), invent::FIRST)?;
    opened.store.absorb(entries)?;
    opened.store.checkpoint()?;
    Ok(opened.store)
}

/// Reads every group of so many entries and folds it.
pub fn ours(store: &Store, expected: usize) -> Result<Duration> {
    let start = Instant::now();
    let (crew, cooks) = fold_all(store)?;
    let took = start.elapsed();
    let folded: i64 = crew.entries + cooks.iter().map(|cook| cook.entries).sum::<i64>();
    assert_eq!(folded, expected as i64, "every entry was folded");
    black_box((crew, cooks));
    Ok(took)
}

fn fold_all(store: &Store) -> Result<(Crew, Vec<Cook>)> {
    let known = |group| -> Result<Vec<fold::Known>> {
        let (entries, _) = store.entries_of(group, 0)?;
        Ok(entries.iter().map(fold::Known::of).collect())
    };
    let crew = fold::crew(&mut known(Group::Crew)?);
    let mut cooks = vec![];
    for id in store.cooks_named()? {
        cooks.extend(fold::cook(id, &mut known(Group::Cook(id))?));
    }
    Ok((crew, cooks))
}

fn scan(conn: &Connection, expected: usize) -> Result<Duration> {
    let start = Instant::now();
    let mut statement =
        conn.prepare_cached("SELECT log, device, n, stamp, cook, raw FROM entries ORDER BY seq")?;
    let mut rows = statement.query([])?;
    let mut parsed = 0;
    while let Some(row) = rows.next()? {
        black_box::<([u8; 16], [u8; 16], i64, i64, Option<[u8; 16]>)>((
            row.get(0)?,
            row.get(1)?,
            row.get(2)?,
            row.get(3)?,
            row.get(4)?,
        ));
        let raw = row.get_ref(5)?.as_blob()?;
        black_box(serde_json::from_slice::<serde_json::Value>(raw)?);
        parsed += 1;
    }
    let took = start.elapsed();
    assert_eq!(parsed, expected, "every row was read");
    Ok(took)
}
