//! How to read one file: which columns, in what units, times and zone. Made by [`guess`](mod@super::guess) or by the caller.

use super::{file_faults::FileFault, numbers::Unit, series::SeriesId, times::TimeFormat};
use chrono_tz::Tz;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// What stands between cells.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Delimiter {
    /// `,`: numbers have a decimal point.
    Comma,
    /// `;`: numbers have a decimal comma or point.
    Semicolon,
    /// Tab: numbers have a decimal comma or point.
    Tab,
}

impl Delimiter {
    /// Its byte.
    pub const fn byte(self) -> u8 {
        match self {
            Self::Comma => b',',
            Self::Semicolon => b';',
            Self::Tab => b'\t',
        }
    }

    /// True when numbers may have a decimal comma.
    pub const fn decimal_comma(self) -> bool {
        !matches!(self, Self::Comma)
    }
}

/// A column of temperatures.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct TempColumn {
    /// From 0.
    pub column: u32,
    /// The sensor's name in the series.
    pub sensor: String,
    /// The unit, where a cell does not carry its own.
    pub unit: Unit,
}

/// How to read one file.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct ImportPlan {
    /// The source of the series: the instrument or the file.
    pub source: String,
    /// What stands between cells.
    pub delimiter: Delimiter,
    /// Rows before the first reading: the header and what stands above it.
    pub skip_rows: u32,
    /// A column of dates, when dates and clock times stand apart. From 0.
    pub date_column: Option<u32>,
    /// The column of times, from 0.
    pub time_column: u32,
    /// How they are written.
    pub time_format: TimeFormat,
    /// IANA zone of times without an offset, such as `America/Chicago`.
    pub zone: String,
    /// The temperatures; at least one.
    pub temp_columns: Vec<TempColumn>,
    /// Later readings are refused as still to come, ms UTC. As a rule: now and a day.
    pub latest: Option<i64>,
}

/// Columns beyond this are a file gone wrong.
pub const COLUMNS_MAX: usize = 1_024;

impl ImportPlan {
    /// The zone, if there is one of that name.
    pub fn tz(&self) -> Result<Tz, FileFault> {
        self.zone.parse().map_err(|_| FileFault::UnknownZone {
            zone: self.zone.clone(),
        })
    }

    /// The series of each temperature column, in order; refused when the plan cannot be followed.
    pub fn series(&self) -> Result<Vec<SeriesId>, FileFault> {
        self.check_columns()?;
        let mut names: Vec<SeriesId> = Vec::new();
        for temp in &self.temp_columns {
            let name = SeriesId::new(&self.source, &temp.sensor).map_err(FileFault::BadName)?;
            if names.contains(&name) {
                return Err(FileFault::NamesAlike {
                    name: temp.sensor.clone(),
                });
            }
            names.push(name);
        }
        Ok(names)
    }

    fn check_columns(&self) -> Result<(), FileFault> {
        let mut seen: BTreeSet<u32> = self.date_column.into_iter().collect();
        let temps = self.temp_columns.iter().map(|temp| temp.column);
        let twice = [self.time_column]
            .into_iter()
            .chain(temps)
            .find(|column| !seen.insert(*column));
        match (twice, self.temp_columns.is_empty(), seen.last()) {
            (Some(column), ..) => Err(FileFault::ColumnTwice { column }),
            (_, true, _) => Err(FileFault::NoTemperature),
            (.., Some(&column)) if column as usize >= COLUMNS_MAX => {
                Err(FileFault::ColumnFar { column })
            }
            _ => Ok(()),
        }
    }
}
