//! How long a person waits for the screen: from opening the database to the first screen, and after an act.
//!
//! Both have limits in milliseconds rather than a peer. The history grows from 2,000 to 60,000 entries while the cook
//! under way stays the same size, so opening has to take the same time: the ratio of the largest to the smallest is the
//! last row. The file's pages are in the system's cache, as after a phone's process was stopped and started again.
//! Alarms are laid after each act as well, by the shell in the background: told, not judged.

use crate::{
    door::{after, filled, mop, open, usual_log, viewer},
    harness::{Pair, Result, Row, alone, in_turns, time},
    invent::{self, Invented},
    place,
};
use slowbend_core::{door::Slowbend, moment::Moment, words::Viewer};
use std::{
    hint::black_box,
    path::Path,
    time::{Duration, Instant},
};

const TURNS: usize = 31;
const OPEN_MOST: Duration = Duration::from_millis(5);
const REFRESH_MOST: Duration = Duration::from_millis(1);
/// Flat: the largest history may not take half as long again as the smallest.
const FLAT_MOST: f64 = 1.5;

/// The rows of the table.
pub fn rows() -> Result<Vec<Row>> {
    let mut rows = opening()?;
    rows.extend(refresh()?);
    Ok(rows)
}

fn opening() -> Result<Vec<Row>> {
    let small = History::of(5)?;
    let usual = History::of(50)?;
    let large = History::of(150)?;
    let flat: Pair = in_turns(TURNS, || large.open(), || small.open())?;
    let usual_time = alone(TURNS, || usual.open())?;
    Ok(vec![
        Row::within(
            &format!("warm open, {}", small.name()),
            flat.peer,
            OPEN_MOST,
        ),
        Row::within(
            &format!("warm open, {}", usual.name()),
            usual_time,
            OPEN_MOST,
        ),
        Row::within(
            &format!("warm open, {}", large.name()),
            flat.ours,
            OPEN_MOST,
        ),
        Row::of("warm open, largest to smallest", flat, FLAT_MOST),
    ])
}

/// A database on disk, closed.
struct History {
    folder: tempfile::TempDir,
    log: Invented,
}

impl History {
    fn of(cooks: usize) -> Result<Self> {
        let folder = place::folder()?;
        let log = invent::log(cooks, crate::fold::EACH);
        drop(filled(folder.path(), &log)?);
        Ok(Self { folder, log })
    }

    fn name(&self) -> String {
        format!("{} entries", self.log.entries.len())
    }

    /// From nothing to the first screen.
    fn open(&self) -> Result<Duration> {
        open_to_screen(self.folder.path(), &self.log, &after(&self.log, 1))
    }
}

fn open_to_screen(folder: &Path, log: &Invented, moment: &Moment) -> Result<Duration> {
    let start = Instant::now();
    let mut door = open(folder, moment)?;
    let viewer = viewer(&mut door)?;
    first_screen(&mut door, &viewer, log, moment)?;
    Ok(start.elapsed())
}

/// The screen of a phone propped at the pit.
fn first_screen(
    door: &mut Slowbend,
    viewer: &Viewer,
    log: &Invented,
    moment: &Moment,
) -> Result<()> {
    let screen = black_box(door.pitside(viewer, log.cook, moment)?);
    assert_eq!(screen.meats.len(), log.pieces.len(), "every meat is shown");
    Ok(())
}

fn refresh() -> Result<Vec<Row>> {
    let (folder, log) = (place::folder()?, usual_log());
    let mut door = filled(folder.path(), &log)?;
    let viewer = viewer(&mut door)?;
    let mut taps = 0;
    let mut acted = |door: &mut Slowbend| -> Result<Moment> {
        taps += 1;
        let moment = after(&log, taps);
        door.act(&viewer, &mop(&log), &moment)?;
        Ok(moment)
    };
    let screen = alone(TURNS, || {
        let moment = acted(&mut door)?;
        let start = Instant::now();
        first_screen(&mut door, &viewer, &log, &moment)?;
        Ok(start.elapsed())
    })?;
    let alarms = alone(TURNS, || {
        let moment = acted(&mut door)?;
        let start = Instant::now();
        black_box(door.alarms(&viewer, &moment, 60)?);
        Ok(start.elapsed())
    })?;
    let name = format!("refresh after an act, {} entries", log.entries.len());
    Ok(vec![
        Row::within(&name, screen, REFRESH_MOST),
        Row::told("alarms after an act", time(alarms), "-"),
    ])
}
