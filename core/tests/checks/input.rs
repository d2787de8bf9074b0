//! Bad input is told, not guessed at; good input is plain JSON.

use crate::cases::{NOW, RIGHT, by_hand, felt, input, judge};
use slowbend_core::{checks::*, moment::MINUTE, safety::Form, units::Mk};

fn refusal(change: impl FnOnce(&mut VerdictInput)) -> Refusal {
    let checks = vec![
        by_hand(Spot::Center, Mk::from_f(200), RIGHT, 1),
        felt(TestResult::Probed(ProbeFeel::Slides), 1),
    ];
    let mut bad = input(Cut::PorkButt, Form::Intact, checks);
    assert!(verdict(&bad).is_ok());
    change(&mut bad);
    let refused = verdict(&bad).expect_err("it is bad");
    assert!(
        refused.to_string().ends_with('.') && refused.to_string().contains(':'),
        "{refused}"
    );
    refused.reason
}

fn with_heat(input: &mut VerdictInput, milli_c: i64) {
    input.checks[0] = by_hand(Spot::Center, Mk::from_c_milli(milli_c), RIGHT, 1);
}

#[test]
fn each_bad_number_is_refused_with_what_to_do() {
    assert_eq!(
        refusal(|i| with_heat(i, 200_001)),
        Refusal::TemperatureOutside
    );
    assert_eq!(
        refusal(|i| with_heat(i, -20_001)),
        Refusal::TemperatureOutside
    );
    assert_eq!(
        refusal(|i| i.checks[0].standing = None),
        Refusal::StandingMissing
    );
    assert_eq!(
        refusal(|i| i.checks[1].standing = Some(RIGHT)),
        Refusal::StandingUnasked
    );
    let off = |off_mk| Some(Standing::Checked { off_mk, at: NOW });
    assert_eq!(
        refusal(|i| i.checks[0].standing = off(i64::MAX)),
        Refusal::OffOutside
    );
    assert_eq!(
        refusal(|i| i.checks[0].standing = off(i64::MIN)),
        Refusal::OffOutside
    );
    assert_eq!(refusal(|i| i.checks[0].at = 0), Refusal::InstantOutside);
    assert_eq!(refusal(|i| i.now = i64::MAX), Refusal::InstantOutside);
    assert_eq!(
        refusal(|i| i.checks[1].at = NOW + 6 * MINUTE),
        Refusal::FromTheFuture
    );
    assert_eq!(
        refusal(|i| i.resting_since = Some(NOW + 6 * MINUTE)),
        Refusal::FromTheFuture
    );
    assert_eq!(
        refusal(|i| i.checks = vec![i.checks[1]; 1_001]),
        Refusal::TooMany
    );
}

#[test]
fn a_phone_a_little_ahead_counts_as_now() {
    let mut ahead = input(
        Cut::PorkButt,
        Form::Intact,
        vec![by_hand(Spot::Center, Mk::from_f(200), RIGHT, -4)],
    );
    ahead
        .checks
        .push(felt(TestResult::Probed(ProbeFeel::Slides), -5));
    assert_eq!(judge(&ahead).state, DoneState::Done);
}

#[test]
fn the_ends_of_the_ranges_are_judged() {
    for milli_c in [-20_000, 200_000] {
        let mut edge = input(
            Cut::PorkButt,
            Form::Intact,
            vec![by_hand(Spot::Center, Mk(0), RIGHT, 1)],
        );
        with_heat(&mut edge, milli_c);
        assert!(verdict(&edge).is_ok());
    }
}

#[test]
fn it_is_asked_and_answered_in_json() {
    let asked = r#"{
        "cut": "pork_butt", "form": "intact", "now": 1795000000000,
        "checks": [
            { "result": { "probe_feel": "slides" }, "at": 1794999940000 },
            { "result": { "temperature": { "mk": 367000, "spot": "center", "instant_read": true } },
              "at": 1794999940000, "standing": "unchecked" }
        ]
    }"#;
    let asked: VerdictInput = serde_json::from_str(asked).expect("it is sound");
    let answer = serde_json::to_value(judge(&asked)).expect("a verdict is JSON");
    assert_eq!(answer["state"], "done");
    assert_eq!(answer["safety"]["state"], "safe");
    assert_eq!(answer["say_unchecked"], true);
    let back: Verdict = serde_json::from_value(answer).expect("it reads back");
    assert_eq!(back, judge(&asked));
    let unknown = serde_json::from_str::<VerdictInput>(
        r#"{"cut":"pork_butt","from":"intact","now":0,"checks":[]}"#,
    );
    assert!(
        unknown
            .expect_err("a misspelled field is told")
            .to_string()
            .contains("from")
    );
}

#[cfg(feature = "schema")]
#[test]
fn its_schema_names_every_field_with_its_unit() {
    let asked =
        serde_json::to_value(schemars::schema_for!(VerdictInput)).expect("a schema is JSON");
    let answered = serde_json::to_value(schemars::schema_for!(Verdict)).expect("a schema is JSON");
    for (schema, fields) in [(&asked, 6), (&answered, 6)] {
        let properties = schema["properties"]
            .as_object()
            .expect("an object has properties");
        assert_eq!(properties.len(), fields);
        assert!(
            properties
                .values()
                .all(|field| field["description"].is_string()),
            "{properties:#?}"
        );
    }
    assert!(
        asked["properties"]["now"]["description"]
            .to_string()
            .contains("milliseconds")
    );
}
