//! What a forecast may look at. All times are milliseconds since 1970, all temperatures millikelvin.

use crate::{checks::Cut, log::Wrap, readings::Reading, units::Mk};
use serde::{Deserialize, Serialize};

/// All that is known of one meat on its way. Lists rise by time.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Facts {
    /// Which meat, for its dice: the same key rolls the same.
    pub key: u64,
    /// What it is; its composition and its usual time are those of the catalogue.
    pub cut: Cut,
    /// Grams; none = the usual weight of its cut.
    pub weight_g: Option<i64>,
    /// When it went on the pit.
    pub put_on: i64,
    /// When it came off, if it did.
    pub taken_off: Option<i64>,
    /// How warm it was when it went on; none = from the refrigerator.
    pub began_at: Option<Mk>,
    /// What the pit is meant to be held at.
    pub pit_meant: Mk,
    /// What the pit's thermometer read.
    pub pit: Vec<Reading>,
    /// What probes and hands read inside it, each series apart.
    pub inside: Vec<Vec<Reading>>,
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
    /// Now, on the grid.
    pub now: i64,
}

/// It was wrapped, or, with none, unwrapped.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Wrapped {
    /// When.
    pub at: i64,
    /// In what.
    pub wrap: Option<Wrap>,
}

/// What a check by feel found.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Tried {
    /// When.
    pub at: i64,
    /// What it was like.
    pub found: Likeness,
}

/// How far along it felt.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
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
#[serde(rename_all = "snake_case", tag = "by")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum DoneWhen {
    /// Its inside reaches this.
    Heat {
        /// How hot.
        mk: Mk,
    },
    /// It is tender: so long at so much heat, counted from where its cut begins to soften.
    Tender {
        /// Below this a tender feel is not believed.
        from: Mk,
        /// At this it is usually tender.
        usual: Mk,
    },
}
