//! The safety of one meat, the fire that went out, the temperature log, and cooking for the public, as pages and forms.

use super::{NOW, cook, get, get_in, home, links, post, token};
use crate::home::Home;
use axum::http::StatusCode;
use slowbend_core::moment::MINUTE;
use std::sync::Arc;

/// A slab that went on the drum an hour ago: the addresses of its cook, of the meat, and of the drum under the cook.
async fn on_the_drum(home: &Arc<Home>) -> (String, String, String) {
    let now = cook(home, "Regatta lunch").await;
    let meat = links(&get(home, &now).await.body, "/meat/").remove(0);
    let act = act_of(&get(home, &meat).await.body, "on_pit");
    let put_on = post(
        home,
        "/act",
        &[("token", &token()), ("back", &meat), ("act", &act)],
    )
    .await;
    assert_eq!(put_on.status, StatusCode::SEE_OTHER, "{}", put_on.body);
    home.set_clock(NOW + 60 * MINUTE);
    let page = get(home, &now).await.body;
    let mut openings = links(&page, &format!("{now}/pit/")).into_iter();
    let opening = openings.find(|link| link.ends_with("/opening")).unwrap();
    let pit = opening.trim_end_matches("/opening").to_owned();
    (now, meat, pit)
}

fn act_of(page: &str, with: &str) -> String {
    page.split("name=\"act\" value=\"")
        .skip(1)
        .filter_map(|rest| rest.split('"').next())
        .find(|act| act.contains(with))
        .unwrap_or_else(|| panic!("{with} in {page}"))
        .replace("&quot;", "\"")
}

#[tokio::test]
async fn a_meat_shows_its_rule_and_its_clock_in_both_languages() {
    let (_folder, home) = home();
    let (_, meat, _) = on_the_drum(&home).await;
    let page = get(&home, &meat).await.body;
    for said in [
        "<h2>Safety</h2>",
        "Published minimum",
        "Coming up",
        "Local rules",
    ] {
        assert!(page.contains(said), "{said}: {page}");
    }
    let spanish = get_in(&home, &meat, "es").await.body;
    for said in ["<h2>Seguridad</h2>", "Mínimo publicado", "Subiendo"] {
        assert!(spanish.contains(said), "{said}: {spanish}");
    }
}

#[tokio::test]
async fn a_fire_that_went_out_is_reached_answered_by_a_reading_and_by_throwing_away() {
    let (_folder, home) = home();
    let (now, meat, pit) = on_the_drum(&home).await;
    let trouble = get(&home, &format!("{pit}/trouble")).await.body;
    let fire_out = links(&trouble, &format!("{pit}/fire-out")).remove(0);
    let page = get(&home, &fire_out).await.body;
    assert!(page.contains("Read it now"), "{page}");
    assert!(page.contains("sets no clock back"), "{page}");
    let place = page.split("value=\"meat:").nth(1).unwrap();
    let place = format!("meat:{}", place.split('"').next().unwrap());
    let read = [
        ("token", &*token()),
        ("form", "reading"),
        ("back", &fire_out),
        ("place", &place),
        ("temp", "88"),
    ];
    let kept = post(&home, &format!("{now}/reading"), &read).await;
    assert_eq!(kept.status, StatusCode::SEE_OTHER, "{}", kept.body);
    assert!(kept.to.unwrap().starts_with(&fire_out));
    let page = get(&home, &fire_out).await.body;
    assert!(page.contains("Since: 88 °F"), "{page}");
    let act = act_of(&page, "thrown_away");
    let form = [("token", &*token()), ("back", &fire_out), ("act", &act)];
    assert_eq!(
        post(&home, "/act", &form).await.status,
        StatusCode::SEE_OTHER
    );
    assert!(get(&home, &meat).await.body.contains("Thrown away"));
    assert!(
        get(&home, &fire_out)
            .await
            .body
            .contains("Nothing is on this pit")
    );
}

#[tokio::test]
async fn the_temperature_log_is_a_table_and_a_file() {
    let (_folder, home) = home();
    let (now, _, _) = on_the_drum(&home).await;
    let timeline = get(&home, &format!("{now}/timeline")).await.body;
    let log = links(&timeline, &format!("{now}/log")).remove(0);
    let page = get(&home, &log).await.body;
    assert!(page.contains("<table class=\"log\">"), "{page}");
    assert!(page.contains("Corrective action"), "{page}");
    let file = get(&home, &format!("{log}.csv")).await;
    assert_eq!(file.status, StatusCode::OK);
    assert!(file.body.starts_with("\"Time\",\"Item\""), "{}", file.body);
    assert!(file.body.contains("The drum"), "{}", file.body);
    let unknown = "/cook/01936f1e-0000-7000-8000-000000000009/log.csv";
    assert_eq!(get(&home, unknown).await.status, StatusCode::NOT_FOUND);
}

#[tokio::test]
async fn cooking_for_the_public_is_set_by_yes_or_no_and_nothing_else() {
    let (_folder, home) = home();
    let set = async |value: &str| {
        let form = [
            ("token", &*token()),
            ("back", "/settings"),
            ("of", "{\"thing\":\"crew\"}"),
            ("field", "for_public"),
            ("value", value),
        ];
        post(&home, "/settings/field", &form).await.status
    };
    assert_eq!(set("Maybe").await, StatusCode::UNPROCESSABLE_ENTITY);
    assert_eq!(set("Yes").await, StatusCode::SEE_OTHER);
    let page = get(&home, "/settings").await.body;
    assert!(page.contains("<option value=\"Yes\" selected"), "{page}");
    assert!(page.contains("FDA Food Code"), "{page}");
}

#[tokio::test]
async fn what_is_not_done_here_is_refused_with_a_sentence() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let form = [
        ("token", &*token()),
        ("form", "dish"),
        ("back", &format!("{now}/dishes")),
        ("name", "Beef jerky"),
        ("hot", "cold"),
    ];
    let refused = post(&home, &format!("{now}/dish"), &form).await;
    assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(
        refused.body.contains("Jerky is not done with Slowbend"),
        "{}",
        refused.body
    );
}
