//! Cook cards on the pages: made, handed over, started from; and starting as last time.

use super::{Answer, cook, get, get_in, home, links, post, post_file, token};
use crate::home::Home;
use axum::http::StatusCode;
use std::sync::Arc;

const EXAMPLE: &str = include_str!("../../../docs/cook-card.example.json");

/// The text of a card as the page hands it over.
fn card_in(body: &str) -> String {
    let text = body.split("{&quot;slowbend_card").nth(1).unwrap();
    let text = text.split('<').next().unwrap().split("\">").next().unwrap();
    format!("{{&quot;slowbend_card{text}")
        .replace("&quot;", "\"")
        .replace("&amp;", "&")
}

/// What a browser sends back of the form that begins a cook, `changed` where something was typed.
fn sent(body: &str, changed: &[(&str, &str)]) -> Vec<(String, String)> {
    let form = body
        .split("<form")
        .find(|form| form.contains("/card/start"))
        .unwrap();
    let form = form.split("</form>").next().unwrap();
    let attribute = |tag: &str, name: &str| {
        let rest = tag.split(&format!(" {name}=\"")).nth(1)?;
        Some(
            rest.split('"')
                .next()?
                .replace("&quot;", "\"")
                .replace("&amp;", "&"),
        )
    };
    let mut fields = vec![];
    for tag in form.split("<input").skip(1) {
        let tag = tag.split('>').next().unwrap();
        if attribute(tag, "type").as_deref() != Some("checkbox") {
            fields.push((
                attribute(tag, "name").unwrap(),
                attribute(tag, "value").unwrap_or_default(),
            ));
        }
    }
    for select in form.split("<select").skip(1) {
        let chosen = select
            .split("<option")
            .find(|option| option.contains(" selected"))
            .unwrap();
        fields.push((
            attribute(select, "name").unwrap(),
            attribute(chosen, "value").unwrap_or_default(),
        ));
    }
    for (name, value) in changed {
        fields.retain(|(known, _)| known != name);
        fields.push(((*name).to_owned(), (*value).to_owned()));
    }
    fields
}

async fn begin(home: &Arc<Home>, body: &str, changed: &[(&str, &str)]) -> Answer {
    let fields = sent(body, changed);
    let fields: Vec<(&str, &str)> = fields
        .iter()
        .map(|(name, value)| (name.as_str(), value.as_str()))
        .collect();
    post(home, "/card/start", &fields).await
}

async fn take(home: &Arc<Home>, text: &str, file: &str) -> Answer {
    let fields = [
        ("token", token()),
        ("form", "take".into()),
        ("back", "/card".into()),
        ("card", text.into()),
    ];
    let fields: Vec<(&str, &str)> = fields
        .iter()
        .map(|(name, value)| (*name, value.as_str()))
        .collect();
    post_file(home, "/card", &fields, file).await
}

#[tokio::test]
async fn a_cook_is_started_as_last_time_by_two_taps_and_nothing_typed() {
    let (_folder, home) = home();
    let first = cook(&home, "Regatta lunch").await;
    let start = get(&home, "/").await.body;
    let again = links(&start, "/cook/")
        .into_iter()
        .find(|link| link.ends_with("/again"))
        .unwrap();
    assert_eq!(again, format!("{first}/again"));
    let form = get(&home, &again).await.body;
    for filled in [
        "value=\"Regatta lunch\"",
        "value=\"14\"",
        "value=\"tomorrow 2:00 PM\"",
        "The drum",
    ] {
        assert!(form.contains(filled), "{filled}: {form}");
    }
    assert!(
        form.contains("name=\"weight-0\" value=\"\""),
        "weights are asked anew"
    );
    let begun = begin(&home, &form, &[]).await;
    assert_eq!(begun.status, StatusCode::SEE_OTHER, "{}", begun.body);
    let second = begun.to.unwrap();
    assert!(!second.starts_with(&first));
    let now = get(&home, &second).await.body;
    assert!(
        now.contains("Regatta lunch") && now.contains("Spare ribs"),
        "{now}"
    );
}

#[tokio::test]
async fn a_card_crosses_from_one_home_to_another_that_knows_no_pit() {
    let (_one, mine) = home();
    let lunch = cook(&mine, "Regatta lunch").await;
    let page = get(&mine, &format!("{lunch}/card")).await.body;
    assert!(
        page.contains("class=\"code\""),
        "a short card is shown as a code"
    );
    let text = card_in(&page);
    let (_other, theirs) = home();
    let form = take(&theirs, &text, "").await;
    assert_eq!(form.status, StatusCode::OK, "{}", form.body);
    assert!(
        form.body.contains("The drum (Drum), new here"),
        "{}",
        form.body
    );
    let changed = [
        ("name", "Club supper"),
        ("weight-0", "4 lb"),
        ("serve", "2 p.m. tomorrow"),
    ];
    let begun = begin(&theirs, &form.body, &changed).await;
    assert_eq!(begun.status, StatusCode::SEE_OTHER, "{}", begun.body);
    let now = get(&theirs, &begun.to.unwrap()).await.body;
    assert!(now.contains("Club supper"), "{now}");
    let settings = get(&theirs, "/settings").await.body;
    assert!(settings.contains("value=\"The drum\""), "the pit was added");
    let once_more = take(&theirs, &text, "").await.body;
    assert!(!once_more.contains("new here"), "the drum is known by now");
}

