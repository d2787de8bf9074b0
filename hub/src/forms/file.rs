//! A file of another instrument, chosen or pasted on a page. What the file leaves open comes back as the question, and is
//! answered in the form's own fields.

use super::{Reading, again, on_saying};
use crate::{demo, home::Home, pages::Page, typed::Typed, viewer::Reader, words::HubWords};
use axum::{
    Form,
    extract::{Path, State},
    response::Response,
};
use slowbend_core::{
    error::{Refused, Trouble},
    ids::CookId,
    moment::HOUR,
    readings::{
        ImportPlan, Report, Told,
        guess::{Guess, guess},
        numbers::Unit,
        questions::Answers,
        times::ElapsedUnit,
    },
    words::{Words, typed::datetime_field},
};
use std::sync::Arc;

/// How much of a file is looked at for a plan, bytes: what core asks for.
const HEAD_BYTES: usize = 64 * 1024;
/// How far ahead of now a reading may lie: clocks of instruments are not exact. Common practice, no source.
const AHEAD: i64 = 24 * HOUR;
/// The largest form with a file in it, bytes: a day of six probes by the second. Larger ones go by the command line.
pub const FORM_BYTES_MAX: usize = 32 * 1024 * 1024;

/// Takes the readings, then says how many. Sent twice they are known and nothing is added.
pub async fn post(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Path(cook): Path<uuid::Uuid>,
    Form(fields): Form<Vec<(String, String)>>,
) -> Response {
    let (cook, typed) = (CookId(cook), Typed::from(fields));
    let reader = demo::reader_of(&home, &reader);
    match import(&home, &reader, &typed, cook).await {
        Ok(said) => {
            home.changed();
            on_saying(&home, Page::Now(cook), &said)
        }
        Err(trouble) => again(&home, &reader, typed, trouble).await,
    }
}

async fn import(
    home: &Arc<Home>,
    reader: &Reader,
    typed: &Typed,
    cook: CookId,
) -> Result<String, Trouble> {
    let moment = home.moment();
    let reading = Reading::new(reader, typed, &moment);
    let rows = typed
        .given("rows")
        .ok_or_else(|| Refused::new(reading.words.file_empty))?;
    let (rows, plan) = (rows.to_owned(), plan(&reading, rows)?);
    let take = move |door: &mut slowbend_core::door::Slowbend, moment: &_| {
        door.import_readings(rows.as_bytes(), &plan, Some(cook), moment)
    };
    let report = home.ask(take).await?;
    Ok(said(&report, &reading.say, reading.words))
}

fn plan(reading: &Reading<'_>, rows: &str) -> Result<ImportPlan, Refused> {
    let head = &rows.as_bytes()[..rows.len().min(HEAD_BYTES)];
    let found = guess(head, &answers(reading)?);
    match found.map_err(|fault| Refused::new(fault.said(&reading.say)))? {
        Guess::Plan(plan) => Ok(plan),
        Guess::Ask(question) => Err(Refused::new(question.said(&reading.say))),
    }
}

fn answers(reading: &Reading<'_>) -> Result<Answers, Refused> {
    let (typed, words) = (reading.typed, reading.words);
    let start = typed
        .given("start")
        .map(|text| datetime_field(&reading.say, text))
        .transpose();
    Ok(Answers {
        source: typed
            .given("source")
            .unwrap_or(words.file)
            .trim()
            .to_owned(),
        zone: reading.say.viewer().zone.clone(),
        latest: Some(reading.moment.utc_ms + AHEAD),
        time_column: columns(reading, "time-column")?.first().copied(),
        temp_columns: columns(reading, "temp-columns")?,
        unit: match typed.text("unit") {
            "f" => Some(Unit::Fahrenheit),
            "c" => Some(Unit::Celsius),
            _ => None,
        },
        day_first: typed.given("first").map(|first| first == "day"),
        start: start.map_err(|refused| Refused::new(refused.reason))?,
        elapsed: typed.given("counts").map(|counts| match counts {
            "minutes" => ElapsedUnit::Minutes,
            _ => ElapsedUnit::Seconds,
        }),
        ..Answers::default()
    })
}

/// Columns as typed, counted from 1, as core counts them, from 0.
fn columns(reading: &Reading<'_>, name: &str) -> Result<Vec<u32>, Refused> {
    let column = |text: &str| text.trim().parse::<u32>().ok()?.checked_sub(1);
    let given = reading
        .typed
        .given(name)
        .map_or(vec![], |text| text.split(',').map(column).collect());
    let read: Option<Vec<u32>> = given.into_iter().collect();
    read.ok_or_else(|| Refused::new(reading.words.file_column_unread))
}

fn said(report: &Report, say: &Words<'_>, words: &HubWords) -> String {
    let mut said = format!(
        "{}: {} · {}: {} · {}: {}",
        words.file_taken,
        report.taken,
        words.file_doubled,
        report.doubled,
        words.file_refused,
        report.refused
    );
    for refused in &report.first_refusals {
        said.push_str(" · ");
        said.push_str(&refused.said(say));
    }
    said
}
