//! One opening, confirmed: what was chosen and typed for each meat on the pit.

use super::{Reading, take};
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
    forms::{OpeningMeatTyped, OpeningTyped, SpotTyped, opening},
    ids::{CookId, PitId},
    screens::{OpeningDoes, OpeningMeat, OpeningScreen},
};
use std::sync::Arc;

/// Records the opening, then shows what is next, with its undo.
pub async fn post(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Path((cook, pit, form)): Path<(uuid::Uuid, uuid::Uuid, String)>,
    Form(fields): Form<Vec<(String, String)>>,
) -> Response {
    if form != "opening" {
        return StatusCode::NOT_FOUND.into_response();
    }
    let (cook, pit, typed) = (CookId(cook), PitId(pit), Typed::from(fields));
    let viewer = reader.viewer.clone();
    let screen = home.ask(move |door, moment| door.opening(&viewer, cook, pit, moment));
    let screen = match screen.await {
        Ok(screen) => screen,
        Err(trouble) => return super::again(&home, &reader, typed, trouble).await,
    };
    let viewer = crate::demo::reader_of(&home, &reader).viewer;
    let read = |reading: &Reading<'_>| -> Result<Act, Refused> {
        let typed = read(reading, &screen)?;
        reading.typed.blame_none();
        opening(&viewer, &typed)
    };
    take(&home, &reader, typed, read, |_, _| Page::Now(cook)).await
}

fn read(reading: &Reading<'_>, screen: &OpeningScreen) -> Result<OpeningTyped, Refused> {
    let meats = screen.meats.iter().map(|meat| one(reading, meat));
    Ok(OpeningTyped {
        pit: screen.pit,
        meats: meats.collect::<Result<_, _>>()?,
        thermometer: reading.typed.parsed("thermometer", reading.words.choose)?,
        at: reading.at(),
    })
}

fn one(reading: &Reading<'_>, meat: &OpeningMeat) -> Result<OpeningMeatTyped, Refused> {
    let typed = reading.typed;
    let field = |name: &str| format!("{}-{name}", meat.piece);
    let text = |name: &str| typed.text(&field(name)).to_owned();
    let spots = meat.tests.iter().flat_map(|test| &test.spots);
    Ok(OpeningMeatTyped {
        piece: meat.piece,
        does: does(reading, &[field("does"), field("rub")])?,
        chosen: meat
            .tests
            .iter()
            .map(|test| text(&test.field))
            .filter(|value| !value.is_empty())
            .collect(),
        spots: spots
            .map(|spot| SpotTyped {
                spot: spot.spot.clone(),
                text: text(&spot.field),
            })
            .collect(),
        left_in: typed.given(&field("probe")).is_some(),
        note: text("note"),
    })
}

fn does(reading: &Reading<'_>, names: &[String]) -> Result<Vec<OpeningDoes>, Refused> {
    let fields = reading.typed.0.iter();
    let chosen = fields.filter(|(name, _)| names.contains(name));
    chosen
        .map(|(_, value)| {
            serde_json::from_value(value.as_str().into())
                .map_err(|_| Refused::new(reading.words.choose))
        })
        .collect()
}
