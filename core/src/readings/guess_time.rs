//! Which column is the time and how it is written. What the file leaves open is asked, never guessed: above all whether
//! the day or the month comes first.

use super::{
    columns::Kind,
    guess::Halt,
    questions::{Answers, Question},
    sample::Sample,
    time_shape::{Shape, day_first, shape},
    times::{ElapsedUnit, TimeFormat},
};

/// Where the time is and how it is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TimeAt {
    /// A column of dates apart from it.
    pub date_column: Option<u32>,
    /// The column of times.
    pub time_column: u32,
    /// How.
    pub format: TimeFormat,
}

/// Finds the time of a file.
pub fn find(sample: &Sample, answers: &Answers) -> Result<TimeAt, Halt> {
    let column = match answers.time_column {
        Some(column) => column,
        None => return search(sample, answers),
    };
    let cells = sample.cells(column);
    match (shape(&cells, sample.comma()), date_beside(sample, column)) {
        (None | Some(Shape::Clock), Some(date)) => with_date(sample, answers, date, column),
        (shape, _) => alone(sample, answers, column, shape),
    }
}

fn search(sample: &Sample, answers: &Answers) -> Result<TimeAt, Halt> {
    let shapes: Vec<(u32, Shape)> = sample
        .columns()
        .filter_map(|n| Some((n, shape(&sample.cells(n), sample.comma())?)))
        .collect();
    let of = |wanted: &[Shape]| {
        shapes
            .iter()
            .filter(|(_, shape)| wanted.contains(shape))
            .copied()
            .collect::<Vec<_>>()
    };
    let dated = of(&[Shape::YearFirst, Shape::YearLast]);
    let epoch = of(&[Shape::EpochSeconds, Shape::EpochMillis]);
    let mut counted = of(&[Shape::Clock, Shape::Number]);
    counted.retain(|(column, shape)| *shape == Shape::Clock || is_timed(sample.kind(*column)));
    let pair = sample
        .columns()
        .find_map(|time| Some((date_beside(sample, time)?, time)));
    match pair {
        Some((date, time)) if dated.is_empty() => return with_date(sample, answers, date, time),
        _ => {}
    }
    let found = [dated, epoch, counted]
        .into_iter()
        .find(|columns| !columns.is_empty())
        .unwrap_or_default();
    let (column, shape) = only_one(sample, &found)?;
    alone(sample, answers, column, Some(shape))
}

/// The one column, or the one of them that its header calls a time; else it is asked.
fn only_one(sample: &Sample, found: &[(u32, Shape)]) -> Result<(u32, Shape), Halt> {
    let named: Vec<_> = found
        .iter()
        .filter(|(column, _)| is_timed(sample.kind(*column)))
        .collect();
    match (found, &named[..]) {
        ([one], _) => Ok(*one),
        (_, [one]) => Ok(**one),
        _ => Err(Halt::Ask(Question::WhichTime {
            columns: sample.columns().map(|n| sample.choice(n)).collect(),
        })),
    }
}

const fn is_timed(kind: Kind) -> bool {
    matches!(kind, Kind::Time | Kind::Seconds | Kind::Minutes)
}

fn alone(
    sample: &Sample,
    answers: &Answers,
    column: u32,
    shape: Option<Shape>,
) -> Result<TimeAt, Halt> {
    let cells = sample.cells(column);
    let format = format(sample, answers, &cells, sample.kind(column), shape)?;
    Ok(TimeAt {
        date_column: None,
        time_column: column,
        format,
    })
}

fn with_date(sample: &Sample, answers: &Answers, date: u32, time: u32) -> Result<TimeAt, Halt> {
    let pairs = sample.pairs(date, time);
    let cells: Vec<&str> = pairs.iter().map(String::as_str).collect();
    let format = format(
        sample,
        answers,
        &cells,
        Kind::Time,
        shape(&cells, sample.comma()),
    )?;
    Ok(TimeAt {
        date_column: Some(date),
        time_column: time,
        format,
    })
}

/// The column next to a clock that holds its dates.
fn date_beside(sample: &Sample, time: u32) -> Option<u32> {
    let beside = [time.checked_sub(1), time.checked_add(1)];
    beside.into_iter().flatten().find(|date| {
        let pairs = sample.pairs(*date, time);
        let cells: Vec<&str> = pairs.iter().map(String::as_str).collect();
        matches!(
            shape(&cells, sample.comma()),
            Some(Shape::YearFirst | Shape::YearLast)
        )
    })
}

fn format(
    sample: &Sample,
    answers: &Answers,
    cells: &[&str],
    kind: Kind,
    shape: Option<Shape>,
) -> Result<TimeFormat, Halt> {
    if let Some(format) = answers.time_format {
        return Ok(format);
    }
    let example = cells
        .first()
        .map_or(String::new(), |cell| cell.chars().take(40).collect());
    match shape {
        Some(Shape::YearFirst) => Ok(TimeFormat::Iso),
        Some(Shape::EpochSeconds) => Ok(TimeFormat::EpochSeconds),
        Some(Shape::EpochMillis) => Ok(TimeFormat::EpochMillis),
        Some(Shape::YearLast) => match answers
            .day_first
            .or_else(|| day_first(cells, sample.comma()))
        {
            Some(true) => Ok(TimeFormat::DayFirst),
            Some(false) => Ok(TimeFormat::MonthFirst),
            None => Err(Halt::Ask(Question::DayOrMonthFirst { example })),
        },
        Some(Shape::Clock) => since(answers, ElapsedUnit::Clock, example),
        Some(Shape::Number) => {
            let unit = answers.elapsed.or(counted(kind));
            let ask = || {
                Halt::Ask(Question::SecondsOrMinutes {
                    example: example.clone(),
                })
            };
            since(answers, unit.ok_or_else(ask)?, example)
        }
        None => Err(Halt::Ask(Question::WhichTime {
            columns: sample.columns().map(|n| sample.choice(n)).collect(),
        })),
    }
}

const fn counted(kind: Kind) -> Option<ElapsedUnit> {
    match kind {
        Kind::Seconds => Some(ElapsedUnit::Seconds),
        Kind::Minutes => Some(ElapsedUnit::Minutes),
        _ => None,
    }
}

fn since(answers: &Answers, unit: ElapsedUnit, example: String) -> Result<TimeFormat, Halt> {
    match answers.start {
        Some(start) => Ok(TimeFormat::Elapsed { unit, start }),
        None => Err(Halt::Ask(Question::WhenStarted { example })),
    }
}
