//! What a person can say about one meat, an opening and a file, each on a page.

use super::{cook, entries, get, home, links, post, token};
use crate::home::Home;
use axum::http::StatusCode;
use std::sync::Arc;

/// Sends a form of the page `back` and expects that it is recorded.
async fn send(home: &Arc<Home>, path: &str, fields: &[(&str, &str)]) -> String {
    let (before, token) = (entries(home), token());
    let form = path.rsplit('/').next().unwrap();
    let mut all = vec![("token", token.as_str()), ("form", form), ("back", "/")];
    all.extend_from_slice(fields);
    let answer = post(home, path, &all).await;
    assert_eq!(
        answer.status,
        StatusCode::SEE_OTHER,
        "{path}: {}",
        answer.body
    );
    assert!(entries(home) > before, "{path} recorded nothing");
    get(home, &answer.to.unwrap()).await.body
}

async fn meats(home: &Arc<Home>, now: &str) -> Vec<String> {
    let mut found = links(&get(home, now).await.body, "/meat/");
    found.retain(|link| !link.ends_with("/check"));
    found.sort();
    found.dedup();
    found
}

#[tokio::test]
async fn each_fact_of_a_meat_can_be_set_on_its_page() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let meat = meats(&home, &now).await.remove(0);
    let page = get(&home, &meat).await.body;
    let forms: [(&str, &[(&str, &str)]); 6] = [
        ("note", &[("text", "Thin at one end.")]),
        ("weight", &[("weight", "4 lb")]),
        ("cadence", &[("cadence", "spritz")]),
        ("prepared", &[("prepared", "injected")]),
        ("pull", &[("pull", "198")]),
        ("name", &[("name", "The good slab")]),
    ];
    for (form, fields) in forms {
        assert!(
            page.contains(&format!("{meat}/{form}\"")),
            "{form} stands on no page"
        );
        send(&home, &format!("{meat}/{form}"), fields).await;
    }
    let page = get(&home, &meat).await.body;
    for told in ["The good slab", "4 lb", "198", "60 min"] {
        assert!(page.contains(told), "{told}: {page}");
    }
    let wrong = post(
        &home,
        &format!("{meat}/pull"),
        &[("back", &meat), ("form", "pull"), ("pull", "hot")],
    )
    .await;
    assert_eq!(wrong.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(wrong.body.contains("value=\"hot\""), "{}", wrong.body);
}

#[tokio::test]
async fn a_meat_is_cut_in_parts_and_they_are_put_together_again() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let whole = meats(&home, &now).await.remove(0);
    send(
        &home,
        &format!("{whole}/split"),
        &[("names", "Thick end, Thin end")],
    )
    .await;
    let page = get(&home, &now).await.body;
    assert!(
        page.contains("Thick end") && page.contains("Thin end"),
        "{page}"
    );
    let parts = meats(&home, &now).await;
    let other = parts[1].trim_start_matches("/meat/");
    let alone = post(
        &home,
        &format!("{}/join", parts[0]),
        &[("back", &parts[0]), ("form", "join"), ("name", "Both")],
    )
    .await;
    assert_eq!(alone.status, StatusCode::UNPROCESSABLE_ENTITY);
    let page = send(
        &home,
        &format!("{}/join", parts[0]),
        &[("with", other), ("name", "Both")],
    )
    .await;
    assert!(page.contains("Both"), "{page}");
}

#[tokio::test]
async fn an_opening_says_what_was_done_to_each_meat() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let meat = meats(&home, &now).await.remove(0);
    let id = meat.trim_start_matches("/meat/");
    let pit = get(&home, &format!("{now}/write")).await.body;
    let pit = pit
        .split("value=\"pit:")
        .nth(1)
        .unwrap()
        .split('"')
        .next()
        .unwrap();
    let on = format!(
        r#"0|{{"act":"set_stage","piece":"{id}","stage":{{"is":"on_pit","pit":"{pit}"}},"at":null}}"#
    );
    send(&home, "/act", &[("act", &on)]).await;
    let did = format!("did-{id}");
    for what in ["wet", "turn", "glaze"] {
        send(&home, &format!("{now}/opening"), &[(&did, what)]).await;
    }
    send(&home, &format!("{now}/opening"), &[("pit", pit)]).await;
}

#[tokio::test]
async fn a_file_is_taken_on_the_page_and_what_it_leaves_open_is_asked() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let rows = "time,grate\n2026-06-13T10:00,225\n2026-06-13T10:01,226\n";
    let path = format!("{now}/file");
    let back = format!("{now}/write");
    let ask = |unit: &'static str| {
        let (home, path, back) = (home.clone(), path.clone(), back.clone());
        async move {
            post(
                &home,
                &path,
                &[
                    ("form", "file"),
                    ("back", &back),
                    ("rows", rows),
                    ("source", "Box"),
                    ("unit", unit),
                ],
            )
            .await
        }
    };
    let asked = ask("").await;
    assert_eq!(asked.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(
        asked.body.contains("2026-06-13T10:01,226"),
        "what was pasted is still there"
    );
    let taken = ask("f").await;
    assert_eq!(taken.status, StatusCode::SEE_OTHER, "{}", taken.body);
    let told = get(&home, &taken.to.unwrap()).await.body;
    assert!(told.contains("Readings taken: 2"), "{told}");
    for rows in ["", "only,words\nand,more\n"] {
        let refused = post(
            &home,
            &path,
            &[("form", "file"), ("back", &back), ("rows", rows)],
        )
        .await;
        assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY, "{rows}");
    }
}

#[tokio::test]
async fn a_stranger_starts_a_cook_with_one_choice() {
    let (_folder, home) = home();
    let fields = [
        ("cut-0", "spare_ribs"),
        ("pit-0", "new"),
        ("pit-kind", "drum"),
        ("pit-1", "new"),
    ];
    let started = post(
        &home,
        "/cook",
        &[&[("token", token().as_str())], &fields[..]].concat(),
    )
    .await;
    assert_eq!(started.status, StatusCode::SEE_OTHER, "{}", started.body);
    let page = get(&home, &started.to.unwrap()).await.body;
    assert!(page.contains("Spare ribs"), "{page}");
    let meat = links(&page, "/meat/").remove(0);
    let page = get(&home, &meat).await.body;
    assert!(page.contains("Put on Drum"), "{page}");
}

#[tokio::test]
async fn a_dish_is_called_ready_and_not_after_all() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let page = send(
        &home,
        &format!("{now}/dish"),
        &[("name", "Beans"), ("hot", "hot")],
    )
    .await;
    assert!(page.contains("Beans: ready"), "{page}");
    let act = page
        .split("value=\"")
        .find(|value| value.contains("ready_dish"))
        .unwrap();
    let act = act.split('"').next().unwrap().replace("&quot;", "\"");
    let page = send(&home, "/act", &[("act", &act)]).await;
    drop(page);
    assert!(get(&home, &now).await.body.contains("Beans: not ready"));
}
