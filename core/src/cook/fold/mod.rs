//! The fold: from entries in any order to what is known.
//!
//! Law: [`Cook`] and [`Crew`] depend on the set of entries alone. [`cook`] and [`crew`] sort, settle the voids, and
//! apply; `apply` alone may be used on one more entry that comes after all others and is no void.

mod apply_cook;
mod apply_crew;
mod fields;
mod fires;
mod pieces;

pub use apply_cook::{apply as apply_cook, apply_to};
pub use apply_crew::apply as apply_crew;

use super::{Cook, Crew};
use crate::{
    ids::{CookId, DeviceId, LogId},
    log::{Body, Draft, Entry, EntryKey, MAX_ENTRY_BYTES, Meaning, Payload, Stamp, void},
};
use std::collections::{BTreeMap, BTreeSet};

/// Who wrote an entry, and its stamp.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct By {
    /// The order.
    pub stamp: Stamp,
    /// Who.
    pub device: DeviceId,
}

/// An entry read once: its name, order, claimed time and meaning.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Known {
    /// Its name.
    pub key: EntryKey,
    /// Its stamp.
    pub stamp: Stamp,
    /// When, as claimed; 0 where it was erased.
    pub at: i64,
    /// What it means.
    pub meaning: Meaning,
}

/// The order of entries.
pub type Order = (Stamp, DeviceId, i64, LogId);

impl Known {
    /// Reads an entry. An erased one means nothing any more, and so do bytes that are none.
    pub fn of(entry: &Entry) -> Self {
        let (at, meaning) = match &entry.body {
            Body::Erased => (0, Meaning::Skipped),
            Body::Raw(raw) => match Entry::head(raw) {
                Ok(head) => (head.at, Payload::read(&head)),
                Err(_) => (0, Meaning::Skipped),
            },
        };
        Self {
            key: entry.key,
            stamp: entry.stamp,
            at,
            meaning,
        }
    }

    /// The same of an entry whose bytes were just made from `draft`, which need not be read again. Law: it equals
    /// [`of`](Self::of), for every kind reads back as it was written.
    pub fn recorded(entry: &Entry, draft: &Draft) -> Self {
        let too_large = |raw: &Vec<u8>| raw.len() > MAX_ENTRY_BYTES;
        match &entry.body {
            Body::Raw(raw) if !too_large(raw) => Self {
                key: entry.key,
                stamp: entry.stamp,
                at: draft.at,
                meaning: Meaning::Known(draft.payload.clone()),
            },
            _ => Self::of(entry),
        }
    }

    /// Its place.
    pub fn order(&self) -> Order {
        (self.stamp, self.key.device, self.key.n, self.key.log)
    }

    /// Who wrote it.
    pub fn by(&self) -> By {
        By {
            stamp: self.stamp,
            device: self.key.device,
        }
    }

    /// Whether it takes entries back, so that the fold must begin anew.
    pub fn is_void(&self) -> bool {
        matches!(self.meaning, Meaning::Known(Payload::Voided(_)))
    }
}

/// Folds one cook from its entries, in whatever order they come. None until its beginning is among them; the beginning
/// of another cook, put in here, is none.
pub fn cook(id: CookId, entries: &mut [Known]) -> Option<Cook> {
    let hidden = settle(entries);
    let mut cook = None;
    for known in entries.iter() {
        apply_cook(id, &mut cook, known, &hidden);
    }
    let mut cook = cook?;
    cook.entries = entries.len() as i64;
    cook.hidden = hidden;
    Some(cook)
}

/// Folds what belongs to no cook.
pub fn crew(entries: &mut [Known]) -> Crew {
    let hidden = settle(entries);
    let mut crew = Crew::default();
    for known in entries.iter() {
        apply_crew(&mut crew, known, &hidden);
    }
    crew.entries = entries.len() as i64;
    crew.hidden = hidden;
    crew
}

/// Sorts the entries and finds which of them are hidden.
fn settle(entries: &mut [Known]) -> BTreeSet<EntryKey> {
    entries.sort_unstable_by_key(Known::order);
    let voids: Vec<void::Void> = entries.iter().filter_map(as_void).collect();
    if voids.is_empty() {
        return BTreeSet::new();
    }
    let place: BTreeMap<EntryKey, usize> = entries
        .iter()
        .enumerate()
        .map(|(i, known)| (known.key, i))
        .collect();
    void::hidden(&voids, |target, void| {
        place.get(target).is_none_or(|i| *i < place[void])
    })
}

fn as_void(known: &Known) -> Option<void::Void> {
    match &known.meaning {
        Meaning::Known(Payload::Voided(voided)) => Some(void::Void {
            key: known.key,
            targets: voided.targets.clone(),
        }),
        _ => None,
    }
}

#[cfg(test)]
mod tests;
