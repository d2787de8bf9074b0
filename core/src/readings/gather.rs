//! One column of temperatures: reads its cells, counts what it does not take, and gathers the rest into chunks.

use super::{
    chunk::{CHUNK_READINGS, Encoded},
    csv::Row,
    import::{Sink, Stopped},
    numbers::{self, Cell, Unit},
    plan::TempColumn,
    refusals::{COLDEST_MK, Fault, HOTTEST_MK},
    report::{Jump, Report},
    series::{Reading, SeriesId},
};
use crate::{moment::SECOND, units::Mk};

/// Neighbors closer than this may jump, ms. Common practice, no source.
pub const JUMP_WITHIN: i64 = 30 * SECOND;
/// A step of more than this between close neighbors is a jump, millikelvin. Common practice, no source.
pub const JUMP_OVER_MK: i64 = 60_000;

/// A column of temperatures on its way into chunks.
pub struct Column {
    series: SeriesId,
    column: u32,
    unit: Unit,
    gathered: Vec<Reading>,
    before: Option<Reading>,
}

impl Column {
    /// Nothing gathered yet.
    pub fn new(series: SeriesId, temp: &TempColumn) -> Self {
        let gathered = Vec::with_capacity(CHUNK_READINGS);
        Self {
            series,
            column: temp.column,
            unit: temp.unit,
            gathered,
            before: None,
        }
    }

    /// True when a chunk is ready.
    #[inline]
    pub fn is_full(&self) -> bool {
        self.gathered.len() == CHUNK_READINGS
    }

    /// The temperature in its cell, if there is one; else it is counted why not.
    #[inline]
    pub fn temp(&self, row: Row<'_>, comma: bool, report: &mut Report) -> Option<Mk> {
        let Some(cell) = row.cell(self.column) else {
            report.refuse(row.line, Some(self.series.sensor()), &[], Fault::FewColumns);
            return None;
        };
        match numbers::degrees(cell, comma) {
            Cell::Blank => report.blank += 1,
            Cell::Other => report.refuse(
                row.line,
                Some(self.series.sensor()),
                cell,
                Fault::NotANumber,
            ),
            Cell::Degrees(micro, own) => {
                let temp = own.unwrap_or(self.unit).mk(micro);
                if (COLDEST_MK..=HOTTEST_MK).contains(&temp.0) {
                    return Some(temp);
                }
                self.absurd(row.line, cell, own, report);
            }
        }
        None
    }

    #[cold]
    fn absurd(&self, line: u64, cell: &[u8], own: Option<Unit>, report: &mut Report) {
        let unit = if own.is_some() { "" } else { self.unit.sign() };
        let said = [cell.trim_ascii(), b" ", unit.as_bytes()].concat();
        report.refuse(line, Some(self.series.sensor()), &said, Fault::Absurd);
    }

    /// Gathers a reading, and counts it when it jumps or runs against time.
    #[inline]
    pub fn keep(&mut self, reading: Reading, line: u64, report: &mut Report) {
        if let Some(before) = self.before {
            report.out_of_order += u64::from(reading.at < before.at);
            let near = (reading.at - before.at).abs() < JUMP_WITHIN;
            if near && (reading.temp.0 - before.temp.0).abs() > JUMP_OVER_MK {
                report.jump(Jump {
                    line,
                    sensor: self.series.sensor().into(),
                    before,
                    reading,
                });
            }
        }
        self.before = Some(reading);
        self.gathered.push(reading);
    }

    /// Hands what is gathered to the sink.
    pub fn flush<S: Sink>(
        &mut self,
        report: &mut Report,
        sink: &mut S,
    ) -> Result<(), Stopped<S::Error>> {
        let Some(chunk) = Encoded::of(&self.gathered) else {
            return Ok(());
        };
        report.taken += chunk.count;
        report.doubled += self.gathered.len() as u64 - chunk.count;
        report.span(chunk.from, chunk.to);
        self.gathered.clear();
        sink.chunk(&self.series, chunk).map_err(Stopped::Sink)
    }
}
