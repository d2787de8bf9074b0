//! `slowbend readings import`: a file of another instrument into a cook. Start at [`run`].
//!
//! The file's first rows give a plan. What they leave open is asked on the terminal, or told with the option that
//! answers it.

use super::{
    end::End,
    open::{Opened, open},
};
use crate::pages::Page;
use clap::Args;
use slowbend_core::{
    ids::CookId,
    moment::HOUR,
    readings::{
        ImportPlan, Report, Told,
        guess::{Guess, guess},
        numbers::Unit,
        questions::{Answers, Question},
        times::ElapsedUnit,
    },
    words::{Viewer, Words, typed::datetime_field},
};
use std::{
    fs::File,
    io::{self, BufRead, IsTerminal, Read, Write},
    path::{Path, PathBuf},
};

/// How much of a file is looked at for a plan: what core asks for.
const HEAD_BYTES: u64 = 64 * 1024;
/// How far ahead of now a reading may lie: clocks of instruments are not exact. Common practice, no source.
const AHEAD: i64 = 24 * HOUR;
/// How many questions one file may raise before something is wrong: one for each answer, and units apart.
const QUESTIONS_MAX: usize = 16;

/// What is asked.
#[derive(Args)]
pub struct Asked {
    /// The CSV file.
    #[arg(value_name = "FILE")]
    file: PathBuf,
    /// The cook to take them into, by its name or id; not needed while only one is under way.
    #[arg(long, value_name = "COOK")]
    to: Option<String>,
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
    #[arg(long, value_name = "UNIT", value_parser = unit)]
    unit: Option<Unit>,
    /// Whether the day or the month comes first in dates.
    #[arg(long, value_name = "day|month", value_parser = day_first)]
    first: Option<bool>,
    /// When times that count from a start began, such as 2026-06-13T05:00.
    #[arg(long, value_name = "TIME")]
    start: Option<String>,
    /// What plain numbers since the start count: seconds or minutes.
    #[arg(long, value_name = "UNIT", value_parser = elapsed)]
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
    let cook = cook(&mut opened, &viewer, asked.to.as_deref())?;
    let plan = plan(
        &head,
        answers(asked, &viewer, moment.utc_ms + AHEAD)?,
        &viewer,
    )?;
    eprintln!("{}", planned(&plan));
    let file = File::open(&asked.file).map_err(|error| cannot_read(&asked.file, &error))?;
    let file = Progress::over(file);
    let report = opened
        .door
        .import_readings(file, &plan, Some(cook), &moment)?;
    print!("{}", reported(&report, &Words::of(&viewer), moment.utc_ms));
    opened.door.suspend()?;
    Ok(())
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

fn cook(opened: &mut Opened, viewer: &Viewer, to: Option<&str>) -> Result<CookId, End> {
    let moment = opened.moment();
    let start = opened.door.start(viewer, None, &moment)?;
    let known =
        start
            .open
            .iter()
            .chain(&start.past)
            .filter_map(|line| match line.link.map(Page::from) {
                Some(Page::Now(cook)) => Some((cook, line.name.as_str())),
                _ => None,
            });
    let known: Vec<(CookId, &str)> = known.collect();
    let Some(to) = to else {
        return only(&known[..start.open.len().min(known.len())], &known);
    };
    if let Ok(id) = to.parse() {
        return Ok(id);
    }
    let named = known
        .iter()
        .filter(|(_, name)| name.to_lowercase() == to.to_lowercase());
    match named.collect::<Vec<_>>()[..] {
        [(cook, _)] => Ok(*cook),
        _ => Err(End::refused(format!(
            "No one cook is called “{to}”. Give --to with one of these ids:\n{}",
            listed(&known)
        ))),
    }
}

fn only(open: &[(CookId, &str)], known: &[(CookId, &str)]) -> Result<CookId, End> {
    match open {
        [(cook, _)] => Ok(*cook),
        [] if known.is_empty() => Err(End::refused(
            "There is no cook yet. Start one on the page first: slowbend serve",
        )),
        _ => Err(End::refused(format!(
            "Which cook? Give --to with one of these ids:\n{}",
            listed(known)
        ))),
    }
}

fn listed(known: &[(CookId, &str)]) -> String {
    let lines = known.iter().map(|(cook, name)| format!("  {cook}  {name}"));
    lines.collect::<Vec<_>>().join("\n")
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
        .map(|text| start(viewer, text))
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

fn start(viewer: &Viewer, text: &str) -> Result<i64, End> {
    datetime_field(&Words::of(viewer), text).map_err(|refused| End::refused(refused.reason))
}

/// A plan, asking until nothing is open; where nobody sits at the terminal, the first question ends it.
fn plan(head: &[u8], mut answers: Answers, viewer: &Viewer) -> Result<ImportPlan, End> {
    let say = Words::of(viewer);
    for _ in 0..QUESTIONS_MAX {
        match guess(head, &answers).map_err(|fault| End::refused(fault.said(&say)))? {
            Guess::Plan(plan) => return Ok(plan),
            Guess::Ask(question) => answer(&question, &mut answers, viewer)?,
        }
    }
    Err(End::refused(
        "This file leaves too much open. Give its columns and unit as options: slowbend readings import --help",
    ))
}

fn answer(question: &Question, answers: &mut Answers, viewer: &Viewer) -> Result<(), End> {
    let asked = format!(
        "{} ({})",
        question.said(&Words::of(viewer)),
        option_of(question)
    );
    if !io::stdin().is_terminal() {
        return Err(End::refused(asked));
    }
    eprint!("{asked} ");
    let _ = io::stderr().flush();
    let mut typed = String::new();
    let read = io::stdin().lock().read_line(&mut typed);
    read.map_err(|error| End::refused(format!("The answer cannot be read ({error}).")))?;
    settle(question, typed.trim(), answers, viewer)
}

const fn option_of(question: &Question) -> &'static str {
    match question {
        Question::WhichTime { .. } => "--time-column N",
        Question::WhichTemperatures { .. } => "--temp-columns N,N",
        Question::WhichUnit { .. } => "--unit f or c",
        Question::DayOrMonthFirst { .. } => "--first day or month",
        Question::WhenStarted { .. } => "--start 2026-06-13T05:00",
        Question::SecondsOrMinutes { .. } => "--counts seconds or minutes",
    }
}

fn settle(
    question: &Question,
    typed: &str,
    answers: &mut Answers,
    viewer: &Viewer,
) -> Result<(), End> {
    match question {
        Question::WhichTime { .. } => {
            answers.time_column = Some(column(typed).map_err(End::Refused)?)
        }
        Question::WhichTemperatures { .. } => {
            let columns = typed.split(',').map(column).collect::<Result<_, _>>();
            answers.temp_columns = columns.map_err(End::Refused)?;
        }
        Question::WhichUnit { .. } => answers.unit = Some(unit(typed).map_err(End::Refused)?),
        Question::DayOrMonthFirst { .. } => {
            answers.day_first = Some(day_first(typed).map_err(End::Refused)?)
        }
        Question::WhenStarted { .. } => answers.start = Some(start(viewer, typed)?),
        Question::SecondsOrMinutes { .. } => {
            answers.elapsed = Some(elapsed(typed).map_err(End::Refused)?)
        }
    }
    Ok(())
}

fn column(text: &str) -> Result<u32, String> {
    let number = text
        .trim()
        .parse::<u32>()
        .ok()
        .and_then(|column| column.checked_sub(1));
    number.ok_or_else(|| format!("“{text}” is no column. Give its number, counted from 1."))
}

fn unit(text: &str) -> Result<Unit, String> {
    match text.trim_start_matches('°').to_ascii_lowercase().as_str() {
        "f" | "fahrenheit" => Ok(Unit::Fahrenheit),
        "c" | "celsius" => Ok(Unit::Celsius),
        "k" | "kelvin" => Ok(Unit::Kelvin),
        _ => Err("Give f for °F, c for °C, or k for kelvin.".into()),
    }
}

fn day_first(text: &str) -> Result<bool, String> {
    match text.to_ascii_lowercase().as_str() {
        "day" | "d" => Ok(true),
        "month" | "m" => Ok(false),
        _ => Err("Give day or month.".into()),
    }
}

fn elapsed(text: &str) -> Result<ElapsedUnit, String> {
    match text.to_ascii_lowercase().as_str() {
        "seconds" | "s" => Ok(ElapsedUnit::Seconds),
        "minutes" | "m" => Ok(ElapsedUnit::Minutes),
        "clock" => Ok(ElapsedUnit::Clock),
        _ => Err("Give seconds or minutes.".into()),
    }
}

/// The plan in a line, so that a wrong guess is seen.
fn planned(plan: &ImportPlan) -> String {
    let temps = plan
        .temp_columns
        .iter()
        .map(|temp| format!("{} {} ({})", temp.column + 1, temp.sensor, temp.unit.sign()));
    let temps: Vec<_> = temps.collect();
    format!(
        "Reading {}: times in column {}, zone {}; temperatures in {}.",
        plan.source,
        plan.time_column + 1,
        plan.zone,
        temps.join(", ")
    )
}

/// Each count, and the first reasons.
fn reported(report: &Report, say: &Words<'_>, now: i64) -> String {
    let mut lines = vec![format!(
        "Rows {}. Readings taken {}, doubled {}, refused {}, empty {}.",
        report.rows, report.taken, report.doubled, report.refused, report.blank
    )];
    if let (Some(from), Some(to)) = (report.from, report.to) {
        lines.push(format!(
            "They run from {} to {}.",
            say.clock_day(from, now),
            say.clock_day(to, now)
        ));
    }
    if report.out_of_order > 0 {
        lines.push(format!(
            "{} were out of order and were put in order.",
            report.out_of_order
        ));
    }
    lines.extend(
        report
            .first_refusals
            .iter()
            .map(|refused| refused.said(say)),
    );
    for jump in &report.first_jumps {
        let (before, after) = (
            say.temperature(jump.before.temp),
            say.temperature(jump.reading.temp),
        );
        lines.push(format!(
            "Line {}, {}: jumps from {before} to {after}; kept. Was the probe moved?",
            jump.line, jump.sensor
        ));
    }
    lines.join("\n") + "\n"
}

/// Says on a terminal how far the file has come, each tenth of it.
struct Progress {
    file: File,
    bytes: u64,
    read: u64,
    told: u64,
}

impl Progress {
    fn over(file: File) -> Self {
        let bytes = file.metadata().map_or(0, |known| known.len());
        Self {
            file,
            bytes,
            read: 0,
            told: 0,
        }
    }
}

impl Read for Progress {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        let count = self.file.read(into)?;
        self.read += count as u64;
        let tenths = (self.read * 10).checked_div(self.bytes).unwrap_or(0);
        if tenths > self.told && io::stderr().is_terminal() {
            self.told = tenths;
            eprint!("\r{} %", tenths * 10);
            if tenths == 10 {
                eprintln!();
            }
        }
        Ok(count)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use slowbend_core::ids::DeviceId;

