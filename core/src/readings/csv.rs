//! Rows out of bytes, one at a time, in a fixed amount of memory: start at [`Rows::open`].
//!
//! Cells are split by `csv-core` (RFC 4180 quoting, LF, CRLF or CR). Blocks are filled to the brim before they are
//! parsed, so how a reader happens to cut its bytes can never show.

use super::{
    file_faults::FileFault,
    lines::Lines,
    plan::{COLUMNS_MAX, Delimiter},
};
use csv_core::{ReadRecordResult, Reader, ReaderBuilder};
use std::io::{ErrorKind, Read};

/// Bytes read at a time.
const BLOCK: usize = 64 * 1024;
/// Longest row, bytes.
const ROW_MAX: usize = 64 * 1024;

/// Most lines that the quoted text of one row spans; more is a quote that a later one closes by accident.
/// Common practice, no source.
const ROW_LINES_MAX: u64 = 50;

/// Rows of one file.
pub struct Rows<R> {
    reader: R,
    parser: Reader,
    block: Vec<u8>,
    from: usize,
    to: usize,
    row: Vec<u8>,
    ends: Vec<usize>,
    lines: Lines,
}

/// One row.
#[derive(Clone, Copy)]
pub struct Row<'a> {
    /// The line that it begins on, from 1.
    pub line: u64,
    /// True when the file ended inside a quote of it.
    pub open_quote: bool,
    cells: &'a [u8],
    ends: &'a [usize],
}

impl<'a> Row<'a> {
    /// How many cells it has.
    pub fn len(&self) -> usize {
        self.ends.len()
    }

    /// True when it has no cell.
    pub fn is_empty(&self) -> bool {
        self.ends.is_empty()
    }

    /// The cell in a column, from 0.
    #[inline]
    pub fn cell(&self, column: u32) -> Option<&'a [u8]> {
        let column = column as usize;
        let end = *self.ends.get(column)?;
        let start = if column == 0 {
            0
        } else {
            self.ends[column - 1]
        };
        Some(&self.cells[start..end])
    }
}

impl<R: Read> Rows<R> {
    /// Reads the first block, and refuses what is no text.
    pub fn open(reader: R, delimiter: Delimiter) -> Result<Self, FileFault> {
        let mut rows = Self {
            reader,
            parser: ReaderBuilder::new().delimiter(delimiter.byte()).build(),
            block: vec![0; BLOCK],
            from: 0,
            to: 0,
            row: vec![0; ROW_MAX],
            ends: vec![0; COLUMNS_MAX],
            lines: Lines::first(),
        };
        rows.fill()?;
        if rows.to == 0 {
            return Err(FileFault::Empty);
        }
        if is_binary(&rows.block[..rows.to]) {
            return Err(FileFault::NotText);
        }
        Ok(rows)
    }

    /// The next row that is not empty; none at the end.
    #[inline]
    pub fn next_row(&mut self) -> Result<Option<Row<'_>>, FileFault> {
        let (mut len, mut columns) = (0, 0);
        loop {
            let input = &self.block[self.from..self.to];
            let (result, read, written, ended) =
                self.parser
                    .read_record(input, &mut self.row[len..], &mut self.ends[columns..]);
            self.lines
                .pass(&input[..read], result == ReadRecordResult::Record);
            self.from += read;
            len += written;
            columns += ended;
            match result {
                ReadRecordResult::Record => break,
                ReadRecordResult::End => return Ok(None),
                ReadRecordResult::InputEmpty => self.fill()?,
                _ => {
                    return Err(FileFault::NeverEnds {
                        line: self.lines.begun,
                    });
                }
            }
        }
        let open_quote = self.to == 0 && self.lines.odd_quotes;
        let spans = self.lines.line - self.lines.begun;
        if spans > ROW_LINES_MAX || (open_quote && spans > 0) {
            return Err(FileFault::NeverEnds {
                line: self.lines.begun,
            });
        }
        Ok(Some(Row {
            line: self.lines.begun,
            open_quote,
            cells: &self.row[..len],
            ends: &self.ends[..columns],
        }))
    }

    /// Fills the block from its start until it is full or the reader is at its end.
    fn fill(&mut self) -> Result<(), FileFault> {
        (self.from, self.to) = (0, 0);
        while self.to < self.block.len() {
            match self.reader.read(&mut self.block[self.to..]) {
                Ok(0) => break,
                Ok(read) => self.to += read,
                Err(error) if error.kind() == ErrorKind::Interrupted => {}
                Err(error) => {
                    return Err(FileFault::Unreadable {
                        said: error.to_string(),
                    });
                }
            }
        }
        Ok(())
    }
}

/// Zeros near the start are no text: two-byte characters, spreadsheets, pictures. A zip is what spreadsheets come in.
fn is_binary(block: &[u8]) -> bool {
    let start = &block[..block.len().min(1_024)];
    start.contains(&0)
        || start.starts_with(b"PK\x03\x04")
        || start.starts_with(b"\xff\xfe")
        || start.starts_with(b"\xfe\xff")
}

#[cfg(test)]
#[path = "csv_tests.rs"]
pub(super) mod tests;
