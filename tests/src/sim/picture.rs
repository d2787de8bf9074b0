//! What a set of entries means, folded cold: the measure of what a device shows, and what acts are made from.

use slowbend_core::{
    cook::{Cook, Crew, Known, fold},
    ids::{CookId, DeviceId, LogId},
    log::{Body, Entry},
    readings::Tails,
};
use std::collections::{BTreeMap, BTreeSet};

/// All that is known from a set of entries.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Picture {
    /// What belongs to no cook.
    pub crew: Crew,
    /// The cooks.
    pub cooks: BTreeMap<CookId, Cook>,
}

impl Picture {
    /// Folds `entries`, in whatever order they are.
    pub fn of(entries: &[Entry]) -> Self {
        let mut groups: BTreeMap<Option<CookId>, Vec<fold::Known>> = BTreeMap::new();
        for entry in entries {
            groups
                .entry(cook_of(entry))
                .or_default()
                .push(fold::Known::of(entry));
        }
        let crew = fold::crew(&mut groups.remove(&None).unwrap_or_default());
        let fold_one = |(id, mut known): (Option<CookId>, Vec<fold::Known>)| {
            let id = id?;
            Some((id, fold::cook(id, &mut known)?))
        };
        let cooks = groups.into_iter().filter_map(fold_one).collect();
        Self { crew, cooks }
    }

    /// What screens and alarms of `device` may look at.
    pub fn known<'a>(&'a self, tails: &'a Tails, device: DeviceId) -> Known<'a> {
        Known {
            crew: &self.crew,
            cooks: &self.cooks,
            tails,
            ahead: &slowbend_core::ahead::NOTHING,
            lessons: &slowbend_core::ahead::UNTAUGHT,
            device,
            warnings: &[],
        }
    }

    /// BLAKE3 of it as text, for golden values.
    ///
    /// # Panics
    /// Never: states are plain records.
    pub fn hash(&self) -> String {
        let cooks: Vec<String> = self
            .cooks
            .values()
            .map(|cook| format!("{cook:?}"))
            .collect();
        blake3::hash(format!("{:?}{cooks:?}", self.crew).as_bytes())
            .to_hex()
            .to_string()
    }
}

/// The cook that an entry belongs to, as its bytes say.
pub fn cook_of(entry: &Entry) -> Option<CookId> {
    match &entry.body {
        Body::Raw(raw) => Entry::head(raw).ok()?.cook,
        Body::Erased => None,
    }
}

/// Of each log and device, up to which number `entries` has no gap.
pub fn have(entries: &[Entry]) -> Vec<(LogId, DeviceId, i64)> {
    let mut numbers: BTreeMap<(LogId, DeviceId), BTreeSet<i64>> = BTreeMap::new();
    for entry in entries {
        numbers
            .entry((entry.key.log, entry.key.device))
            .or_default()
            .insert(entry.key.n);
    }
    let run =
        |set: &BTreeSet<i64>| (1..).zip(set).take_while(|(want, n)| want == *n).count() as i64;
    numbers
        .iter()
        .map(|((log, device), set)| (*log, *device, run(set)))
        .collect()
}
