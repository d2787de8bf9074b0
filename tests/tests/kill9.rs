//! Law 1 with a real process: two hundred times it is ended by kill -9 while it acts, and what it had been told is
//! recorded is there.
//!
//! The moments of the kills come out of a fixed seed: after so many acknowledgements, plus a busy wait of so many turns,
//! so that they fall before, in and after commits. Only the children that are started here are ended.

use slowbend_core::{
    door::{OpenArgs, Slowbend},
    log::{Body, Entry, EntryKey},
    moment::Moment,
};
use slowbend_tests::sim::{place, rng::Rng};
use std::{
    collections::{BTreeMap, BTreeSet},
    io::{BufRead, BufReader},
    path::Path,
    process::{Child, Command, Stdio},
};

const KILLS: u64 = 200;

type Told = BTreeMap<EntryKey, String>;

#[test]
fn what_was_acknowledged_outlives_kill_minus_nine() {
    let root = place::fresh();
    let mut told = Told::new();
    for round in 0..KILLS {
        // Every twenty rounds a fresh folder, so that first openings are killed as well.
        let folder = root.path().join(format!("pit-{}", round / 20));
        if round % 20 == 0 {
            told.clear();
        }
        let before = told.len();
        live_and_die(&folder, round, &mut told);
        let entries = reopen(&folder);
        let held: Told = entries
            .iter()
            .map(|entry| (entry.key, hash(entry)))
            .collect();
        let missing: Vec<_> = told
            .iter()
            .filter(|(key, hash)| held.get(key) != Some(hash))
            .collect();
        assert!(
            missing.is_empty(),
            "round {round}: {missing:?} was told and is not there; replay: cargo test -p slowbend-tests --test kill9"
        );
        let unheard = acts_unheard_of(&entries, &told);
        assert!(
            unheard <= 1,
            "round {round}: {unheard} acts that nobody heard of"
        );
        assert!(told.len() >= before);
        told = held;
    }
}

/// Starts a child, hears so many of its acknowledgements, waits a little and kills it; then hears the rest.
fn live_and_die(folder: &Path, round: u64, told: &mut Told) {
    let mut rng = Rng::new(0x5eed_0000 + round);
    let mut child = start(folder, rng.any());
    let mut lines = BufReader::new(child.stdout.take().expect("it is piped")).lines();
    let wanted = rng.below(12);
    let first: Vec<String> = lines
        .by_ref()
        .take(wanted)
        .map(|line| line.expect("text"))
        .collect();
    for _ in 0..rng.below(3_000_000) {
        std::hint::black_box(());
    }
    child.kill().expect("it is our child");
    child.wait().expect("it is our child");
    let rest: Vec<String> = lines.map_while(Result::ok).collect();
    told.extend(first.iter().chain(&rest).filter_map(|line| heard(line)));
}

fn start(folder: &Path, seed: u64) -> Child {
    Command::new(env!("CARGO_BIN_EXE_acknowledger"))
        .arg(folder)
        .arg(seed.to_string())
        .stdout(Stdio::piped())
        .spawn()
        .expect("the acknowledger can be started")
}

/// A whole line; the last one may be cut short by the kill.
fn heard(line: &str) -> Option<(EntryKey, String)> {
    let (key, hash) = line.split_once(' ')?;
    (hash.len() == 64).then(|| Some((key.parse().ok()?, hash.to_owned())))?
}

fn reopen(folder: &Path) -> Vec<Entry> {
    let args = OpenArgs {
        place: folder.into(),
        install_id: "acknowledger".into(),
        entropy: [9; 32],
    };
    let mut door = Slowbend::open(args, &Moment::at(1_781_341_200_000, "UTC"))
        .expect("it opens after the kill");
    let entries = door.entries_after(&[]).expect("its entries are read");
    drop(door);
    let file = rusqlite::Connection::open(folder.join("slowbend.db")).expect("the file is there");
    let sound: String = file
        .query_row("PRAGMA integrity_check", [], |row| row.get(0))
        .expect("it is checked");
    assert_eq!(sound, "ok");
    entries
}

fn hash(entry: &Entry) -> String {
    match &entry.body {
        Body::Raw(raw) => blake3::hash(raw).to_hex().to_string(),
        Body::Erased => "erased".into(),
    }
}

/// How many acts recorded something that nobody heard of. All entries of an act bear the moment of it in their stamps;
/// sealed readings are nobody's act.
fn acts_unheard_of(entries: &[Entry], told: &Told) -> usize {
    let is_act = |entry: &&Entry| !matches!(&entry.body, Body::Raw(raw) if Entry::head(raw).is_ok_and(|head| head.kind == "series_saved"));
    let unheard = entries
        .iter()
        .filter(|entry| !told.contains_key(&entry.key))
        .filter(is_act);
    let moments: BTreeSet<i64> = unheard.map(|entry| entry.stamp.wall_ms()).collect();
    moments.len()
}
