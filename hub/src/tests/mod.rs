//! The pages, asked in-process: no port, no browser, a clock that stands.

mod acts;
mod ahead;
mod assets;
mod card;
mod contrast;
mod cuts;
mod demo;
mod faults;
mod guard;
mod kitchen;
mod lan;
mod live;
mod meat;
mod pages;
mod readings;
mod safety;
mod screens;
mod sheet_run;
mod taking;

use crate::{app::app, clock::Clock, data, home::Home};
use axum::{
    body::{Body, to_bytes},
    http::{Request, Response, StatusCode, header},
};
use slowbend_core::door::{OpenArgs, Slowbend};
use std::{path::Path, sync::Arc};
use tower::ServiceExt;

/// A Saturday in June, five past eleven in Chicago.
pub const NOW: i64 = 1_781_366_700_000;

/// The door to the database in `place`.
pub fn door(place: &Path, clock: &Clock) -> Result<Slowbend, slowbend_core::error::Trouble> {
    let args = OpenArgs {
        place: place.to_owned(),
        install_id: "install".into(),
        entropy: data::entropy(),
    };
    Slowbend::open(args, &clock.moment("America/Chicago"))
}

/// An empty home in a folder of its own.
pub fn home() -> (tempfile::TempDir, Arc<Home>) {
    let folder = tempfile::tempdir().unwrap();
    let clock = Clock::Standing(NOW.into());
    let mut door = door(folder.path(), &clock).unwrap();
    let device = door.device().unwrap();
    let data = folder.path().to_owned();
    let home = Home::new(door, device, clock, "America/Chicago".into(), data, 7410);
    (folder, home)
}

/// What came back.
pub struct Answer {
    pub status: StatusCode,
    pub to: Option<String>,
    pub cookie: Option<String>,
    pub body: String,
}

pub async fn send(home: &Arc<Home>, request: Request<Body>) -> Answer {
    let answer: Response<Body> = app(home.clone()).oneshot(request).await.unwrap();
    let text = |name| {
        answer
            .headers()
            .get(name)
            .map(|value: &header::HeaderValue| value.to_str().unwrap().to_owned())
    };
    let (status, to, cookie) = (
        answer.status(),
        text(header::LOCATION),
        text(header::SET_COOKIE),
    );
    let body = to_bytes(answer.into_body(), usize::MAX).await.unwrap();
    Answer {
        status,
        to,
        cookie,
        body: String::from_utf8_lossy(&body).into_owned(),
    }
}

/// Asks for a page in `language`.
pub async fn get_in(home: &Arc<Home>, path: &str, language: &str) -> Answer {
    let request = Request::get(path)
        .header(header::HOST, "127.0.0.1:7410")
        .header(header::ACCEPT_LANGUAGE, language);
    send(home, request.body(Body::empty()).unwrap()).await
}

/// Asks for a page.
pub async fn get(home: &Arc<Home>, path: &str) -> Answer {
    get_in(home, path, "en-US").await
}

/// Sends a form as our own page does.
pub async fn post(home: &Arc<Home>, path: &str, fields: &[(&str, &str)]) -> Answer {
    let request = Request::post(path)
        .header(header::HOST, "127.0.0.1:7410")
        .header(header::ORIGIN, "http://127.0.0.1:7410")
        .header(header::CONTENT_TYPE, "application/x-www-form-urlencoded");
    let body = encoded(fields);
    let request = request.header(header::CONTENT_LENGTH, body.len());
    send(home, request.body(Body::from(body)).unwrap()).await
}

/// Sends a form that a file may come with; an empty `file` is none chosen.
pub async fn post_file(
    home: &Arc<Home>,
    path: &str,
    fields: &[(&str, &str)],
    file: &str,
) -> Answer {
    const EDGE: &str = "edge-of-a-part";
    let mut body = String::new();
    for (name, value) in fields {
        body.push_str(&format!(
            "--{EDGE}\r\nContent-Disposition: form-data; name=\"{name}\"\r\n\r\n{value}\r\n"
        ));
    }
    body.push_str(&format!(
        "--{EDGE}\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.json\"\r\n\r\n{file}\r\n--{EDGE}--\r\n"
    ));
    let request = Request::post(path)
        .header(header::HOST, "127.0.0.1:7410")
        .header(header::ORIGIN, "http://127.0.0.1:7410")
        .header(
            header::CONTENT_TYPE,
            format!("multipart/form-data; boundary={EDGE}"),
        )
        .header(header::CONTENT_LENGTH, body.len());
    send(home, request.body(Body::from(body)).unwrap()).await
}

fn encoded(fields: &[(&str, &str)]) -> String {
    let escape = |text: &str| -> String {
        text.bytes()
            .map(|byte| match byte {
                b'a'..=b'z' | b'A'..=b'Z' | b'0'..=b'9' => char::from(byte).to_string(),
                _ => format!("%{byte:02X}"),
            })
            .collect()
    };
    let pairs = fields
        .iter()
        .map(|(name, value)| format!("{}={}", escape(name), escape(value)));
    pairs.collect::<Vec<_>>().join("&")
}

/// A token as a page would give it.
pub fn token() -> String {
    crate::once::token()
}

/// How many entries are recorded.
pub fn entries(home: &Arc<Home>) -> u64 {
    home.ask_here(|door, _| door.export(&mut std::io::sink()))
        .unwrap()
}

/// Starts a cook by its form, with one slab on a new drum; the address of its page.
pub async fn cook(home: &Arc<Home>, name: &str) -> String {
    let started = post(
        home,
        "/cook",
        &[
            ("token", &token()),
            ("form", "start"),
            ("back", "/"),
            ("name", name),
            ("serve", "2026-06-13T14:00"),
            ("people", "14"),
            ("cut-0", "spare_ribs"),
            ("weight-0", "3.5"),
            ("pit-0", "new"),
            ("pit-name", "The drum"),
            ("pit-kind", "drum"),
        ],
    )
    .await;
    assert_eq!(started.status, StatusCode::SEE_OTHER, "{}", started.body);
    started.to.unwrap().split('?').next().unwrap().to_owned()
}

/// Every address in `body` that begins with `start`.
pub fn links(body: &str, start: &str) -> Vec<String> {
    let found = body
        .split("href=\"")
        .skip(1)
        .filter_map(|rest| rest.split('"').next());
    found
        .filter(|link| link.starts_with(start))
        .map(str::to_owned)
        .collect()
}
