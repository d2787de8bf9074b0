//! What is written down during a cook: the slips of core.

use super::take;
use crate::{home::Home, pages::Page, typed::Typed, viewer::Reader};
use axum::{
    Form,
    extract::{Path, State},
    response::Response,
};
use slowbend_core::{forms::cook_slip, ids::CookId};
use std::sync::Arc;

/// Records what was written down, then shows what is next; what belongs to a page of its own shows there.
pub async fn post(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Path((cook, slip)): Path<(uuid::Uuid, String)>,
    Form(fields): Form<Vec<(String, String)>>,
) -> Response {
    let cook = CookId(cook);
    take(
        &home,
        &reader,
        Typed::from(fields),
        |reading| {
            cook_slip(
                reading.say.viewer(),
                cook,
                &slip,
                reading.typed,
                reading.moment,
            )
        },
        |back, _| match back {
            Page::Pits(_)
            | Page::Dishes(_)
            | Page::Kitchen(_)
            | Page::Plan(_)
            | Page::Fire(..)
            | Page::Watch(_)
            | Page::FireOut(..) => back,
            _ => Page::Now(cook),
        },
    )
    .await
}
