//! How long the home post takes to write a page of a cook with 20,000 entries behind it, and what it costs while nobody taps.
//!
//! The program itself is asked over loopback, on one line that stays open, as a browser does. Each page has a limit in
//! milliseconds; the peer beside it is a thread that sends the very same bytes from memory, so that what the network and
//! the asking cost can be seen. Idle: the processor time of the program over some seconds with a live page open.

mod line;
mod program;

use crate::{
    door::{filled, usual_log},
    harness::{Result, Row, alone, time},
    place,
};
use line::Line;
use program::Program;
use std::time::Duration;

const TURNS: usize = 31;
const PAGE_MOST: Duration = Duration::from_millis(2);
/// How long nothing is done.
const IDLE: Duration = Duration::from_secs(10);
/// A thousandth of one processor.
const IDLE_MOST: Duration = Duration::from_millis(10);

/// The rows of the table.
pub fn rows() -> Result<Vec<Row>> {
    let (folder, log) = (place::folder()?, usual_log());
    drop(filled(folder.path(), &log)?);
    let program = Program::start(folder.path())?;
    let (cook, piece) = (log.cook, log.pieces[0]);
    let mut rows = vec![];
    for (name, path) in [
        ("start", "/".to_owned()),
        ("now", format!("/cook/{cook}")),
        ("timeline", format!("/cook/{cook}/timeline")),
        ("meat", format!("/meat/{piece}")),
        ("check", format!("/meat/{piece}/check")),
        ("settings", "/settings".into()),
    ] {
        rows.push(page(&program, name, &path, log.entries.len())?);
    }
    rows.push(idle(&program, &format!("/cook/{cook}"))?);
    Ok(rows)
}

fn page(program: &Program, name: &str, path: &str, entries: usize) -> Result<Row> {
    let mut ours = Line::to(program.at)?;
    let bytes = ours.get(path)?;
    let mut peer = Line::to(line::echo(bytes)?)?;
    let of_ours = alone(TURNS, || ours.timed(path))?;
    let of_peer = alone(TURNS, || peer.timed(path))?;
    let row = Row::within(
        &format!("page {name}, {entries} entries"),
        of_ours,
        PAGE_MOST,
    );
    let beside = format!("{}; the bytes alone {}", row.peer, time(of_peer));
    Ok(Row {
        peer: beside,
        ..row
    })
}

/// The live page is open the whole time: what keeps it open is what idling may cost.
fn idle(program: &Program, now: &str) -> Result<Row> {
    Line::to(program.at)?.get(now)?;
    let _live = Line::to(program.at)?.open("/live")?;
    let Some(before) = program.processor_time()? else {
        return Ok(Row::told("idle, page open", "not counted: no /proc", "-"));
    };
    std::thread::sleep(IDLE);
    let after = program.processor_time()?.ok_or("the program is gone")?;
    Ok(Row::within(
        "idle 10 s, page open, processor",
        after - before,
        IDLE_MOST,
    ))
}
