//! From the first 64 kB of a file to a plan for it, or to the one question that is in the way: start at [`guess`].

use super::{
    columns::Kind,
    file_faults::FileFault,
    guess_time::{self, TimeAt},
    numbers::{self, Cell, Unit},
    plan::{ImportPlan, TempColumn},
    questions::{Answers, Question},
    sample::Sample,
};

/// What the head of a file gives.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Guess {
    /// How to read it.
    Plan(ImportPlan),
    /// What to ask first; guess again with the answer.
    Ask(Question),
}

/// Why a guess stopped short of a plan.
pub(super) enum Halt {
    Ask(Question),
    Fault(FileFault),
}

impl From<FileFault> for Halt {
    fn from(fault: FileFault) -> Self {
        Self::Fault(fault)
    }
}

/// Looks at the first 64 kB of a file (give less only when the file is shorter) and at what is known beside it.
pub fn guess(head: &[u8], answers: &Answers) -> Result<Guess, FileFault> {
    match plan(head, answers) {
        Ok(plan) => Ok(Guess::Plan(plan)),
        Err(Halt::Ask(question)) => Ok(Guess::Ask(question)),
        Err(Halt::Fault(fault)) => Err(fault),
    }
}

fn plan(head: &[u8], answers: &Answers) -> Result<ImportPlan, Halt> {
    let sample = Sample::of(head)?;
    if !sample
        .columns()
        .any(|column| !sample.cells(column).is_empty())
    {
        return Err(FileFault::NoReadings.into());
    }
    let time = guess_time::find(&sample, answers)?;
    let plan = ImportPlan {
        source: answers.source.clone(),
        delimiter: sample.delimiter,
        skip_rows: sample.skip_rows,
        date_column: time.date_column,
        time_column: time.time_column,
        time_format: time.format,
        zone: answers.zone.clone(),
        temp_columns: temperatures(&sample, answers, time)?,
        latest: answers.latest,
    };
    plan.tz()?;
    plan.series()?;
    Ok(plan)
}

fn temperatures(sample: &Sample, answers: &Answers, time: TimeAt) -> Result<Vec<TempColumn>, Halt> {
    let free = |column: &u32| *column != time.time_column && Some(*column) != time.date_column;
    let chosen = match answers.temp_columns.is_empty() {
        true => sample
            .columns()
            .filter(free)
            .filter(|column| is_temperature(sample, *column))
            .collect(),
        false => answers.temp_columns.clone(),
    };
    if chosen.is_empty() {
        return Err(no_temperature(sample, sample.columns().filter(free)));
    }
    let mut columns: Vec<TempColumn> = Vec::new();
    for column in chosen {
        let sensor = unused_name(sample, column, &columns);
        columns.push(TempColumn {
            column,
            sensor,
            unit: unit(sample, answers, column)?,
        });
    }
    Ok(columns)
}

/// Called a temperature by its header, or by its own cells.
fn is_temperature(sample: &Sample, column: u32) -> bool {
    let cells_say = || own_unit(sample, column).is_some();
    match sample.kind(column) {
        Kind::Temperature => sample.cells(column).is_empty() || sample.is_numeric(column),
        Kind::Unknown => sample.is_numeric(column) && cells_say(),
        _ => false,
    }
}

fn no_temperature(sample: &Sample, free: impl Iterator<Item = u32>) -> Halt {
    let numeric = free
        .filter(|column| sample.is_numeric(*column))
        .map(|column| sample.choice(column));
    match numeric.collect::<Vec<_>>() {
        columns if columns.is_empty() => FileFault::NoReadings.into(),
        columns => Halt::Ask(Question::WhichTemperatures { columns }),
    }
}

fn unit(sample: &Sample, answers: &Answers, column: u32) -> Result<Unit, Halt> {
    let header = sample
        .headers
        .get(column as usize)
        .and_then(|header| header.unit);
    let ask = || {
        let example = sample
            .cells(column)
            .first()
            .map_or(String::new(), |cell| cell.chars().take(40).collect());
        Halt::Ask(Question::WhichUnit {
            column: sample.choice(column).shows,
            example,
        })
    };
    header
        .or_else(|| own_unit(sample, column))
        .or(answers.unit)
        .ok_or_else(ask)
}

/// The unit that the first number of a column carries.
fn own_unit(sample: &Sample, column: u32) -> Option<Unit> {
    let read = |cell: &&str| match numbers::degrees(cell.as_bytes(), sample.comma()) {
        Cell::Degrees(_, unit) => Some(unit),
        _ => None,
    };
    sample.cells(column).iter().find_map(read).flatten()
}

/// The header's name, else the column's number; numbered when another column has it.
fn unused_name(sample: &Sample, column: u32, taken: &[TempColumn]) -> String {
    let header = sample
        .headers
        .get(column as usize)
        .map_or("", |header| header.name.as_str());
    let name = if header.is_empty() {
        format!("{}", u64::from(column) + 1)
    } else {
        header.to_string()
    };
    let is_taken = |name: &str| taken.iter().any(|other| other.sensor == name);
    let numbered = (2u64..).map(|n| format!("{name} {n}"));
    std::iter::once(name.clone())
        .chain(numbered)
        .find(|name| !is_taken(name))
        .unwrap_or(name)
}

#[cfg(test)]
#[path = "guess_tests.rs"]
mod tests;
