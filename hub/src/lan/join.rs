//! Letting phones in: the page with the code, which only this machine shows, and the exchange of the secret for a cookie.
//! Start at [`routes`].

use crate::{
    forms,
    home::Home,
    pages::{Page, answer, plain},
    viewer::Reader,
};
use axum::{
    Router,
    extract::{Path, State},
    http::{HeaderName, HeaderValue, StatusCode, header},
    response::{IntoResponse, Response},
    routing::{get, post},
};
use slowbend_core::words::Words;
use std::sync::Arc;

/// The addresses of this part.
pub fn routes(home: Arc<Home>) -> Router {
    Router::new()
        .route("/join/{secret}", get(join))
        .route("/phones/new-code", post(new_code))
        .route("/phones/send-away", post(send_away))
        .with_state(home)
}

/// Lets in whoever brings the secret; a page says what to do to whoever does not.
async fn join(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Path(secret): Path<String>,
) -> Response {
    let admitted = home.lan.get().and_then(|lan| lan.keys.admit(&secret));
    let Some(set) = admitted.and_then(|cookie| HeaderValue::from_str(&cookie).ok()) else {
        let sentence = Words::of(&reader.viewer).text("phones-old-code");
        return answer(StatusCode::FORBIDDEN, plain(&reader, &sentence));
    };
    let headers: [(HeaderName, HeaderValue); 3] = [
        (header::SET_COOKIE, set),
        (header::LOCATION, HeaderValue::from_static("/")),
        (header::CACHE_CONTROL, HeaderValue::from_static("no-store")),
    ];
    (StatusCode::SEE_OTHER, headers).into_response()
}

async fn new_code(State(home): State<Arc<Home>>, reader: Reader) -> Response {
    if let Some(lan) = home.lan.get() {
        lan.keys.invite_anew();
    }
    told(&home, &reader, "phones-new-code-made")
}

async fn send_away(State(home): State<Arc<Home>>, reader: Reader) -> Response {
    let sent = home.lan.get().map_or(Ok(()), |lan| lan.keys.send_away());
    match sent {
        Ok(()) => told(&home, &reader, "phones-sent-away"),
        Err(reason) => answer(StatusCode::SERVICE_UNAVAILABLE, plain(&reader, &reason)),
    }
}

fn told(home: &Home, reader: &Reader, key: &'static str) -> Response {
    let said = Words::of(&reader.viewer).text(key);
    forms::on_saying(home, Page::Phones, &said)
}
