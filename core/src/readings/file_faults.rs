//! Why a whole file was not taken. When one of these comes back, nothing of the file counts.

use super::{report::Report, told::Told};
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
    /// A plan that cannot be followed.
    #[error("{}", self.reason())]
    BadPlan {
        /// Which part, in English.
        part: String,
    },
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
            Self::Empty => "readings-file-empty",
            Self::NotText => "readings-file-not-text",
            Self::NeverEnds { .. } => "readings-file-never-ends",
            Self::Unreadable { .. } => "readings-file-unreadable",
            Self::NoReadings => "readings-file-no-readings",
            Self::UnknownZone { .. } => "readings-file-unknown-zone",
            Self::BadPlan { .. } => "readings-file-bad-plan",
            Self::NothingTaken { .. } => "readings-file-nothing-taken",
        }
    }

    fn args(&self) -> Vec<(&'static str, String)> {
        match self {
            Self::Empty | Self::NotText | Self::NoReadings => vec![],
            Self::NeverEnds { line } => vec![("line", line.to_string())],
            Self::Unreadable { said } => vec![("said", said.clone())],
            Self::UnknownZone { zone } => vec![("zone", zone.clone())],
            Self::BadPlan { part } => vec![("part", part.clone())],
            Self::NothingTaken { report } => vec![
                ("rows", report.rows.to_string()),
                ("first", report.first_reason()),
            ],
        }
    }

    fn reason(&self) -> String {
        match self {
            Self::Empty => "This file has no rows. Save it again from the instrument and choose it anew.".into(),
            Self::NotText => {
                "This is no CSV file in plain text. Open it in a spreadsheet and save it as “CSV UTF-8”.".into()
            }
            Self::NeverEnds { line } => format!(
                "What begins on line {line} never ends; most likely a quote is opened and not closed. \
                 Close it and import the file again. Nothing was taken."
            ),
            Self::Unreadable { said } => {
                format!("The file could not be read to its end ({said}). Copy it again and retry. Nothing was taken.")
            }
            Self::NoReadings => "No row of this file has both a time and a temperature. \
                 Export it with a column for each, or tell which columns they are."
                .into(),
            Self::UnknownZone { zone } => {
                format!("“{zone}” is no time zone. Give one such as America/Chicago.")
            }
            Self::BadPlan { part } => format!("The columns cannot be read as told: {part}. Choose them again."),
            Self::NothingTaken { report } => {
                format!("None of the {} rows could be taken. {}", report.rows, report.first_reason())
            }
        }
    }
}
