//! The kitchen of a cook: written down by form, wrong input told at its field, and all of it on one sheet.

use super::{cook, entries, get, get_in, home, post, token};
use axum::http::StatusCode;

/// A form of the kitchen of `now`, with the fields that were filled in.
fn form<'f>(
    kitchen: &'f str,
    slip: &'f str,
    token: &'f str,
    fields: &[(&'f str, &'f str)],
) -> Vec<(&'f str, &'f str)> {
    let frame = [("token", token), ("form", slip), ("back", kitchen)];
    frame.iter().chain(fields).copied().collect()
}

const RUB: [(&str, &str); 6] = [
    ("g-per-kg", "20"),
    ("basis", "weight"),
    ("part-0-name", "Salt & <smoke>"),
    ("part-0-parts", "2"),
    ("part-0-kind", "table_salt"),
    ("part-1-name", "Pepper"),
];

#[tokio::test]
async fn a_rub_is_written_down_and_stands_on_the_sheet() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    assert!(
        get(&home, &now)
            .await
            .body
            .contains(&format!("href=\"{now}/kitchen\""))
    );
    let kitchen = format!("{now}/kitchen");
    assert!(get(&home, &kitchen).await.body.contains("No rub yet"));
    let fields = [
        &RUB[..],
        &[("part-1-parts", "1"), ("part-1-kind", "unsalted")],
    ]
    .concat();
    let before = entries(&home);
    let (rub, once) = (format!("{now}/rub"), token());
    let done = post(&home, &rub, &form(&kitchen, "rub", &once, &fields)).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    assert!(done.to.unwrap().starts_with(&kitchen));
    post(&home, &rub, &form(&kitchen, "rub", &once, &fields)).await;
    assert_eq!(entries(&home), before + 1, "sent twice, it is one");
    let page = get(&home, &kitchen).await.body;
    assert!(page.contains("Salt &amp; &lt;smoke&gt;"), "{page}");
    assert!(
        page.contains("value=\"Pepper\""),
        "what was written stands in the form"
    );
    let sheet = get(&home, &format!("{now}/sheet")).await.body;
    assert!(
        sheet.contains("Salt &amp; &lt;smoke&gt;") && sheet.contains("data-print"),
        "{sheet}"
    );
    assert!(
        !sheet.contains("<form method=\"post\" action=\"/cook"),
        "no forms on paper"
    );
    let spanish = get_in(&home, &kitchen, "es-MX").await.body;
    assert!(
        spanish.contains("Sazonador") && spanish.contains("partes por peso"),
        "{spanish}"
    );
}

#[tokio::test]
async fn what_is_wrong_is_told_beside_its_field_and_what_was_typed_stays() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let kitchen = format!("{now}/kitchen");
    let before = entries(&home);
    let once = token();
    for (slip, fields, field, says) in [
        (
            "rub",
            [
                &RUB[..],
                &[("part-1-parts", "none"), ("part-1-kind", "unsalted")],
            ]
            .concat(),
            "part-1-parts",
            "Type a whole number from 1 to 10000.",
        ),
        (
            "mop",
            vec![
                ("part-0-name", "Cider vinegar"),
                ("part-0-parts", "2"),
                ("spare", "200"),
            ],
            "spare",
            "Type a whole number from 0 to 100.",
        ),
        (
            "shopping",
            vec![("item-0-name", "Charcoal"), ("item-0-need", "two bags")],
            "item-0-need",
            "“two bags” is not an amount",
        ),
        (
            "brine",
            vec![
                ("way", "in_the_meat"),
                ("water", "1 gal"),
                ("percent", "20"),
            ],
            "percent",
            "Type a share from 0.1 to 5 %.",
        ),
    ] {
        let page = post(
            &home,
            &format!("{now}/{slip}"),
            &form(&kitchen, slip, &once, &fields),
        )
        .await;
        assert_eq!(page.status, StatusCode::UNPROCESSABLE_ENTITY);
        let at = page.body.find(&format!("name=\"{field}\"")).unwrap();
        let after = &page.body[at..];
        let beside = after.find("class=\"wrong\"").unwrap_or(usize::MAX);
        assert!(beside < 400, "{slip}: {}", &after[..600.min(after.len())]);
        assert!(
            after[beside..beside + 120].contains(says),
            "{slip}: {}",
            &after[beside..beside + 120]
        );
        let typed = fields.iter().find(|(name, _)| *name == field).unwrap().1;
        assert!(page.body.contains(&format!("value=\"{typed}\"")), "{slip}");
    }
    assert_eq!(entries(&home), before);
}

#[tokio::test]
async fn trimmings_are_weighed_in_and_the_crews_salt_too() {
    let (_folder, home) = home();
    let now = cook(&home, "Regatta lunch").await;
    let kitchen = format!("{now}/kitchen");
    let (first, second) = (token(), token());
    let kept = [("piece", ""), ("weight", "11 oz"), ("what", "for stock")];
    let done = post(
        &home,
        &format!("{now}/trimmings"),
        &form(&kitchen, "trimmings", &first, &kept),
    )
    .await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    let salt = post(
        &home,
        &format!("{now}/salt"),
        &form(&kitchen, "salt", &second, &[("cup", "146")]),
    )
    .await;
    assert_eq!(salt.status, StatusCode::SEE_OTHER, "{}", salt.body);
    let page = get(&home, &kitchen).await.body;
    assert!(
        page.contains("for stock") && page.contains("11 oz kept"),
        "{page}"
    );
    assert!(page.contains("value=\"146\""), "{page}");
}
