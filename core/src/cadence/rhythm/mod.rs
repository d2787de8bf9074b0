//! What comes next for one meat: ask whether the rub has set, wet it, glaze it, or nothing. Start with [`Facts::next`].
//!
//! Everything is counted from the `at` that people claimed, so "did it five minutes ago" is a wetting with an earlier
//! `at`, and nothing else.
//!
//! **Laws.** A meat that is wrapped, off the pit or without a cadence is never to be wetted. Nothing is ever due while
//! the cook sleeps: it waits for the end of the sleep. The order in which facts are given changes nothing.

mod facts;
#[cfg(test)]
mod tests;

pub use facts::{Facts, Later, RubAnswer, Span};

use super::{Cadence, every_ms};
use crate::moment::MINUTE;
use serde::{Deserialize, Serialize};

/// How long a meat has been on when the rub is first asked about. Common practice, no source.
pub const RUB_FIRST_ASKED_MIN: i64 = 45;
/// How long after "not yet" the rub is asked about again. Common practice, no source.
pub const RUB_ASKED_AGAIN_MIN: i64 = 20;

/// What comes next for one meat. Instants are milliseconds since 1970.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Next {
    /// Ask whether the rub has set: a fingertip comes away clean.
    AskRub {
        /// When to ask.
        due: i64,
    },
    /// Mop or spritz.
    Wet {
        /// When; already past when it is late.
        due: i64,
        /// From when on it may be done with another opening.
        earliest: i64,
        /// Until when it is still in time.
        latest: i64,
        /// How many whole cadences have gone by since it was due; all of them are this one line.
        missed: i64,
    },
    /// Glaze: the last stretch.
    Glaze {
        /// When.
        due: i64,
    },
    /// Nothing to do.
    Nothing {
        /// Why.
        why: Why,
    },
}

/// Why nothing is to be done to a meat.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Why {
    /// It has come off the pit.
    OffPit,
    /// It is not on the pit yet.
    NotOnPit,
    /// It is wrapped: no mop reaches it, and opening the wrap lets the heat out.
    Wrapped,
    /// It is glazed, and a mop would wash the glaze off.
    Glazed,
    /// It was chosen to be left alone.
    NoCadence,
}

impl Facts {
    /// What comes next, seen at `now`.
    pub fn next(&self, now: i64) -> Next {
        match self.closed() {
            Some(why) => Next::Nothing { why },
            None => self.wetting(now).unwrap_or_else(|| self.glaze(now)),
        }
    }

    /// What ends all wetting and glazing, the last in a meat's life first.
    fn closed(&self) -> Option<Why> {
        [
            (self.off_at.is_some(), Why::OffPit),
            (self.on_pit_at.is_none(), Why::NotOnPit),
            (self.wrapped_at.is_some(), Why::Wrapped),
            (self.glazed_at.is_some(), Why::Glazed),
            (
                self.cadence == Cadence::None && self.glaze_from.is_none(),
                Why::NoCadence,
            ),
        ]
        .into_iter()
        .find_map(|(holds, why)| holds.then_some(why))
    }

    /// The question or the wetting that comes before the last stretch, if any does.
    fn wetting(&self, now: i64) -> Option<Next> {
        let every_min = self.cadence.every_min()?;
        let next = match self.rub_set_at(now) {
            None => Next::AskRub {
                due: self.ask_due(now),
            },
            Some(set) => self.wet(set, every_min, now),
        };
        let (Next::AskRub { due } | Next::Wet { due, .. }) = next else {
            return None;
        };
        let in_last_stretch = self
            .glaze_from
            .is_some_and(|from| now >= from || due >= from);
        (!in_last_stretch).then_some(next)
    }

    fn ask_due(&self, now: i64) -> i64 {
        let on = self.on_pit_at.unwrap_or(now);
        let refused = self
            .rub_answers
            .iter()
            .map(|answer| answer.at)
            .filter(|at| *at >= on && known(*at, now))
            .max();
        let due = match refused {
            Some(at) => at.saturating_add(RUB_ASKED_AGAIN_MIN * MINUTE),
            None => on.saturating_add(RUB_FIRST_ASKED_MIN * MINUTE),
        };
        self.awake(self.pushed(due, refused.unwrap_or(on), now), now)
    }

    fn wet(&self, set: i64, every_min: i64, now: i64) -> Next {
        let every = every_ms(every_min);
        let slack = every / 4 / MINUTE * MINUTE;
        let last = self
            .wet_at
            .iter()
            .chain(&self.skipped_at)
            .copied()
            .filter(|at| known(*at, now))
            .max();
        let planned = last.map_or(set, |at| at.saturating_add(every));
        let pushed = self.pushed(planned, last.unwrap_or(set), now);
        let due = self.awake(pushed, now);
        Next::Wet {
            due,
            earliest: pushed.saturating_sub(slack),
            latest: due.saturating_add(slack),
            missed: now.saturating_sub(due).max(0) / every,
        }
    }

    fn glaze(&self, now: i64) -> Next {
        match self.glaze_from {
            Some(from) => Next::Glaze {
                due: self.awake(self.pushed(from, from, now), now),
            },
            None => Next::Nothing {
                why: Why::NoCadence,
            },
        }
    }

    /// `due` put off by what was said since `since`; "later" never brings anything forward.
    fn pushed(&self, due: i64, since: i64, now: i64) -> i64 {
        let said = self
            .later
            .iter()
            .filter(|later| later.at >= since && known(later.at, now));
        said.map(Later::until).fold(due, i64::max)
    }
}

/// Whether a claim counts at `now`. One from further ahead than clocks of a crew differ is a wrong clock: it must not
/// silence a meat. Five minutes: common practice, no source.
fn known(at: i64, now: i64) -> bool {
    at <= now.saturating_add(5 * MINUTE)
}
