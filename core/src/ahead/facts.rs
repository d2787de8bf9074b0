//! What a forecast may look at. All times are milliseconds since 1970, all temperatures millikelvin.

use crate::{checks::Cut, finish::Habits, log::Wrap, readings::Reading, safety::Form, units::Mk};
use serde::{Deserialize, Serialize};

/// All that is known of one meat on its way. Lists rise by time.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Facts {
    /// Which meat, for its dice: the same key rolls the same.
    pub key: u64,
    /// What it is; its composition and its usual time are those of the catalogue.
    pub cut: Cut,
    /// What was done to it.
    pub form: Form,
    /// Grams; none = the usual weight of its cut.
    pub weight_g: Option<i64>,
    /// When it went on the pit.
    pub put_on: i64,
    /// What the pit is meant to be held at.
    pub pit_meant: Mk,
    /// What the pit's thermometer read.
    pub pit: Vec<Reading>,
    /// What probes read inside it, each apart, in the order in which they began.
    pub inside: Vec<Vec<Reading>>,
    /// What hands read inside it: of each minute the coldest place.
    pub by_hand: Vec<Reading>,
    /// When it was wrapped, and unwrapped.
    pub wrapped: Vec<Wrapped>,
    /// When it was mopped or spritzed.
    pub wetted: Vec<i64>,
    /// When its pit was open, mops among them.
    pub opened: Vec<i64>,
    /// What came of its checks by feel.
    pub tried: Vec<Tried>,
    /// When it is done.
    pub done_when: DoneWhen,
    /// What earlier cooks taught of its pit and its cut.
    pub habits: Habits,
    /// Now, on the grid.
    pub now: i64,
}

/// It was wrapped, or, with none, unwrapped.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Wrapped {
    /// When.
    pub at: i64,
    /// In what.
    pub wrap: Option<Wrap>,
}

/// What a check by feel found.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Tried {
    /// When.
    pub at: i64,
    /// What it was like.
    pub found: Likeness,
}

/// How far along it felt.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Likeness {
    /// Far from done.
    Far,
    /// Nearly done.
    Near,
    /// Done.
    Done,
}

/// What done means.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum DoneWhen {
    /// Its inside reaches this, millikelvin: never below its published minimum.
    Heat(Mk),
    /// It is tender: so long at so much heat as its cut takes.
    Tender,
}
