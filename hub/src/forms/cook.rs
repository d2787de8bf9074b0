//! Starting a cook, from the form on the first page.

use super::{Reading, again_for, on, once_key, once_key_of, record};
use crate::{home::Home, pages::Page, typed::Typed, viewer::Reader};
use axum::{Form, extract::State, response::Response};
use slowbend_core::{
    acts::{Act, NewMeat, Outcome},
    checks::Cut,
    error::{Refused, Trouble},
    forms::of_row,
    ids::{CookId, PitId},
    log::{PitKind, Serve, Subject},
    screens::the_cut,
    words::typed,
};
use std::sync::Arc;

/// The number of rows that are read: those of the page.
const ROWS: usize = 4;

/// Records the new pit, if one is described, and the cook; then shows it.
pub async fn post(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Form(fields): Form<Vec<(String, String)>>,
) -> Response {
    let typed = Typed::from(fields);
    match begin(&home, &reader, &typed).await {
        Ok(outcome) => on(
            &home,
            &reader,
            cook_of(&outcome).map_or(Page::Start, Page::Now),
            &outcome,
        ),
        Err(trouble) => {
            let blamed = typed.blamed();
            again_for(&home, &reader, typed, trouble, blamed).await
        }
    }
}

/// All that was typed is read before anything is recorded; the pit has a part of the form's token of its own, so that a
/// form that comes again after a refusal does not add it twice.
async fn begin(home: &Arc<Home>, reader: &Reader, typed: &Typed) -> Result<Outcome, Trouble> {
    let moment = home.moment();
    let reading = Reading::new(reader, typed, &moment);
    let mut meats = meats(&reading)?;
    let new_pit = new_pit(&reading, meats.iter().any(|(_, wants_new)| *wants_new))?;
    let cook = |meats| start(&reading, meats);
    cook(vec![])?;
    if let Some(act) = new_pit {
        let made = record(
            home,
            reader,
            &once_key_of(typed, "pit", |name| {
                name.starts_with("pit-name") || name == "pit-kind"
            }),
            act,
        )
        .await?
        .made;
        let pit = made.iter().find_map(|thing| match thing {
            Subject::Pit(pit) => Some(*pit),
            _ => None,
        });
        for (meat, wants_new) in &mut meats {
            meat.pit = if *wants_new { pit } else { meat.pit };
        }
    }
    let act = cook(meats.into_iter().map(|(meat, _)| meat).collect())?;
    record(home, reader, &once_key(typed, "act"), act).await
}

fn start(reading: &Reading<'_>, meats: Vec<NewMeat>) -> Result<Act, Refused> {
    Ok(Act::StartCook {
        name: occasion(reading)?,
        serve: serve(reading, "serve")?,
        people: reading
            .typed
            .parsed("people", reading.words.people_unread)?,
        meats,
        demo: false,
    })
}

/// What the cook is called; one without a name is called as its first meat.
fn occasion(reading: &Reading<'_>) -> Result<String, Refused> {
    if reading.typed.given("name").is_some() {
        return name(reading, "name");
    }
    let Some(row) = (0..ROWS).find(|row| is_meat(reading, *row)) else {
        return name(reading, "name");
    };
    Ok(reading.say.text(row_cut(reading, row)?.key()))
}

/// A name as typed.
///
/// # Errors
/// Where it is empty or too long.
pub fn name(reading: &Reading<'_>, field: &str) -> Result<String, Refused> {
    typed::name(&reading.say, reading.typed.text(field))
        .map_err(|refused| Refused::new(refused.reason))
}

/// A serving time as typed, in the viewer's zone; none where none was.
///
/// # Errors
/// Where it cannot be read.
pub fn serve(reading: &Reading<'_>, field: &str) -> Result<Option<Serve>, Refused> {
    let Some(text) = reading.typed.given(field) else {
        return Ok(None);
    };
    let at = typed::when(&reading.say, text, reading.moment.utc_ms)
        .map_err(|refused| Refused::new(refused.reason))?;
    Ok(Some(Serve {
        at,
        zone: reading.say.viewer().zone.clone(),
    }))
}

