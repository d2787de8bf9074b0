//! What a file leaves open, and what the person answered. A question names the answer that settles it; guessing again
//! with that answer gives the plan or the next question.

use super::{
    numbers::Unit,
    times::{ElapsedUnit, TimeFormat},
    told::Told,
};
use crate::words::{Words, key};
use serde::{Deserialize, Serialize};

/// What is known beside the file. Whatever is given here is not guessed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Answers {
    /// The source of the series: the instrument or the file.
    pub source: String,
    /// IANA zone that the instrument's clock stood in.
    pub zone: String,
    /// Later readings are refused, ms UTC.
    pub latest: Option<i64>,
    /// The column of times, from 0.
    pub time_column: Option<u32>,
    /// The columns of temperatures, from 0; empty when not answered.
    pub temp_columns: Vec<u32>,
    /// The unit of columns that do not say theirs.
    pub unit: Option<Unit>,
    /// True when the day stands before the month.
    pub day_first: Option<bool>,
    /// When the times since the start began, ms UTC.
    pub start: Option<i64>,
    /// What plain numbers since the start count.
    pub elapsed: Option<ElapsedUnit>,
    /// The time format, when the person chose it outright.
    pub time_format: Option<TimeFormat>,
}

/// A column to choose from.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Choice {
    /// From 0.
    pub column: u32,
    /// Its header, or what its first cell holds.
    pub shows: String,
}

/// What only the person can say.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Question {
    /// Answered by [`Answers::time_column`].
    WhichTime {
        /// The columns there are.
        columns: Vec<Choice>,
    },
    /// Answered by [`Answers::temp_columns`].
    WhichTemperatures {
        /// The columns of numbers.
        columns: Vec<Choice>,
    },
    /// Answered by [`Answers::unit`].
    WhichUnit {
        /// The column, by its header.
        column: String,
        /// A number from it.
        example: String,
    },
    /// Answered by [`Answers::day_first`].
    DayOrMonthFirst {
        /// A date from the file.
        example: String,
    },
    /// Answered by [`Answers::start`].
    WhenStarted {
        /// The first time in the file.
        example: String,
    },
    /// Answered by [`Answers::elapsed`].
    SecondsOrMinutes {
        /// A number from the file.
        example: String,
    },
}

impl Told for Question {
    fn key(&self) -> &'static str {
        match self {
            Self::WhichTime { .. } => key("readings-ask-time"),
            Self::WhichTemperatures { .. } => key("readings-ask-temperatures"),
            Self::WhichUnit { .. } => key("readings-ask-unit"),
            Self::DayOrMonthFirst { .. } => key("readings-ask-day-first"),
            Self::WhenStarted { .. } => key("readings-ask-start"),
            Self::SecondsOrMinutes { .. } => key("readings-ask-seconds"),
        }
    }

    fn args(&self, _: &Words<'_>) -> Vec<(&'static str, String)> {
        match self {
            Self::WhichTime { columns } | Self::WhichTemperatures { columns } => {
                vec![("columns", listed(columns))]
            }
            Self::WhichUnit { column, example } => {
                vec![("column", column.clone()), ("example", example.clone())]
            }
            Self::DayOrMonthFirst { example }
            | Self::WhenStarted { example }
            | Self::SecondsOrMinutes { example } => {
                vec![("example", example.clone())]
            }
        }
    }
}

fn listed(columns: &[Choice]) -> String {
    let each = columns
        .iter()
        .map(|choice| format!("{} “{}”", choice.column + 1, choice.shows));
    each.collect::<Vec<_>>().join(", ")
}
