//! Absorbing 100,000 entries of other devices, against a bare insert of the same rows under the same indices.
//!
//! Ours: the entries come in one batch into an empty store, which checks each, refuses what is none, finds what it has
//! already, and notes what is to be folded again. The peer inserts the same columns into a database of the same schema
//! and settings with one prepared statement in one transaction, its values laid ready. Both commit with
//! `synchronous=FULL`; the files are new for each turn and the making of them does not count.
//!
//! The second row is the same through the door, which folds what was touched and lists the cooks as well: to be read.

use crate::{
    harness::{Result, Row, in_turns, time},
    invent, place,
};
use rusqlite::{Connection, Statement, params};
use slowbend_core::{
    door::{OpenArgs, Slowbend},
    ids::{CookId, Names},
    log::{Body, Entry},
    moment::Moment,
    store::Store,
};
use std::time::{Duration, Instant};

const COOKS: usize = 250;
const EACH: usize = 400;
const TURNS: usize = 7;
const MOST: f64 = 1.3;

/// The rows of the table.
pub fn rows() -> Result<Vec<Row>> {
    let log = invent::log(COOKS, EACH);
    let ready: Vec<Ready> = log.entries.iter().map(Ready::of).collect::<Result<_>>()?;
    let pair = in_turns(TURNS, || store(&log.entries), || bare(&ready))?;
    let door = in_turns(3, || door(&log.entries, log.until), || bare(&ready))?;
    let name = format!("absorb {} entries", log.entries.len());
    let folded = Row::told(
        &format!("{name}, folded too"),
        time(door.ours),
        time(door.peer),
    );
    let folded = Row {
        ratio: Some(door.ratio()),
        ..folded
    };
    Ok(vec![Row::of(&name, pair, MOST), folded])
}

fn store(entries: &[Entry]) -> Result<Duration> {
    let folder = place::folder()?;
    let opened = Store::open(
        folder.path(),
        "bench",
        &mut Names::new([1; 32]),
        invent::FIRST,
    )?;
    let start = Instant::now();
    let told = opened.store.absorb(entries)?;
    let took = start.elapsed();
    assert_eq!(told.fresh, entries.len() as u64, "every entry was taken");
    Ok(took)
}

fn door(entries: &[Entry], now: i64) -> Result<Duration> {
    let folder = place::folder()?;
    let args = OpenArgs {
        place: folder.path().into(),
        install_id: "bench".into(),
        entropy: [2; 32],
    };
    let moment = Moment::at(now, "America/Chicago");
    let mut door = Slowbend::open(args, &moment)?;
    let start = Instant::now();
    let told = door.absorb(entries, &moment)?;
    let took = start.elapsed();
    assert_eq!(told.fresh, entries.len() as u64, "every entry was taken");
    Ok(took)
}

/// The columns of a row, laid ready for the peer.
#[derive(PartialEq, Eq)]
pub struct Ready {
    log: [u8; 16],
    device: [u8; 16],
    n: i64,
    stamp: i64,
    cook: Option<[u8; 16]>,
    raw: Vec<u8>,
}

impl Ready {
    /// The columns of an entry.
    pub fn of(entry: &Entry) -> Result<Self> {
        let Body::Raw(raw) = &entry.body else {
            return Err("an erased entry has no bytes".into());
        };
        let cook: Option<CookId> = Entry::head(raw)?.cook;
        Ok(Self {
            log: entry.key.log.0.into_bytes(),
            device: entry.key.device.0.into_bytes(),
            n: entry.key.n,
            stamp: entry.stamp.0,
            cook: cook.map(|cook| cook.0.into_bytes()),
            raw: raw.clone(),
        })
    }

    /// Inserts it with a statement made of [`INSERT`].
    pub fn insert(&self, statement: &mut Statement<'_>) -> rusqlite::Result<usize> {
        statement.execute(params![
            self.log,
            self.device,
            self.n,
            self.stamp,
            self.cook,
            self.raw
        ])
    }
}

/// What a row is inserted with.
pub const INSERT: &str =
    "INSERT INTO entries (log, device, n, stamp, cook, raw) VALUES (?, ?, ?, ?, ?, ?)";

/// A database of the same schema and settings: a store's own file, opened bare once the store let it go.
pub fn bare_database(folder: &std::path::Path) -> Result<Connection> {
    let opened = Store::open(folder, "bench", &mut Names::new([1; 32]), invent::FIRST)?;
    let path = opened.store.path().to_owned();
    drop(opened);
    let conn = Connection::open(path)?;
    conn.pragma_update(None, "journal_mode", "WAL")?;
    conn.pragma_update(None, "synchronous", "FULL")?;
    conn.pragma_update(None, "wal_autocheckpoint", 8_000)?;
    Ok(conn)
}

fn bare(rows: &[Ready]) -> Result<Duration> {
    let folder = place::folder()?;
    let mut conn = bare_database(folder.path())?;
    let start = Instant::now();
    let tx = conn.transaction()?;
    let mut statement = tx.prepare(INSERT)?;
    for row in rows {
        row.insert(&mut statement)?;
    }
    drop(statement);
    tx.commit()?;
    Ok(start.elapsed())
}
