//! What was done for a pit and for the jobs of a cook.

use crate::{
    fire::{FireDid, FuelUnit, SmokeSeen, SmokeWood, Vent},
    ids::ThermometerId,
    log::{EntryKey, Job, Where},
    units::Mk,
};
use serde::{Deserialize, Serialize};

/// Something that happened at a claimed time, by an entry.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Timed {
    /// Milliseconds since 1970, as claimed.
    pub at: i64,
    /// The entry that says so.
    pub entry: EntryKey,
}

/// What was done for a pit during one cook, in the order of the entries.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct PitCare {
    /// Openings.
    pub opened: Vec<Timed>,
    /// Fuel put on.
    pub fed: Vec<Timed>,
    /// Vents changed.
    pub vents: Vec<Timed>,
    /// Fire seen to, readings by hand among it.
    pub seen: Vec<Timed>,
    /// Temperatures read by hand.
    pub read: Vec<(Timed, Mk, Option<ThermometerId>)>,
    /// Of fuel put on, what and how many quarters of it, where that was said.
    pub fuel: Vec<(Timed, FuelUnit, i64)>,
    /// Vents set, by quarters.
    pub set: Vec<(Timed, Vent, i64)>,
    /// What was done at the fire.
    pub did: Vec<(Timed, FireDid)>,
    /// What wood smokes, since when.
    pub wood: Vec<(Timed, SmokeWood)>,
    /// What wood is burnt to coals first, or mixed, since when.
    pub tamed: Vec<(Timed, SmokeWood)>,
    /// When it was found out, and until when it burned for certain, milliseconds since 1970.
    pub out: Vec<(Timed, i64)>,
    /// What was seen of the smoke.
    pub smoke: Vec<(Timed, SmokeSeen)>,
    /// Times to feed next that were accepted, milliseconds since 1970.
    pub planned: Vec<(Timed, i64)>,
}

impl PitCare {
    /// What was put on that keeps a pit of that kind hot: a chunk on charcoal only smokes.
    pub fn heats(&self, kind: crate::log::PitKind) -> impl Iterator<Item = &Timed> {
        let smokes = move |when: &Timed| {
            let what = self.fuel.iter().find(|(its, ..)| its.entry == when.entry);
            what.is_some_and(|(_, unit, _)| !unit.feeds(kind))
        };
        self.fed.iter().filter(move |when| !smokes(when))
    }
}

/// Where a sensor sits, since when.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Probe {
    /// Where.
    pub place: Where,
    /// Which thermometer it is, if one that is known.
    pub thermometer: Option<ThermometerId>,
    /// Since when, and by which entry.
    pub since: Timed,
}

/// An answer to a job other than doing it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Answer {
    /// Which job.
    pub job: Job,
    /// How it was answered.
    pub how: Answered,
    /// When, and by which entry.
    pub when: Timed,
}

/// How a job was answered without being done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Answered {
    /// Not this time.
    Skipped,
    /// So many minutes later.
    Later(i64),
    /// Seen.
    Seen,
}
