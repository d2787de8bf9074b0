//! Who may talk to this server: a browser on this machine, or a guest on the home's network, on our own pages. Everybody
//! else is told why not. Start at [`guard`].
//!
//! A page elsewhere could otherwise point a name of its own at this machine (DNS rebinding), which the Host check stops,
//! or send a form here, which the Origin check stops. A guest must also show the cookie that the invitation gave.

use crate::{
    home::Home,
    lan::{self, Lan},
    pages,
    viewer::{Reader, cookie},
};
use axum::{
    body::Body,
    extract::State,
    http::{HeaderMap, HeaderValue, Method, Request, StatusCode, header},
    middleware::Next,
    response::{IntoResponse, Response},
};
use slowbend_core::words::Words;
use std::sync::Arc;

/// The way a request came in.
#[derive(Clone)]
pub enum Gate {
    /// From this machine, on this port.
    Here(u16),
    /// From the home's network.
    Lan(Arc<Lan>),
}

/// Nothing from elsewhere, nothing inline, no frame around us (Content Security Policy Level 3, from memory).
pub const POLICY: &str = "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; connect-src 'self'; \
                          manifest-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

/// What is refused, and the message that says what to do instead.
type Refusal = (StatusCode, &'static str);

const FOREIGN_HOST: Refusal = (StatusCode::MISDIRECTED_REQUEST, "guard-foreign-host");
const FOREIGN_ORIGIN: Refusal = (StatusCode::FORBIDDEN, "guard-foreign-origin");
const NO_ORIGIN: Refusal = (StatusCode::FORBIDDEN, "guard-no-origin");
const NOT_A_GUEST: Refusal = (StatusCode::FORBIDDEN, "guard-not-a-guest");
const ONLY_HERE: Refusal = (StatusCode::FORBIDDEN, "guard-only-here");

/// Lets through what comes from our own pages, and puts the guarding headers on every answer.
pub async fn guard(
    State((home, gate)): State<(Arc<Home>, Gate)>,
    request: Request<Body>,
    next: Next,
) -> Response {
    let path = request.uri().path();
    let mut answer = match gate.refusal(request.method(), request.headers(), path) {
        None => next.run(request).await,
        Some(refusal) => refused(&home, request.headers(), refusal),
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

/// A page with the sentence; to another name than ours only the sentence, for its page is not ours to lead anywhere.
fn refused(home: &Home, headers: &HeaderMap, (status, key): Refusal) -> Response {
    let reader = Reader::of(headers, home);
    let sentence = Words::of(&reader.viewer).text(key);
    match status {
        StatusCode::MISDIRECTED_REQUEST => (status, format!("{sentence}\n")).into_response(),
        _ => pages::answer(status, pages::plain(&reader, &sentence)),
    }
}

impl Gate {
    fn refusal(&self, method: &Method, headers: &HeaderMap, path: &str) -> Option<Refusal> {
        if !self.is_ours(text(headers, &header::HOST).unwrap_or("")) {
            return Some(FOREIGN_HOST);
        }
        let is_read = *method == Method::GET || *method == Method::HEAD;
        self.uninvited(headers, path)
            .or_else(|| (!is_read).then(|| self.foreign(headers)).flatten())
    }

    /// Why a form is not from our own page.
    fn foreign(&self, headers: &HeaderMap) -> Option<Refusal> {
        let site = headers
            .get("sec-fetch-site")
            .and_then(|value| value.to_str().ok());
        match (text(headers, &header::ORIGIN), site) {
            (Some(origin), _) => {
                let ours = origin
                    .strip_prefix(self.scheme())
                    .is_some_and(|host| self.is_ours(host));
                (!ours).then_some(FOREIGN_ORIGIN)
            }
            (None, Some("same-origin")) => None,
            (None, Some(_)) => Some(FOREIGN_ORIGIN),
            (None, None) => Some(NO_ORIGIN),
        }
    }

    /// Why nobody on the network may have this without being let in, or at all. Files of style hold nothing of a cook.
    fn uninvited(&self, headers: &HeaderMap, path: &str) -> Option<Refusal> {
        let Self::Lan(lan) = self else { return None };
        if path.starts_with("/join/") || path.starts_with("/assets/") {
            return None;
        }
        let is_guest = cookie(headers, lan::COOKIE).is_some_and(|value| lan.keys.knows(value));
        if !is_guest {
            return Some(NOT_A_GUEST);
        }
        let of_the_host = path == "/phones" || path.starts_with("/phones/");
        of_the_host.then_some(ONLY_HERE)
    }

    const fn scheme(&self) -> &'static str {
        match self {
            Self::Here(_) => "http://",
            Self::Lan(_) => "https://",
        }
    }

    /// Whether `host` is a name of ours with our port.
    fn is_ours(&self, host: &str) -> bool {
        match self {
            Self::Here(port) => is_this_machine(host, *port),
            Self::Lan(lan) => host == lan.host(),
        }
    }
}

fn text<'a>(headers: &'a HeaderMap, name: &header::HeaderName) -> Option<&'a str> {
    let value = headers.get(name)?;
    Some(value.to_str().unwrap_or("unreadable"))
}

fn is_this_machine(host: &str, port: u16) -> bool {
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
        let refused = Gate::Here(7410).refusal(&method, &headers, "/");
        refused.map(|(status, _)| status.as_u16())
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
