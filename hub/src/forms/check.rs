//! A pass over the tests of a meat.

use super::{Reading, take};
use crate::{home::Home, pages::Page, typed::Typed, viewer::Reader};
use axum::{
    Form,
    extract::{Path, State},
    response::Response,
};
use slowbend_core::{
    acts::Act,
    checks::{Temperature, TestResult},
    error::Refused,
    ids::PieceId,
    units::Mk,
    words::typed::temperature,
};
use std::{ops::RangeInclusive, sync::Arc};

/// What may be read inside a meat: −20 to 200 °C, as [`Temperature`] holds it.
pub const INSIDE: RangeInclusive<Mk> = Mk(253_150)..=Mk(473_150);

/// Records the pass, then shows the meat.
pub async fn post(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Path(piece): Path<uuid::Uuid>,
    Form(fields): Form<Vec<(String, String)>>,
) -> Response {
    let piece = PieceId(piece);
    let typed = Typed::from(fields);
    let viewer = reader.viewer.clone();
    let screen = home
        .ask(move |door, moment| door.check(&viewer, piece, moment))
        .await;
    let screen = match screen {
        Ok(screen) => screen,
        Err(trouble) => return super::again(&home, &reader, typed, trouble).await,
    };
    let read = |reading: &Reading<'_>| {
        let mut results = Vec::new();
        for test in &screen.tests {
            results.extend(chosen(reading, &test.field)?);
            for spot in &test.spots {
                results.extend(heat(reading, &spot.field, &spot.spot)?);
            }
        }
        if results.is_empty() {
            reading.typed.blame_none();
            return Err(Refused::new(reading.words.nothing_tried));
        }
        Ok(Act::Check {
            piece,
            results,
            at: reading.at(),
        })
    };
    take(&home, &reader, typed, read, |_, _| Page::Meat(piece)).await
}

fn chosen(reading: &Reading<'_>, field: &str) -> Result<Option<TestResult>, Refused> {
    let read =
        |text: &str| serde_json::from_str(text).map_err(|_| Refused::new(reading.words.choose));
    reading.typed.given(field).map(read).transpose()
}

fn heat(reading: &Reading<'_>, field: &str, spot: &str) -> Result<Option<TestResult>, Refused> {
    let Some(text) = reading.typed.given(field) else {
        return Ok(None);
    };
    let mk =
        temperature(&reading.say, text, &INSIDE).map_err(|refused| Refused::new(refused.reason))?;
    let spot =
        serde_json::from_value(spot.into()).map_err(|_| Refused::new(reading.words.choose))?;
    let thermometer = reading.typed.parsed("thermometer", reading.words.choose)?;
    let instant_read = reading.typed.given("probe").is_none();
    Ok(Some(TestResult::Heat(Temperature {
        mk,
        spot,
        thermometer,
        instant_read,
    })))
}
