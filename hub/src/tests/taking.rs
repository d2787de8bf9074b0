//! Long files on the page: the rest goes on, and nothing is kept by half.

use super::{Answer, cook, entries, get, get_in, home, post, send, token};
use crate::{
    home::Home,
    taking::{State, Takings},
};
use axum::{
    body::Body,
    http::{Request, StatusCode, header},
};
use slowbend_core::{
    ids::CookId,
    readings::{Answers, Guess, ImportPlan, guess},
    words::Viewer,
};
use std::{
    io::{self, Read},
    sync::{Arc, mpsc},
    time::Duration,
};

const HEAD: &str = "time,grate (°F)\n2026-06-13T10:00:00,225\n2026-06-13T10:00:01,226\n";

fn plan() -> ImportPlan {
    let answers = Answers {
        source: "box".into(),
        zone: "America/Chicago".into(),
        ..Answers::default()
    };
    let Guess::Plan(plan) = guess(HEAD.as_bytes(), &answers).unwrap() else {
        panic!("the head says all")
    };
    plan
}

/// A file that comes to its end only once it is let go.
struct Held {
    rows: io::Cursor<Vec<u8>>,
    until: mpsc::Receiver<()>,
}

impl Read for Held {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        match self.rows.read(into)? {
            0 => self.until.recv().map_or(Ok(0), |()| Ok(0)),
            read => Ok(read),
        }
    }
}

fn held(home: &Arc<Home>, now: &str) -> (Arc<crate::taking::Taking>, mpsc::Sender<()>) {
    let (go, until) = mpsc::channel();
    let rows = io::Cursor::new(HEAD.as_bytes().to_vec());
    let cook: CookId = now[6..].parse().unwrap();
    let viewer = Viewer::default_for(home.device);
    let twice = 2 * HEAD.len() as u64;
    let taking = Takings::begin(
        home,
        &viewer,
        (cook, &token()),
        (Held { rows, until }, twice),
        plan(),
    );
    (taking, go)
}

async fn ended(taking: &crate::taking::Taking) -> State {
    for _ in 0..500 {
        match taking.state() {
            State::Reading | State::Keeping => tokio::time::sleep(Duration::from_millis(10)).await,
            end => return end,
        }
    }
    panic!("it never ended: {:?}", taking.state());
}

fn page_of(now: &str, taking: &crate::taking::Taking) -> String {
    format!("{now}/taking/{:032x}", taking.number)
}

#[tokio::test(flavor = "multi_thread")]
async fn while_a_file_is_read_every_page_answers_and_its_own_tells_how_far_it_is() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let before = entries(&home);
    let (taking, go) = held(&home, &now);
    while taking.percent() < 50 {
        tokio::time::sleep(Duration::from_millis(5)).await;
    }
    let path = page_of(&now, &taking);
    for language in ["en-US", "es-US"] {
        let page = get_in(&home, &path, language).await;
        assert_eq!(page.status, StatusCode::OK);
        assert!(
            page.body.contains("50 %") && page.body.contains("<progress max=\"100\" value=\"50\""),
            "{}",
            page.body
        );
        assert!(
            page.body.contains("aria-live=\"polite\"")
                && page.body.contains("http-equiv=\"refresh\" content=\"2\"")
        );
        assert!(!page.body.contains('⟨'), "{}", page.body);
    }
    let fresh = token();
    let note = [("token", &*fresh), ("back", &*now), ("text", "Wind.")];
    assert_eq!(
        post(&home, &format!("{now}/note"), &note).await.status,
        StatusCode::SEE_OTHER
    );
    assert_eq!(entries(&home), before + 1, "only the note");
    go.send(()).unwrap();
    assert!(matches!(ended(&taking).await, State::Taken(report) if report.taken == 2));
    let page = get(&home, &path).await.body;
    assert!(
        page.contains("Readings taken: 2") && !page.contains("http-equiv=\"refresh\""),
        "{page}"
    );
    assert_eq!(entries(&home), before + 2);
}

