//! The demo: an invented cook behind a door of its own, under addresses of its own.

use super::{NOW, cook, entries, get, get_in, home, links, post, token};
use crate::home::Home;
use axum::http::StatusCode;
use slowbend_core::moment::MINUTE;
use std::sync::Arc;

/// Starts the demo; the address of its page.
async fn start(home: &Arc<Home>) -> String {
    let started = post(home, "/demo", &[("token", &token())]).await;
    assert_eq!(started.status, StatusCode::SEE_OTHER, "{}", started.body);
    started.to.unwrap().split('?').next().unwrap().to_owned()
}

#[tokio::test]
async fn the_demo_stands_mid_morning_says_that_it_is_invented_and_every_page_of_it_works() {
    let (_folder, home) = home();
    let now = start(&home).await;
    assert!(now.starts_with("/demo/cook/"), "{now}");
    let page = get(&home, &now).await.body;
    assert!(
        page.contains("class=\"invented\"") && page.contains("Regatta lunch"),
        "{page}"
    );
    assert!(
        page.contains("2 h 55 min") || page.contains("2:55"),
        "on the table in 175 minutes: {page}"
    );
    let meats = links(&page, "/demo/meat/");
    assert!(meats.len() >= 4, "two slabs, a butt, a breast: {meats:?}");
    assert!(links(&page, "/meat/").is_empty() && links(&page, "/cook/").is_empty());
    let mut paths = vec![
        now.clone(),
        format!("{now}/write"),
        format!("{now}/timeline"),
        "/demo/".into(),
        "/demo/settings".into(),
    ];
    paths.extend(meats.iter().cloned());
    for path in paths {
        for language in ["en", "es"] {
            let page = get_in(&home, &path, language).await;
            assert_eq!(page.status, StatusCode::OK, "{path}: {}", page.body);
            assert!(!page.body.contains('⟨'), "{path}");
            assert!(page.body.contains("class=\"invented\""), "{path}");
        }
    }
}

#[tokio::test]
async fn nothing_of_it_stands_on_real_pages_but_that_it_is_under_way() {
    let (_folder, home) = home();
    let real = cook(&home, "Sunday").await;
    let pages = [
        "/settings".to_owned(),
        real.clone(),
        format!("{real}/write"),
    ];
    let told = |page: String| page.matches("Drum").count() + page.matches("Kettle</h3>").count();
    let mut before = vec![];
    for path in &pages {
        before.push(told(get(&home, path).await.body));
    }
    let recorded = entries(&home);
    let demo = start(&home).await;
    assert_eq!(entries(&home), recorded, "the real log has nothing of it");
    for (path, before) in pages.iter().zip(before) {
        let page = get(&home, path).await.body;
        assert_eq!(told(page.clone()), before, "{path}");
        assert!(!page.contains("Regatta lunch") && !page.contains("class=\"invented\""));
    }
    let first = get(&home, "/").await.body;
    assert!(
        first.contains(&demo) && first.contains("under way"),
        "{first}"
    );
    assert!(!first.contains("Regatta lunch"), "{first}");
}

#[tokio::test]
async fn what_is_done_in_it_stays_in_it() {
    let (_folder, home) = home();
    let now = start(&home).await;
    let back = now.strip_prefix("/demo").unwrap();
    let recorded = entries(&home);
    let noted = post(
        &home,
        &format!("{now}/note"),
        &[("token", &token()), ("back", back), ("text", "Only here.")],
    )
    .await;
    assert_eq!(noted.status, StatusCode::SEE_OTHER, "{}", noted.body);
    assert!(noted.to.unwrap().starts_with(&now));
    assert_eq!(entries(&home), recorded);
    let timeline = get(&home, &format!("{now}/timeline")).await.body;
    assert!(timeline.contains("Only here."), "{timeline}");
}

#[tokio::test]
async fn asked_for_again_it_begins_anew_and_unasked_it_is_not_there() {
    let (folder, home) = home();
    assert_eq!(get(&home, "/demo/").await.status, StatusCode::NOT_FOUND);
    assert!(!folder.path().join("demo").exists());
    let first = start(&home).await;
    let second = start(&home).await;
    assert_ne!(first, second);
    assert_eq!(get(&home, &first).await.status, StatusCode::NOT_FOUND);
    assert_eq!(get(&home, &second).await.status, StatusCode::OK);
}

#[tokio::test]
async fn its_probes_go_on() {
    let (_folder, home) = home();
    start(&home).await;
    let demo = home.demo().unwrap();
    home.set_clock(NOW + 10 * MINUTE);
    let it = demo.invented.as_ref().unwrap();
    let more = demo.ask_here(|door, moment| crate::demo::go_on(door, it, moment));
    assert_eq!(more, Ok(true));
}

#[tokio::test]
async fn its_lunch_is_at_two_wherever_and_whenever_it_is_watched() {
    for hours in [0, 5, 11, 17] {
        let (_folder, home) = home();
        home.set_clock(NOW + hours * 60 * MINUTE + 13 * MINUTE);
        let now = start(&home).await;
        for path in [now.as_str(), "/demo/"] {
            let page = get(&home, path).await.body;
            assert!(page.contains("On the table 2:00"), "{path}: {page}");
        }
    }
}

#[tokio::test]
async fn its_zone_goes_into_nobodys_cookie() {
    let (_folder, home) = home();
    start(&home).await;
    let saved = post(
        &home,
        "/demo/settings/viewer",
        &[("back", "/settings"), ("zone", "Etc/GMT-3")],
    )
    .await;
    assert!(!saved.cookie.unwrap().contains("Etc/GMT"));
}

#[tokio::test]
async fn its_meats_are_named_in_spanish_for_whoever_reads_spanish() {
    let (_folder, home) = home();
    let spanish = slowbend_core::words::Viewer {
        locale: slowbend_core::words::Locale::EsUs,
        ..slowbend_core::words::Viewer::default_for(home.device)
    };
    let begun = home
        .ask_here(|door, moment| crate::demo::begin(door, &spanish, moment))
        .unwrap();
    let page = get_in(&home, &format!("/cook/{}", begun.cook), "es-MX")
        .await
        .body;
    for named in [
        "Costillar en papel",
        "Cabeza de lomo",
        "Pechuga de pavo",
        "Tambo",
    ] {
        assert!(page.contains(named), "{named}: {page}");
    }
}

#[tokio::test]
async fn what_is_due_is_marked_so() {
    let (_folder, home) = home();
    let now = start(&home).await;
    let headline = async || {
        let page = get(&home, &now).await.body;
        let from = page.find("<section class=\"headline\"").unwrap();
        page[from..].split('>').next().unwrap().to_owned()
    };
    home.set_clock(NOW + 10 * MINUTE);
    let due = headline().await;
    assert!(due.contains("data-due"), "{due}");
}
