//! What a file leaves open: asked on a terminal, or told with the option that answers it. Start at [`plan`].

use crate::cli::End;
use slowbend_core::{
    readings::{
        ImportPlan, Told,
        guess::{Guess, guess},
        numbers::Unit,
        questions::{Answers, Question},
        times::ElapsedUnit,
    },
    words::{Viewer, Words, typed::datetime_field},
};
use std::io::{self, BufRead, IsTerminal, Write};

/// How many questions one file may raise before something is wrong: one for each answer, and units apart.
const QUESTIONS_MAX: usize = 16;

/// A plan, asking until nothing is open; where nobody sits at the terminal, the first question ends it.
///
/// # Errors
/// The file is none, or a question stays open.
pub fn plan(head: &[u8], mut answers: Answers, viewer: &Viewer) -> Result<ImportPlan, End> {
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

/// When times that count from a start began.
///
/// # Errors
/// Where it cannot be read.
pub fn start(viewer: &Viewer, text: &str) -> Result<i64, End> {
    datetime_field(&Words::of(viewer), text).map_err(|refused| End::refused(refused.reason))
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

/// A unit as typed.
///
/// # Errors
/// Where it is none of the choices.
pub fn unit(text: &str) -> Result<Unit, String> {
    match text.trim_start_matches('°').to_ascii_lowercase().as_str() {
        "f" | "fahrenheit" => Ok(Unit::Fahrenheit),
        "c" | "celsius" => Ok(Unit::Celsius),
        "k" | "kelvin" => Ok(Unit::Kelvin),
        _ => Err("Give f for °F, c for °C, or k for kelvin.".into()),
    }
}

/// Whether the day stands first, as typed.
///
/// # Errors
/// Where it is none of the choices.
pub fn day_first(text: &str) -> Result<bool, String> {
    match text.to_ascii_lowercase().as_str() {
        "day" | "d" => Ok(true),
        "month" | "m" => Ok(false),
        _ => Err("Give day or month.".into()),
    }
}

/// What plain numbers count, as typed.
///
/// # Errors
/// Where it is none of the choices.
pub fn elapsed(text: &str) -> Result<ElapsedUnit, String> {
    match text.to_ascii_lowercase().as_str() {
        "seconds" | "s" => Ok(ElapsedUnit::Seconds),
        "minutes" | "m" => Ok(ElapsedUnit::Minutes),
        "clock" => Ok(ElapsedUnit::Clock),
        _ => Err("Give seconds or minutes.".into()),
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
        assert!(
            crate::cli::import::report::planned(&plan, slowbend_core::words::Locale::EnUs)
                .contains("(°F)"),
            "{}",
            crate::cli::import::report::planned(&plan, slowbend_core::words::Locale::EnUs)
        );
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
}
