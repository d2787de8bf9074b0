//! Whoever is not our own page is told so, and nothing is recorded.

use super::{entries, get, home, send, token};
use axum::{
    body::Body,
    http::{Request, StatusCode, header},
};

#[tokio::test]
async fn a_name_that_was_pointed_at_this_machine_is_refused_on_every_address() {
    let (_folder, home) = home();
    for path in ["/", "/settings", "/live", "/assets/slowbend.js"] {
        let request = Request::get(path).header(header::HOST, "evil.example:7410");
        let answer = send(&home, request.body(Body::empty()).unwrap()).await;
        assert_eq!(answer.status, StatusCode::MISDIRECTED_REQUEST, "{path}");
        assert!(answer.body.contains("Open that address"), "{}", answer.body);
    }
}

#[tokio::test]
async fn a_form_from_another_site_is_refused_and_nothing_is_recorded() {
    let (_folder, home) = home();
    let before = entries(&home);
    for origin in [Some("http://evil.example"), Some("null"), None] {
        let mut request = Request::post("/cook")
            .header(header::HOST, "127.0.0.1:7410")
            .header(header::CONTENT_TYPE, "application/x-www-form-urlencoded");
        if let Some(origin) = origin {
            request = request.header(header::ORIGIN, origin);
        }
        let form = format!("token={}&name=Lunch", token());
        let answer = send(&home, request.body(Body::from(form)).unwrap()).await;
        assert_eq!(answer.status, StatusCode::FORBIDDEN, "{origin:?}");
        assert!(
            answer.body.contains("nothing was recorded"),
            "{}",
            answer.body
        );
    }
    assert_eq!(entries(&home), before);
}

#[tokio::test]
async fn nothing_inline_and_nothing_from_elsewhere_may_run() {
    let (_folder, home) = home();
    let answer = crate::app::app(home.clone());
    let request = Request::get("/").header(header::HOST, "localhost:7410");
    let answer = tower::ServiceExt::oneshot(answer, request.body(Body::empty()).unwrap())
        .await
        .unwrap();
    let policy = answer.headers()[header::CONTENT_SECURITY_POLICY]
        .to_str()
        .unwrap();
    assert!(
        policy.starts_with("default-src 'none'") && !policy.contains("unsafe"),
        "{policy}"
    );
    assert_eq!(answer.headers()[header::X_CONTENT_TYPE_OPTIONS], "nosniff");
    let body = get(&home, "/").await.body;
    assert!(!body.contains(" style=") && !body.contains(" onclick") && !body.contains("<style"));
    assert_eq!(
        body.matches("<script").count(),
        body.matches("<script src=\"/assets/").count()
    );
}
