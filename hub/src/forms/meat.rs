//! What is said about one meat beside its stage and its checks: one function a form of its page.

use super::{
    Reading,
    cook::{name, weight},
    take, write,
};
use crate::{home::Home, pages::Page, typed::Typed, viewer::Reader};
use axum::{
    Form,
    extract::{Path, State},
    http::StatusCode,
    response::{IntoResponse, Response},
};
use slowbend_core::{
    acts::Act,
    error::Refused,
    ids::{CookId, PieceId},
    log::{Field, Subject},
    words::typed::temperature,
};
use std::sync::Arc;

type Read = fn(&Reading<'_>, CookId, PieceId) -> Result<Act, Refused>;

/// The forms by the last part of their address.
const FORMS: [(&str, Read); 8] = [
    ("note", note),
    ("weight", of_weight),
    ("cadence", cadence),
    ("prepared", prepared),
    ("pull", pull),
    ("name", called),
    ("split", split),
    ("join", join),
];

/// Records what was said, then shows the meat again; what was cut or joined shows on the page of its cook.
pub async fn post(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Path((piece, form)): Path<(uuid::Uuid, String)>,
    Form(fields): Form<Vec<(String, String)>>,
) -> Response {
    let (piece, typed) = (PieceId(piece), Typed::from(fields));
    let Some((_, read)) = FORMS.iter().find(|(known, _)| *known == form) else {
        return StatusCode::NOT_FOUND.into_response();
    };
    let viewer = reader.viewer.clone();
    let screen = home.ask(move |door, moment| door.piece(&viewer, piece, moment));
    let cook = match screen.await {
        Ok(screen) => screen.cook,
        Err(trouble) => return super::again(&home, &reader, typed, trouble).await,
    };
    let next = match form.as_str() {
        "split" | "join" => Page::Now(cook),
        _ => Page::Meat(piece),
    };
    take(
        &home,
        &reader,
        typed,
        |reading| read(reading, cook, piece),
        |_, _| next,
    )
    .await
}

fn field(piece: PieceId, to: Field) -> Act {
    let of = Subject::Piece(piece);
    Act::SetField { of, to, saw: None }
}

fn note(reading: &Reading<'_>, cook: CookId, piece: PieceId) -> Result<Act, Refused> {
    let (about, text) = (
        Subject::Piece(piece),
        reading.typed.text("text").trim().to_owned(),
    );
    Ok(Act::Note { cook, about, text })
}

fn of_weight(reading: &Reading<'_>, _: CookId, piece: PieceId) -> Result<Act, Refused> {
    Ok(field(piece, Field::WeightG(weight(reading, "weight")?)))
}

fn cadence(reading: &Reading<'_>, _: CookId, piece: PieceId) -> Result<Act, Refused> {
    let cadence = write::cadence(reading)?.ok_or_else(|| Refused::new(reading.words.choose))?;
    Ok(field(piece, Field::Cadence(cadence)))
}

fn prepared(reading: &Reading<'_>, _: CookId, piece: PieceId) -> Result<Act, Refused> {
    Ok(field(
        piece,
        Field::Form(reading.typed.chosen("prepared", reading.words.choose)?),
    ))
}

/// Left empty, the cut's own temperature holds again.
fn pull(reading: &Reading<'_>, _: CookId, piece: PieceId) -> Result<Act, Refused> {
    let read = |text| temperature(&reading.say, text, &super::check::INSIDE);
    let pull = reading.typed.given("pull").map(read).transpose();
    Ok(field(
        piece,
        Field::PullAt(pull.map_err(|refused| Refused::new(refused.reason))?),
    ))
}

fn called(reading: &Reading<'_>, _: CookId, piece: PieceId) -> Result<Act, Refused> {
    Ok(field(piece, Field::Name(name(reading, "name")?)))
}

fn split(reading: &Reading<'_>, _: CookId, piece: PieceId) -> Result<Act, Refused> {
    let names = reading.typed.text("names").split(',');
    let names = names
        .map(|name| name.trim().to_owned())
        .filter(|name| !name.is_empty());
    Ok(Act::Split {
        piece,
        names: names.collect(),
    })
}

fn join(reading: &Reading<'_>, _: CookId, piece: PieceId) -> Result<Act, Refused> {
    let with = reading.typed.0.iter().filter(|(name, _)| name == "with");
    let with = with.map(|(_, id)| id.parse().map_err(|_| Refused::new(reading.words.choose)));
    let mut pieces: Vec<PieceId> = with.collect::<Result<_, _>>()?;
    if pieces.is_empty() {
        return Err(Refused::new(reading.words.join_one));
    }
    pieces.push(piece);
    let name = name(reading, "name")?;
    Ok(Act::Join { pieces, name })
}
