//! Forecasts, made in the background and kept: see [`ahead`](crate::ahead) for what they are made of.
//!
//! [`Slowbend::work`] brings each meat on a pit to the last instant of the grid, a bounded step at a time; screens read the
//! last one that was finished. What a device kept and what it makes anew are the same bytes, so a process may be killed
//! anywhere. An entry or a reading that comes late for an instant makes the meat be followed anew from the last whole hour
//! before it that still stands, or from the beginning.

mod facts;
mod goals;
mod lessons;

use super::{SensorReading, Slowbend};
use crate::{
    ahead::{Ahead, CROWD, Facts, Forecasts, Kept, Made, Run, grid, print},
    error::Trouble,
    finish::GRID_MS,
    ids::PieceId,
    moment::{HOUR, Moment},
};
use std::collections::BTreeMap;

/// What is being forecast, and what was.
#[derive(Default)]
pub(super) struct Forecasting {
    /// How, where forecasts are made at all.
    made: Option<Made>,
    /// The last one finished of each meat.
    pub(super) shown: Forecasts,
    /// The facts that each was made of, by name.
    of: BTreeMap<PieceId, [u8; 32]>,
    /// How far each meat was followed.
    runs: BTreeMap<PieceId, Run>,
    /// The meats that are not there yet, with what they are to be followed to.
    goals: BTreeMap<PieceId, Facts>,
    /// The instant of the grid that goals were set for, while nothing came in since.
    set_for: Option<i64>,
    /// How many were finished since the door was opened.
    finished: u64,
    /// What past cooks teach.
    pub(super) learning: lessons::Learning,
}

impl Forecasting {
    /// Something came in: what stands has to be held against it.
    pub(super) const fn stir(&mut self) {
        self.set_for = None;
    }

    /// Readings came in, maybe such as belong to what was forecast already.
    pub(super) fn heard(&mut self, batch: &[SensorReading]) {
        if batch.iter().any(|reading| Some(reading.at) < self.set_for) {
            self.stir();
        }
    }
}

impl Slowbend {
    /// Makes forecasts from now on, in [`work`](Self::work). A door that is not asked for them makes none.
    ///
    /// # Errors
    /// The disk's trouble, in reading those that were made before.
    pub fn make_forecasts(&mut self) -> Result<(), Trouble> {
        self.ahead.made = Some(CROWD);
        self.load_forecasts()
    }

    /// The same by sums of a test's own.
    #[cfg(test)]
    pub(super) fn forecast_by(&mut self, made: Made) {
        self.ahead.made = Some(made);
        self.load_forecasts().unwrap();
    }

    /// How many forecasts were finished since the door was opened: where it grew, screens are not as they were.
    pub const fn forecasts_finished(&self) -> u64 {
        self.ahead.finished
    }

    /// When [`work`](Self::work) has forecasts to make again, milliseconds since 1970: the next instant of the grid; none
    /// while no meat that went on lately is on a pit.
    pub fn works_next(&self, moment: &Moment) -> Option<i64> {
        let works = self.ahead.made.is_some() && self.follows_any(moment.utc_ms.saturating_add(1));
        works.then(|| grid(moment.utc_ms).saturating_add(GRID_MS))
    }

    /// One bounded step of a forecast; answers whether there was one to do.
    pub(super) fn forecast_one(&mut self, moment: &Moment) -> Result<bool, Trouble> {
        let Some(made) = self.ahead.made else {
            return Ok(false);
        };
        let now = grid(moment.utc_ms);
        if self.learn_one(made, now)? {
            return Ok(true);
        }
        if self.ahead.set_for != Some(now) {
            self.set_goals(now)?;
            self.ahead.set_for = Some(now);
        }
        let Some((piece, facts)) = self.ahead.goals.pop_first() else {
            return Ok(false);
        };
        let run = match self.ahead.runs.remove(&piece) {
            Some(run) => Some(run),
            None => self.run_of(made, piece, &facts)?,
        };
        let Some(mut run) = run else {
            return Ok(true);
        };
        let came = run.step(&facts);
        let there = came.is_some() && run.at() == facts.now;
        if came.is_some() && run.at() % HOUR == 0 {
            self.store()?
                .keep(&name_of_run(piece), &(made.version, run.kept()))?;
        }
        self.ahead.runs.insert(piece, run);
        match came.filter(|_| there) {
            Some(ahead) => self.finish_one(made, piece, &facts, ahead)?,
            None => _ = self.ahead.goals.insert(piece, facts),
        }
        Ok(true)
    }

    fn finish_one(
        &mut self,
        made: Made,
        piece: PieceId,
        facts: &Facts,
        ahead: Ahead,
    ) -> Result<(), Trouble> {
        let of = print(facts);
        let row = (made.version, of, &ahead);
        self.store()?.keep(&name_of_shown(piece), &row)?;
        self.ahead.of.insert(piece, of);
        self.ahead.shown.insert(piece, ahead);
        self.ahead.finished += 1;
        Ok(())
    }

    /// The run that was kept, where it leads to `facts`; else one that begins, where such a meat can be followed.
    fn run_of(
        &mut self,
        made: Made,
        piece: PieceId,
        facts: &Facts,
    ) -> Result<Option<Run>, Trouble> {
        let kept = self.store()?.kept::<(i64, Kept)>(&name_of_run(piece))?;
        let run = kept
            .filter(|(version, _)| *version == made.version)
            .and_then(|(_, kept)| Run::read(made, &kept, facts));
        Ok(run.or_else(|| Run::begin(made, facts)))
    }
}

fn name_of_run(piece: PieceId) -> Vec<u8> {
    [b"run/".as_slice(), piece.0.as_bytes()].concat()
}

fn name_of_shown(piece: PieceId) -> Vec<u8> {
    [b"ahead/".as_slice(), piece.0.as_bytes()].concat()
}
