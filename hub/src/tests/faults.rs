//! A database that cannot be used: the reason is told, and what was recorded stays.

use super::{NOW, cook, door, entries, get, home, post, token};
use crate::clock::Clock;
use axum::http::StatusCode;
use slowbend_core::error::Trouble;

#[tokio::test]
async fn a_second_program_on_one_database_is_told_to_close_the_first() {
    let (folder, home) = home();
    let trouble = door(folder.path(), &Clock::Standing(NOW.into()))
        .err()
        .unwrap();
    assert!(matches!(trouble, Trouble::InUse { .. }), "{trouble:?}");
    assert!(trouble.reason().len() > 20);
    assert_eq!(get(&home, "/").await.status, StatusCode::OK);
}

#[tokio::test]
async fn a_database_of_a_newer_version_is_left_as_it_is() {
    let (folder, home) = home();
    cook(&home, "Regatta lunch").await;
    drop(home);
    let file = folder.path().join("slowbend.db");
    let newer = rusqlite::Connection::open(&file).unwrap();
    newer.pragma_update(None, "user_version", 9_999).unwrap();
    drop(newer);
    let trouble = door(folder.path(), &Clock::Standing(NOW.into()))
        .err()
        .unwrap();
    assert!(matches!(trouble, Trouble::Newer { .. }), "{trouble:?}");
    let same = rusqlite::Connection::open(&file).unwrap();
    let count: i64 = same
        .query_row("SELECT count(*) FROM entries", [], |row| row.get(0))
        .unwrap();
    assert!(count > 0);
}

#[tokio::test]
async fn a_locked_database_records_nothing_says_so_and_takes_the_same_form_later() {
    let (folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let before = entries(&home);
    let other = rusqlite::Connection::open(folder.path().join("slowbend.db")).unwrap();
    other.execute_batch("BEGIN IMMEDIATE").unwrap();
    let token = token();
    let form = [
        ("token", token.as_str()),
        ("back", now.as_str()),
        ("text", "Wind."),
    ];
    let locked = post(&home, &format!("{now}/note"), &form).await;
    assert_eq!(
        locked.status,
        StatusCode::SERVICE_UNAVAILABLE,
        "{}",
        locked.body
    );
    assert!(locked.body.contains("role=\"alert\""), "{}", locked.body);
    assert_eq!(
        (entries(&home), get(&home, &now).await.status),
        (before, StatusCode::OK)
    );
    other.execute_batch("ROLLBACK").unwrap();
    assert_eq!(
        post(&home, &format!("{now}/note"), &form).await.status,
        StatusCode::SEE_OTHER
    );
    assert!(entries(&home) > before);
}

#[tokio::test]
async fn a_disk_that_takes_nothing_is_told_on_the_page() {
    let (_folder, home) = home();
    let reader = crate::viewer::Reader::of(&axum::http::HeaderMap::new(), &home);
    let full = Trouble::CannotWrite {
        reason: "the disk is full: make room".into(),
    };
    let answer = crate::pages::troubled(&reader, &full, StatusCode::NOT_FOUND);
    assert_eq!(answer.status(), StatusCode::SERVICE_UNAVAILABLE);
    let body = axum::body::to_bytes(answer.into_body(), usize::MAX)
        .await
        .unwrap();
    assert!(String::from_utf8_lossy(&body).contains("the disk is full: make room"));
}
