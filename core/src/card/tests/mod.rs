//! What is read of a card, what is refused, and the way from a cook to a card and back.

mod laws;
mod reading;
mod round;

use super::{CardRead, read};
use crate::{
    ids::DeviceId,
    words::{Locale, Viewer, Words},
};
use serde_json::{Value, json};
use uuid::Uuid;

fn viewer(locale: Locale) -> Viewer {
    Viewer {
        locale,
        zone: "America/Chicago".into(),
        ..Viewer::default_for(DeviceId(Uuid::nil()))
    }
}

fn taken(card: &Value) -> CardRead {
    read(&Words::of(&viewer(Locale::EnUs)), &card.to_string()).unwrap()
}

fn refused(text: &str) -> String {
    let refusal = read(&Words::of(&viewer(Locale::EnUs)), text);
    refusal.unwrap_err().reason
}

/// A card that uses every field. Invented, as all in here.
fn regatta() -> Value {
    json!({
        "slowbend_card": 1,
        "name": "Regatta lunch",
        "by": "Ann of the rowing club",
        "serve": { "at": "14:00" },
        "people": 14,
        "pits": [{ "name": "The drum", "kind": "drum", "held": { "low_mk": 380_372, "high_mk": 408_150 } }],
        "meats": [
            { "name": "Slab one", "cut": "spare_ribs", "form": "intact", "weight_g": 1600, "cadence": { "mop": 30 }, "pit": 0, "wrap": "paper", "rest_min": 20 },
            { "cut": "pork_butt", "form": "injected", "cadence": { "spritz": 60 }, "pull_at_mk": 368_150 },
            { "cut": "turkey_breast", "cadence": "none" },
        ],
        "dishes": [{ "name": "Slaw", "hot": false }],
        "notes": ["Wind from the lake.\nMop under the lee."],
    })
}

/// The same with the field at the pointer set to `value`.
fn with(pointer: &str, value: Value) -> Value {
    let mut card = regatta();
    let (place, field) = pointer.rsplit_once('/').unwrap();
    match card.pointer_mut(place).unwrap() {
        Value::Object(map) => {
            map.insert(field.to_owned(), value);
        }
        Value::Array(list) => list[field.parse::<usize>().unwrap()] = value,
        other => panic!("{other} has no fields"),
    }
    card
}
