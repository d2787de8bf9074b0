//! Taking a file of readings from another instrument: all of it or, where it is no such file, nothing.

use super::{
    Slowbend,
    readings::{announce, chunk_row},
};
use crate::{
    error::{Refused, Trouble},
    ids::CookId,
    log::{Draft, Stamp},
    moment::Moment,
    readings::{Encoded, ImportPlan, Report, SeriesId, Sink, Stopped, chunk, import, told::Told},
    store::{ChunkRow, Chunks},
};
use std::io::Read;

/// Gathers chunks until the whole file was read: some 4 bytes a reading.
#[derive(Default)]
struct Gathered(Vec<ChunkRow>);

impl Sink for Gathered {
    type Error = std::convert::Infallible;
    fn chunk(&mut self, series: &SeriesId, chunk: Encoded) -> Result<(), Self::Error> {
        self.0
            .push(chunk_row(series.source(), series.sensor(), chunk));
        Ok(())
    }
}

impl Slowbend {
    /// Takes a file of readings into `cook`, by `plan`; in one transaction, after the whole file was read.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where the file or the plan is not one, or the disk's trouble; then nothing was taken.
    pub fn import_readings(
        &mut self,
        file: impl Read,
        plan: &ImportPlan,
        cook: Option<CookId>,
        moment: &Moment,
    ) -> Result<Report, Trouble> {
        self.store()?;
        let mut gathered = Gathered::default();
        let report = import(file, plan, &mut gathered).map_err(|stopped| match stopped {
            Stopped::File(fault) => Trouble::from(Refused::new(fault.reason())),
            Stopped::Sink(never) => match never {},
        })?;
        let drafts: Vec<Draft> = gathered
            .0
            .iter()
            .map(|row| announce(cook, row, moment))
            .collect();
        let next = |last: &Stamp| Some(last.tick(moment.utc_ms));
        let stamps: Vec<Stamp> = std::iter::successors(next(&self.stamp), next)
            .take(drafts.len())
            .collect();
        let chunks = Chunks {
            rows: &gathered.0,
            instead_of: &[],
        };
        self.write(&drafts, &stamps, None, chunks)?;
        for row in gathered.0.iter().rev().take(64) {
            for reading in chunk::decode(&row.bytes).unwrap_or_default() {
                self.tails
                    .take(&row.source, &row.sensor, reading.at, reading.temp);
            }
        }
        Ok(report)
    }
}