#[tokio::test]
async fn a_form_that_is_sent_twice_adds_one_pit_and_one_cook() {
    let (_folder, home) = home();
    let form = take(&home, EXAMPLE, "").await.body;
    let (first, second) = (
        begin(&home, &form, &[]).await,
        begin(&home, &form, &[]).await,
    );
    let place = |answer: Answer| answer.to.unwrap().split('?').next().unwrap().to_owned();
    let first_place = place(first);
    assert_eq!(first_place, place(second));
    let settings = get(&home, "/settings").await.body;
    assert_eq!(settings.matches("value=\"The drum\"").count(), 1);
}

#[tokio::test]
async fn a_file_is_taken_without_any_script_and_goes_before_pasted_text() {
    let (_folder, home) = home();
    let taken = take(&home, "", EXAMPLE).await;
    assert_eq!(taken.status, StatusCode::OK, "{}", taken.body);
    assert!(
        taken.body.contains("Slab in paper") && taken.body.contains("Judged blind"),
        "{}",
        taken.body
    );
    assert_eq!(take(&home, "no card", EXAMPLE).await.status, StatusCode::OK);
}

#[tokio::test]
async fn what_is_no_card_comes_back_with_what_to_do_and_what_was_pasted() {
    let (_folder, home) = home();
    let below = EXAMPLE.replace("368150", "330000");
    for (text, part) in [
        ("", "Paste the whole text"),
        ("slabs for Sunday", "not a whole cook card"),
        ("{\"slowbend_card\":9}", "Update Slowbend"),
        (below.as_str(), "155 °F"),
    ] {
        let answer = take(&home, text, "").await;
        assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY, "{text}");
        assert!(
            answer.body.contains(part) && answer.body.contains("role=\"alert\""),
            "{text}: {}",
            answer.body
        );
    }
    assert_eq!(super::entries(&home), 0, "nothing was recorded");
}

#[tokio::test]
async fn a_form_with_a_slip_comes_back_whole_with_the_field_that_was_meant() {
    let (_folder, home) = home();
    let form = take(&home, EXAMPLE, "").await.body;
    let back = begin(
        &home,
        &form,
        &[("weight-2", "heavy"), ("name", "Club supper")],
    )
    .await;
    assert_eq!(back.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(back.body.contains("value=\"heavy\"") && back.body.contains("value=\"Club supper\""));
    assert_eq!(
        back.body.matches("aria-invalid").count(),
        1,
        "{}",
        back.body
    );
    let mended = begin(&home, &back.body, &[("weight-2", "8 lb"), ("out-3", "on")]).await;
    assert_eq!(mended.status, StatusCode::SEE_OTHER, "{}", mended.body);
    let now = get(&home, &mended.to.unwrap()).await.body;
    assert!(!now.contains("Turkey breast"), "it was left out");
}

#[tokio::test]
async fn a_hostile_card_is_shown_as_text_and_nothing_more() {
    let (_folder, home) = home();
    let card = r#"{"slowbend_card":1,"name":"<script>alert(1)</script>","notes":["<img src=x onerror=alert(1)>"],"meats":[{"cut":"pork_butt","name":"\"><b>"}],"minimum":1}"#;
    let body = take(&home, card, "").await.body;
    assert!(
        !body.contains("<script>alert") && !body.contains("<img src=x") && !body.contains("\"><b>")
    );
    assert!(body.contains("minimum is no part of a card"), "{body}");
}

#[tokio::test]
async fn the_card_of_a_cook_is_a_file_and_carries_notes_only_when_asked() {
    let (_folder, home) = home();
    let lunch = cook(&home, "Regatta lunch").await;
    let fields = [
        ("token", token()),
        ("text", "Wind from the lake".to_owned()),
    ];
    let fields: Vec<(&str, &str)> = fields
        .iter()
        .map(|(name, value)| (*name, value.as_str()))
        .collect();
    post(&home, &format!("{lunch}/note"), &fields).await;
    let plain = get(&home, &format!("{lunch}/card.json")).await;
    assert_eq!(plain.status, StatusCode::OK);
    assert!(!plain.body.contains("Wind"), "{}", plain.body);
    let asked = get(
        &home,
        &format!("{lunch}/card.json?by=Ann%20%26%20Ben&notes=on"),
    )
    .await
    .body;
    assert!(
        asked.contains("Wind from the lake") && asked.contains("Ann & Ben"),
        "{asked}"
    );
    let missing = "/cook/01936f1e-0000-7000-8000-0000000000ff/card.json";
    assert_eq!(get(&home, missing).await.status, StatusCode::NOT_FOUND);
}

#[tokio::test]
async fn each_page_of_cards_is_there_in_spanish_and_whole_without_scripts() {
    let (_folder, home) = home();
    let lunch = cook(&home, "Regatta lunch").await;
    for path in [
        format!("{lunch}/card"),
        format!("{lunch}/again"),
        "/card".into(),
    ] {
        let page = get_in(&home, &path, "es-US").await;
        assert_eq!(page.status, StatusCode::OK, "{path}");
        assert_eq!(page.body.matches("<h1").count(), 1, "{path}");
        assert!(
            !page.body.contains('⟨') && page.body.contains("lang=\"es-US\""),
            "{path}: {}",
            page.body
        );
    }
    let empty = post(
        &home,
        "/cook",
        &[
            ("token", &token()),
            ("form", "start"),
            ("back", "/"),
            ("name", "Nothing yet"),
        ],
    )
    .await;
    let empty = empty.to.unwrap().split('?').next().unwrap().to_owned();
    let told = get(&home, &format!("{empty}/card")).await;
    assert_eq!(told.status, StatusCode::NOT_FOUND);
    assert!(told.body.contains("no meats yet"), "{}", told.body);
}
