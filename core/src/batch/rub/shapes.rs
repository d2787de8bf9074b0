//! What a rub is told, and what it says.

use crate::batch::{Grams, Milligrams};
use serde::{Deserialize, Serialize};

/// A rub for some meat.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct RubInput {
    /// The meat, raw, grams, 20 to 500,000.
    pub meat_g: Grams,
    /// How many portions it is shared into, 1 to 10,000.
    pub portions: i64,
    /// How much rub goes on, grams a kilogram of meat, 1 to 200; 20 where nothing is said (common practice, no source).
    #[serde(default = "twenty")]
    pub rub_g_per_kg: i64,
    /// What the parts are parts of.
    pub basis: Basis,
    /// What is in it, 1 to 200.
    pub parts: Vec<RubPart>,
    /// Salt that comes otherwise, at most 50 of them.
    #[serde(default)]
    pub also: Vec<AlsoSalt>,
}

const fn twenty() -> i64 {
    20
}

/// What the parts of a ratio are parts of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Basis {
    /// Weight.
    Weight,
    /// Volume, as with spoons and cups: each part needs the weight of its cup.
    Volume,
}

/// One part of a rub.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct RubPart {
    /// What it is called.
    pub name: String,
    /// How many parts of it, 1 to 10,000.
    pub parts: i64,
    /// What it is.
    pub kind: SaltKind,
    /// What a level US cup of it weighs, grams, 1 to 1,000; needed by volume, save for table salt (292 g, USDA SR26).
    #[serde(default)]
    pub cup_g: Option<Grams>,
}

/// How much of a part is salt.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum SaltKind {
    /// Table salt, all salt.
    TableSalt,
    /// Kosher, sea or another salt, all salt; its cup is known to who weighed it.
    OtherSalt,
    /// Something with salt in it, such as garlic salt.
    Salted {
        /// Thousandths of its weight, 1 to 1000.
        salt_permille: i64,
    },
    /// Something without salt.
    Unsalted,
}

/// Salt that comes to the meat otherwise than by the rub.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum AlsoSalt {
    /// The label's "contains up to so many percent of a solution", counted whole and of the whole weight.
    LabelSolution {
        /// The percent, 1 to 60.
        percent: i64,
        /// How much of the solution is salt, thousandths, 0 to 263.
        salt_permille: i64,
    },
    /// The label's sodium, where the share of salt is not printed; the meat's own sodium counts along.
    LabelSodium {
        /// Milligrams in 100 g, 0 to 10,000.
        mg_per_100g: i64,
    },
    /// What it took up of a brine: weighed after, less weighed before.
    Brine {
        /// Grams, 0 to 500,000.
        g: Grams,
        /// How much of the brine is salt, thousandths, 0 to 263.
        salt_permille: i64,
    },
    /// What was injected.
    Injection {
        /// Grams, 0 to 500,000.
        g: Grams,
        /// How much of it is salt, thousandths, 0 to 263.
        salt_permille: i64,
    },
    /// What is mopped on.
    Mop {
        /// Grams, 0 to 500,000.
        g: Grams,
        /// How much of it is salt, thousandths, 0 to 263.
        salt_permille: i64,
    },
}

/// A rub, weighed, and all the salt.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct RubAnswer {
    /// The whole rub.
    pub rub_mg: Milligrams,
    /// Its parts, which add up to it.
    pub parts: Vec<WeighedPart>,
    /// Where the salt comes from, the rub first.
    pub salt: Vec<SaltShare>,
    /// All of it.
    pub salt_mg: Milligrams,
    /// The same a kilogram of raw meat, rounded up.
    pub salt_mg_per_kg: Milligrams,
    /// How that stands to what is common.
    pub level: Level,
    /// All the sodium of it, rounded up.
    pub sodium_mg: Milligrams,
    /// The same a portion, rounded up.
    pub sodium_mg_a_portion: Milligrams,
}

/// One part, weighed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct WeighedPart {
    /// What it is called.
    pub name: String,
    /// How much to weigh.
    pub mg: Milligrams,
}

/// Salt of one origin.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SaltShare {
    /// Where it comes from.
    pub from: SaltFrom,
    /// How much, rounded up.
    pub mg: Milligrams,
}

/// Where salt comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum SaltFrom {
    /// The rub.
    Rub,
    /// The meat as bought, by its label.
    Label,
    /// A brine.
    Brine,
    /// An injection.
    Injection,
    /// A mop.
    Mop,
}

/// How salty, beside what is common: 5 to 15 g a kilogram of meat (common practice, no source).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Level {
    /// Less than is common.
    Below,
    /// As is common.
    Common,
    /// More than is common: leave salt out somewhere.
    Above,
}
