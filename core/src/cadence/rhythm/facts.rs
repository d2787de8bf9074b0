//! What is known of one meat. Start with [`Facts`].

use super::known;
use crate::{cadence::Cadence, moment::MINUTE};

/// All that decides what comes next for one meat. Instants are milliseconds since 1970, as claimed; lists come in any
/// order; what was taken back is left out by the caller.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Facts {
    /// What was chosen for it.
    pub cadence: Cadence,
    /// When it went on the pit.
    pub on_pit_at: Option<i64>,
    /// The answers to "has the rub set?".
    pub rub_answers: Vec<RubAnswer>,
    /// When it was wrapped; nothing again once it is unwrapped.
    pub wrapped_at: Option<i64>,
    /// When it came off the pit; nothing again if it went back on.
    pub off_at: Option<i64>,
    /// When its last stretch begins, if it is to be glazed.
    pub glaze_from: Option<i64>,
    /// When it was glazed.
    pub glazed_at: Option<i64>,
    /// Its wettings: the `at` of each [`Cluster`](crate::cadence::cluster::Cluster).
    pub wet_at: Vec<i64>,
    /// When a wetting was skipped on purpose: the next is one cadence after.
    pub skipped_at: Vec<i64>,
    /// What was put off.
    pub later: Vec<Later>,
    /// When the cook sleeps.
    pub asleep: Vec<Span>,
}

/// One answer to "has the rub set?".
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct RubAnswer {
    /// When, as claimed.
    pub at: i64,
    /// A fingertip came away clean.
    pub set: bool,
}

/// "Later": the next thing is put off to `minutes` after `at`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Later {
    /// When it was said, as claimed.
    pub at: i64,
    /// For how long, minutes; past a day it counts as a day, below nothing as nothing.
    pub minutes: i64,
}

impl Later {
    pub(super) fn until(&self) -> i64 {
        self.at
            .saturating_add(self.minutes.clamp(0, 24 * 60) * MINUTE)
    }
}

/// From an instant up to, and without, a later one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Span {
    /// The first instant in it.
    pub from: i64,
    /// The first instant after it.
    pub to: i64,
}

impl Span {
    fn holds(&self, at: i64) -> bool {
        (self.from..self.to).contains(&at)
    }
}

impl Facts {
    /// When the rub had set: when somebody first said so, else the first wetting, since nobody wets a rub that has not.
    /// Never before the meat went on.
    pub(super) fn rub_set_at(&self, now: i64) -> Option<i64> {
        let said = self
            .rub_answers
            .iter()
            .filter(|answer| answer.set && known(answer.at, now))
            .map(|answer| answer.at);
        let wet = self.wet_at.iter().copied().filter(|at| known(*at, now));
        let set = said.min().or_else(|| wet.min())?;
        Some(self.on_pit_at.map_or(set, |on| set.max(on)))
    }

    /// `due`, or the end of the sleep it falls into; what is late while the cook sleeps waits for the end of that.
    pub(super) fn awake(&self, due: i64, now: i64) -> i64 {
        let late_in_sleep = due <= now && self.woken(now) > now;
        self.woken(if late_in_sleep { now } else { due })
    }

    /// The first instant from `at` on that no sleep holds.
    fn woken(&self, at: i64) -> i64 {
        match self.asleep.iter().find(|sleep| sleep.holds(at)) {
            Some(sleep) => self.woken(sleep.to),
            None => at,
        }
    }
}
