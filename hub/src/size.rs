//! What is too large to be taken is told so in a sentence, before anything reads it.

use crate::{app, forms, home::Home, pages, viewer::Reader, words::words};
use axum::{
    body::{Body, to_bytes},
    extract::State,
    http::{Request, StatusCode, header},
    middleware::Next,
    response::Response,
};
use std::sync::Arc;

/// So much of what is refused is read and let go, bytes: a browser shows an answer only once all was sent. Common practice,
/// no source.
const READ_OUT: usize = 64 * 1024 * 1024;

/// Refuses a form that says it is larger than any that is taken.
pub async fn bound(
    State(_): State<Arc<Home>>,
    reader: Reader,
    request: Request<Body>,
    next: Next,
) -> Response {
    let words = words(reader.viewer.locale);
    let kind = request.headers().get(header::CONTENT_TYPE);
    let is_parted = kind.is_some_and(|kind| kind.as_bytes().starts_with(b"multipart/"));
    let (most, sentence) = match (request.uri().path().ends_with("/file"), is_parted) {
        (true, true) => (forms::file::FILE_BYTES_MAX, words.file_too_large),
        (true, false) => (forms::file::ROWS_BYTES_MAX, words.file_too_large),
        (false, _) => (app::FORM_BYTES_MAX, words.too_large),
    };
    let length = request.headers().get(header::CONTENT_LENGTH);
    let length = length.and_then(|value| value.to_str().ok()?.parse::<usize>().ok());
    if length.is_none_or(|length| length <= most) {
        return next.run(request).await;
    }
    let _ = to_bytes(request.into_body(), READ_OUT).await;
    pages::answer(
        StatusCode::PAYLOAD_TOO_LARGE,
        pages::plain(&reader, sentence),
    )
}
