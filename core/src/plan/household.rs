//! What a plan is made of: who eats when, what is cooked, on what, and who is up.
//!
//! Start at [`Household`]. Times are whole minutes from [`Household::from_ms`], which is now; temperatures are millikelvin,
//! weights grams, areas square centimeters. The plan lies on a grid of [`GRID_MIN`] minutes.

mod dish;
mod meat;
mod pit;
mod serving;

pub use dish::{Dish, DishHeat};
pub use meat::{Happy, Hold, Meat, OnPit, Prep, PrepKind, Quantiles, Span, TimesAt};
pub use pit::{Keeps, Pit, PitTemp, Place};
pub use serving::{Serving, Watch, When, Window};

use serde::{Deserialize, Serialize};

/// The grid of a plan, minutes.
pub const GRID_MIN: i64 = 15;

/// Everything a plan is made of.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Household {
    /// When all minutes begin, milliseconds since 1970: the present, on a full quarter of an hour.
    pub from_ms: i64,
    /// IANA zone, for servings that are given as wall time, such as `America/Chicago`.
    #[serde(default)]
    pub zone: Option<String>,
    /// How sure each meat is to be ready, permille, 500 to 900.
    #[serde(default = "confidence")]
    pub confidence_permille: i64,
    /// How much of what makes cooking times differ is the pit's doing, and so shared by all that is in it, permille, 0
    /// to 950. 500 where nothing is known: our own assumption, no source.
    #[serde(default = "half")]
    pub shared_permille: i64,
    /// Pairs of hands, 0 to 3.
    #[serde(default = "one")]
    pub hands: i64,
    /// The meats, up to 60.
    pub meats: Vec<Meat>,
    /// What is not meat, up to 40.
    #[serde(default)]
    pub dishes: Vec<Dish>,
    /// The pits, 1 to 6.
    pub pits: Vec<Pit>,
    /// Where meats can be held, up to 6.
    #[serde(default)]
    pub places: Vec<Place>,
    /// Burners of the kitchen stove, 0 to 12.
    #[serde(default)]
    pub burners: i64,
    /// When what is eaten, 1 to 60.
    pub servings: Vec<Serving>,
    /// When the cook sleeps.
    #[serde(default)]
    pub sleep: Vec<Window>,
    /// When nothing should ring.
    #[serde(default)]
    pub quiet: Vec<Window>,
    /// When somebody with a name sits up by the fire.
    #[serde(default)]
    pub watches: Vec<Watch>,
    /// How many alternatives are looked for, 0 to 3.
    #[serde(default = "three")]
    pub alternatives: i64,
    /// How many nodes the search may visit, 100 to 10,000,000.
    #[serde(default = "budget")]
    pub budget_nodes: i64,
}

const fn confidence() -> i64 {
    900
}

const fn half() -> i64 {
    500
}

const fn one() -> i64 {
    1
}

const fn three() -> i64 {
    3
}

const fn budget() -> i64 {
    BUDGET_NODES
}

/// The nodes a search may visit where nothing else is said.
pub const BUDGET_NODES: i64 = 400_000;
