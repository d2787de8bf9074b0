use super::{super::*, *};

#[test]
fn a_card_with_every_field_reads_as_it_was_written() {
    let read = taken(&regatta());
    assert_eq!(read.told, [""; 0]);
    assert_eq!(
        serde_json::from_str::<Value>(&read.card.compact()).unwrap(),
        regatta()
    );
    assert_eq!(
        serde_json::from_str::<Value>(&read.card.pretty()).unwrap(),
        regatta()
    );
}

#[test]
fn the_least_card_is_a_name_and_a_meat() {
    let least = json!({ "slowbend_card": 1, "name": "Supper", "meats": [{ "cut": "pork_butt" }] });
    let again: Value = serde_json::from_str(&taken(&least).card.compact()).unwrap();
    assert_eq!(again, least);
}

#[test]
fn what_is_no_card_is_told_what_one_is() {
    for (text, part) in [
        ("", "nothing in it"),
        (" \u{feff} ", "nothing in it"),
        ("slabs for Sunday", "line 1"),
        ("{\"slowbend_card\": 1", "breaks off"),
        ("{“slowbend_card”: 1}", "curly"),
        ("[1, 2]", "no cook card"),
        ("{}", "no cook card"),
        ("{\"slowbend_card\": \"1\"}", "no cook card"),
        ("{\"slowbend_card\": 0}", "no cook card"),
        ("{\"slowbend_card\": 2}", "Update Slowbend"),
        (
            "{\"slowbend_card\":1,\"name\":\"a\",\"name\":\"b\"}",
            "goes wrong",
        ),
    ] {
        assert!(refused(text).contains(part), "{text}: {}", refused(text));
    }
    let byte_order = format!("\u{feff}{}", regatta());
    assert!(read(&Words::of(&viewer(Locale::EnUs)), &byte_order).is_ok());
}

#[test]
fn each_field_is_refused_by_its_place() {
    for (pointer, value, part) in [
        ("/name", json!(" "), "name: "),
        ("/name", json!(7), "name is not of the shape"),
        (
            "/people",
            json!(0),
            "people must be a whole number from 1 to 5000",
        ),
        ("/people", json!(14.5), "people"),
        ("/serve", json!({ "at": "2 pm" }), "serve: at"),
        ("/serve", json!({ "at": "25:00" }), "serve: at"),
        ("/serve", json!({ "after_min": -1 }), "serve: after_min"),
        ("/serve", json!({}), "serve: at is missing"),
        ("/pits/0/kind", json!("volcano"), "pits 1: kind"),
        ("/pits/0/held/low_mk", json!(300_000), "held: "),
        ("/pits/0/held/high_mk", json!(380_372), "held: "),
        ("/meats", json!([]), "meats is missing"),
        ("/meats/1/cut", json!("pterodactyl"), "meats 2: cut"),
        ("/meats/1/weight_g", json!(i64::MAX), "meats 2: weight_g"),
        ("/meats/1/weight_g", json!(1e300), "meats 2: weight_g"),
        ("/meats/0/pit", json!(1), "meats 1: pit"),
        (
            "/meats/0/cadence",
            json!({ "mop": 5 }),
            "meats 1: cadence: mop",
        ),
        (
            "/meats/0/cadence",
            json!({ "mop": 30, "spritz": 30 }),
            "meats 1: cadence",
        ),
        ("/meats/0/cadence", json!("often"), "meats 1: cadence"),
        ("/meats/0/wrap", json!(["foil"]), "meats 1: wrap"),
        ("/dishes/0/hot", json!("lukewarm"), "dishes 1: hot"),
        ("/notes/0", json!("x".repeat(2_001)), "notes 1"),
        ("/notes/0", json!(null), "notes 1"),
        ("/notes", json!(vec!["x"; NOTES_MAX + 1]), "too many"),
    ] {
        let reason = refused(&with(pointer, value.clone()).to_string());
        assert!(reason.contains(part), "{pointer} {value}: {reason}");
    }
}