    fn viewer() -> Viewer {
        let device = DeviceId("01936f1e-0000-7000-8000-000000000001".parse().unwrap());
        Viewer::default_for(device)
    }

    fn answered(unit: Option<Unit>) -> Answers {
        Answers {
            source: "log".into(),
            zone: "America/Chicago".into(),
            unit,
            ..Answers::default()
        }
    }

    #[test]
    fn what_a_file_leaves_open_is_asked_with_the_option_that_answers_it() {
        let head = b"time,grate temperature\n2026-06-13T05:00,225\n2026-06-13T05:01,226\n";
        let asked = match guess(head, &answered(None)).unwrap() {
            Guess::Ask(question) => question,
            Guess::Plan(plan) => panic!("{plan:?}"),
        };
        assert_eq!(option_of(&asked), "--unit f or c");
        let mut answers = answered(None);
        settle(&asked, "f", &mut answers, &viewer()).unwrap();
        let plan = plan(head, answers, &viewer()).unwrap();
        assert!(planned(&plan).contains("(°F)"), "{}", planned(&plan));
    }

    #[test]
    fn a_file_that_is_none_is_told_in_a_sentence() {
        for head in [
            &b""[..],
            b"\x89PNG\r\n\x1a\n\0\0\0",
            b"only,words\nand,more\n",
        ] {
            let refused = plan(head, answered(Some(Unit::Celsius)), &viewer()).unwrap_err();
            assert!(
                refused.reason().ends_with(['.', '?']) && refused.reason().len() > 20,
                "{}",
                refused.reason()
            );
        }
    }

    #[test]
    fn with_several_cooks_the_choice_is_asked_for() {
        let id = |n: u8| CookId(uuid::Uuid::from_bytes([n; 16]));
        let known = [(id(1), "Lunch"), (id(2), "Supper")];
        assert_eq!(only(&known[..1], &known), Ok(id(1)));
        let asked = only(&known, &known).unwrap_err();
        assert!(
            asked.reason().contains("--to") && asked.reason().contains("Supper"),
            "{}",
            asked.reason()
        );
        assert!(only(&[], &[]).unwrap_err().reason().contains("Start one"));
    }
}
