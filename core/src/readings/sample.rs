//! The first rows of a file, told apart into what stands above, the header, and readings.

use super::{
    columns::{Header, Kind, header},
    csv::Rows,
    file_faults::FileFault,
    numbers::{self, Cell},
    plan::Delimiter,
    questions::Choice,
    times::{self, TimeFormat},
};

/// As much of a file as a guess looks at, bytes.
pub const HEAD: usize = 64 * 1024;
/// As many rows as it looks at.
const ROWS_MAX: usize = 400;
/// A header stands in the first rows or nowhere.
const HEADER_WITHIN: usize = 30;

/// The first rows of a file.
pub struct Sample {
    /// What stands between its cells.
    pub delimiter: Delimiter,
    /// Rows before the first reading.
    pub skip_rows: u32,
    /// The header of each column; unknown and nameless where there is none.
    pub headers: Vec<Header>,
    rows: Vec<Vec<String>>,
}

impl Sample {
    /// Splits the head of a file by whichever delimiter gives the most rows of one width.
    pub fn of(head: &[u8]) -> Result<Self, FileFault> {
        let mut best: Option<(usize, Delimiter, Vec<Vec<String>>)> = None;
        for delimiter in [Delimiter::Tab, Delimiter::Semicolon, Delimiter::Comma] {
            let rows = split(head, delimiter)?;
            let even = rows
                .iter()
                .filter(|row| row.len() == width(&rows) && row.len() > 1)
                .count();
            if best.as_ref().is_none_or(|(most, ..)| even > *most) {
                best = Some((even, delimiter, rows));
            }
        }
        match best {
            Some((even, delimiter, rows)) if even > 0 => Ok(Self::cut(delimiter, rows)),
            _ => Err(FileFault::NoReadings),
        }
    }

    fn cut(delimiter: Delimiter, mut rows: Vec<Vec<String>>) -> Self {
        let width = width(&rows);
        let figures = rows
            .iter()
            .position(|row| row.len() == width && is_figures(row, delimiter));
        let skip = named(&rows)
            .map(|header| header + 1)
            .or(figures)
            .unwrap_or(rows.len());
        let head = rows[..skip].last().map_or(&[][..], |row| &row[..]);
        let headers = (0..width)
            .map(|n| header(head.get(n).map_or("", |cell| cell.as_str())))
            .collect();
        rows.drain(..skip);
        Self {
            delimiter,
            skip_rows: skip as u32,
            headers,
            rows,
        }
    }

    /// The columns by number.
    pub fn columns(&self) -> impl Iterator<Item = u32> + use<> {
        0..self.headers.len() as u32
    }

    /// What a column holds, blanks left out.
    pub fn cells(&self, column: u32) -> Vec<&str> {
        let cells = self.rows.iter().filter_map(|row| row.get(column as usize));
        cells
            .map(|cell| cell.trim())
            .filter(|cell| !cell.is_empty())
            .collect()
    }

    /// What two columns hold, side by side.
    pub fn pairs(&self, first: u32, second: u32) -> Vec<String> {
        let both = self
            .rows
            .iter()
            .filter_map(|row| Some((row.get(first as usize)?, row.get(second as usize)?)));
        both.map(|(first, second)| format!("{} {}", first.trim(), second.trim()))
            .collect()
    }

    /// What the words of a column's header point to.
    pub fn kind(&self, column: u32) -> Kind {
        self.headers
            .get(column as usize)
            .map_or(Kind::Unknown, |header| header.kind)
    }

    /// True when at least half of what a column holds is temperatures.
    pub fn is_numeric(&self, column: u32) -> bool {
        let cells = self.cells(column);
        let read =
            |cell: &&&str| !matches!(numbers::degrees(cell.as_bytes(), self.comma()), Cell::Other);
        !cells.is_empty() && 2 * cells.iter().filter(read).count() >= cells.len()
    }

    /// True when numbers may have a decimal comma.
    pub fn comma(&self) -> bool {
        self.delimiter.decimal_comma()
    }

    /// A column as a person knows it: by its header, else by what it begins with.
    pub fn choice(&self, column: u32) -> Choice {
        let name = self
            .headers
            .get(column as usize)
            .map_or("", |header| &header.name);
        let first = self.cells(column).first().map_or("", |cell| *cell);
        let shows = if name.is_empty() { first } else { name };
        Choice {
            column,
            shows: shows.chars().take(40).collect(),
        }
    }
}

/// Rows of the head; its last line is left out when the file goes on.
fn split(head: &[u8], delimiter: Delimiter) -> Result<Vec<Vec<String>>, FileFault> {
    let goes_on = head.len() >= HEAD;
    let head = &head[..head.len().min(HEAD)];
    let whole = head
        .iter()
        .rposition(|byte| matches!(byte, b'\n' | b'\r'))
        .filter(|_| goes_on);
    let mut rows = Rows::open(&head[..whole.unwrap_or(head.len())], delimiter)?;
    let mut all = Vec::new();
    while all.len() < ROWS_MAX {
        match rows.next_row() {
            Ok(Some(row)) => all.push(
                (0..row.len() as u32)
                    .filter_map(|n| row.cell(n))
                    .map(|cell| String::from_utf8_lossy(cell).into_owned())
                    .collect(),
            ),
            Ok(None) => break,
            Err(FileFault::NeverEnds { .. }) if goes_on && !all.is_empty() => break,
            Err(fault) => return Err(fault),
        }
    }
    Ok(all)
}

/// The width that most rows have; of equals, the wider.
fn width(rows: &[Vec<String>]) -> usize {
    let mut widths = std::collections::BTreeMap::<usize, usize>::new();
    rows.iter()
        .for_each(|row| *widths.entry(row.len()).or_default() += 1);
    widths
        .into_iter()
        .max_by_key(|(width, rows)| (*rows, *width))
        .map_or(0, |(width, _)| width)
}

/// The row whose words name a time and something else that is known, above the figures.
fn named(rows: &[Vec<String>]) -> Option<usize> {
    rows.iter().take(HEADER_WITHIN).position(|row| {
        let kinds: Vec<Kind> = row.iter().map(|cell| header(cell).kind).collect();
        let timed = kinds
            .iter()
            .filter(|kind| matches!(kind, Kind::Time | Kind::Seconds | Kind::Minutes))
            .count();
        let known = kinds.iter().filter(|kind| **kind != Kind::Unknown).count();
        timed > 0 && known > 1 && !row.iter().any(|cell| is_time(cell, true))
    })
}

fn is_figures(row: &[String], delimiter: Delimiter) -> bool {
    let comma = delimiter.decimal_comma();
    let read = |cell: &&String| {
        !matches!(numbers::degrees(cell.as_bytes(), comma), Cell::Other) || is_time(cell, comma)
    };
    let filled = row.iter().any(|cell| !cell.trim().is_empty());
    filled && 2 * row.iter().filter(read).count() >= row.len()
}

fn is_time(cell: &str, comma: bool) -> bool {
    let formats = [
        TimeFormat::Iso,
        TimeFormat::MonthFirst,
        TimeFormat::DayFirst,
    ];
    formats
        .iter()
        .any(|format| times::read(*format, cell.as_bytes(), comma).is_ok())
}
