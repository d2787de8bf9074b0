//! Why a whole file was not taken. When one of these comes back, nothing of the file counts.

use super::{report::Report, series::BadSeriesName, told::Told};
use crate::words::{Words, key};
use serde::{Deserialize, Serialize};

/// What is wrong with a file or with the plan for it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, thiserror::Error)]
#[serde(rename_all = "snake_case")]
pub enum FileFault {
    /// No row at all.
    #[error("{}", self.reason())]
    Empty,
    /// A spreadsheet, a picture, text in two-byte characters.
    #[error("{}", self.reason())]
    NotText,
    /// Something longer than a row can be: as a rule a quote that is opened and never closed.
    #[error("{}", self.reason())]
    NeverEnds {
        /// Where it begins, from 1.
        line: u64,
    },
    /// The file could not be read to its end.
    #[error("{}", self.reason())]
    Unreadable {
        /// What the platform said.
        said: String,
    },
    /// No row with a time and a temperature in its first part.
    #[error("{}", self.reason())]
    NoReadings,
    /// A zone that the tz database does not have.
    #[error("{}", self.reason())]
    UnknownZone {
        /// As given.
        zone: String,
    },
    /// A plan that reads one column as two things.
    #[error("{}", self.reason())]
    ColumnTwice {
        /// From 0.
        column: u32,
    },
    /// A plan for a column that no file has.
    #[error("{}", self.reason())]
    ColumnFar {
        /// From 0.
        column: u32,
    },
    /// A plan without a temperature.
    #[error("{}", self.reason())]
    NoTemperature,
    /// A plan with two sensors of one name.
    #[error("{}", self.reason())]
    NamesAlike {
        /// The name.
        name: String,
    },
    /// A plan whose source or sensor has no usable name.
    #[error("{}", self.reason())]
    BadName(BadSeriesName),
    /// Every row was refused or empty.
    #[error("{}", self.reason())]
    NothingTaken {
        /// What was refused and why.
        report: Box<Report>,
    },
}

impl Told for FileFault {
    fn key(&self) -> &'static str {
        match self {
            Self::Empty => key("readings-file-empty"),
            Self::NotText => key("readings-file-not-text"),
            Self::NeverEnds { .. } => key("readings-file-never-ends"),
            Self::Unreadable { .. } => key("readings-file-unreadable"),
            Self::NoReadings => key("readings-file-no-readings"),
            Self::UnknownZone { .. } => key("readings-file-unknown-zone"),
            Self::NothingTaken { .. } => key("readings-file-nothing-taken"),
            Self::ColumnTwice { .. } => key("readings-column-twice"),
            Self::ColumnFar { .. } => key("readings-column-far"),
            Self::NoTemperature => key("readings-column-none"),
            Self::NamesAlike { .. } => key("readings-names-alike"),
            Self::BadName(bad) => bad.key(),
        }
    }

    fn args(&self, say: &Words<'_>) -> Vec<(&'static str, String)> {
        match self {
            Self::Empty | Self::NotText | Self::NoReadings | Self::NoTemperature => vec![],
            Self::NeverEnds { line } => vec![("line", line.to_string())],
            Self::Unreadable { said } => vec![("said", said.clone())],
            Self::UnknownZone { zone } => vec![("zone", zone.clone())],
            Self::NothingTaken { report } => vec![("first", report.first_said(say))],
            Self::ColumnTwice { column } | Self::ColumnFar { column } => {
                vec![("column", (u64::from(*column) + 1).to_string())]
            }
            Self::NamesAlike { name } => vec![("name", name.clone())],
            Self::BadName(bad) => bad.args(say),
        }
    }
}
