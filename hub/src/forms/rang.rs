//! A page rang: that is kept, so that this device does not ring for it again.

use crate::{home::Home, typed::Typed, viewer::Reader};
use axum::{
    Form,
    extract::State,
    http::StatusCode,
    response::{IntoResponse, Response},
};
use slowbend_core::alarms::AlarmId;
use std::sync::Arc;

/// Marks each `id` as rung; ids that are none are passed over.
pub async fn post(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Form(fields): Form<Vec<(String, String)>>,
) -> Response {
    let ids: Vec<AlarmId> = ids(&Typed::from(fields));
    let rang = home.ask(move |door, moment| door.rang(&ids, moment)).await;
    match rang {
        Ok(()) => {
            home.changed();
            StatusCode::NO_CONTENT.into_response()
        }
        Err(trouble) => crate::pages::troubled(&reader, &trouble, StatusCode::UNPROCESSABLE_ENTITY),
    }
}

fn ids(typed: &Typed) -> Vec<AlarmId> {
    let given = typed.0.iter().filter(|(name, _)| name == "id");
    given.filter_map(|(_, id)| id.parse().ok()).collect()
}
