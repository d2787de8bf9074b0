//! Forms: each records its act once, and one that is refused comes back as it was typed.

use super::{cook, entries, get, home, links, post, token};
use axum::http::StatusCode;

#[tokio::test]
async fn a_cook_is_started_with_its_meat_and_its_pit() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let page = get(&home, &now).await.body;
    assert!(page.contains("Regatta lunch"), "{page}");
    assert!(get(&home, "/settings").await.body.contains("The drum"));
}

#[tokio::test]
async fn a_form_posted_twice_adds_nothing_the_second_time() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let (once, write) = (token(), format!("{now}/write"));
    let form = [
        ("token", once.as_str()),
        ("form", "note"),
        ("back", &write),
        ("text", "Wind from the north."),
    ];
    let first = post(&home, &format!("{now}/note"), &form).await;
    assert_eq!(first.status, StatusCode::SEE_OTHER, "{}", first.body);
    let after = entries(&home);
    let second = post(&home, &format!("{now}/note"), &form).await;
    assert_eq!(
        (second.status, entries(&home)),
        (StatusCode::SEE_OTHER, after)
    );
    assert!(
        get(&home, &second.to.unwrap())
            .await
            .body
            .contains("Nothing was added")
    );
}

#[tokio::test]
async fn a_form_that_was_changed_after_going_back_is_another_one() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let once = token();
    for text in ["Wind from the north.", "Wind from the south."] {
        let form = [("token", once.as_str()), ("form", "note"), ("text", text)];
        let noted = post(&home, &format!("{now}/note"), &form).await;
        assert_eq!(noted.status, StatusCode::SEE_OTHER, "{}", noted.body);
    }
    let told = get(&home, &format!("{now}/timeline")).await.body;
    assert!(
        told.contains("from the north") && told.contains("from the south"),
        "{told}"
    );
}

#[tokio::test]
async fn a_refusal_names_its_field_and_marks_it() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let write = format!("{now}/write");
    let form = [
        ("token", token()),
        ("form", "people".into()),
        ("back", write),
        ("people", "many".into()),
    ];
    let form: Vec<_> = form.iter().map(|(n, v)| (*n, v.as_str())).collect();
    let refused = post(&home, &format!("{now}/people"), &form).await;
    assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
    let page = refused.body;
    assert!(page.contains("</strong> How many: "), "{page}");
    assert_eq!(page.matches("aria-invalid=\"true\"").count(), 1, "{page}");
    assert!(page.contains("aria-describedby=\"refused\""), "{page}");
}

#[tokio::test]
async fn what_is_too_long_is_refused_in_a_sentence() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let long = "x".repeat(3 << 20);
    let form = [("text", long.as_str())];
    let refused = post(&home, &format!("{now}/note"), &form).await;
    assert_eq!(refused.status, StatusCode::PAYLOAD_TOO_LARGE);
    assert!(refused.body.contains("up to 256 KB"), "{}", refused.body);
}

#[tokio::test]
async fn a_start_posted_twice_adds_neither_cook_nor_pit() {
    let (_folder, home) = home();
    let once = token();
    let form = [
        ("token", once.as_str()),
        ("name", "Lunch"),
        ("cut-0", "pork_butt"),
        ("pit-0", "new"),
        ("pit-name", "Drum"),
        ("pit-kind", "drum"),
    ];
    let first = post(&home, "/cook", &form).await;
    assert_eq!(first.status, StatusCode::SEE_OTHER, "{}", first.body);
    let after = entries(&home);
    post(&home, "/cook", &form).await;
    assert_eq!(entries(&home), after);
}

