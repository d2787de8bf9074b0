//! One opening, pits, dishes, the watch and the fire's troubles, as pages and forms.

use super::{cook, entries, get, get_in, home, links, post, token};
use crate::home::Home;
use axum::http::StatusCode;
use slowbend_core::moment::MINUTE;
use std::sync::Arc;

/// A slab that went on the drum an hour ago: the addresses of its cook and of its opening.
async fn on_the_drum(home: &Arc<Home>) -> (String, String) {
    let now = cook(home, "Regatta lunch").await;
    let page = get(home, &now).await.body;
    let meat = links(&page, "/meat/").remove(0);
    let shown = get(home, &meat).await.body;
    let act = shown
        .split("name=\"act\" value=\"")
        .skip(1)
        .filter_map(|rest| rest.split('"').next())
        .find(|act| act.contains("on_pit"))
        .unwrap()
        .replace("&quot;", "\"");
    let put_on = post(
        home,
        "/act",
        &[("token", &token()), ("back", &meat), ("act", &act)],
    )
    .await;
    assert_eq!(put_on.status, StatusCode::SEE_OTHER, "{}", put_on.body);
    home.set_clock(super::NOW + 60 * MINUTE);
    let page = get(home, &now).await.body;
    let opening = links(&page, &format!("{now}/pit/"))
        .into_iter()
        .find(|link| link.ends_with("/opening"));
    (
        now,
        opening.expect("the page of the cook leads to its opening"),
    )
}

fn meat_of(page: &str) -> String {
    let name = page.split("-does\"").next().unwrap();
    name[name.len() - 36..].to_owned()
}

#[tokio::test]
async fn an_opening_is_confirmed_once_and_undone_as_one() {
    let (_folder, home) = home();
    let (now, opening) = on_the_drum(&home).await;
    let page = get(&home, &opening).await.body;
    assert!(page.contains("Touch the rub"), "{page}");
    let meat = meat_of(&page);
    let before = entries(&home);
    let (does, rub, note) = (
        format!("{meat}-does"),
        format!("{meat}-rub"),
        format!("{meat}-note"),
    );
    let form = [
        ("token", &*token()),
        ("form", "opening"),
        ("back", &opening),
        (&does, "turn"),
        (&rub, "rub_set"),
        (&note, "Bone to the back."),
    ];
    let done = post(&home, &opening, &form).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    assert_eq!(entries(&home), before + 3);
    let told = get(&home, &done.to.unwrap()).await.body;
    assert!(told.contains("Turned"), "{told}");
    assert!(told.contains("Undo: turned"), "{told}");
    // Sent twice, it is one.
    post(&home, &opening, &form).await;
    assert_eq!(entries(&home), before + 3);
    let undo = told
        .split("value=\"0|")
        .map(|rest| rest.split('"').next().unwrap().replace("&quot;", "\""))
        .find(|act| act.contains("\"undo\""))
        .unwrap();
    let undone = post(
        &home,
        "/act",
        &[
            ("token", &token()),
            ("back", &now),
            ("act", &format!("0|{undo}")),
        ],
    )
    .await;
    assert_eq!(undone.status, StatusCode::SEE_OTHER, "{}", undone.body);
    let page = get(&home, &opening).await.body;
    assert!(
        page.contains("Touch the rub"),
        "the rub is asked about again: {page}"
    );
}

#[tokio::test]
async fn an_opening_that_is_refused_records_nothing_and_keeps_what_was_chosen() {
    let (_folder, home) = home();
    let (_, opening) = on_the_drum(&home).await;
    let page = get(&home, &opening).await.body;
    let meat = meat_of(&page);
    let before = entries(&home);
    let (does, rub) = (format!("{meat}-does"), format!("{meat}-rub"));
    let form = [
        ("token", &*token()),
        ("form", "opening"),
        ("back", &opening),
        (&does, "wet"),
        (&rub, "rub_not_yet"),
    ];
    let refused = post(&home, &opening, &form).await;
    assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(refused.body.contains("has not set"), "{}", refused.body);
    assert!(
        refused.body.contains("value=\"rub_not_yet\" checked"),
        "{}",
        refused.body
    );
    assert_eq!(entries(&home), before);
}

