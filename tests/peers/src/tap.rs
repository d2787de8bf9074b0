//! One tap made durable: a mop of one meat through the door's `act`, against a bare insert and commit of the same bytes.
//!
//! Ours is all that happens between the tap and the answer: deciding, writing with `synchronous=FULL`, folding, wording
//! the answer and its undo, in a database with 20,000 entries behind it. The peer inserts the very rows that our taps
//! wrote, in turn, into a database of the same schema, settings and contents on the same disk, and commits.
//! Because core is deterministic, the same taps write the same bytes: they are made once before, to lay the rows ready.
//!
//! WAL bytes are the growth of each side's `-wal` file over the turns, which no checkpoint cuts; syncs are counted in
//! processes of their own, see [`syncs`].

use crate::{
    absorb::{INSERT, Ready, bare_database},
    door::{after, filled, mop, open, usual_log, viewer},
    harness::{Result, Row, in_turns},
    invent::Invented,
    place, syncs,
};
use rusqlite::Connection;
use slowbend_core::{door::Slowbend, log::Entry};
use std::{
    fs,
    path::Path,
    time::{Duration, Instant},
};

const TURNS: usize = 300;
/// Of so many rounds the middle one counts: a disk whose syncs end on a tick of the system's timer makes a whole round of
/// one side wait for the next tick while the machine is busy.
const ROUNDS: usize = 3;
/// With the turn of each round that does not count.
const TAPS: usize = ROUNDS * (TURNS + 1);
const MOST: f64 = 1.25;

/// The rows of the table.
pub fn rows() -> Result<Vec<Row>> {
    let log = usual_log();
    let mut sides = (Ours::new(&log)?, Peer::new(&log, TAPS)?);
    let before = (sides.0.wal()?, sides.1.wal()?);
    let (ours, peer) = (&mut sides.0, &mut sides.1);
    let mut rounds = (0..ROUNDS)
        .map(|_| in_turns(TURNS, || ours.tap(), || peer.tap()))
        .collect::<Result<Vec<_>>>()?;
    rounds.sort_by(|a, b| a.ratio().total_cmp(&b.ratio()));
    let grown = |now: u64, then: u64| format!("{} B", (now - then) / TAPS as u64);
    let wal = Row::told(
        "WAL per act",
        grown(ours.wal()?, before.0),
        grown(peer.wal()?, before.1),
    );
    assert!(ours.wrote(&peer.rows)?, "both sides wrote the same bytes");
    let [of_ours, of_peer] = [syncs::per_act("ours")?, syncs::per_act("peer")?];
    Ok(vec![
        Row::of("tap, durable", rounds[ROUNDS / 2], MOST),
        wal,
        Row::told("syncs per act", of_ours, of_peer),
    ])
}

/// Makes so many taps and nothing else after the database is filled, for somebody who counts what they cost.
pub fn only(side: &str, taps: usize) -> Result<()> {
    let log = usual_log();
    if side == "ours" {
        let mut ours = Ours::new(&log)?;
        (0..taps).try_for_each(|_| ours.tap().map(drop))
    } else {
        let mut peer = Peer::new(&log, syncs::MANY)?;
        (0..taps).try_for_each(|_| peer.tap().map(drop))
    }
}

/// A door, and how many taps it had.
struct Ours<'a> {
    folder: tempfile::TempDir,
    log: &'a Invented,
    door: Slowbend,
    taps: i64,
}

impl<'a> Ours<'a> {
    fn new(log: &'a Invented) -> Result<Self> {
        let folder = place::folder()?;
        drop(filled(folder.path(), log)?);
        let door = open(folder.path(), &after(log, 0))?;
        Ok(Self {
            folder,
            log,
            door,
            taps: 0,
        })
    }

    fn tap(&mut self) -> Result<Duration> {
        self.taps += 1;
        let (viewer, moment) = (viewer(&mut self.door)?, after(self.log, self.taps));
        let act = mop(self.log);
        let start = Instant::now();
        let outcome = self.door.act(&viewer, &act, &moment)?;
        let took = start.elapsed();
        assert_eq!(outcome.entries.len(), 1, "a tap is one entry");
        Ok(took)
    }

    fn own(&mut self) -> Result<Vec<Entry>> {
        let device = self.door.device()?;
        let entries = self.door.entries_after(&[])?;
        Ok(entries
            .into_iter()
            .filter(|entry| entry.key.device == device)
            .collect())
    }

    fn wrote(&mut self, rows: &[Ready]) -> Result<bool> {
        let own: Vec<Ready> = self.own()?.iter().map(Ready::of).collect::<Result<_>>()?;
        Ok(own == rows)
    }

    fn wal(&self) -> Result<u64> {
        wal(self.folder.path())
    }
}

/// A bare database, and the rows that are to be inserted.
struct Peer {
    folder: tempfile::TempDir,
    conn: Connection,
    rows: Vec<Ready>,
    taps: usize,
}

impl Peer {
    fn new(log: &Invented, taps: usize) -> Result<Self> {
        let mut scratch = Ours::new(log)?;
        for _ in 0..taps {
            scratch.tap()?;
        }
        let rows = scratch
            .own()?
            .iter()
            .map(Ready::of)
            .collect::<Result<_>>()?;
        let folder = place::folder()?;
        drop(filled(folder.path(), log)?);
        let conn = bare_database(folder.path())?;
        Ok(Self {
            folder,
            conn,
            rows,
            taps: 0,
        })
    }

    fn tap(&mut self) -> Result<Duration> {
        let row = &self.rows[self.taps];
        self.taps += 1;
        let start = Instant::now();
        let tx = self.conn.transaction()?;
        row.insert(&mut *tx.prepare_cached(INSERT)?)?;
        tx.commit()?;
        Ok(start.elapsed())
    }

    fn wal(&self) -> Result<u64> {
        wal(self.folder.path())
    }
}

fn wal(folder: &Path) -> Result<u64> {
    match fs::metadata(folder.join("slowbend.db-wal")) {
        Ok(file) => Ok(file.len()),
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => Ok(0),
        Err(error) => Err(error.into()),
    }
}