#[tokio::test]
async fn what_is_refused_comes_back_with_the_reason_and_as_it_was_typed() {
    let (_folder, home) = home();
    let form = |weight| {
        vec![
            ("token", "0123456789abcdef0123456789abcdef"),
            ("form", "start"),
            ("back", "/"),
            ("name", "Lunch by the river"),
            ("cut-0", "pork_butt"),
            ("weight-0", weight),
            ("pit-name", "Drum"),
            ("pit-kind", "drum"),
            ("pit-0", "new"),
        ]
    };
    let before = entries(&home);
    for weight in ["0", "900 kg", "heavy"] {
        let back = post(&home, "/cook", &form(weight)).await;
        assert_eq!(back.status, StatusCode::UNPROCESSABLE_ENTITY, "{weight}");
        assert!(back.body.contains("Not recorded."), "{weight}");
        assert!(
            back.body.contains("value=\"Lunch by the river\"")
                && back.body.contains(&format!("value=\"{weight}\""))
        );
        assert!(
            back.body.contains("value=\"pork_butt\" selected"),
            "{}",
            back.body
        );
        assert!(
            back.body.contains("0123456789abcdef0123456789abcdef"),
            "the same form, so the same token"
        );
    }
    assert_eq!(entries(&home), before);
    assert_eq!(
        post(&home, "/cook", &form("8 lb")).await.status,
        StatusCode::SEE_OTHER
    );
}

#[tokio::test]
async fn markup_in_a_name_is_shown_as_it_was_typed_and_never_runs() {
    let (_folder, home) = home();
    let now = cook(&home, "<script>alert(1)</script>").await;
    for path in [
        now.as_str(),
        "/",
        &format!("{now}/write"),
        &format!("{now}/timeline"),
    ] {
        let body = get(&home, path).await.body;
        assert!(!body.contains("<script>alert"), "{path}");
    }
    assert!(
        get(&home, "/")
            .await
            .body
            .contains("&lt;script&gt;alert(1)&lt;/script&gt;")
    );
    let told = post(
        &home,
        "/cook",
        &[
            ("token", &token()),
            ("form", "start"),
            ("back", "/"),
            ("name", "\"><b>x"),
            ("weight-0", "<i>"),
            ("cut-0", "pork_butt"),
        ],
    )
    .await;
    assert!(
        told.status == StatusCode::UNPROCESSABLE_ENTITY
            && !told.body.contains("<b>x")
            && !told.body.contains("<i>")
    );
}

#[tokio::test]
async fn every_button_on_every_page_is_taken_or_refused_with_a_sentence() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let meat = links(&get(&home, &now).await.body, "/meat/").remove(0);
    let mut pressed = 0;
    for path in [now, meat] {
        let body = get(&home, &path).await.body;
        for act in body
            .split("name=\"act\" value=\"")
            .skip(1)
            .filter_map(|rest| rest.split('"').next())
        {
            let act = act
                .replace("&quot;", "\"")
                .replace("&amp;", "&")
                .replace("&lt;", "<")
                .replace("&gt;", ">");
            let answer = post(
                &home,
                "/act",
                &[("token", &token()), ("back", &path), ("act", &act)],
            )
            .await;
            let taken = answer.status == StatusCode::SEE_OTHER;
            assert!(
                taken || answer.status == StatusCode::UNPROCESSABLE_ENTITY,
                "{act}: {}",
                answer.body
            );
            assert!(taken || answer.body.contains("class=\"refused\""), "{act}");
            pressed += 1;
        }
    }
    assert!(pressed > 0, "the pages have buttons");
}

#[tokio::test]
async fn each_thing_that_can_be_written_down_is_recorded() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let write = get(&home, &format!("{now}/write")).await.body;
    let value = |start: &str| {
        let found = write
            .split("option value=\"")
            .skip(1)
            .filter_map(|rest| rest.split('"').next());
        found
            .filter(|value| value.starts_with(start))
            .map(str::to_owned)
            .next()
            .unwrap()
    };
    let (meat_place, pit_place) = (value("meat:"), value("pit:"));
    let (meat, pit) = (
        meat_place.split(':').nth(1).unwrap(),
        pit_place.trim_start_matches("pit:"),
    );
    let forms: [(&str, Vec<(&str, &str)>); 12] = [
        ("note", vec![("text", "Wind from the north.")]),
        (
            "reading",
            vec![("place", pit_place.as_str()), ("temp", "250"), ("ago", "5")],
        ),
        ("feed", vec![("pit", pit), ("what", "One chimney of coal")]),
        ("vent", vec![("pit", pit), ("how", "A third open")]),
        (
            "move",
            vec![("piece", meat), ("pit", pit), ("spot", "left")],
        ),
        (
            "meat",
            vec![
                ("cut", "turkey_breast"),
                ("prepared", "intact"),
                ("weight", "6 lb"),
                ("cadence", ""),
                ("pit", ""),
            ],
        ),
        ("dish", vec![("name", "Slaw"), ("hot", "cold")]),
        ("serve", vec![("serve", "2026-06-13T15:00")]),
        ("people", vec![("people", "15")]),
        ("sleep", vec![("until", "1 pm")]),
        ("watch", vec![("note", "Steady")]),
        (
            "probe",
            vec![
                ("source", "Box"),
                ("sensor", "1"),
                ("place", pit_place.as_str()),
            ],
        ),
    ];
    for (form, fields) in &forms {
        let before = entries(&home);
        let token = token();
        let mut all = vec![
            ("token", token.as_str()),
            ("form", *form),
            ("back", now.as_str()),
        ];
        all.extend_from_slice(fields);
        let answer = post(&home, &format!("{now}/{form}"), &all).await;
        assert_eq!(
            answer.status,
            StatusCode::SEE_OTHER,
            "{form}: {}",
            answer.body
        );
        assert!(entries(&home) > before, "{form}");
    }
}

