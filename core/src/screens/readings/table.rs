//! The same in numbers, for who does not see a curve.

use super::{Heard, ReadingsTable, Strand, TableRow, Wanted, lines::shifted};
use crate::{chart::Cell, screens::glance::Glance, words::Arg};

/// So many rows are on a page.
const PAGE: usize = 24;

impl Glance<'_> {
    /// One page of rows that hold something, latest first.
    pub(super) fn readings_table(
        &self,
        wanted: &Wanted,
        heard: &[Heard],
        before: Option<i64>,
    ) -> ReadingsTable {
        let filled = |row: &u32| heard.iter().any(|heard| heard.table.cell(*row).is_some());
        let earlier = |row: &u32| before.is_none_or(|before| wanted.rows.start_of(*row) < before);
        let mut rows = (0..wanted.rows.columns)
            .rev()
            .filter(earlier)
            .filter(filled);
        let page: Vec<u32> = rows.by_ref().take(PAGE).collect();
        let last = page.last().map(|row| wanted.rows.start_of(*row));
        let each = self.say.duration(wanted.rows.width);
        ReadingsTable {
            heading: self.say.with("chart-table", &[("each", Arg::Text(&each))]),
            when: self.say.text("chart-table-when"),
            columns: wanted
                .strands
                .iter()
                .map(|strand| self.series_name(wanted, strand))
                .collect(),
            rows: page
                .into_iter()
                .map(|row| self.table_row(wanted, heard, row))
                .collect(),
            next: last.filter(|_| rows.next().is_some()),
            earlier: self.say.text("chart-table-earlier"),
        }
    }

    fn table_row(&self, wanted: &Wanted, heard: &[Heard], row: u32) -> TableRow {
        let at = wanted.rows.start_of(row);
        let cells = wanted.strands.iter().zip(heard);
        TableRow {
            when: self.say.clock_day(at, self.now),
            at,
            cells: cells
                .map(|(strand, heard)| self.table_cell(strand, heard.table.cell(row)))
                .collect(),
        }
    }

    fn table_cell(&self, strand: &Strand, cell: Option<Cell>) -> String {
        let Some(cell) = cell else {
            return self.say.text("chart-table-none");
        };
        let [low, high] = [cell.coldest, cell.hottest].map(|reading| shifted(strand, reading.temp));
        match self.say.temperature(low) == self.say.temperature(high) {
            true => self.say.temperature(low),
            false => self.say.temperature_span(low, high),
        }
    }
}
