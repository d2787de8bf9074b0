use super::*;

fn refused(change: impl FnOnce(&mut LidOpenings)) -> String {
    let mut input = pit(
        60,
        vec![need("ribs", 0, 30, 5), need("shoulder", 0, 60, 15)],
    );
    change(&mut input);
    lid_openings(&input).expect_err("the input is bad").reason
}

#[test]
fn bad_input_is_told_what_to_change() {
    let told = [
        (
            refused(|p| p.horizon_min = 0),
            "horizon_min is 0: give a whole number from 1 to 1440.",
        ),
        (
            refused(|p| p.horizon_min = 1441),
            "horizon_min is 1441: give a whole number from 1 to 1440.",
        ),
        (
            refused(|p| p.needs[0].every_min = 9),
            "every_min of \"ribs\" is 9: give a whole number from 10 to 240.",
        ),
        (
            refused(|p| p.needs[0].early_min = 16),
            "early_min of \"ribs\" is 16: give a whole number from 0 to 15.",
        ),
        (
            refused(|p| p.needs[1].late_min = -1),
            "late_min of \"shoulder\" is -1: give a whole number from 0 to 30.",
        ),
        (
            refused(|p| p.needs[1].name = "ribs".into()),
            "Two meats are called \"ribs\": give each a name of its own.",
        ),
        (
            refused(|p| p.needs[1].name = " ".into()),
            "A meat has no name: give each meat a name of its own.",
        ),
    ];
    for (reason, expected) in told {
        assert_eq!(reason, expected);
    }
}

#[test]
fn absurd_minutes_are_refused_and_never_overflow() {
    for minute in [i64::MIN, i64::MAX, 1_000_000_001] {
        assert!(refused(|p| p.from_min = minute).contains("from_min"));
        assert!(refused(|p| p.needs[0].last_min = minute).contains("last_min"));
        assert!(refused(|p| p.needs[0].until_min = Some(minute)).contains("until_min"));
        assert!(refused(|p| p.fixed_min = vec![minute]).contains("fixed_min"));
    }
    let ends = LidOpenings {
        from_min: 1_000_000_000,
        fixed_min: vec![-1_000_000_000, 1_000_000_000],
        ..pit(1440, vec![need("ribs", -1_000_000_000, 10, 0)])
    };
    assert_eq!(plan(&ends).overdue, ["ribs"]);
    let ahead = LidOpenings {
        from_min: -1_000_000_000,
        ..pit(1440, vec![need("ribs", 1_000_000_000, 10, 0)])
    };
    assert_eq!(plan(&ahead).openings, []);
}

#[test]
fn thirteen_meats_are_one_too_many() {
    let meats = |count: usize| {
        (0..count)
            .map(|i| need(&i.to_string(), 0, 60, 15))
            .collect::<Vec<_>>()
    };
    assert!(lid_openings(&pit(60, meats(12))).is_ok());
    let reason = lid_openings(&pit(60, meats(13))).unwrap_err().reason;
    assert_eq!(
        reason,
        "the number of meats is 13: give a whole number from 0 to 12."
    );
}

#[test]
fn it_reads_and_writes_as_json_and_refuses_a_field_it_does_not_know() {
    let text = r#"{"from_min":0,"horizon_min":40,"needs":[
        {"name":"ribs","last_min":0,"every_min":30,"early_min":5,"late_min":5}]}"#;
    let input: LidOpenings = serde_json::from_str(text).unwrap();
    let answer = serde_json::to_string(&plan(&input)).unwrap();
    assert_eq!(
        answer,
        r#"{"openings":[{"at_min":30,"names":["ribs"],"fixed":false}],"count":1,"deviation_min":0,"overdue":[],"exact":true,"at_least":1}"#
    );
    assert!(serde_json::from_str::<LidOpenings>(&text.replace("late_min", "late")).is_err());
}

#[cfg(feature = "schema")]
#[test]
fn the_schema_carries_units_and_ranges() {
    let schema = serde_json::to_string(&schemars::schema_for!(LidOpenings)).unwrap();
    assert!(
        schema.contains("10 to 240") && schema.contains("\"horizon_min\""),
        "{schema}"
    );
}
