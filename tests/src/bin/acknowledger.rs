//! Acts for as long as it lives, and says on its output which entries it was told are recorded.
//!
//! `acknowledger FOLDER SEED`. Each line is `KEY HASH`, the name of an entry and the BLAKE3 of its bytes, written only
//! after the act returned. It is started by `tests/kill9.rs`, which ends it with kill -9 at any moment.

use slowbend_core::{
    door::{OpenArgs, SensorReading, Slowbend},
    log::{Body, Entry},
    moment::{MINUTE, Moment},
    units::Mk,
    words::Viewer,
};
use slowbend_tests::sim::{acts::Making, picture::Picture, rng::Rng};
use std::io::Write;

/// 2026-06-13 09:00 UTC.
const BEGINS: i64 = 1_781_341_200_000;

fn main() {
    let mut args = std::env::args().skip(1);
    let (Some(folder), Some(seed)) = (args.next(), args.next()) else {
        eprintln!("acknowledger FOLDER SEED");
        std::process::exit(2);
    };
    let seed: u64 = seed.parse().expect("a seed is a number");
    acknowledge(&folder, seed);
}

fn acknowledge(folder: &str, seed: u64) {
    let mut rng = Rng::new(seed);
    let mut moment = Moment::at(BEGINS + (seed % 1_000) as i64 * MINUTE, "America/Chicago");
    let open = OpenArgs {
        place: folder.into(),
        install_id: "acknowledger".into(),
        entropy: rng.bytes(),
    };
    let mut door = Slowbend::open(open, &moment).expect("the folder can be opened");
    let viewer = Viewer::default_for(door.device().expect("it is open"));
    let mut out = std::io::stdout().lock();
    loop {
        moment = moment.plus(rng.from_to(1, 9) * MINUTE / 3);
        let held = door.entries_after(&[]).expect("entries can be read");
        let keys: Vec<_> = held.iter().map(|entry| entry.key).collect();
        let picture = Picture::of(&held);
        let act = Making {
            rng: &mut rng,
            picture: &picture,
            keys: &keys,
            now: moment.utc_ms,
        }
        .act();
        if matches!(act, slowbend_core::acts::Act::Erase { .. }) {
            continue;
        }
        if let Ok(outcome) = door.act(&viewer, &act, &moment) {
            for entry in door
                .entries_after(&[])
                .expect("entries can be read")
                .iter()
                .filter(|entry| outcome.entries.contains(&entry.key))
            {
                writeln!(out, "{} {}", entry.key, hash(entry)).expect("the pipe is open");
            }
            out.flush().expect("the pipe is open");
        }
        between(&mut door, &moment, &mut rng);
    }
}

/// Readings and work between the acts, so that the kill also meets checkpoints.
fn between(door: &mut Slowbend, moment: &Moment, rng: &mut Rng) {
    if rng.chance(20) {
        let reading = SensorReading {
            source: "drum probe".into(),
            sensor: "grate".into(),
            at: moment.utc_ms,
            temp: Mk::from_f(240),
        };
        door.readings(&[reading], moment)
            .expect("readings are taken");
    }
    if rng.chance(20) {
        door.work(moment, 2).expect("work is done");
    }
}

fn hash(entry: &Entry) -> String {
    match &entry.body {
        Body::Raw(raw) => blake3::hash(raw).to_hex().to_string(),
        Body::Erased => "erased".into(),
    }
}