/// A weight as typed; none where none was.
///
/// # Errors
/// Where it cannot be read or no meat weighs so much.
pub fn weight(reading: &Reading<'_>, field: &str) -> Result<Option<i64>, Refused> {
    let read = |text| typed::weight(&reading.say, text, &typed::MEAT_GRAMS);
    let grams = reading.typed.given(field).map(read).transpose();
    grams.map_err(|refused| Refused::new(refused.reason))
}

/// Whether a row holds a meat: its cut chosen, or its name typed.
fn is_meat(reading: &Reading<'_>, row: usize) -> bool {
    ["cut", "find"]
        .iter()
        .any(|field| reading.typed.given(&format!("{field}-{row}")).is_some())
}

fn row_cut(reading: &Reading<'_>, row: usize) -> Result<Cut, Refused> {
    cut(reading, &format!("cut-{row}"), &format!("find-{row}"))
}

/// The cut that was chosen in the field `chosen`; where none was, the one that the name in the field `typed` means.
///
/// # Errors
/// What to do instead, where it means none or several.
pub fn cut(reading: &Reading<'_>, chosen: &str, typed: &str) -> Result<Cut, Refused> {
    match reading.typed.given(chosen) {
        Some(_) => reading.typed.chosen(chosen, reading.words.choose),
        None => the_cut(reading.say.viewer(), reading.typed.text(typed)),
    }
}

fn meats(reading: &Reading<'_>) -> Result<Vec<(NewMeat, bool)>, Refused> {
    let rows = (0..ROWS).filter(|row| is_meat(reading, *row));
    rows.map(|row| {
        meat(reading, row).map_err(|refused| {
            let place = i64::try_from(row).map_or(1, |row| row + 1);
            of_row(&reading.say, place, row_cut(reading, row).ok(), refused)
        })
    })
    .collect()
}

/// One row's meat, and whether it goes to the pit that is new.
fn meat(reading: &Reading<'_>, row: usize) -> Result<(NewMeat, bool), Refused> {
    let pit_field = format!("pit-{row}");
    let wants_new = reading.typed.text(&pit_field) == "new";
    let pit: Option<PitId> = match wants_new {
        true => None,
        false => reading.typed.parsed(&pit_field, reading.words.choose)?,
    };
    let cut = row_cut(reading, row)?;
    let meat = NewMeat {
        name: String::new(),
        cut,
        form: cut.form_unsaid(),
        weight_g: weight(reading, &format!("weight-{row}"))?,
        cadence: None,
        pit,
    };
    Ok((meat, wants_new))
}

/// The new pit, where one is named or a meat is to go on it; one without a name is called as its kind.
fn new_pit(reading: &Reading<'_>, wanted: bool) -> Result<Option<Act>, Refused> {
    let is_named = reading.typed.given("pit-name").is_some();
    if !is_named && !wanted {
        return Ok(None);
    }
    let kind: PitKind = reading.typed.chosen("pit-kind", reading.words.choose)?;
    let name = match is_named {
        true => name(reading, "pit-name")?,
        false => kind_name(reading, kind),
    };
    Ok(Some(Act::AddPit {
        name,
        kind,
        grate_cm2: None,
        alone_minutes: None,
    }))
}

/// A kind of pit in words.
pub fn kind_name(reading: &Reading<'_>, kind: PitKind) -> String {
    let code = super::name_of(&kind);
    let found = crate::words::pit_kinds(reading.words).find(|(known, _)| *known == code);
    found.map_or(code, |(_, name)| name.to_owned())
}

/// The cook that an act made.
pub fn cook_of(outcome: &Outcome) -> Option<CookId> {
    outcome.made.iter().find_map(|thing| match thing {
        Subject::Cook(cook) => Some(*cook),
        _ => None,
    })
}
