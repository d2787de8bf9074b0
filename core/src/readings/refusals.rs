//! Why one row or one cell of a file was not taken, in a sentence that says what to do.

use super::told::Told;
use crate::words::{Words, key};
use serde::{Deserialize, Serialize};

/// The coldest temperature taken, millikelvin: −60 °C. No freezer or winter a cook stands in is colder. Common practice,
/// no source.
pub const COLDEST_MK: i64 = 213_150;
/// The hottest temperature taken, millikelvin: 800 °C, a bed of coals. Common practice, no source.
pub const HOTTEST_MK: i64 = 1_073_150;

/// What is wrong with a row or a cell.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Fault {
    /// The row has fewer columns than the plan reads.
    FewColumns,
    /// A quote is opened and the file ends before it closes.
    OpenQuote,
    /// The time cell is empty.
    NoTime,
    /// The time cell holds something else than the plan's time format.
    NotATime,
    /// The calendar or the clock has no such time.
    NoSuchTime,
    /// Before 2000 or after 2100.
    Year,
    /// Later than the plan's latest.
    Future,
    /// The temperature cell holds no number.
    NotANumber,
    /// No pit and no food has such a temperature.
    Absurd,
}

/// One thing that was not taken.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Refused {
    /// Line of the file that the row begins on, from 1.
    pub line: u64,
    /// The sensor whose cell it was; none when the whole row was refused.
    pub sensor: Option<String>,
    /// What the cell holds, with its unit, cut to [`CELL_CHARS_MAX`] characters.
    pub cell: String,
    /// Why.
    pub fault: Fault,
}

/// How much of a cell is repeated in a message, characters.
pub const CELL_CHARS_MAX: usize = 40;

impl Refused {
    /// Copies what a person needs to find the place.
    pub fn new(line: u64, sensor: Option<&str>, cell: &[u8], fault: Fault) -> Self {
        let text = String::from_utf8_lossy(&cell[..cell.len().min(4 * CELL_CHARS_MAX)]);
        let cell = text
            .trim()
            .chars()
            .filter(|c| !c.is_control())
            .take(CELL_CHARS_MAX)
            .collect();
        Self {
            line,
            sensor: sensor.map(str::to_string),
            cell,
            fault,
        }
    }
}

impl Told for Refused {
    fn key(&self) -> &'static str {
        match self.fault {
            Fault::FewColumns => key("readings-few-columns"),
            Fault::OpenQuote => key("readings-open-quote"),
            Fault::NoTime => key("readings-no-time"),
            Fault::NotATime => key("readings-not-a-time"),
            Fault::NoSuchTime => key("readings-no-such-time"),
            Fault::Year => key("readings-year"),
            Fault::Future => key("readings-future"),
            Fault::NotANumber => key("readings-not-a-number"),
            Fault::Absurd => key("readings-absurd"),
        }
    }

    fn args(&self, _: &Words<'_>) -> Vec<(&'static str, String)> {
        let sensor = self.sensor.clone().unwrap_or_default();
        vec![
            ("line", self.line.to_string()),
            ("cell", self.cell.clone()),
            ("sensor", sensor),
        ]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cell_is_cut_and_cleaned_for_the_message() {
        let long = "x\u{7}é".repeat(100);
        let refused = Refused::new(7, None, long.as_bytes(), Fault::NotATime);
        assert_eq!(refused.cell.chars().count(), CELL_CHARS_MAX);
        assert!(!refused.cell.contains('\u{7}'));
        assert!(refused.reason().starts_with("Line 7: “xéxé"));
    }
}
