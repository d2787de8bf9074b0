//! Open pages hear of a change, and let go when the program ends.

use super::{cook, home, post, token};
use crate::app::app;
use axum::{
    body::Body,
    http::{Request, StatusCode, header},
};
use futures_util::StreamExt;
use tower::ServiceExt;

#[tokio::test]
async fn a_change_is_announced_to_an_open_page_and_the_end_too() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let request = Request::get("/live")
        .header(header::HOST, "127.0.0.1:7410")
        .body(Body::empty())
        .unwrap();
    let answer = app(home.clone()).oneshot(request).await.unwrap();
    assert_eq!(answer.headers()[header::CONTENT_TYPE], "text/event-stream");
    let mut events = answer.into_body().into_data_stream();
    let mut next = async || {
        events
            .next()
            .await
            .map(|event| String::from_utf8(event.unwrap().to_vec()).unwrap())
    };
    // Browsers pass over an event without data.
    assert_eq!(next().await.unwrap(), "event: hello\ndata: hello\n\n");
    post(
        &home,
        &format!("{now}/note"),
        &[("token", &token()), ("back", &now), ("text", "Wind.")],
    )
    .await;
    assert_eq!(next().await.unwrap(), "event: changed\ndata: changed\n\n");
    home.close();
    assert_eq!(next().await, None);
}

#[tokio::test]
async fn what_rings_is_listed_until_a_page_rang() {
    let (_folder, home) = home();
    cook(&home, "Regatta lunch").await;
    home.set_clock(super::NOW + 3 * slowbend_core::moment::HOUR);
    let rings = super::get(&home, "/rings").await;
    assert_eq!(rings.status, StatusCode::OK);
    let list: Vec<serde_json::Value> = serde_json::from_str(&rings.body).unwrap();
    let ids: Vec<String> = list
        .iter()
        .flat_map(|ring| ring["covers"].as_array().unwrap())
        .map(|id| id.as_str().unwrap().to_owned())
        .collect();
    assert!(!ids.is_empty(), "serving time has come: that rings");
    let fields: Vec<(&str, &str)> = ids.iter().map(|id| ("id", id.as_str())).collect();
    let rang = post(&home, "/rang", &fields).await;
    assert_eq!(rang.status, StatusCode::NO_CONTENT);
    let left: Vec<serde_json::Value> =
        serde_json::from_str(&super::get(&home, "/rings").await.body).unwrap();
    assert!(left.len() < list.len(), "{left:?}");
}
