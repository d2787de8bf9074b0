//! `slowbend readings import`: a file of another instrument into a cook. Start at [`run`].
//!
//! The file's first rows give a plan. What they leave open is asked on the terminal, or told with the option that
//! answers it.

pub mod into;
mod questions;
mod report;

use super::{end::End, open::open, out::print};
use clap::Args;
use slowbend_core::{
    moment::HOUR,
    readings::{numbers::Unit, questions::Answers, times::ElapsedUnit},
    words::{Viewer, Words},
};
use std::{
    fs::File,
    io::{self, Read},
    path::{Path, PathBuf},
};

/// How much of a file is looked at for a plan: what core asks for.
const HEAD_BYTES: u64 = 64 * 1024;
/// How far ahead of now a reading may lie: clocks of instruments are not exact. Common practice, no source.
const AHEAD: i64 = 24 * HOUR;

/// What is asked.
#[derive(Args)]
pub struct Asked {
    /// The CSV file.
    #[arg(value_name = "FILE")]
    file: PathBuf,
    /// The cook to take them into, by its name or id; not needed while only one is under way.
    #[arg(long, alias = "to", value_name = "NAME")]
    cook: Option<String>,
    /// What the instrument is called; the file's name unless given.
    #[arg(long, value_name = "NAME")]
    source: Option<String>,
    /// The time zone that the instrument's clock stood in; this machine's unless given.
    #[arg(long, value_name = "ZONE")]
    zone: Option<String>,
    /// The column of times, counted from 1.
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u32).range(1..))]
    time_column: Option<u32>,
    /// The columns of temperatures, counted from 1, such as 2,4.
    #[arg(long, value_name = "N,N", value_delimiter = ',', value_parser = clap::value_parser!(u32).range(1..))]
    temp_columns: Vec<u32>,
    /// The unit where the file does not say: f, c or k.
    #[arg(long, value_name = "UNIT", value_parser = questions::unit)]
    unit: Option<Unit>,
    /// Whether the day or the month comes first in dates.
    #[arg(long, value_name = "day|month", value_parser = questions::day_first)]
    first: Option<bool>,
    /// When times that count from a start began, such as 2026-06-13T05:00.
    #[arg(long, value_name = "TIME")]
    start: Option<String>,
    /// What plain numbers since the start count: seconds or minutes.
    #[arg(long, value_name = "UNIT", value_parser = questions::elapsed)]
    counts: Option<ElapsedUnit>,
}

/// Imports the file and prints what was taken and what was not.
///
/// # Errors
/// A file that is none, a question that nobody answers, a cook that is not there, or the disk's trouble.
pub fn run(data: Option<PathBuf>, asked: &Asked) -> Result<(), End> {
    let head = head(&asked.file)?;
    let mut opened = open(data)?;
    let viewer = opened.viewer()?;
    let moment = opened.moment();
    let cook = into::cook(&mut opened, &viewer, asked.cook.as_deref())?;
    let plan = questions::plan(
        &head,
        answers(asked, &viewer, moment.utc_ms + AHEAD)?,
        &viewer,
    )?;
    eprintln!("{}", report::planned(&plan, viewer.locale));
    let file = File::open(&asked.file).map_err(|error| cannot_read(&asked.file, &error))?;
    let file = report::Progress::over(file);
    let report = opened
        .door
        .import_readings(file, &plan, Some(cook), &moment)?;
    opened.door.suspend()?;
    let said = report::reported(&report, &Words::of(&viewer), moment.utc_ms);
    Ok(print(&said)?)
}

fn head(file: &Path) -> Result<Vec<u8>, End> {
    let mut head = Vec::new();
    let read = File::open(file).and_then(|file| file.take(HEAD_BYTES).read_to_end(&mut head));
    read.map_err(|error| cannot_read(file, &error))?;
    Ok(head)
}

fn cannot_read(file: &Path, error: &io::Error) -> End {
    End::refused(format!(
        "{} cannot be read ({error}). Check its name and where it lies.",
        file.display()
    ))
}

fn answers(asked: &Asked, viewer: &Viewer, latest: i64) -> Result<Answers, End> {
    let own_name = asked
        .file
        .file_stem()
        .unwrap_or_default()
        .to_string_lossy()
        .into_owned();
    let start = asked
        .start
        .as_deref()
        .map(|text| questions::start(viewer, text))
        .transpose()?;
    Ok(Answers {
        source: asked.source.clone().unwrap_or(own_name),
        zone: asked.zone.clone().unwrap_or_else(|| viewer.zone.clone()),
        latest: Some(latest),
        time_column: asked.time_column.map(|column| column - 1),
        temp_columns: asked.temp_columns.iter().map(|column| column - 1).collect(),
        unit: asked.unit,
        day_first: asked.first,
        start,
        elapsed: asked.counts,
        ..Answers::default()
    })
}
