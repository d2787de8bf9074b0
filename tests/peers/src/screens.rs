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
use slowbend_core::{
    acts::Act,
    cadence::Cadence,
    door::Slowbend,
    log::{Field, Stage, Subject},
    moment::Moment,
    words::Viewer,
};
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
    let mut pit = Pit::of_usual_log()?;
    let name = format!("refresh after an act, {} entries", pit.log.entries.len());
    let usual = Row::within(&name, pit.refresh(Pit::screen)?, REFRESH_MOST);
    let alarms = Row::told("alarms after an act", time(pit.refresh(Pit::alarms)?), "-");
    pit.crowd()?;
    let crowded = pit.refresh(Pit::screen)?;
    let name = "refresh, four rhythms on one pit";
    Ok(vec![
        usual,
        alarms,
        Row::within(name, crowded, REFRESH_MOST),
    ])
}

/// An open door, tapped again and again.
struct Pit {
    _folder: tempfile::TempDir,
    log: Invented,
    door: Slowbend,
    viewer: Viewer,
    taps: i64,
}

impl Pit {
    fn of_usual_log() -> Result<Self> {
        let (folder, log) = (place::folder()?, usual_log());
        let mut door = filled(folder.path(), &log)?;
        let viewer = viewer(&mut door)?;
        Ok(Self {
            _folder: folder,
            log,
            door,
            viewer,
            taps: 0,
        })
    }

    fn act(&mut self, act: &Act) -> Result<Moment> {
        let moment = after(&self.log, self.taps);
        self.door.act(&self.viewer, act, &moment)?;
        Ok(moment)
    }

    /// What `look` takes after each tap, the tap not counted.
    fn refresh(&mut self, look: impl Fn(&mut Self, &Moment) -> Result<()>) -> Result<Duration> {
        alone(TURNS, || {
            self.taps += 1;
            let moment = self.act(&mop(&self.log))?;
            let start = Instant::now();
            look(self, &moment)?;
            Ok(start.elapsed())
        })
    }

    fn screen(&mut self, moment: &Moment) -> Result<()> {
        first_screen(&mut self.door, &self.viewer, &self.log, moment)
    }

    fn alarms(&mut self, moment: &Moment) -> Result<()> {
        black_box(self.door.alarms(&self.viewer, moment, 60)?);
        Ok(())
    }

    /// All meats on one pit, no two with the same rhythm: as hard as openings get in a home pit.
    fn crowd(&mut self) -> Result<()> {
        let (pit, breast) = (self.log.pits[0], self.log.pieces[3]);
        let stage = Stage::OnPit { pit };
        self.act(&Act::SetStage {
            piece: breast,
            stage,
            at: None,
        })?;
        for (piece, every_min) in self.log.pieces.clone().into_iter().zip([30, 45, 60, 40]) {
            let (of, to) = (
                Subject::Piece(piece),
                Field::Cadence(Cadence::Spritz { every_min }),
            );
            self.act(&Act::SetField { of, to, saw: None })?;
        }
        let wetted = self.log.pieces.clone();
        self.act(&Act::Open {
            pit: Some(pit),
            wetted,
            turned: vec![],
            glazed: vec![],
            at: None,
        })?;
        Ok(())
    }
}
