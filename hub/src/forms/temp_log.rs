//! The temperature log of a cook as a file.

use super::handed;
use crate::{demo, home::Home, pages::troubled, viewer::Reader};
use axum::{
    extract::{Path, State},
    http::StatusCode,
    response::Response,
};
use slowbend_core::ids::CookId;
use std::sync::Arc;

/// The file, in the reader's language and units.
pub async fn file(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Path(cook): Path<uuid::Uuid>,
) -> Response {
    let reader = demo::reader_of(&home, &reader);
    let viewer = reader.viewer.clone();
    let made = home.ask(move |door, moment| door.temp_log(&viewer, CookId(cook), moment));
    match made.await {
        Ok(screen) => handed::file(
            "text/csv; charset=utf-8",
            Some(&screen.file_name),
            screen.csv,
        ),
        Err(trouble) => troubled(&reader, &trouble, StatusCode::NOT_FOUND),
    }
}
