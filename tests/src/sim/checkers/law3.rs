//! Law 3, all agree: after a full exchange every device holds the same entries and knows the same.

use crate::sim::{Told, picture::Picture};
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
