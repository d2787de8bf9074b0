//! What goes out as a file: one way for all, so that each has its kind and is kept by nobody on the way.

use axum::{
    http::header,
    response::{IntoResponse, Response},
};

/// `text` of this kind as a file to be saved; `name` is letters, digits, hyphens and a dot, or nothing to let the browser choose.
pub fn file(kind: &'static str, name: Option<&str>, text: String) -> Response {
    let saved = match name {
        Some(name) => format!("attachment; filename=\"{name}\""),
        None => "attachment".to_owned(),
    };
    let headers = [
        (header::CONTENT_TYPE, kind.to_owned()),
        (header::CONTENT_DISPOSITION, saved),
        (header::CACHE_CONTROL, "no-store".to_owned()),
    ];
    (headers, text).into_response()
}
