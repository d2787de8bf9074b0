//! What the kitchens of earlier cooks had: the pit book's memory of rubs and mops.

use crate::{
    batch::{Batch, BatchKind},
    cook::Cook,
    ids::CookId,
};
use std::collections::BTreeMap;

/// A section of an earlier cook.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Last {
    /// What the cook was called.
    pub name: String,
    /// When it began.
    pub started: i64,
    /// Which one.
    pub cook: CookId,
    /// What was written down.
    pub batch: Batch,
}

/// Of each section that a cook lacks, that of the last cook before it that had one.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct LastTime(pub BTreeMap<BatchKind, Last>);

/// The same out of `cooks`, in whatever order.
pub fn last_time<'a>(cooks: impl Iterator<Item = &'a Cook>, of: &Cook) -> LastTime {
    let mut last = LastTime::default();
    cooks.for_each(|cook| last.also(cook, of));
    last
}

impl LastTime {
    /// Takes in one more cook, if it is an earlier one and no demo where `of` is none.
    pub fn also(&mut self, cook: &Cook, of: &Cook) {
        let earlier = cook.started_at < of.started_at && cook.id != of.id && cook.demo == of.demo;
        let lacking = |kind: &BatchKind| !of.batches.contains_key(kind);
        let kept = cook.batches.iter().filter(|(kind, _)| lacking(kind));
        for (kind, kept) in kept.filter(|_| earlier) {
            let place = (cook.started_at, cook.id);
            let later = self
                .0
                .get(kind)
                .is_none_or(|had| (had.started, had.cook) < place);
            if later {
                let last = Last {
                    name: cook.name.value.clone(),
                    started: cook.started_at,
                    cook: cook.id,
                    batch: kept.batch.clone(),
                };
                self.0.insert(*kind, last);
            }
        }
    }

    /// Whether no cook that began before `started` could add anything.
    pub fn is_whole(&self, of: &Cook, started: i64) -> bool {
        let mut lacking = BatchKind::ALL
            .iter()
            .filter(|kind| !of.batches.contains_key(kind));
        lacking.all(|kind| self.0.get(kind).is_some_and(|last| last.started >= started))
    }
}
