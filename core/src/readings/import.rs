//! Reads a file by its plan, row after row, and hands encoded chunks to a sink: start at [`import`].
//!
//! The path of one row allocates nothing. Memory is one block of the file and one chunk a series, whatever the file's
//! length. Law: the result depends on the bytes alone, not on how they were cut into reads.

use super::{
    chunk::Encoded,
    csv::{Row, Rows},
    file_faults::FileFault,
    gather::Column,
    plan::ImportPlan,
    refusals::Fault,
    report::Report,
    series::{Reading, SeriesId},
    times,
    told::Told,
    zones::ZoneClock,
};
use crate::words::{Words, key};
use std::io::Read;

/// Where chunks go. A sink belongs in one transaction with the import: when that fails, what the sink got is void.
pub trait Sink {
    /// Why a chunk could not be kept.
    type Error;
    /// Keeps one chunk of a series. Chunks of one series may overlap in time.
    fn chunk(&mut self, series: &SeriesId, chunk: Encoded) -> Result<(), Self::Error>;
}

/// Why an import stopped. Nothing of the file counts.
#[derive(Debug, PartialEq, Eq, thiserror::Error)]
#[error("{}", self.reason())]
pub enum Stopped<E> {
    /// The file or the plan.
    File(#[from] FileFault),
    /// The sink.
    Sink(E),
}

impl<E> Told for Stopped<E> {
    fn key(&self) -> &'static str {
        match self {
            Self::File(fault) => fault.key(),
            Self::Sink(_) => key("readings-not-kept"),
        }
    }

    fn args(&self, say: &Words<'_>) -> Vec<(&'static str, String)> {
        match self {
            Self::File(fault) => fault.args(say),
            Self::Sink(_) => vec![],
        }
    }
}

/// Imports a file: every reading goes to the sink or is counted in the report with the reason.
pub fn import<R: Read, S: Sink>(
    reader: R,
    plan: &ImportPlan,
    sink: &mut S,
) -> Result<Report, Stopped<S::Error>> {
    let mut import = Import::new(plan)?;
    let mut rows = Rows::open(reader, plan.delimiter)?;
    for _ in 0..plan.skip_rows {
        rows.next_row()?;
    }
    while let Some(row) = rows.next_row()? {
        import.row(row, sink)?;
    }
    import.end(sink)
}

struct Import<'a> {
    plan: &'a ImportPlan,
    comma: bool,
    clock: ZoneClock,
    columns: Vec<Column>,
    date_and_time: Vec<u8>,
    report: Report,
}

impl<'a> Import<'a> {
    fn new(plan: &'a ImportPlan) -> Result<Self, FileFault> {
        let series = plan.series()?.into_iter().zip(&plan.temp_columns);
        let columns = series.map(|(series, temp)| Column::new(series, temp));
        Ok(Self {
            plan,
            comma: plan.delimiter.decimal_comma(),
            clock: ZoneClock::new(plan.tz()?),
            columns: columns.collect(),
            date_and_time: Vec::new(),
            report: Report::default(),
        })
    }

    #[inline]
    fn row<S: Sink>(&mut self, row: Row<'_>, sink: &mut S) -> Result<(), Stopped<S::Error>> {
        self.report.rows += 1;
        let at = match self.instant(row) {
            Ok(at) => at,
            Err((fault, cell)) => {
                let cell = cell.unwrap_or(&self.date_and_time);
                self.report.refuse(row.line, None, cell, fault);
                return Ok(());
            }
        };
        for column in &mut self.columns {
            let Some(temp) = column.temp(row, self.comma, &mut self.report) else {
                continue;
            };
            column.keep(Reading { at, temp }, row.line, &mut self.report);
            if column.is_full() {
                column.flush(&mut self.report, sink)?;
            }
        }
        Ok(())
    }

    /// When the row was; else what is wrong and with which cell (none: date and time together).
    #[inline]
    fn instant<'r>(&mut self, row: Row<'r>) -> Result<i64, (Fault, Option<&'r [u8]>)> {
        if row.open_quote {
            return Err((Fault::OpenQuote, Some(&[])));
        }
        let time = row
            .cell(self.plan.time_column)
            .ok_or((Fault::FewColumns, Some(&[][..])))?;
        let Some(date) = self.plan.date_column else {
            return self.read_time(time).map_err(|fault| (fault, Some(time)));
        };
        let date = row.cell(date).ok_or((Fault::FewColumns, Some(&[][..])))?;
        let mut both = std::mem::take(&mut self.date_and_time);
        both.clear();
        both.extend_from_slice(date.trim_ascii());
        both.push(b' ');
        both.extend_from_slice(time.trim_ascii());
        let at = self.read_time(&both).map_err(|fault| (fault, None));
        self.date_and_time = both;
        at
    }

    #[inline]
    fn read_time(&mut self, cell: &[u8]) -> Result<i64, Fault> {
        let at = self
            .clock
            .instant(times::read(self.plan.time_format, cell, self.comma)?);
        match self.plan.latest {
            Some(latest) if at > latest => Err(Fault::Future),
            _ => Ok(at),
        }
    }

    fn end<S: Sink>(mut self, sink: &mut S) -> Result<Report, Stopped<S::Error>> {
        for column in &mut self.columns {
            column.flush(&mut self.report, sink)?;
        }
        match self.report.taken {
            0 if self.report.rows == 0 => Err(FileFault::NoReadings.into()),
            0 => Err(FileFault::NothingTaken {
                report: Box::new(self.report),
            }
            .into()),
            _ => Ok(self.report),
        }
    }
}

#[cfg(test)]
#[path = "import_tests.rs"]
mod tests;
