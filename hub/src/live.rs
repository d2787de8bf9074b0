//! Word to open pages that something is not as it was: server-sent events. The page then fetches itself anew.
//!
//! Nothing is sent while nothing changes, but a breath each half minute that keeps the line open.

use crate::{home::Home, viewer::Reader};
use axum::{
    Json,
    extract::State,
    response::{
        IntoResponse, Response, Sse,
        sse::{Event, KeepAlive},
    },
};
use futures_util::{Stream, stream};
use serde::Serialize;
use slowbend_core::alarms::{AlarmId, Urgency};
use std::{convert::Infallible, sync::Arc, time::Duration};
use tokio::sync::{broadcast, watch};

/// How often the line is kept open, seconds: below the minute after which idle connections are cut. Common practice,
/// no source.
const BREATH_S: u64 = 30;

/// The stream of changes: first `hello`, then `changed` each time.
pub async fn events(
    State(home): State<Arc<Home>>,
) -> Sse<impl Stream<Item = Result<Event, Infallible>>> {
    let listening = Listening {
        changes: home.changes(),
        closing: home.closing(),
        greeted: false,
    };
    let events = stream::unfold(listening, |mut listening| async move {
        let event = listening.next().await?;
        Some((Ok(event), listening))
    });
    Sse::new(events).keep_alive(KeepAlive::new().interval(Duration::from_secs(BREATH_S)))
}

/// An event with its name as its data too: browsers pass over one that has no data (HTML, server-sent events, "dispatch
/// the event"; from memory).
fn event(name: &'static str) -> Event {
    Event::default().event(name).data(name)
}

struct Listening {
    changes: broadcast::Receiver<()>,
    closing: watch::Receiver<bool>,
    greeted: bool,
}

impl Listening {
    /// The next event; none once the program ends.
    async fn next(&mut self) -> Option<Event> {
        if !self.greeted {
            self.greeted = true;
            return Some(event("hello"));
        }
        if *self.closing.borrow() {
            return None;
        }
        tokio::select! {
            // Whoever is so slow that changes were dropped still hears that there was one.
            heard = self.changes.recv() => match heard {
                Ok(()) | Err(broadcast::error::RecvError::Lagged(_)) => Some(event("changed")),
                Err(broadcast::error::RecvError::Closed) => None,
            },
            _ = self.closing.wait_for(|closing| *closing) => None,
        }
    }
}

/// One alarm that a page rings.
#[derive(Serialize)]
struct Ring {
    covers: Vec<AlarmId>,
    urgency: Urgency,
    title: String,
    body: String,
    cook: Option<String>,
    place: Option<String>,
}

/// What rings now and is not silent, loudest first.
pub async fn rings(State(home): State<Arc<Home>>, reader: Reader) -> Response {
    let viewer = reader.viewer.clone();
    let found = home.ask(move |door, moment| {
        let list = door.alarms(&viewer, moment, crate::home::ALARMS)?;
        let due = list
            .alarms
            .into_iter()
            .filter(|alarm| alarm.at <= moment.utc_ms && !alarm.silent);
        let mut due: Vec<_> = due
            .filter(|alarm| alarm.urgency != Urgency::Quiet)
            .collect();
        due.sort_by_key(|alarm| alarm.urgency);
        Ok(due)
    });
    match found.await {
        Ok(due) => Json(due.into_iter().map(ring).collect::<Vec<_>>()).into_response(),
        Err(trouble) => crate::pages::troubled(
            &reader,
            &trouble,
            axum::http::StatusCode::UNPROCESSABLE_ENTITY,
        ),
    }
}

fn ring(alarm: slowbend_core::alarms::Alarm) -> Ring {
    Ring {
        covers: alarm.covers,
        urgency: alarm.urgency,
        title: alarm.title,
        body: alarm.body,
        cook: alarm.cook.map(|cook| crate::pages::Page::Now(cook).path()),
        place: alarm
            .place
            .map(|place| crate::pages::Page::from(place).path()),
    }
}