#[tokio::test]
async fn a_temperature_that_cannot_be_read_is_told_in_the_opening() {
    let (_folder, home) = home();
    let (_, opening) = on_the_drum(&home).await;
    let meat = meat_of(&get(&home, &opening).await.body);
    let spot = format!("{meat}-temperature-between_bones");
    let form = [
        ("token", &*token()),
        ("form", "opening"),
        ("back", &opening),
        (&spot, "warm"),
    ];
    let refused = post(&home, &opening, &form).await;
    assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(refused.body.contains("warm"), "{}", refused.body);
}

#[tokio::test]
async fn a_meat_is_placed_and_the_pits_show_where_it_sits() {
    let (_folder, home) = home();
    let (now, opening) = on_the_drum(&home).await;
    let meat = meat_of(&get(&home, &opening).await.body);
    let pit = opening.split('/').nth(4).unwrap().to_owned();
    let pits = format!("{now}/pits");
    let (to, spot) = (format!("pit-{meat}"), format!("spot-{meat}"));
    let form = [
        ("token", &*token()),
        ("form", "where-0"),
        ("back", &pits),
        (&spot, "upper level"),
        (&to, &pit),
    ];
    let moved = post(&home, &pits, &form).await;
    assert_eq!(moved.status, StatusCode::SEE_OTHER, "{}", moved.body);
    assert!(moved.to.as_ref().unwrap().starts_with(&pits));
    let page = get(&home, &pits).await.body;
    assert!(page.contains("<span>upper level</span>"), "{page}");
    assert!(page.contains("May be left alone for"), "{page}");
}

#[tokio::test]
async fn dishes_are_added_told_ready_and_written_about() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let dishes = format!("{now}/dishes");
    assert!(get(&home, &dishes).await.body.contains("No dish yet"));
    let add = [
        ("token", &*token()),
        ("form", "dish"),
        ("back", &dishes),
        ("name", "Beans"),
        ("hot", "hot"),
    ];
    let added = post(&home, &format!("{now}/dish"), &add).await;
    assert!(added.to.unwrap().starts_with(&dishes));
    let page = get(&home, &dishes).await.body;
    assert!(page.contains("140 °F") && page.contains("USDA"), "{page}");
    let dish = page.split("name=\"dish\" value=\"").nth(1).unwrap();
    let dish = dish.split('"').next().unwrap().to_owned();
    let note = [
        ("token", &*token()),
        ("back", &dishes),
        ("dish", &dish),
        ("text", "Read 160 at noon."),
    ];
    let noted = post(&home, &format!("{now}/dish-note"), &note).await;
    assert_eq!(noted.status, StatusCode::SEE_OTHER, "{}", noted.body);
    assert!(get(&home, &dishes).await.body.contains("Read 160 at noon."));
    let named = [
        ("token", &*token()),
        ("back", &dishes),
        ("dish", &dish),
        ("name", "Pit beans"),
    ];
    post(&home, &format!("{now}/dish-name"), &named).await;
    assert!(get(&home, &dishes).await.body.contains("Pit beans"));
}

#[tokio::test]
async fn a_cook_gets_another_name_and_a_field_says_what_it_does() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let named = [("token", &*token()), ("back", &now), ("name", "Club lunch")];
    let saved = post(&home, &format!("{now}/name"), &named).await;
    assert_eq!(saved.status, StatusCode::SEE_OTHER, "{}", saved.body);
    assert!(get(&home, &now).await.body.contains("<h1>Club lunch</h1>"));
    let settings = get(&home, "/settings").await.body;
    assert!(settings.contains("Without a band, what is on the pit decides."));
}

#[tokio::test]
async fn the_watch_is_taken_with_its_line_and_a_line_is_left() {
    let (_folder, home) = home();
    let (now, _) = on_the_drum(&home).await;
    let watch = format!("{now}/watch");
    let page = get(&home, &watch).await.body;
    assert!(page.contains("Nobody has the watch"), "{page}");
    assert!(page.contains("The drum not read yet"), "{page}");
    let take = [("token", &*token()), ("back", &watch), ("note", "Steady.")];
    let taken = post(&home, &watch, &take).await;
    assert!(taken.to.unwrap().starts_with(&watch));
    let page = get(&home, &watch).await.body;
    assert!(
        page.contains("Steady.") && page.contains("Leave this line"),
        "{page}"
    );
    let left = [
        ("token", &*token()),
        ("back", &watch),
        ("note", "Feed at noon."),
    ];
    post(&home, &format!("{watch}-line"), &left).await;
    assert!(get(&home, &watch).await.body.contains("Feed at noon."));
}

