//! Smoke in words.

use serde_json::{Value, json};
use slowbend_core::fire::{SmokeAdvice::*, SmokeAnswer, SmokeState, SmokeStrength, smoke};

fn told(input: Value) -> SmokeAnswer {
    smoke(&serde_json::from_value(input).expect("the shape of the sum")).expect("in range")
}

#[test]
fn chunks_are_stopped_when_the_bark_is_set_when_wrapped_and_after_three_hours() {
    let of = |more: Value| {
        let mut input = json!({ "from": "chunks", "wood": "oak" });
        input
            .as_object_mut()
            .unwrap()
            .extend(more.as_object().unwrap().clone());
        told(input).advice
    };
    assert_eq!(of(json!({})), [OneMoreChunk]);
    assert_eq!(of(json!({ "chunks": 1, "minutes": 20 })), []);
    assert_eq!(of(json!({ "chunks": 1, "minutes": 60 })), [OneMoreChunk]);
    assert_eq!(of(json!({ "chunks": 3, "minutes": 180 })), [NoMoreChunks]);
    assert_eq!(of(json!({ "bark_set": true })), [NoMoreChunks]);
    assert_eq!(
        of(json!({ "wrapped": true })),
        [NoMoreChunks, WrappedTakesNone]
    );
    assert_eq!(of(json!({ "chunks": 8, "minutes": 30 })), [Enough]);
}

#[test]
fn raw_mesquite_is_not_for_a_long_cook_and_coals_of_it_are() {
    let raw = told(json!({ "from": "fire", "wood": "mesquite", "planned_min": 600 }));
    assert_eq!(
        (raw.strength, raw.advice[0]),
        (SmokeStrength::Strong, MesquiteToCoals)
    );
    let short = told(json!({ "from": "fire", "wood": "mesquite", "planned_min": 40 }));
    assert!(!short.advice.contains(&MesquiteToCoals));
    let unplanned = told(json!({ "from": "fire", "wood": "mesquite" }));
    assert!(
        unplanned.advice.contains(&MesquiteToCoals),
        "not known is not short"
    );
    let coals =
        told(json!({ "from": "fire", "wood": "mesquite", "planned_min": 600, "tamed": true }));
    assert!(!coals.advice.contains(&MesquiteToCoals));
}

#[test]
fn dirty_smoke_is_told_from_clean_and_from_wood_that_catches() {
    let state = |more: Value| {
        let mut input = json!({ "from": "fire", "wood": "oak" });
        input
            .as_object_mut()
            .unwrap()
            .extend(more.as_object().unwrap().clone());
        told(input).state
    };
    assert_eq!(state(json!({})), None);
    assert_eq!(
        state(json!({ "seen": "thin_blue" })),
        Some(SmokeState::Clean)
    );
    assert_eq!(
        state(json!({ "seen": "white", "fed_min_ago": 5 })),
        Some(SmokeState::Catching)
    );
    assert_eq!(
        state(json!({ "seen": "white", "fed_min_ago": 40 })),
        Some(SmokeState::Dirty)
    );
    assert_eq!(state(json!({ "seen": "white" })), Some(SmokeState::Dirty));
    assert_eq!(
        state(json!({ "seen": "gray_or_yellow", "fed_min_ago": 1 })),
        Some(SmokeState::Dirty)
    );
    assert_eq!(
        state(json!({ "seen": "stings", "fed_min_ago": 2 })),
        Some(SmokeState::Dirty)
    );
    assert_eq!(state(json!({ "seen": "nothing" })), Some(SmokeState::None));
}

#[test]
fn fruit_is_light_oak_medium_hickory_strong_and_poultry_tastes_one_more() {
    let of = |wood: &str, mild: bool| {
        told(json!({ "from": "fire", "wood": wood, "mild_meat": mild })).strength
    };
    let all = ["fruit", "oak", "hickory"];
    assert_eq!(
        all.map(|wood| of(wood, false)),
        [
            SmokeStrength::Light,
            SmokeStrength::Medium,
            SmokeStrength::Strong
        ]
    );
    assert_eq!(of("fruit", true), SmokeStrength::Medium);
    let dirty = told(json!({ "from": "fire", "wood": "fruit", "seen": "black" }));
    assert_eq!(
        (dirty.strength, dirty.advice[0]),
        (SmokeStrength::Medium, ClearIt)
    );
}

#[test]
fn absurd_numbers_are_told() {
    for (field, value) in [
        ("chunks", -1),
        ("chunks", 201),
        ("minutes", 2_881),
        ("planned_min", 0),
        ("fed_min_ago", -5),
    ] {
        let mut input = json!({ "from": "chunks", "wood": "oak" });
        input[field] = value.into();
        let told = smoke(&serde_json::from_value(input).unwrap())
            .unwrap_err()
            .to_string();
        assert!(told.starts_with(field), "{told}");
    }
}
