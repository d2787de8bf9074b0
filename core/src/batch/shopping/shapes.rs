//! What a shopping list is told, and what it says.

use crate::batch::{Cents, MopInput, PortionsInput, RubInput};
use serde::{Deserialize, Serialize};

/// What the list is for. What has the same name everywhere is one line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ShoppingInput {
    /// The meats; of each is bought what is not there yet.
    #[serde(default)]
    pub portions: Option<PortionsInput>,
    /// The rub.
    #[serde(default)]
    pub rub: Option<RubInput>,
    /// The mop; what it is mixed of is bought.
    #[serde(default)]
    pub mop: Option<MopInput>,
    /// Whatever else is needed: charcoal, wood, paper, foil, at most 200.
    #[serde(default)]
    pub extras: Vec<Extra>,
    /// What is at home, at most 200.
    #[serde(default)]
    pub at_home: Vec<AtHome>,
    /// What things cost, at most 200.
    #[serde(default)]
    pub prices: Vec<Price>,
}

/// What an amount counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum CountedIn {
    /// Grams.
    G,
    /// Milliliters.
    Ml,
    /// Pieces: rolls, bags, bundles.
    Each,
}

/// Something else that is needed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Extra {
    /// What it is called.
    pub name: String,
    /// How much, 1 to 10,000,000.
    pub amount: i64,
    /// Of what.
    pub unit: CountedIn,
}

/// Something that is at home.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct AtHome {
    /// What it is called on the list.
    pub name: String,
    /// How much, 0 to 10,000,000.
    pub amount: i64,
    /// Of what.
    pub unit: CountedIn,
}

/// What something costs.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Price {
    /// What it is called on the list.
    pub name: String,
    /// The price of `per`, 0 to 10,000,000.
    pub cents: Cents,
    /// How much that buys, 1 to 10,000,000: 1000 for a price by the kilogram, 454 by the pound.
    pub per: i64,
    /// Of what.
    pub unit: CountedIn,
}

/// The list.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct ShoppingAnswer {
    /// The lines, in order of name.
    pub lines: Vec<Line>,
    /// What all that has a price costs, each line rounded up.
    pub cost: Cents,
    /// What is bought and has no price, so that the cost is more.
    pub without_price: Vec<String>,
    /// How many eat, if that is known.
    pub plates: Option<i64>,
    /// What one plate costs of it, rounded up.
    pub cost_a_plate: Option<Cents>,
    /// What all costs that is used and has a price, also what was there already.
    pub worth: Cents,
    /// What one plate costs of that, rounded up.
    pub worth_a_plate: Option<Cents>,
}

/// One line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Line {
    /// What it is called.
    pub name: String,
    /// What the amounts count.
    pub unit: CountedIn,
    /// How much is needed; of meats, beyond what is there.
    pub need: i64,
    /// How much of a meat is there already.
    pub there: i64,
    /// How much is at home.
    pub at_home: i64,
    /// How much to buy.
    pub buy: i64,
    /// What that costs, rounded up, if the price is known.
    pub cents: Option<Cents>,
    /// What all of it costs that is used, also what is there or at home.
    pub all_cents: Option<Cents>,
}