#[tokio::test]
async fn a_pass_of_checks_is_recorded_and_an_empty_one_refused() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let meat = links(&get(&home, &now).await.body, "/meat/").remove(0);
    let path = format!("{meat}/check");
    let form = get(&home, &path).await.body;
    let radio = form.split("type=\"radio\" name=\"").nth(1).unwrap();
    let name = radio.split('"').next().unwrap();
    let value = radio
        .split("value=\"")
        .nth(1)
        .unwrap()
        .split('"')
        .next()
        .unwrap()
        .replace("&quot;", "\"");
    let before = entries(&home);
    let empty = post(
        &home,
        &path,
        &[("token", &token()), ("form", "check"), ("back", &path)],
    )
    .await;
    assert_eq!(
        (empty.status, entries(&home)),
        (StatusCode::UNPROCESSABLE_ENTITY, before)
    );
    let done = post(
        &home,
        &path,
        &[
            ("token", &token()),
            ("back", &path),
            (name, &value),
            ("ago", "5"),
        ],
    )
    .await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    assert!(entries(&home) > before);
}

#[tokio::test]
async fn settings_are_recorded_field_by_field() {
    let (_folder, home) = home();
    let settings = |form: &'static str, fields: Vec<(&'static str, String)>| {
        let home = home.clone();
        async move {
            let token = token();
            let mut all = vec![
                ("token", token.as_str()),
                ("form", form),
                ("back", "/settings"),
            ];
            all.extend(fields.iter().map(|(name, value)| (*name, value.as_str())));
            let answer = post(&home, &format!("/settings/{form}"), &all).await;
            assert_eq!(
                answer.status,
                StatusCode::SEE_OTHER,
                "{form}: {}",
                answer.body
            );
        }
    };
    settings(
        "pit",
        vec![
            ("name", "The kettle".into()),
            ("kind", "kettle".into()),
            ("grate", "2300".into()),
        ],
    )
    .await;
    settings("thermometer", vec![("name", "The folding one".into())]).await;
    settings("device", vec![("name", "Home post".into())]).await;
    let page = get(&home, "/settings").await.body;
    let subject = |thing: &str| {
        let found = page
            .split("name=\"of\" value=\"")
            .skip(1)
            .filter_map(|rest| rest.split('"').next());
        found
            .map(|json| json.replace("&quot;", "\""))
            .find(|json| json.contains(thing))
            .unwrap()
    };
    settings(
        "band",
        vec![
            ("of", subject("pit")),
            ("low", "225".into()),
            ("high", "275".into()),
            ("minutes", "15".into()),
        ],
    )
    .await;
    settings(
        "field",
        vec![
            ("of", subject("pit")),
            ("field", "name".into()),
            ("value", "The old kettle".into()),
        ],
    )
    .await;
    settings(
        "bath",
        vec![
            ("of", subject("thermometer")),
            ("against", "ice".into()),
            ("read", "32.4".into()),
        ],
    )
    .await;
    let page = get(&home, "/settings").await.body;
    assert!(
        page.contains("The old kettle") && page.contains("The folding one"),
        "{page}"
    );
}
