//! Who may talk to this server: a browser on this machine, on our own pages. Everybody else is told why not.
//!
//! A page elsewhere could otherwise point a name of its own at this machine (DNS rebinding), which the Host check stops,
//! or send a form here, which the Origin check stops.

use crate::home::Home;
use axum::{
    body::Body,
    extract::State,
    http::{HeaderMap, HeaderValue, Method, Request, StatusCode, header},
    middleware::Next,
    response::{IntoResponse, Response},
};
use std::sync::Arc;

/// Nothing from elsewhere, nothing inline, no frame around us (Content Security Policy Level 3, from memory).
pub const POLICY: &str = "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; connect-src 'self'; \
                          manifest-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

const FOREIGN_HOST: &str = "Slowbend answers only on this machine, under the address it printed when it started. \
                            Open that address.\n";
const FOREIGN_ORIGIN: &str = "This was sent from another site, so nothing was recorded. Open Slowbend's own page and do \
                              it there.\n";
const NO_ORIGIN: &str = "This did not say which page it came from, so nothing was recorded. Use the form on Slowbend's \
                         own page; a program must send the header Origin with Slowbend's address.\n";

/// Lets through what comes from our own pages on this machine, and puts the guarding headers on every answer.
pub async fn guard(State(home): State<Arc<Home>>, request: Request<Body>, next: Next) -> Response {
    let mut answer = match refusal(request.method(), request.headers(), home.port) {
        None => next.run(request).await,
        Some((status, reason)) => (status, reason).into_response(),
    };
    let headers = answer.headers_mut();
    for (name, value) in [
        (header::CONTENT_SECURITY_POLICY, POLICY),
        (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
        (header::REFERRER_POLICY, "same-origin"),
        (header::X_FRAME_OPTIONS, "DENY"),
    ] {
        headers.insert(name, HeaderValue::from_static(value));
    }
    answer
}

fn refusal(method: &Method, headers: &HeaderMap, port: u16) -> Option<(StatusCode, &'static str)> {
    if !is_ours(text(headers, &header::HOST).unwrap_or(""), port) {
        return Some((StatusCode::MISDIRECTED_REQUEST, FOREIGN_HOST));
    }
    if *method == Method::GET || *method == Method::HEAD {
        return None;
    }
    let site = headers
        .get("sec-fetch-site")
        .and_then(|value| value.to_str().ok());
    match (text(headers, &header::ORIGIN), site) {
        (Some(origin), _) => {
            let ours = origin
                .strip_prefix("http://")
                .is_some_and(|host| is_ours(host, port));
            (!ours).then_some((StatusCode::FORBIDDEN, FOREIGN_ORIGIN))
        }
        (None, Some("same-origin")) => None,
        (None, Some(_)) => Some((StatusCode::FORBIDDEN, FOREIGN_ORIGIN)),
        (None, None) => Some((StatusCode::FORBIDDEN, NO_ORIGIN)),
    }
}

fn text<'a>(headers: &'a HeaderMap, name: &header::HeaderName) -> Option<&'a str> {
    let value = headers.get(name)?;
    Some(value.to_str().unwrap_or("unreadable"))
}

/// Whether `host` is a name of this machine with our port.
fn is_ours(host: &str, port: u16) -> bool {
    let Some((name, found)) = host.rsplit_once(':') else {
        return false;
    };
    let name = name.to_ascii_lowercase();
    found.parse() == Ok(port) && matches!(name.as_str(), "127.0.0.1" | "localhost" | "[::1]")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn status(method: Method, pairs: &[(&str, &str)]) -> Option<u16> {
        let mut headers = HeaderMap::new();
        for (name, value) in pairs {
            let name: header::HeaderName = name.parse().unwrap();
            headers.insert(name, value.parse().unwrap());
        }
        refusal(&method, &headers, 7410).map(|(status, _)| status.as_u16())
    }

    #[test]
    fn only_names_of_this_machine_with_our_port_are_answered() {
        for host in [
            "127.0.0.1:7410",
            "localhost:7410",
            "LOCALHOST:7410",
            "[::1]:7410",
        ] {
            assert_eq!(status(Method::GET, &[("host", host)]), None, "{host}");
        }
        for host in [
            "",
            "127.0.0.1",
            "127.0.0.1:80",
            "evil.example:7410",
            "127.0.0.1.evil.example:7410",
            "127.0.0.2:7410",
            "localhost:x",
        ] {
            assert_eq!(status(Method::GET, &[("host", host)]), Some(421), "{host}");
        }
        assert_eq!(status(Method::GET, &[]), Some(421));
    }

    #[test]
    fn a_form_is_taken_only_from_our_own_pages() {
        let post = |pairs: &[(&str, &str)]| {
            let mut all = vec![("host", "localhost:7410")];
            all.extend_from_slice(pairs);
            status(Method::POST, &all)
        };
        assert_eq!(post(&[("origin", "http://localhost:7410")]), None);
        assert_eq!(post(&[("sec-fetch-site", "same-origin")]), None);
        for origin in [
            "null",
            "https://localhost:7410",
            "http://localhost:7411",
            "http://evil.example",
            "\u{e9}",
        ] {
            assert_eq!(post(&[("origin", origin)]), Some(403), "{origin}");
        }
        assert_eq!(
            post(&[("origin", "null"), ("sec-fetch-site", "same-origin")]),
            Some(403)
        );
        assert_eq!(post(&[("sec-fetch-site", "cross-site")]), Some(403));
        assert_eq!(post(&[]), Some(403));
    }
}
