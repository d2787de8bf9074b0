//! From the call of the core to the drawn screen, in the Android shell: what a person waits for after a tap was recorded.
//!
//! The real activity on the real framework (Robolectric, native graphics), over this core in release through JNA, with a
//! database of 20,000 entries that this bench fills. After each tap, not timed: ask for the screen, compose, lay out, draw
//! into a picture of 1080 × 2340. The peer, in turns with it, draws the same kind of record after the same kind of tap
//! without the call: it was asked for before. So the ratio is what the core and the border add to drawing. Beside it, to
//! be read: the call alone, and as many bare lines of text. The turns are lived by `DrawnBench.kt`; without Maven and Java there are no rows.

use crate::{
    door::{filled, mop, usual_log},
    harness::{Pair, Result, Row, median, time},
    place,
};
use std::{fs, path::Path, process::Command, time::Duration};

/// The call may not add more than a quarter to what drawing takes.
const MOST: f64 = 1.25;

/// The rows of the table.
pub fn rows() -> Result<Vec<Row>> {
    let (folder, log) = (place::folder()?, usual_log());
    drop(filled(folder.path(), &log)?);
    let tap = serde_json::to_string(&mop(&log))?;
    let told = format!("{}\n{}\n{tap}\n", log.cook, log.until);
    fs::write(folder.path().join("drawn.txt"), told)?;
    if !lived(folder.path())? {
        eprintln!(
            "drawn was skipped: there is no Maven or no Java 17 (apt-get install maven openjdk-17-jdk-headless)"
        );
        return Ok(vec![]);
    }
    let [ours, peer, call, bare] = medians(&fs::read_to_string(folder.path().join("times.txt"))?)?;
    let entries = log.entries.len();
    let name = format!("core call to drawn screen, {entries} entries");
    Ok(vec![
        Row::of(&name, Pair { ours, peer }, MOST),
        Row::told("the call alone, over JNA", time(call), "-"),
        Row::told("drawn screen, as many bare lines", time(ours), time(bare)),
    ])
}

/// Whether the turns were lived.
fn lived(folder: &Path) -> Result<bool> {
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("drawn");
    let status = Command::new(script).arg(folder).status()?;
    match status.code() {
        Some(0) => Ok(true),
        Some(3) => Ok(false),
        _ => Err("the turns of drawn failed: see above".into()),
    }
}

/// The medians of ours, of the peer, of the call and of the bare lines; a line of the file is a turn, in nanoseconds.
fn medians(times: &str) -> Result<[Duration; 4]> {
    let mut sides = [const { Vec::new() }; 4];
    for line in times.lines() {
        for (side, time) in sides.iter_mut().zip(line.split(' ')) {
            side.push(Duration::from_nanos(time.parse()?));
        }
    }
    if sides.iter().any(Vec::is_empty) {
        return Err("drawn told no times".into());
    }
    Ok(sides.map(median))
}
