//! One meat, as the log tells it.

use super::{Reg, Timed, fold::By};
use crate::{
    cadence::Cadence,
    checks::{Cut, TestResult},
    ids::{DeviceId, PieceId, PitId, ThermometerId},
    log::{Caveat, Meant, PieceAdded, Stage, Wrap},
    safety::Form,
    units::Mk,
};
use serde::{Deserialize, Serialize};

/// A meat came to a stage.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Passed {
    /// Which stage.
    pub stage: Stage,
    /// When.
    pub when: Timed,
}

/// A meat was wetted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Wetted {
    /// When.
    pub when: Timed,
    /// By whom.
    pub device: DeviceId,
}

/// One pass over the tests of a meat.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Pass {
    /// When.
    pub when: Timed,
    /// What came of it.
    pub results: Vec<TestResult>,
}

/// A temperature of the inside, read by a person outside a pass.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct HandReading {
    /// When.
    pub when: Timed,
    /// Where in it.
    pub spot: String,
    /// How hot.
    pub temp: Mk,
    /// By what.
    pub thermometer: Option<ThermometerId>,
}

/// One meat.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Piece {
    /// Its id.
    pub id: PieceId,
    /// What it is called.
    pub name: Reg<String>,
    /// What it is.
    pub cut: Cut,
    /// What was done to it.
    pub form: Reg<Form>,
    /// Grams.
    pub weight_g: Reg<Option<i64>>,
    /// How often it is wetted.
    pub cadence: Reg<Cadence>,
    /// When it is taken off, if not at the cut's own temperature.
    pub pull_at: Reg<Option<Mk>>,
    /// What was meant for it when it was planned; the last word.
    pub meant: Option<Meant>,
    /// Stages, in the order of the entries.
    pub stages: Vec<Passed>,
    /// Moves: to which pit, which spot.
    pub moves: Vec<(Timed, PitId, String)>,
    /// Answers to "has the rub set?".
    pub rub: Vec<(Timed, bool)>,
    /// Wettings.
    pub wetted: Vec<Wetted>,
    /// Turns.
    pub turned: Vec<Timed>,
    /// Glazings.
    pub glazed: Vec<Timed>,
    /// Passes over its tests.
    pub checks: Vec<Pass>,
    /// Temperatures read by hand.
    pub read: Vec<HandReading>,
    /// Cautions that somebody went on past.
    pub went_past: Vec<(Timed, Caveat)>,
    /// What it became, where it was split or joined: it is then no meat of its own any more.
    pub became: Vec<PieceId>,
    /// What it came from.
    pub from: Vec<PieceId>,
}

impl Piece {
    /// A meat as it was added.
    pub fn added(fact: PieceAdded, by: By) -> Self {
        Self {
            id: fact.piece,
            name: Reg::new(fact.name, by),
            cut: fact.cut,
            form: Reg::new(fact.form, by),
            weight_g: Reg::new(fact.weight_g, by),
            cadence: Reg::new(fact.cadence, by),
            pull_at: Reg::new(None, by),
            meant: None,
            stages: vec![],
            moves: vec![],
            rub: vec![],
            wetted: vec![],
            turned: vec![],
            glazed: vec![],
            checks: vec![],
            read: vec![],
            went_past: vec![],
            became: vec![],
            from: vec![],
        }
    }

    /// Its last stage by claimed time, of those not later than `now`; ties go to the later entry.
    pub fn stage(&self, now: i64) -> Option<Passed> {
        self.stages
            .iter()
            .copied()
            .filter(|passed| passed.when.at <= now)
            .reduce(|a, b| if b.when.at >= a.when.at { b } else { a })
    }

    /// When it first went on a pit.
    pub fn on_pit_at(&self, now: i64) -> Option<i64> {
        self.since(now, |stage| matches!(stage, Stage::OnPit { .. }))
    }

    /// When it first came off.
    pub fn off_at(&self, now: i64) -> Option<i64> {
        self.since(now, Stage::is_off)
    }

    /// Since when it is off the fire, if it is at `now`: a meat that went back on rests anew once it is off again.
    pub fn resting_since(&self, now: i64) -> Option<i64> {
        let past = || self.stages.iter().filter(|p| p.when.at <= now);
        let last_on = past()
            .filter(|p| p.stage.is_on_pit())
            .map(|p| p.when.at)
            .max();
        let off = past().filter(|p| p.stage.is_off() && Some(p.when.at) >= last_on);
        let since = off.map(|p| p.when.at).min()?;
        self.stage(now)?.stage.is_off().then_some(since)
    }

    fn since(&self, now: i64, is: impl Fn(&Stage) -> bool) -> Option<i64> {
        self.stages
            .iter()
            .filter(|p| is(&p.stage) && p.when.at <= now)
            .map(|p| p.when.at)
            .min()
    }

    /// Since when it is wrapped, and in what, if it is now.
    pub fn wrapped(&self, now: i64) -> Option<(i64, Wrap)> {
        match self.stage(now)? {
            Passed {
                stage: Stage::Wrapped { wrap },
                when,
            } => Some((when.at, wrap)),
            _ => None,
        }
    }

    /// Whether it is on a pit.
    pub fn is_on_pit(&self, now: i64) -> bool {
        self.stage(now)
            .is_some_and(|passed| passed.stage.is_on_pit())
    }

    /// The pit it is on or was last on, with the spot: the last word of stages and moves by claimed time.
    pub fn pit(&self, now: i64) -> Option<(PitId, &str)> {
        let staged = self.stages.iter().filter_map(|p| match p.stage {
            Stage::OnPit { pit } => Some((p.when.at, pit, "")),
            _ => None,
        });
        let moved = self
            .moves
            .iter()
            .map(|(when, pit, spot)| (when.at, *pit, spot.as_str()));
        staged
            .chain(moved)
            .filter(|(at, ..)| *at <= now)
            .max_by_key(|(at, ..)| *at)
            .map(|(_, pit, spot)| (pit, spot))
    }

    /// Whether it is still a meat of its own.
    pub fn is_itself(&self) -> bool {
        self.became.is_empty()
    }
}

impl Stage {
    /// Whether a meat at this stage is on a pit.
    pub fn is_on_pit(&self) -> bool {
        matches!(
            self,
            Self::OnPit { .. } | Self::Wrapped { .. } | Self::Unwrapped
        )
    }

    /// Whether a meat at this stage has come off.
    pub fn is_off(&self) -> bool {
        matches!(
            self,
            Self::Off
                | Self::Held
                | Self::CutUp
                | Self::Served
                | Self::PutAway
                | Self::Reheated
                | Self::ThrownAway
        )
    }
}
