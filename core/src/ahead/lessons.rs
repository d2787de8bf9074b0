//! What past cooks taught: how much hotter each pit is where the meat lies than where it is read, and how much longer each cut
//! takes here than is usual. Few numbers, folded from the log in the order in which cooks ended, so that folding them anew comes
//! to the same.

use super::Facts;
use crate::{checks::Cut, finish::Habits, ids::PitId};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// One number that was learned.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Lesson {
    /// The number: of a pit, millikelvin it is hotter at the meat; of a cut, millionths of the logarithm of how much longer.
    pub value: i64,
    /// How far that may be off.
    pub spread: i64,
    /// How many meats taught it.
    pub meats: i64,
}

/// All that was learned.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Lessons {
    /// Of each pit.
    pub pits: BTreeMap<PitId, Lesson>,
    /// Of each cut.
    pub cuts: BTreeMap<Cut, Lesson>,
}

/// Nothing learned: for whoever knows of none.
pub static UNTAUGHT: Lessons = Lessons {
    pits: BTreeMap::new(),
    cuts: BTreeMap::new(),
};

impl Lessons {
    /// What is known before a meat of that cut is cooked on that pit.
    pub fn habits(&self, pit: Option<PitId>, cut: Cut) -> Habits {
        let of_pit = pit.and_then(|pit| self.pits.get(&pit));
        let (pit, cut) = (
            of_pit.copied().unwrap_or_default(),
            self.cuts.get(&cut).copied().unwrap_or_default(),
        );
        Habits {
            pit_bias_mk: pit.value,
            pit_bias_spread_mk: pit.spread,
            pace_micro: cut.value,
            pace_spread_micro: cut.spread,
            cooks: pit.meats,
        }
    }

    /// Takes in one meat more: what is known once it was cooked on that pit.
    pub fn learn(&mut self, pit: PitId, facts: &Facts, after: &Habits) {
        let taught = |lesson: &mut Lesson, value, spread| {
            *lesson = Lesson {
                value,
                spread,
                meats: lesson.meats + 1,
            };
        };
        let of_pit = self.pits.entry(pit).or_default();
        taught(of_pit, after.pit_bias_mk, after.pit_bias_spread_mk);
        let of_cut = self.cuts.entry(facts.cut).or_default();
        taught(of_cut, after.pace_micro, after.pace_spread_micro);
    }
}
