//! Law 3, all agree: after a full exchange every device holds the same entries and knows the same.

use crate::sim::{
    Told,
    picture::Picture,
    screens::{Screen, without_notices},
};
use serde_json::Value;
use slowbend_core::log::{Body, Entry, EntryKey, Stamp};
use std::collections::BTreeMap;

/// Checks that both hold the same. The stamp of an erased entry no longer says anything.
///
/// # Errors
/// The first entry that differs.
pub fn same_entries(first: &[Entry], other: &[Entry], whose: (usize, usize)) -> Told<()> {
    let (first, other) = (by_key(first), by_key(other));
    for (key, entry) in &first {
        if other.get(key) != Some(entry) {
            return Err(format!(
                "law 3: devices {whose:?} differ in {key}: {entry:?} and {:?}",
                other.get(key)
            ));
        }
    }
    match other.keys().find(|key| !first.contains_key(key)) {
        Some(key) => Err(format!(
            "law 3: of devices {whose:?} only the second holds {key}"
        )),
        None => Ok(()),
    }
}

type Held<'a> = BTreeMap<EntryKey, (Stamp, &'a Body)>;

fn by_key(entries: &[Entry]) -> Held<'_> {
    let stamp = |entry: &Entry| match entry.body {
        Body::Erased => Stamp::default(),
        Body::Raw(_) => entry.stamp,
    };
    entries
        .iter()
        .map(|entry| (entry.key, (stamp(entry), &entry.body)))
        .collect()
}

/// Checks that a screen of the door is the one of a cold fold.
///
/// # Errors
/// Where they differ.
pub fn warm_is_cold(screen: Screen, warm: Value, cold: Value) -> Told<()> {
    same(
        screen,
        &without_notices(warm),
        &without_notices(cold),
        "the door, and not of a cold fold",
    )
}

/// Checks that two devices show the same.
///
/// # Errors
/// Where they differ.
pub fn same(screen: Screen, first: &Value, other: &Value, whose: &str) -> Told<()> {
    match first == other {
        true => Ok(()),
        false => Err(format!(
            "law 3: {screen:?} is of {whose}: {}",
            differing(first, other, String::new())
        )),
    }
}

/// The first place where two screens differ.
fn differing(first: &Value, other: &Value, place: String) -> String {
    let into = |key: &str, a: &Value, b: &Value| {
        (a != b).then(|| differing(a, b, format!("{place}/{key}")))
    };
    let found = match (first, other) {
        (Value::Object(a), Value::Object(b)) => a
            .iter()
            .find_map(|(key, value)| into(key, value, b.get(key)?)),
        (Value::Array(a), Value::Array(b)) => a
            .iter()
            .zip(b)
            .enumerate()
            .find_map(|(i, (a, b))| into(&i.to_string(), a, b)),
        _ => None,
    };
    found.unwrap_or_else(|| format!("{place}: {first} and {other}"))
}

/// Checks that the order of coming changes nothing: the fold of `entries` backwards is the fold of them forwards.
///
/// # Errors
/// When it is not.
pub fn order_is_nothing(entries: &[Entry]) -> Told<()> {
    let mut backwards = entries.to_vec();
    backwards.reverse();
    match Picture::of(entries) == Picture::of(&backwards) {
        true => Ok(()),
        false => Err("law 3: entries read backwards mean something else".into()),
    }
}
