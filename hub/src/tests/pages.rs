//! Every page, in both languages.

use super::{NOW, cook, get, get_in, home, links, post, token};
use axum::http::StatusCode;
use slowbend_core::moment::HOUR;

#[tokio::test]
async fn each_page_is_there_in_both_languages_and_links_only_to_what_is_there() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let meat = links(&get(&home, &now).await.body, "/meat/").remove(0);
    let mut paths = vec![
        "/".into(),
        "/settings".into(),
        now.clone(),
        format!("{now}/write"),
        format!("{now}/timeline"),
        format!("{now}/log"),
        format!("{now}/card"),
        format!("{now}/again"),
        "/card".into(),
    ];
    paths.extend([meat.clone(), format!("{meat}/check")]);
    let mut linked = vec![];
    for path in &paths {
        for (asked, tag) in [
            ("en-US", "lang=\"en-US\""),
            ("es-MX,es;q=0.9", "lang=\"es-US\""),
        ] {
            let page = get_in(&home, path, asked).await;
            assert_eq!(page.status, StatusCode::OK, "{path}: {}", page.body);
            assert!(page.body.contains(tag), "{path}");
            assert!(
                !page.body.contains('⟨'),
                "{path} lacks a message: {}",
                page.body
            );
            linked.extend(links(&page.body, "/"));
        }
    }
    linked.sort();
    linked.dedup();
    for link in linked {
        assert_eq!(get(&home, &link).await.status, StatusCode::OK, "{link}");
    }
}

#[tokio::test]
async fn a_page_is_whole_without_its_script() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let meat = links(&get(&home, &now).await.body, "/meat/").remove(0);
    let pages = ["write", "again"].map(|page| format!("{now}/{page}"));
    for path in ["/", "/settings", "/card", &now, &pages[0], &pages[1], &meat] {
        let body = get(&home, path).await.body;
        assert_eq!(body.matches("<h1").count(), 1, "{path}");
        assert!(
            body.contains("class=\"skip\" href=\"#main\"") && body.contains("id=\"main\""),
            "{path}"
        );
        for form in body.split("<form").skip(1) {
            let form = form.split("</form>").next().unwrap();
            assert!(
                form.contains("method=\"post\"") && form.contains("name=\"token\""),
                "{path}: {form}"
            );
            assert!(form.contains("<button"), "{path}: {form}");
            for name in ["token", "form", "back"] {
                let named = format!("name=\"{name}\"");
                assert_eq!(
                    form.matches(&named).count(),
                    1,
                    "{path}: two fields {name}: {form}"
                );
            }
        }
    }
}

#[tokio::test]
async fn no_page_stands_at_a_wrong_address_and_no_cook_under_a_wrong_id() {
    let (_folder, home) = home();
    let id = "01936f1e-0000-7000-8000-0000000000ff";
    for path in [
        "/nowhere",
        "/cook/x",
        &format!("/cook/{id}"),
        &format!("/meat/{id}"),
        &format!("/meat/{id}/check"),
    ] {
        let page = get(&home, path).await;
        assert_eq!(page.status, StatusCode::NOT_FOUND, "{path}: {}", page.body);
        assert!(
            page.body.contains("role=\"alert\"") && page.body.contains("href=\"/\""),
            "{path}"
        );
    }
}

#[tokio::test]
async fn choices_are_kept_in_the_browser_and_change_how_a_page_reads() {
    let (_folder, home) = home();
    let fields = [
        ("token", token()),
        ("back", "/settings".into()),
        ("locale", "es-US".into()),
        ("zone", "America/Mexico_City".into()),
    ];
    let fields: Vec<(&str, &str)> = fields
        .iter()
        .map(|(name, value)| (*name, value.as_str()))
        .collect();
    let chosen = post(&home, "/settings/viewer", &fields).await;
    assert_eq!(chosen.status, StatusCode::SEE_OTHER);
    let cookie = chosen.cookie.unwrap();
    assert!(
        cookie.contains("locale:es-US")
            && cookie.contains("zone:America/Mexico_City")
            && cookie.contains("HttpOnly"),
        "{cookie}"
    );
    let unknown = post(
        &home,
        "/settings/viewer",
        &[
            ("token", &token()),
            ("form", "viewer"),
            ("back", "/settings"),
            ("zone", "Mars/Olympus"),
        ],
    )
    .await;
    assert_eq!(unknown.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(unknown.body.contains("Mars/Olympus") && unknown.cookie.is_none());
}

#[tokio::test]
async fn what_rings_for_another_cook_is_said_on_every_page() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    home.set_clock(NOW + 3 * HOUR);
    let list = home
        .ask_here(|door, moment| {
            door.alarms(
                &slowbend_core::words::Viewer::default_for(home.device),
                moment,
                60,
            )
        })
        .unwrap();
    let due = list.alarms.iter().find(|alarm| alarm.at <= NOW + 3 * HOUR);
    let settings = get(&home, "/settings").await.body;
    assert_eq!(settings.contains("class=\"alarm\""), due.is_some());
    assert!(due.is_none() || settings.contains(&format!("href=\"{now}\"")));
}
