//! The jobs of a fire from lighting to shutting down, by kind of pit, and which is next. All times of it are common practice, no
//! source.
//!
//! Law: until it is shut down, exactly one is next.

use super::FireDid;
use crate::log::PitKind;

/// A job of the fire.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FireJob {
    /// Light it, or switch it on.
    Light,
    /// Wait until the coals glow.
    CoalsReady,
    /// Feed it.
    Feed,
    /// Fill the water pan.
    Water,
    /// Take out the ash.
    Ash,
    /// Empty the grease.
    Grease,
    /// Shut it down.
    ShutDown,
}

/// How a job stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FireJobState {
    /// It is the next one.
    Next,
    /// It was done, and is not next.
    Done,
    /// It comes later, or when it is needed.
    Later,
}

/// A fire as it stands, in minutes since each thing was done; none = not yet since it was last shut down.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct FireStands {
    /// Lit or switched on, as somebody said.
    pub lit: Option<i64>,
    /// Glowing, as somebody said.
    pub ready: Option<i64>,
    /// Fed with what keeps it hot.
    pub fed: Option<i64>,
    /// Water filled.
    pub water: Option<i64>,
    /// Ash out.
    pub ash: Option<i64>,
    /// Grease emptied.
    pub grease: Option<i64>,
    /// The first sign of a fire: lit, fed, opened, read hot.
    pub burns: Option<i64>,
    /// Whether a meat is on it.
    pub has_meat: bool,
    /// Whether a meat was on it and none is.
    pub had_meat: bool,
    /// Whether it was shut down and nothing done since.
    pub is_shut: bool,
}

/// A water pan that was filled once is seen to again after so many minutes.
const WATER_MIN: i64 = 180;
/// Ash is taken out, grease emptied, after so many minutes of fire.
const ASH_MIN: i64 = 360;
const GREASE_MIN: i64 = 480;

impl FireJob {
    /// The jobs of such a pit, in their order.
    pub const fn of_pit(kind: PitKind) -> &'static [Self] {
        use FireJob::*;
        match kind {
            PitKind::Pellet => &[Feed, Light, Water, Ash, Grease, ShutDown],
            PitKind::Electric => &[Light, Water, Grease, ShutDown],
            _ => &[Light, CoalsReady, Feed, Water, Ash, Grease, ShutDown],
        }
    }

    /// What its tap records; feeding has taps of its own.
    pub const fn did(self) -> Option<FireDid> {
        Some(match self {
            Self::Light => FireDid::Lit,
            Self::CoalsReady => FireDid::CoalsReady,
            Self::Water => FireDid::Water,
            Self::Ash => FireDid::Ash,
            Self::Grease => FireDid::Grease,
            Self::ShutDown => FireDid::ShutDown,
            Self::Feed => return None,
        })
    }
}

/// Each job of such a pit with how it stands.
pub fn fire_jobs(kind: PitKind, stands: &FireStands) -> Vec<(FireJob, FireJobState)> {
    let all = FireJob::of_pit(kind);
    let next = next(all, stands);
    let state = |job: FireJob| match (Some(job) == next, done(job, stands)) {
        (true, _) => FireJobState::Next,
        (_, true) => FireJobState::Done,
        _ => FireJobState::Later,
    };
    all.iter().map(|job| (*job, state(*job))).collect()
}

fn done(job: FireJob, stands: &FireStands) -> bool {
    match job {
        FireJob::Light => stands.burns.is_some(),
        FireJob::CoalsReady => stands.ready.is_some() || stands.has_meat || stands.had_meat,
        FireJob::Feed => stands.fed.is_some(),
        FireJob::Water => stands.water.is_some(),
        FireJob::Ash => stands.ash.is_some(),
        FireJob::Grease => stands.grease.is_some(),
        FireJob::ShutDown => stands.is_shut,
    }
}

fn next(all: &[FireJob], stands: &FireStands) -> Option<FireJob> {
    let has = |job: FireJob| all.contains(&job).then_some(job);
    if stands.is_shut {
        return None;
    }
    let before = [FireJob::Light, FireJob::CoalsReady];
    let undone = before
        .into_iter()
        .filter_map(has)
        .find(|job| !done(*job, stands));
    if undone.is_some() {
        return undone;
    }
    if stands.had_meat && !stands.has_meat {
        return Some(FireJob::ShutDown);
    }
    let again = [
        (FireJob::Water, stands.water, WATER_MIN),
        (FireJob::Ash, stands.ash.or(stands.burns), ASH_MIN),
        (FireJob::Grease, stands.grease.or(stands.burns), GREASE_MIN),
    ];
    let due = again
        .into_iter()
        .find(|(_, since, after)| since.is_some_and(|since| since >= *after));
    due.and_then(|(job, ..)| has(job))
        .or(has(FireJob::Feed))
        .or(Some(FireJob::ShutDown))
}