#[test]
fn nothing_below_a_published_minimum_comes_in_on_a_card() {
    for (pointer, value, part) in [
        // Injected pork: 155 °F is 341,483 mK.
        ("/meats/1/pull_at_mk", json!(341_482), "155 °F"),
        // Poultry: 165 °F is 347,039 mK.
        ("/meats/2/pull_at_mk", json!(347_038), "165 °F"),
        ("/meats/1/pull_at_mk", json!(0), "155 °F"),
        // The chart's rest of 3 minutes for whole pork.
        ("/meats/0/rest_min", json!(2), "3 to 1440 minutes"),
        // Hot holding, 140 °F.
        (
            "/pits/0/held",
            json!({ "low_mk": 333_149, "high_mk": 400_000 }),
            "140 °F",
        ),
    ] {
        let reason = refused(&with(pointer, value.clone()).to_string());
        assert!(reason.contains(part), "{pointer} {value}: {reason}");
    }
    taken(&with("/meats/1/pull_at_mk", json!(341_483)));
    taken(&with("/meats/2/pull_at_mk", json!(347_039)));
    taken(&with("/meats/0/rest_min", json!(3)));
}

#[test]
fn what_nobody_said_is_not_taken_for_whole_muscle() {
    let mut unsaid = with("/meats/0/pull_at_mk", json!(340_000));
    taken(&unsaid);
    unsaid["meats"][0].as_object_mut().unwrap().remove("form");
    let reason = refused(&unsaid.to_string());
    assert!(reason.contains("155 °F"), "{reason}");
}

#[test]
fn a_field_of_no_card_is_left_out_and_told() {
    let card = with("/meats/0/minimum_mk", json!(1));
    let read = taken(&card);
    assert_eq!(read.told.len(), 1);
    assert!(
        read.told[0].starts_with("meats 1: minimum_mk"),
        "{:?}",
        read.told
    );
    assert!(!read.card.compact().contains("minimum"));
}

#[test]
fn what_hides_or_reorders_is_taken_out_and_told() {
    let card = with("/name", json!("Lunch\u{202e}hcnul\u{0}\u{200b}"));
    let read = taken(&card);
    assert_eq!(read.card.name, "Lunchhcnul");
    assert!(
        read.told[0].starts_with("name held letters"),
        "{:?}",
        read.told
    );
    let markup = "<script>alert(1)</script> { $name }";
    let read = taken(&with("/notes/0", json!(markup)));
    assert_eq!(
        (read.card.notes, read.told),
        (vec![markup.to_owned()], vec![])
    );
}

#[test]
fn a_huge_a_deep_and_a_junk_card_are_told_shortly() {
    let huge = with("/name", json!("x".repeat(BYTES_MAX)));
    assert!(refused(&huge.to_string()).contains("64 KB"));
    let deep = format!(
        "{{\"slowbend_card\":1,\"x\":{}{}",
        "[".repeat(30_000),
        "]".repeat(30_000)
    );
    assert!(refused(&deep).contains("goes wrong"));
    let mut junk = regatta();
    for n in 0..2_000 {
        junk[format!("junk {n}")] = json!(n);
    }
    assert_eq!(taken(&junk).told.len(), fields::TOLD_MAX);
}

#[test]
fn a_cool_pit_is_taken_and_told_with_who_says_so() {
    let cool = with("/pits/0/held/low_mk", json!(366_483));
    let told = taken(&cool).told;
    assert!(
        told[0].contains("225–300 °F") && told[0].contains("USDA"),
        "{told:?}"
    );
}

#[test]
fn every_refusal_is_said_in_spanish_too() {
    let viewer = viewer(Locale::EsUs);
    let say = Words::of(&viewer);
    let below = with("/meats/2/pull_at_mk", json!(1)).to_string();
    for text in ["", "{", "{}", "{\"slowbend_card\": 2}", &below] {
        let reason = read(&say, text).unwrap_err().reason;
        assert!(
            !reason.contains('⟨') && reason.ends_with(['.', ')']),
            "{reason}"
        );
        assert_ne!(reason, refused(text));
    }
}

#[test]
fn the_sum_takes_the_text_and_gives_the_card() {
    let text = regatta().to_string();
    assert_eq!(check(&CardText { text }).unwrap(), taken(&regatta()));
}
