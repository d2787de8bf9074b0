//! What portions are told, and what they say.

use crate::{
    batch::{Grams, Grounds},
    checks::Cut,
    safety::CautionKind,
};
use serde::{Deserialize, Serialize};
use std::iter::Sum;

/// Who eats, and what.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct PortionsInput {
    /// Adults, 0 to 10,000.
    pub adults: i64,
    /// Children, 0 to 10,000.
    #[serde(default)]
    pub children: i64,
    /// How hungry they are.
    #[serde(default)]
    pub appetite: Appetite,
    /// The meats, 1 to 200.
    pub meats: Vec<PortionMeat>,
}

/// How hungry people are.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Appetite {
    /// Many other dishes: 110 g of cooked meat without bone an adult.
    Light,
    /// A lunch with sides: 150 g.
    #[default]
    Usual,
    /// Meat above all: 220 g.
    Hearty,
}

impl Appetite {
    /// Grams of cooked meat without bone, an adult's and a child's, which is half of it. Common practice, no source.
    pub const fn grams(self) -> (i64, i64) {
        match self {
            Self::Light => (110, 55),
            Self::Usual => (150, 75),
            Self::Hearty => (220, 110),
        }
    }
}

/// One meat.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct PortionMeat {
    /// What it is called.
    pub name: String,
    /// Which cut.
    pub cut: Cut,
    /// What is there already, raw and as bought, grams, 20 to 500,000.
    #[serde(default)]
    pub there_g: Option<Grams>,
    /// Its part of what is eaten, beside the shares of the others, 1 to 1,000; 1 where nothing is said.
    #[serde(default = "one")]
    pub share: i64,
    /// What is trimmed off before, percent, 0 to 70, where it is known; else what is common for the cut.
    #[serde(default)]
    pub trim_percent: Option<i64>,
}

const fn one() -> i64 {
    1
}

/// From the least to the most, with what is expected between.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Range {
    /// The least.
    pub low: Grams,
    /// What is expected.
    pub expected: Grams,
    /// The most.
    pub high: Grams,
}

impl Sum for Range {
    fn sum<I: Iterator<Item = Self>>(all: I) -> Self {
        all.fold(Self::default(), |a, b| Self {
            low: a.low + b.low,
            expected: a.expected + b.expected,
            high: a.high + b.high,
        })
    }
}

/// How many people, from the least to the most.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Feeds {
    /// The least.
    pub low: i64,
    /// What is expected.
    pub expected: i64,
    /// The most.
    pub high: i64,
}

/// What to buy and what comes of what is there.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct PortionsAnswer {
    /// Cooked meat without bone that all of them eat.
    pub wanted_g: Grams,
    /// The same of one adult.
    pub adult_g: Grams,
    /// The same of one child.
    pub child_g: Grams,
    /// Each meat, in the order given.
    pub meats: Vec<MeatAnswer>,
    /// Cooked meat without bone that comes of what is there.
    pub eaten_g: Range,
    /// How many adults' portions that is.
    pub feeds: Feeds,
    /// Whether what is there is enough even at the low end.
    pub enough: bool,
    /// What is trimmed off what is there: weigh it in, for sausage, stock or tallow (common practice).
    pub trimmings_g: Grams,
    /// What to heed when it is served.
    pub cautions: Vec<CautionKind>,
}

/// One meat: what to buy and what comes of what is there.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct MeatAnswer {
    /// What it is called.
    pub name: String,
    /// What it takes in all, raw and as bought: enough for its share even at the low end.
    pub need_g: Grams,
    /// What it takes in all where it yields what is expected.
    pub likely_g: Grams,
    /// How much of `need_g` is not there yet.
    pub buy_g: Grams,
    /// How much of `likely_g` is not there yet.
    pub likely_buy_g: Grams,
    /// What is there, raw and as bought. At what is expected, it is the sum of the four after it.
    pub there_g: Grams,
    /// What of that is trimmed off.
    pub trimmed_g: Grams,
    /// What of that cooks away, as expected: water and fat, also out of the bone.
    pub cooked_away_g: Grams,
    /// What of that is left on the board, cooked: bone and connective tissue.
    pub refuse_g: Grams,
    /// What of that is eaten.
    pub eaten_g: Range,
    /// What it weighs hot from the fire, bone included.
    pub cooked_g: Range,
    /// What the yield stands on.
    pub weighs: Grounds,
    /// What the share of bone stands on.
    pub refused: Grounds,
}
