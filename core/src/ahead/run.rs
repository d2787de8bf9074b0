//! One meat followed along the grid: a left fold over its instants, in steps that can be stopped between any two.

use super::{Ahead, Estimator, Facts, Forecast, Made, Told, grid, settle};
use crate::{finish::GRID_MS, readings::Reading};
use serde::{Deserialize, Serialize};

/// The name of a meat's facts: the same facts, the same name.
pub type Print = [u8; 32];

/// A meat as far as it was followed.
pub struct Run {
    at: i64,
    print: Print,
    told: Option<Told>,
    state: Box<dyn Estimator>,
    /// The facts of the next instant, once it is under way, and whether they are taken in.
    under_way: Option<(Facts, bool)>,
}

/// A run as it is kept on disk.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Kept {
    at: i64,
    print: Print,
    told: Option<Told>,
    #[serde(with = "serde_bytes")]
    state: Vec<u8>,
}

impl Run {
    /// A run that has followed nothing yet; none where such a meat cannot be followed.
    pub fn begin(made: Made, facts: &Facts) -> Option<Self> {
        let at = grid(facts.put_on);
        Some(Self {
            at,
            print: print(&until(facts, at)),
            told: None,
            state: (made.begin)(&until(facts, at.saturating_add(GRID_MS)))?,
            under_way: None,
        })
    }

    /// The run that was kept, if it leads to `facts` and its bytes can be read.
    pub fn read(made: Made, kept: &Kept, facts: &Facts) -> Option<Self> {
        let so_far = until(facts, kept.at);
        if kept.at > facts.now || kept.print != print(&so_far) {
            return None;
        }
        Some(Self {
            at: kept.at,
            print: kept.print,
            told: kept.told,
            state: (made.read)(&kept.state, &so_far)?,
            under_way: None,
        })
    }

    /// The run as it is kept.
    pub fn kept(&self) -> Kept {
        Kept {
            at: self.at,
            print: self.print,
            told: self.told,
            state: self.state.to_bytes(),
        }
    }

    /// Up to which instant of the grid it has come, milliseconds since 1970.
    pub const fn at(&self) -> i64 {
        self.at
    }

    /// Whether it can go on to `facts`: what it has taken in is what they say of that time.
    pub fn leads_to(&self, facts: &Facts) -> bool {
        match &self.under_way {
            Some((next, _)) => next.now <= facts.now && *next == until(facts, next.now),
            None => self.at <= facts.now && self.print == print(&until(facts, self.at)),
        }
    }

    /// One bounded step towards `facts`, which it [leads to](Self::leads_to) or was on its way to; the forecast where an
    /// instant of the grid is finished by it.
    pub fn step(&mut self, facts: &Facts) -> Option<Ahead> {
        let next = || until(facts, self.at.saturating_add(GRID_MS));
        let (so_far, taken) = self.under_way.take().unwrap_or_else(|| (next(), false));
        if !taken {
            let more = self.state.absorb(&so_far, 1);
            self.under_way = Some((so_far, !more));
            return None;
        }
        let Some(forecast) = self.state.forecast(&so_far, 1) else {
            self.under_way = Some((so_far, true));
            return None;
        };
        Some(self.arrive(&so_far, forecast))
    }

    fn arrive(&mut self, at: &Facts, forecast: Forecast) -> Ahead {
        self.at = at.now;
        self.print = print(at);
        self.told = settle(self.told.as_ref(), &forecast);
        Ahead {
            forecast,
            told: self.told,
        }
    }
}

/// What `facts` say of the time before `now`. A probe that had not spoken yet is none: series stand in the order in which
/// they began, so those that are left keep their places.
pub fn until(facts: &Facts, now: i64) -> Facts {
    let read = |all: &[Reading]| all[..all.partition_point(|r| r.at < now)].to_vec();
    let before = |all: &[i64]| all[..all.partition_point(|at| *at < now)].to_vec();
    let began = |series: &&Vec<Reading>| series.first().is_some_and(|first| first.at < now);
    let inside = facts.inside.iter().filter(began);
    Facts {
        pit: read(&facts.pit),
        inside: inside.map(|series| read(series)).collect(),
        by_hand: read(&facts.by_hand),
        wrapped: facts.wrapped[..facts.wrapped.partition_point(|w| w.at < now)].to_vec(),
        wetted: before(&facts.wetted),
        opened: before(&facts.opened),
        tried: facts.tried[..facts.tried.partition_point(|t| t.at < now)].to_vec(),
        now,
        ..facts.clone()
    }
}

/// The name of `facts`.
///
/// # Panics
/// Never: facts are plain records.
pub fn print(facts: &Facts) -> Print {
    let bytes = rmp_serde::to_vec(facts).expect("facts are plain records of integers");
    *blake3::hash(&bytes).as_bytes()
}
