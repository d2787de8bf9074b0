//! Taking a file of readings from another instrument: all of it or, where it is no such file, nothing.
//!
//! Two steps: [`Gathered::read`] reads the file, however long that takes, and needs no door; [`Slowbend::take_gathered`]
//! keeps it, in one transaction. Whoever stops between the two has kept nothing.

use super::{
    Slowbend,
    readings::{announce, chunk_row},
};
use crate::{
    error::{Refused, Trouble},
    ids::CookId,
    log::{Draft, Stamp},
    moment::Moment,
    readings::{
        Encoded, ImportPlan, Report, SeriesId, Sink, Stopped, chunk, file_faults::FileFault,
        import, tails::TAIL_MS, told::Told,
    },
    store::{ChunkRow, Chunks},
};
use std::{collections::BTreeMap, io::Read};

/// A file that was read to its end: some 4 bytes a reading, and what is to be told of it.
#[derive(Debug)]
pub struct Gathered {
    chunks: Vec<ChunkRow>,
    report: Report,
}

/// Gathers chunks until the whole file was read.
#[derive(Default)]
struct Chunked(Vec<ChunkRow>);

impl Sink for Chunked {
    type Error = std::convert::Infallible;
    fn chunk(&mut self, series: &SeriesId, chunk: Encoded) -> Result<(), Self::Error> {
        self.0
            .push(chunk_row(series.source(), series.sensor(), chunk));
        Ok(())
    }
}

impl Gathered {
    /// Reads `file` by `plan`.
    ///
    /// # Errors
    /// What is wrong with the file or the plan, or that it could not be read.
    pub fn read(file: impl Read, plan: &ImportPlan) -> Result<Self, FileFault> {
        let mut chunks = Chunked::default();
        let report = import(file, plan, &mut chunks).map_err(|stopped| match stopped {
            Stopped::File(fault) => fault,
            Stopped::Sink(never) => match never {},
        })?;
        Ok(Self {
            chunks: chunks.0,
            report,
        })
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
        let gathered = Gathered::read(file, plan);
        let gathered = gathered.map_err(|fault| Refused::new(fault.reason()))?;
        self.take_gathered(gathered, cook, moment)
    }

    /// Keeps a file that was read, in `cook`: all of it in one transaction.
    ///
    /// # Errors
    /// The disk's trouble; then nothing was taken.
    pub fn take_gathered(
        &mut self,
        gathered: Gathered,
        cook: Option<CookId>,
        moment: &Moment,
    ) -> Result<Report, Trouble> {
        self.store()?;
        let Gathered {
            chunks: rows,
            report,
        } = gathered;
        let drafts: Vec<Draft> = rows.iter().map(|row| announce(cook, row, moment)).collect();
        let next = |last: &Stamp| Some(last.tick(moment.utc_ms));
        let stamps: Vec<Stamp> = std::iter::successors(next(&self.stamp), next)
            .take(drafts.len())
            .collect();
        let chunks = Chunks {
            rows: &rows,
            instead_of: &[],
        };
        self.write(&drafts, &stamps, None, chunks)?;
        self.take_ends(&rows);
        Ok(report)
    }

    /// The last hours of each series into the tails; what lies before them would be let go again.
    fn take_ends(&mut self, rows: &[ChunkRow]) {
        let mut newest: BTreeMap<(&str, &str), i64> = BTreeMap::new();
        for row in rows {
            let last = newest.entry((&row.source, &row.sensor)).or_insert(row.last);
            *last = row.last.max(*last);
        }
        for row in rows {
            let from = newest[&(row.source.as_str(), row.sensor.as_str())].saturating_sub(TAIL_MS);
            if row.last < from {
                continue;
            }
            let readings = chunk::decode(&row.bytes).unwrap_or_default();
            for reading in readings.into_iter().filter(|reading| reading.at >= from) {
                self.tails
                    .take(&row.source, &row.sensor, reading.at, reading.temp);
            }
        }
    }
}
