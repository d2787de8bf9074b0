//! What is said about one meat beside its stage and its checks: the slips of core.

use super::take;
use crate::{home::Home, pages::Page, typed::Typed, viewer::Reader};
use axum::{
    Form,
    extract::{Path, State},
    response::Response,
};
use slowbend_core::{forms::meat_slip, ids::PieceId};
use std::sync::Arc;

/// Records what was said, then shows the meat again; what was cut or joined shows on the page of its cook.
pub async fn post(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Path((piece, slip)): Path<(uuid::Uuid, String)>,
    Form(fields): Form<Vec<(String, String)>>,
) -> Response {
    let (piece, typed) = (PieceId(piece), Typed::from(fields));
    let viewer = reader.viewer.clone();
    let screen = home.ask(move |door, moment| door.piece(&viewer, piece, moment));
    let cook = match screen.await {
        Ok(screen) => screen.cook,
        Err(trouble) => return super::again(&home, &reader, typed, trouble).await,
    };
    let next = match slip.as_str() {
        "split" | "join" => Page::Now(cook),
        _ => Page::Meat(piece),
    };
    take(
        &home,
        &reader,
        typed,
        |reading| {
            let (viewer, of) = (reading.say.viewer(), (cook, piece));
            meat_slip(viewer, of, &slip, reading.typed, reading.moment)
        },
        |_, _| next,
    )
    .await
}
