//! Cook cards as they come in by form, and as they go out as a file.

use super::{Reading, again_for, cook::cook_of, handed, on, once_key, once_key_of, record};
use crate::{
    demo,
    home::Home,
    pages::{Asked, Beside, Page, answer, render, troubled},
    typed::Typed,
    viewer::Reader,
};
use axum::{
    Form,
    extract::{Multipart, Path, Query, State, multipart::MultipartError},
    http::StatusCode,
    response::{IntoResponse, Response},
};
use slowbend_core::{
    acts::{Act, Outcome},
    card::{self, Card},
    error::{Refused, Trouble},
    forms::{self, BeginMeatTyped, BeginTyped},
    ids::{CookId, PitId},
    log::Subject,
    words::typed,
};
use std::sync::Arc;

/// The choice of a pit that is on the card begins so.
const NEW: &str = "new-";

/// Takes a card, pasted or as a file, and shows the form that begins a cook from it.
pub async fn take(State(home): State<Arc<Home>>, reader: Reader, parts: Multipart) -> Response {
    let reader = demo::reader_of(&home, &reader);
    let typed = match fields(parts).await {
        Ok(typed) => typed,
        Err(broken) => return broken.into_response(),
    };
    let (viewer, text) = (reader.viewer.clone(), typed.text("card").to_owned());
    let read = home.ask(move |door, moment| door.read_card(&viewer, &text, moment));
    if let Err(trouble) = read.await {
        return again_for(&home, &reader, typed, trouble, None).await;
    }
    let beside = Beside {
        typed: Typed::from(vec![("card".into(), typed.text("card").to_owned())]),
        ..Beside::default()
    };
    match render(&home, &reader, Page::Cards, beside).await {
        Ok(markup) => answer(StatusCode::OK, markup),
        Err(trouble) => troubled(&reader, &trouble, StatusCode::UNPROCESSABLE_ENTITY),
    }
}

/// The fields of the form; a file that was chosen stands for the text. Letters that are no UTF-8 become marks, which no
/// card has, so that such a file is told.
async fn fields(mut parts: Multipart) -> Result<Typed, MultipartError> {
    let mut all: Vec<(String, String)> = vec![];
    while let Some(part) = parts.next_field().await? {
        let name = part.name().unwrap_or_default().to_owned();
        let bytes = part.bytes().await?;
        let text = String::from_utf8_lossy(&bytes).into_owned();
        match name.as_str() {
            "file" if text.is_empty() => {}
            "file" => {
                all.retain(|(name, _)| name != "card");
                all.push(("card".into(), text));
            }
            _ if all.iter().any(|(known, _)| *known == name) => {}
            _ => all.push((name, text)),
        }
    }
    Ok(Typed::from(all))
}

/// Begins a cook from a card; a pit of the card that is chosen and not known here is added first.
pub async fn begin(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Form(fields): Form<Vec<(String, String)>>,
) -> Response {
    let (reader, typed) = (demo::reader_of(&home, &reader), Typed::from(fields));
    match begun(&home, &reader, &typed).await {
        Ok(outcome) => {
            let page = cook_of(&outcome).map_or(Page::Start, Page::Now);
            on(&home, &reader, page, &outcome)
        }
        Err(trouble) => {
            let moment = home.moment();
            let blamed = blamed(&Reading::new(&reader, &typed, &moment));
            again_for(&home, &reader, typed, trouble, blamed).await
        }
    }
}

/// All that was typed is read before anything is recorded.
async fn begun(home: &Arc<Home>, reader: &Reader, typed: &Typed) -> Result<Outcome, Trouble> {
    let moment = home.moment();
    let reading = Reading::new(reader, typed, &moment);
    let card = card::read(&reading.say, typed.text("card"))?.card;
    let mut form = form(&reading, &card)?;
    forms::begin(&reader.viewer, &form, &moment)?;
    for row in 0..form.meats.len() {
        let chosen = typed.text(&format!("pit-{row}"));
        if let Some(place) = chosen.strip_prefix(NEW)
            && !form.meats[row].left_out
        {
            form.meats[row].pit = Some(add_pit(home, &reading, reader, &card, place).await?);
        }
    }
    let act = forms::begin(&reader.viewer, &form, &moment)?;
    record(home, reader, &once_key(typed, "act"), act).await
}

fn form(reading: &Reading<'_>, card: &Card) -> Result<BeginTyped, Refused> {
    let text = |name: &str| reading.typed.text(name).to_owned();
    let meat = |row: usize| -> Result<BeginMeatTyped, Refused> {
        let pit = format!("pit-{row}");
        let is_new = reading.typed.text(&pit).starts_with(NEW);
        Ok(BeginMeatTyped {
            left_out: reading.typed.given(&format!("out-{row}")).is_some(),
            weight: text(&format!("weight-{row}")),
            pit: match is_new {
                true => None,
                false => reading.typed.parsed(&pit, reading.words.choose)?,
            },
        })
    };
    Ok(BeginTyped {
        card: text("card"),
        name: text("name"),
        serve: text("serve"),
        people: text("people"),
        meats: (0..card.meats.len()).map(meat).collect::<Result<_, _>>()?,
    })
}

/// The pit of the card at `place`, recorded under a part of the form's token of its own: sent twice it is one pit.
async fn add_pit(
    home: &Arc<Home>,
    reading: &Reading<'_>,
    reader: &Reader,
    card: &Card,
    place: &str,
) -> Result<PitId, Trouble> {
    let unknown = || Refused::new(reading.words.choose);
    let wished = place
        .parse::<usize>()
        .ok()
        .and_then(|place| card.pits.get(place));
    let wished = wished.ok_or_else(unknown)?;
    let act = Act::AddPit {
        name: wished.name.clone(),
        kind: wished.kind,
        grate_cm2: None,
        alone_minutes: None,
    };
    let key = once_key_of(reading.typed, &format!("pit-{place}"), |name| {
        name == "card"
    });
    let made = record(home, reader, &key, act).await?.made;
    let pit = made.iter().find_map(|thing| match thing {
        Subject::Pit(pit) => Some(*pit),
        _ => None,
    });
    Ok(pit.ok_or_else(unknown)?)
}

/// The field that cannot be read, if it is one.
fn blamed(reading: &Reading<'_>) -> Option<String> {
    let typed = reading.typed;
    let is_bad = |name: &str| {
        let text = typed.given(name)?;
        let (say, now) = (&reading.say, reading.moment.utc_ms);
        let is_read = match name {
            "name" => typed::name(say, text).is_ok(),
            "serve" => typed::when(say, text, now).is_ok(),
            "people" => text.trim().parse::<i64>().is_ok(),
            _ => typed::weight(say, text, &typed::MEAT_GRAMS).is_ok(),
        };
        (!is_read).then(|| name.to_owned())
    };
    let plain = ["name", "serve", "people"].into_iter().find_map(is_bad);
    let names = typed.0.iter().map(|(name, _)| name.as_str());
    plain.or_else(|| {
        names
            .filter(|name| name.starts_with("weight-"))
            .find_map(is_bad)
    })
}

/// The card of a cook as a file.
pub async fn file(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Path(cook): Path<uuid::Uuid>,
    Query(asked): Query<Asked>,
) -> Response {
    let reader = demo::reader_of(&home, &reader);
    let viewer = reader.viewer.clone();
    let made =
        home.ask(move |door, moment| door.card(&viewer, CookId(cook), &asked.card(), moment));
    match made.await {
        Ok(screen) => handed::file("application/json", None, screen.file),
        Err(trouble) => troubled(&reader, &trouble, StatusCode::NOT_FOUND),
    }
}