#[tokio::test]
async fn what_to_try_is_one_tap_away_in_both_languages() {
    let (_folder, home) = home();
    let (now, opening) = on_the_drum(&home).await;
    let trouble = opening.replace("/opening", "/trouble");
    let page = get(&home, &trouble).await.body;
    for said in [
        "Never water",
        "carbon monoxide",
        "common practice, no source",
        "Local rules",
    ] {
        assert!(page.contains(said), "{said}: {page}");
    }
    let spanish = get_in(&home, &trouble, "es-MX").await.body;
    assert!(spanish.contains("Nunca agua"), "{spanish}");
    // No probe watches this fire: it is asked about, and the page of the cook leads there.
    home.set_clock(super::NOW + 100 * MINUTE);
    let page = get(&home, &format!("{now}/pits")).await.body;
    assert!(!links(&page, &trouble).is_empty(), "{page}");
}

#[tokio::test]
async fn a_pit_that_is_not_there_is_told() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    for page in ["opening", "fire", "trouble"] {
        let path = format!("{now}/pit/01936f1e-0000-7000-8000-000000000001/{page}");
        assert_eq!(get(&home, &path).await.status, StatusCode::NOT_FOUND);
        let sent = post(&home, &path, &[("token", &token()), ("back", &now)]).await;
        assert!(sent.status.is_client_error(), "{}", sent.body);
    }
}

#[tokio::test]
async fn one_tap_on_the_fire_is_logged_undone_and_says_when_to_feed_next() {
    let (_folder, home) = home();
    let (now, opening) = on_the_drum(&home).await;
    let fire = opening.replace("/opening", "/fire");
    let page = get(&home, &fire).await.body;
    assert!(
        page.contains("not known yet") && page.contains("½ chimney"),
        "{page}"
    );
    let tap = page.split("name=\"act\" value=\"").skip(1);
    let tap = tap.filter_map(|rest| rest.split('"').next());
    let tap = tap.map(|act| act.replace("&quot;", "\""));
    let tap = tap
        .into_iter()
        .find(|act| act.contains("feed_units"))
        .unwrap();
    let before = entries(&home);
    let form = [("token", &*token()), ("back", &fire), ("act", &tap)];
    let done = post(&home, "/act", &form).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    assert_eq!(entries(&home), before + 1);
    assert!(done.to.is_some_and(|to| to.starts_with(&fire)));
    let page = get(&home, &fire).await.body;
    assert!(page.contains("Undo: "), "{page}");
    assert!(
        page.contains("½ chimney · ") && page.contains("rough"),
        "{page}"
    );
    assert!(page.contains("Call me at"), "{page}");
    assert!(
        get(&home, &now).await.body.contains("Undo"),
        "it can be taken back"
    );
    let spanish = get_in(&home, &fire, "es-MX").await.body;
    assert!(
        spanish.contains("Avísame a") && spanish.contains("½ chimenea"),
        "{spanish}"
    );
}

#[tokio::test]
async fn what_a_chimney_weighs_here_is_typed_and_nonsense_is_told() {
    let (_folder, home) = home();
    let (now, opening) = on_the_drum(&home).await;
    let fire = opening.replace("/opening", "/fire");
    let pit = opening.split('/').nth(4).unwrap();
    let unit = format!("{pit} chimney");
    let weigh = format!("{now}/weigh");
    let form = |weight: &'static str| {
        let fields = [
            ("form", "weigh"),
            ("back", &*fire),
            ("unit", &*unit),
            ("weight", weight),
        ];
        fields.map(|(name, value)| (name.to_owned(), value.to_owned()))
    };
    for (typed, status) in [
        ("4 lb", StatusCode::SEE_OTHER),
        ("", StatusCode::UNPROCESSABLE_ENTITY),
        ("0", StatusCode::UNPROCESSABLE_ENTITY),
        ("900 kg", StatusCode::UNPROCESSABLE_ENTITY),
        ("some", StatusCode::UNPROCESSABLE_ENTITY),
    ] {
        let fields = form(typed);
        let fields: Vec<(&str, &str)> = fields.iter().map(|(a, b)| (&**a, &**b)).collect();
        let answer = post(&home, &weigh, &fields).await;
        assert_eq!(answer.status, status, "{typed}: {}", answer.body);
    }
    assert!(get(&home, &fire).await.body.contains("4 lb"));
}
