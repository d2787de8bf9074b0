//! The demo, through the same door as a real cook.

use super::{NOW, get, get_in, home, links, post, token};
use axum::http::StatusCode;
use slowbend_core::moment::MINUTE;

#[tokio::test]
async fn the_demo_stands_mid_morning_says_that_it_is_invented_and_every_page_of_it_works() {
    let (_folder, home) = home();
    let started = post(&home, "/demo", &[("token", &token())]).await;
    assert_eq!(started.status, StatusCode::SEE_OTHER, "{}", started.body);
    let now = started.to.unwrap().split('?').next().unwrap().to_owned();
    let page = get(&home, &now).await.body;
    assert!(
        page.contains("class=\"invented\"") && page.contains("Regatta lunch"),
        "{page}"
    );
    assert!(
        page.contains("2 h 55 min") || page.contains("2:55"),
        "on the table in 175 minutes: {page}"
    );
    let meats = links(&page, "/meat/");
    assert!(meats.len() >= 4, "two slabs, a butt, a breast: {meats:?}");
    let mut paths = vec![
        now.clone(),
        format!("{now}/write"),
        format!("{now}/timeline"),
        "/".into(),
        "/settings".into(),
    ];
    paths.extend(meats.iter().cloned());
    paths.extend(
        meats
            .iter()
            .filter(|meat| !meat.ends_with("/check"))
            .map(|meat| format!("{meat}/check")),
    );
    for path in paths {
        for language in ["en", "es"] {
            let page = get_in(&home, &path, language).await;
            assert_eq!(page.status, StatusCode::OK, "{path}: {}", page.body);
            assert!(!page.body.contains('⟨'), "{path}");
        }
    }
}

#[tokio::test]
async fn started_again_it_is_the_same_cook_and_its_probes_go_on() {
    let (folder, home) = home();
    let first = post(&home, "/demo", &[("token", &token())])
        .await
        .to
        .unwrap();
    let again = post(&home, "/demo", &[("token", &token())])
        .await
        .to
        .unwrap();
    assert_eq!(first.split('?').next(), again.split('?').next());
    home.set_clock(NOW + 10 * MINUTE);
    let more = home.ask_here(|door, moment| crate::demo::go_on(door, folder.path(), moment));
    assert_eq!(more, Ok(true));
    let page = get(&home, first.split('?').next().unwrap()).await.body;
    assert!(page.contains("Drum") && page.contains("Kettle"), "{page}");
}

#[tokio::test]
async fn after_its_end_it_can_be_watched_again_and_both_are_called_invented() {
    let (_folder, home) = home();
    let first = post(&home, "/demo", &[("token", &token())])
        .await
        .to
        .unwrap();
    let first = first.split('?').next().unwrap();
    let cook = first.trim_start_matches("/cook/");
    let end = format!(r#"0|{{"act":"finish_cook","cook":"{cook}"}}"#);
    let ended = post(
        &home,
        "/act",
        &[("token", &token()), ("back", first), ("act", &end)],
    )
    .await;
    assert_eq!(ended.status, StatusCode::SEE_OTHER, "{}", ended.body);
    let again = post(&home, "/demo", &[("token", &token())]).await;
    assert_eq!(again.status, StatusCode::SEE_OTHER, "{}", again.body);
    let second = again.to.unwrap();
    let second = second.split('?').next().unwrap();
    assert_ne!(first, second);
    for path in [first, second] {
        assert!(
            get(&home, path).await.body.contains("class=\"invented\""),
            "{path}"
        );
    }
    assert!(get(&home, "/").await.body.contains("(demo, invented)"));
}

#[tokio::test]
async fn its_lunch_is_at_two_wherever_and_whenever_it_is_watched_and_in_the_language_of_whoever_starts_it()
 {
    for hours in [0, 5, 11, 17] {
        let (_folder, home) = home();
        home.set_clock(NOW + hours * 60 * MINUTE + 13 * MINUTE);
        let started = post(&home, "/demo", &[("token", &token())])
            .await
            .to
            .unwrap();
        let now = started.split('?').next().unwrap();
        let page = get(&home, now).await.body;
        assert!(
            page.contains("On the table 2:00\u{202f}PM") || page.contains("On the table 2:00 PM"),
            "{page}"
        );
        let first = get(&home, "/").await.body;
        assert!(
            first.contains("On the table 2:00"),
            "on the first page too: {first}"
        );
        let meat = links(&page, "/meat/").remove(0);
        let other = get(&home, &meat).await.body;
        assert!(
            !other.contains(" 4:") && !other.contains(" 5:"),
            "its own clock on each page: {other}"
        );
    }
}

#[tokio::test]
async fn its_meats_are_named_in_spanish_for_whoever_reads_spanish() {
    let (_folder, home) = home();
    let spanish = slowbend_core::words::Viewer {
        locale: slowbend_core::words::Locale::EsUs,
        ..slowbend_core::words::Viewer::default_for(home.device)
    };
    let begun = home
        .ask_here(|door, moment| crate::demo::begin(door, &home.data, &spanish, moment))
        .unwrap();
    let page = get_in(&home, &format!("/cook/{begun}"), "es-MX").await.body;
    for named in [
        "Costillar en papel",
        "Espaldilla",
        "Pechuga de pavo",
        "Tambo",
    ] {
        assert!(page.contains(named), "{named}: {page}");
    }
}
