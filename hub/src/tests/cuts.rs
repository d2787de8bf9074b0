//! Finding a cut: the list, its page, and the forms in which a name may be typed instead of chosen.

use super::{cook, entries, get, get_in, home, links, post, token};
use axum::http::StatusCode;
use slowbend_core::checks::Cut;

#[tokio::test]
async fn each_cut_has_a_page_in_both_languages_that_the_list_leads_to() {
    let (_folder, home) = home();
    let list = get(&home, "/cuts").await;
    let found = links(&list.body, "/cuts/");
    assert_eq!(found.len(), Cut::ALL.len());
    for path in found.iter().map(String::as_str).chain(["/cuts"]) {
        for language in ["en-US", "es-MX,es;q=0.9"] {
            let page = get_in(&home, path, language).await;
            assert_eq!(page.status, StatusCode::OK, "{path}");
            assert!(!page.body.contains('⟨'), "{path} lacks a message");
            assert_eq!(page.body.matches("<h1").count(), 1, "{path}");
        }
    }
    assert_eq!(
        get(&home, "/cuts/unicorn").await.status,
        StatusCode::NOT_FOUND
    );
}

#[tokio::test]
async fn a_search_answers_as_a_page_and_as_a_list_for_the_script() {
    let (_folder, home) = home();
    let page = get(&home, "/cuts?find=costilas").await;
    assert_eq!(links(&page.body, "/cuts/").len(), 5);
    let none = get(&home, "/cuts?find=%3Cunicorn%3E").await;
    assert!(none.body.contains("&lt;unicorn&gt;") && !none.body.contains("<unicorn>"));
    let found = get(&home, "/found?find=tri%20tip").await;
    assert_eq!(found.body, r#"["tri_tip"]"#);
    assert_eq!(get(&home, "/found?find=unicorn").await.body, "[]");
}

#[tokio::test]
async fn a_cook_starts_with_a_name_that_was_typed_and_no_script() {
    let (_folder, home) = home();
    let fields = |find: &'static str| {
        [
            ("token", token()),
            ("form", "start".into()),
            ("back", "/".into()),
            ("cut-0", String::new()),
            ("find-0", find.to_owned()),
        ]
    };
    let send = async |find| {
        let fields = fields(find);
        let fields: Vec<(&str, &str)> = fields.iter().map(|(n, v)| (*n, v.as_str())).collect();
        post(&home, "/cook", &fields).await
    };
    for (typed, says) in [("brisket", "Brisket point"), ("unicorn", "Try the animal")] {
        let before = entries(&home);
        let refused = send(typed).await;
        assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(refused.body.contains(says), "{}", refused.body);
        let kept = format!("value=\"{typed}\"");
        assert!(refused.body.contains(&kept), "what was typed comes back");
        assert_eq!(entries(&home), before, "nothing is recorded");
    }
    let started = send("medio pollo").await;
    assert_eq!(started.status, StatusCode::SEE_OTHER, "{}", started.body);
    let now = get(&home, &started.to.unwrap()).await;
    assert!(now.body.contains("Half chicken"), "{}", now.body);
}

#[tokio::test]
async fn a_meat_is_added_by_its_name_and_what_nobody_said_of_it_is_not_whole_muscle() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let token = token();
    let fields = [
        ("token", token.as_str()),
        ("form", "meat"),
        ("back", &format!("{now}/write")),
        ("cut", ""),
        ("find", "pork loin center"),
        ("prepared", "unknown"),
        ("cadence", ""),
        ("pit", ""),
    ];
    let added = post(&home, &format!("{now}/meat"), &fields).await;
    assert_eq!(added.status, StatusCode::SEE_OTHER, "{}", added.body);
    let page = get(&home, &now).await.body;
    let meats = links(&page, "/meat/");
    let mut said = String::new();
    for meat in meats {
        said += &get(&home, &meat).await.body;
    }
    assert!(said.contains("not known if injected"), "{said}");
    assert!(said.contains("href=\"/cuts/pork_loin\""), "{said}");
}
