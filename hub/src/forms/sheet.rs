//! The run sheet of a cook as it goes out as a calendar file.

use super::handed;
use crate::{demo, home::Home, pages::troubled, viewer::Reader};
use axum::{
    extract::{Path, State},
    http::StatusCode,
    response::{IntoResponse, Response},
};
use slowbend_core::ids::CookId;
use std::sync::Arc;

/// The sheet as a calendar file; none where there is no sheet.
pub async fn calendar(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Path(cook): Path<uuid::Uuid>,
) -> Response {
    let reader = demo::reader_of(&home, &reader);
    let viewer = reader.viewer.clone();
    let made = home.ask(move |door, moment| door.run_sheet(&viewer, CookId(cook), moment));
    match made.await {
        Ok(screen) if screen.calendar.is_empty() => StatusCode::NOT_FOUND.into_response(),
        Ok(screen) => handed::file("text/calendar; charset=utf-8", None, screen.calendar),
        Err(trouble) => troubled(&reader, &trouble, StatusCode::NOT_FOUND),
    }
}
