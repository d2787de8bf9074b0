//! A file of another instrument, chosen or pasted on a page. What the file leaves open comes back as the question, and is
//! answered in the form's own fields. A file is read on a thread of its own: see [`crate::taking`].

use super::{Reading, again, on_saying};
use crate::{
    demo,
    home::Home,
    incoming::{Incoming, Sent},
    pages::{self, Page, taken},
    taking::{State as Came, Taking, Takings},
    typed::Typed,
    viewer::Reader,
    words::words,
};
use axum::{
    extract::{Path, Request, State},
    http::{StatusCode, header},
    response::{IntoResponse, Response},
};
use slowbend_core::{
    error::{Refused, Trouble},
    ids::CookId,
    moment::HOUR,
    readings::{
        ImportPlan, Told as _,
        guess::{Guess, guess},
        numbers::Unit,
        questions::Answers,
        times::ElapsedUnit,
    },
    words::{Words, typed::datetime_field},
};
use std::{
    io::{Cursor, Read},
    sync::Arc,
    time::Duration,
};

/// How much of a file is looked at for a plan, bytes: what core asks for.
const HEAD_BYTES: usize = 64 * 1024;
/// How far ahead of now a reading may lie: clocks of instruments are not exact. Common practice, no source.
const AHEAD: i64 = 24 * HOUR;
/// The largest form with pasted rows in it, bytes: a day of six probes by the second.
pub const ROWS_BYTES_MAX: usize = 32 * 1024 * 1024;
/// The largest form with a file in it, bytes: some nine million rows. Larger ones go by the command line.
pub const FILE_BYTES_MAX: usize = 256 * 1024 * 1024;
/// What is taken within this is told at once; of what takes longer a page tells how far it is.
const AT_ONCE: Duration = Duration::from_millis(400);
const ASKED_EACH: Duration = Duration::from_millis(20);

/// What is to be taken, and how long it is.
type Rows = (Box<dyn Read + Send>, u64);

/// Takes the readings, then says how many. Sent twice they are taken once.
pub async fn post(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Path(cook): Path<uuid::Uuid>,
    request: Request,
) -> Response {
    let cook = CookId(cook);
    let reader = demo::reader_of(&home, &reader);
    let sent = match Sent::of(&home, request).await {
        Ok(sent) => sent,
        Err(said) => return pages::answer(StatusCode::BAD_REQUEST, pages::plain(&reader, &said)),
    };
    let token = sent.typed.text("token").to_owned();
    if let Some(known) = home.takings.of_form(&token) {
        return told(&home, &reader, &known, sent.typed).await;
    }
    let (mut typed, file) = (sent.typed, sent.file.or_else(|| home.waiting.take(&token)));
    match begin(&home, &reader, &mut typed, (cook, &token), file) {
        Ok(taking) => told(&home, &reader, &taking, typed).await,
        Err(trouble) => again(&home, &reader, typed, trouble).await,
    }
}

/// Stops one that is being read.
pub async fn stop(
    State(home): State<Arc<Home>>,
    Path((cook, number)): Path<(uuid::Uuid, String)>,
) -> Response {
    let number = u128::from_str_radix(&number, 16).unwrap_or_default();
    if let Some(taking) = home.takings.of(number) {
        taking.stop();
    }
    to(Page::Taking(CookId(cook), number))
}

fn to(page: Page) -> Response {
    (StatusCode::SEE_OTHER, [(header::LOCATION, page.path())]).into_response()
}

/// What came of it, if that is known soon; else the page that tells how far it is.
async fn told(home: &Arc<Home>, reader: &Reader, taking: &Taking, typed: Typed) -> Response {
    let mut waited = Duration::ZERO;
    loop {
        match taking.state() {
            Came::Taken(report) => {
                let said = taken(
                    &report,
                    &Words::of(&reader.viewer),
                    words(reader.viewer.locale),
                );
                return on_saying(home, Page::Now(taking.cook), &said);
            }
            Came::Refused(reason) => {
                return again(home, reader, typed, Refused::new(reason).into()).await;
            }
            Came::Reading | Came::Keeping if waited < AT_ONCE => {}
            _ => return to(Page::Taking(taking.cook, taking.number)),
        }
        tokio::time::sleep(ASKED_EACH).await;
        waited += ASKED_EACH;
    }
}

/// Begins, once it is known how the file is read; else the file waits for the answer.
fn begin(
    home: &Arc<Home>,
    reader: &Reader,
    typed: &mut Typed,
    (cook, token): (CookId, &str),
    file: Option<Incoming>,
) -> Result<Arc<Taking>, Trouble> {
    let unread = |error: std::io::Error| Refused::new(error.to_string());
    let Some(mut file) = file else {
        let rows = typed.given("rows").map(|rows| rows.as_bytes().to_vec());
        let rows = rows.ok_or_else(|| Refused::new(words(reader.viewer.locale).file_empty))?;
        let plan = plan(
            home,
            reader,
            typed,
            &rows[..rows.len().min(HEAD_BYTES)],
            None,
        )?;
        let bytes = rows.len() as u64;
        let rows: Rows = (Box::new(Cursor::new(rows)), bytes);
        return Ok(Takings::begin(
            home,
            &reader.viewer,
            (cook, token),
            rows,
            plan,
        ));
    };
    let head = file.head(HEAD_BYTES).map_err(unread)?;
    match plan(home, reader, typed, &head, Some(file.stem())) {
        Ok(plan) => {
            let bytes = file.bytes;
            let rows: Rows = (Box::new(file.into_file()), bytes);
            Ok(Takings::begin(
                home,
                &reader.viewer,
                (cook, token),
                rows,
                plan,
            ))
        }
        Err(question) => {
            typed.0.push(("kept".into(), file.name.clone()));
            home.waiting.keep(token, file);
            Err(question.into())
        }
    }
}

fn plan(
    home: &Home,
    reader: &Reader,
    typed: &Typed,
    head: &[u8],
    name: Option<&str>,
) -> Result<ImportPlan, Refused> {
    let moment = home.moment();
    let reading = Reading::new(reader, typed, &moment);
    let found = guess(head, &answers(&reading, name)?);
    match found.map_err(|fault| Refused::new(fault.said(&reading.say)))? {
        Guess::Plan(plan) => Ok(plan),
        Guess::Ask(question) => Err(Refused::new(question.said(&reading.say))),
    }
}

fn answers(reading: &Reading<'_>, name: Option<&str>) -> Result<Answers, Refused> {
    let (typed, words) = (reading.typed, reading.words);
    let start = typed
        .given("start")
        .map(|text| datetime_field(&reading.say, text))
        .transpose();
    Ok(Answers {
        source: typed
            .given("source")
            .or(name)
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