#[tokio::test(flavor = "multi_thread")]
async fn one_that_is_stopped_leaves_nothing_and_says_so() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let before = entries(&home);
    let (taking, go) = held(&home, &now);
    let stop = format!("{}/stop", page_of(&now, &taking));
    assert_eq!(
        post(&home, &stop, &[("token", &token())]).await.status,
        StatusCode::SEE_OTHER
    );
    drop(go);
    assert!(matches!(ended(&taking).await, State::Stopped));
    let page = get(&home, &page_of(&now, &taking)).await.body;
    assert!(
        page.contains("Stopped. Nothing of the file was kept."),
        "{page}"
    );
    assert_eq!(entries(&home), before);
}

#[tokio::test(flavor = "multi_thread")]
async fn one_that_the_program_did_not_live_to_end_is_told_after_the_restart() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let before = entries(&home);
    let (taking, go) = held(&home, &now);
    home.close();
    drop(go);
    assert!(matches!(ended(&taking).await, State::Stopped));
    assert_eq!(entries(&home), before);
    let gone = get(&home, &format!("{now}/taking/{:032x}", 5)).await;
    assert_eq!(gone.status, StatusCode::OK);
    assert!(
        gone.body.contains("Nothing is kept by half"),
        "{}",
        gone.body
    );
}

/// Sends a form with a file, as a browser does without scripts.
async fn post_file(
    home: &Arc<Home>,
    path: &str,
    token: &str,
    rows: &str,
    fields: &[(&str, &str)],
) -> Answer {
    let mut body = String::new();
    let write = path.replace("/file", "/write");
    let ours = [("token", token), ("form", "file"), ("back", &*write)];
    for (name, value) in ours.iter().chain(fields) {
        body += &format!(
            "--mark\r\nContent-Disposition: form-data; name=\"{name}\"\r\n\r\n{value}\r\n"
        );
    }
    body += &format!(
        "--mark\r\nContent-Disposition: form-data; name=\"file\"; filename=\"box.csv\"\r\nContent-Type: text/csv\r\n\r\n{rows}\r\n--mark--\r\n"
    );
    let request = Request::post(path)
        .header(header::HOST, "127.0.0.1:7410")
        .header(header::ORIGIN, "http://127.0.0.1:7410")
        .header(header::CONTENT_TYPE, "multipart/form-data; boundary=mark")
        .header(header::CONTENT_LENGTH, body.len());
    send(home, request.body(Body::from(body)).unwrap()).await
}

#[tokio::test(flavor = "multi_thread")]
async fn a_chosen_file_is_taken_without_scripts_and_twice_is_once() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let (path, token) = (format!("{now}/file"), token());
    let before = entries(&home);
    for _ in 0..2 {
        let sent = post_file(&home, &path, &token, HEAD, &[]).await;
        assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
        assert!(
            get(&home, &sent.to.unwrap())
                .await
                .body
                .contains("Readings taken: 2")
        );
    }
    assert_eq!(entries(&home), before + 1);
    let page = get(&home, &format!("{now}/readings")).await.body;
    assert!(
        page.contains("box, grate"),
        "the file names the instrument: {page}"
    );
}

#[tokio::test(flavor = "multi_thread")]
async fn a_file_that_leaves_something_open_need_not_be_sent_again() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let (path, token) = (format!("{now}/file"), token());
    let rows = "time,grate\n2026-06-13T10:00,225\n2026-06-13T10:01,226\n";
    let asked = post_file(&home, &path, &token, rows, &[]).await;
    assert_eq!(asked.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(
        asked.body.contains("box.csv is still here"),
        "{}",
        asked.body
    );
    let write = format!("{now}/write");
    let answer = [
        ("token", &*token),
        ("form", "file"),
        ("back", &*write),
        ("unit", "f"),
    ];
    let taken = post(&home, &path, &answer).await;
    assert_eq!(taken.status, StatusCode::SEE_OTHER, "{}", taken.body);
    assert!(
        get(&home, &taken.to.unwrap())
            .await
            .body
            .contains("Readings taken: 2")
    );
}
