//! The demo's own addresses. Its pages are written as all pages are, with addresses from the root; on their way out they are
//! put under `/demo`. Start at [`front`].

use crate::{app::routes, home::Home, pages, viewer::Reader, words::words};
use axum::{
    body::{Body, to_bytes},
    extract::{Request, State},
    http::{HeaderMap, HeaderValue, StatusCode, Uri, header},
    response::Response,
};
use std::sync::Arc;
use tower::ServiceExt;

/// What the demo's addresses begin with.
pub const PREFIX: &str = "/demo";
/// The attributes of our pages that hold an address. What people typed cannot hold these letters: its quotes are escaped.
const ADDRESSES: [&str; 2] = [" href=\"/", " action=\"/"];
/// What stays where it is: files that all pages share, and the way back to the real pages ([`OUT`]).
const STAYS: [&str; 2] = ["assets/", "?own"];
/// The address of the real first page, from a page of the demo.
pub const OUT: &str = "/?own";

/// Hands a request to the demo's home, as if it had come to the root of it.
pub async fn front(State(home): State<Arc<Home>>, reader: Reader, request: Request) -> Response {
    let inner = home.demo().zip(inside(request.uri()));
    let Some((demo, uri)) = inner else {
        let missing = words(reader.viewer.locale).no_demo;
        return pages::answer(StatusCode::NOT_FOUND, pages::plain(&reader, missing));
    };
    let (mut parts, body) = request.into_parts();
    parts.uri = uri;
    // What the outer address was read as is no part of the inner one.
    parts.extensions.clear();
    let fresh = Request::from_parts(parts, body);
    match routes(demo).oneshot(fresh).await {
        Ok(answer) => under(answer).await,
        Err(never) => match never {},
    }
}

fn inside(uri: &Uri) -> Option<Uri> {
    let all = uri.path_and_query()?.as_str();
    all.strip_prefix(PREFIX)?.parse().ok()
}

/// The answer with its addresses put under [`PREFIX`].
pub async fn under(answer: Response) -> Response {
    let (mut parts, body) = answer.into_parts();
    let moved = parts.headers.get(header::LOCATION).and_then(prefixed);
    if let Some(moved) = moved {
        parts.headers.insert(header::LOCATION, moved);
    }
    if !is_page(&parts.headers) {
        return Response::from_parts(parts, body);
    }
    let bytes = to_bytes(body, usize::MAX).await.unwrap_or_default();
    let text = String::from_utf8_lossy(&bytes);
    let page = ADDRESSES.iter().fold(text.into_owned(), |page, attribute| {
        put_under(&page, attribute)
    });
    parts.headers.remove(header::CONTENT_LENGTH);
    Response::from_parts(parts, Body::from(page))
}

fn prefixed(location: &HeaderValue) -> Option<HeaderValue> {
    let to = location.to_str().ok().filter(|to| to.starts_with('/'))?;
    format!("{PREFIX}{to}").parse().ok()
}

fn is_page(headers: &HeaderMap) -> bool {
    let kind = headers.get(header::CONTENT_TYPE);
    kind.is_some_and(|kind| kind.as_bytes().starts_with(b"text/html"))
}

fn put_under(page: &str, attribute: &str) -> String {
    let mut parts = page.split(attribute);
    let mut out = parts.next().unwrap_or_default().to_owned();
    for rest in parts {
        let stays = STAYS.iter().any(|address| rest.starts_with(address));
        out.push_str(attribute);
        if !stays {
            out.push_str(&PREFIX[1..]);
            out.push('/');
        }
        out.push_str(rest);
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn addresses_move_and_words_and_shared_files_stay() {
        let page = r#"<a href="/cook/1"> href=&quot;/x <link href="/assets/a.css"><a href="/?own"><form action="/act">"#;
        let moved = ADDRESSES.iter().fold(page.to_owned(), |page, attribute| {
            put_under(&page, attribute)
        });
        assert_eq!(
            moved,
            r#"<a href="/demo/cook/1"> href=&quot;/x <link href="/assets/a.css"><a href="/?own"><form action="/demo/act">"#
        );
    }
}
