//! The shape of version 1. Integers and text; temperatures in millikelvin, weights in grams, times in minutes.
//!
//! It is written by serde and read by [`read`](super::read()) alone, so that no card comes in unchecked.

use crate::{
    checks::Cut,
    log::{PitKind, Wrap},
    safety::Form,
};
use serde::Serialize;

/// The version of the shape that is written, and the latest that is read.
pub const VERSION: i64 = 1;

macro_rules! shapes {
    ($($(#[$meta:meta])* $name:ident { $($(#[$field_meta:meta])* $field:ident : $kind:ty),* $(,)? })*) => { $(
        $(#[$meta])*
        #[derive(Clone, Debug, PartialEq, Eq, Serialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        pub struct $name { $($(#[$field_meta])* pub $field: $kind),* }
    )* };
}

shapes! {
    /// A plan that another person can start from.
    Card {
        /// The version of this shape; what makes a piece of JSON a cook card.
        #[cfg_attr(feature = "schema", schemars(range(min = 1, max = 1)))]
        slowbend_card: i64,
        /// What the cook is called: 1 to 60 characters.
        #[cfg_attr(feature = "schema", schemars(length(min = 1, max = 60)))]
        name: String,
        /// Who wrote it: a line of up to 200 characters.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        #[cfg_attr(feature = "schema", schemars(length(max = 200)))]
        by: Option<String>,
        /// When it is on the table.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        serve: Option<CardServe>,
        /// How many eat, 1 to 5,000.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        #[cfg_attr(feature = "schema", schemars(range(min = 1, max = 5000)))]
        people: Option<i64>,
        /// The pits it was meant for, up to 12. Whoever starts from it chooses pits of their own.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        #[cfg_attr(feature = "schema", schemars(length(max = 12)))]
        pits: Vec<CardPit>,
        /// The meats, 1 to 60.
        #[cfg_attr(feature = "schema", schemars(length(min = 1, max = 60)))]
        meats: Vec<CardMeat>,
        /// What is not meat, up to 40.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        #[cfg_attr(feature = "schema", schemars(length(max = 40)))]
        dishes: Vec<CardDish>,
        /// What is to be remembered, up to 20 texts of up to 2,000 characters. Text, whatever it looks like.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        #[cfg_attr(feature = "schema", schemars(length(max = 20)))]
        notes: Vec<String>,
    }
    /// A pit that a card was meant for.
    CardPit {
        /// What it is called: 1 to 60 characters.
        #[cfg_attr(feature = "schema", schemars(length(min = 1, max = 60)))]
        name: String,
        /// What it is.
        kind: PitKind,
        /// What its air is held between.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        held: Option<CardHeat>,
    }
    /// Temperatures of a pit's air, both ends included: 140 °F (333,150 mK) to 500 °C (773,150 mK), `low_mk` below `high_mk`.
    CardHeat {
        /// The lower end, in millikelvin.
        #[cfg_attr(feature = "schema", schemars(range(min = 333_150, max = 773_150)))]
        low_mk: i64,
        /// The upper end, in millikelvin.
        #[cfg_attr(feature = "schema", schemars(range(min = 333_150, max = 773_150)))]
        high_mk: i64,
    }
    /// A meat.
    CardMeat {
        /// What it is called, up to 60 characters; left out = as the cut.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        #[cfg_attr(feature = "schema", schemars(length(min = 1, max = 60)))]
        name: Option<String>,
        /// What it is.
        cut: Cut,
        /// What was done to it before the fire; left out = nobody said, which is never taken for whole muscle and raises
        /// its minimum.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        form: Option<Form>,
        /// Grams, 30 to 60,000.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        #[cfg_attr(feature = "schema", schemars(range(min = 30, max = 60_000)))]
        weight_g: Option<i64>,
        /// How it is kept wet; left out = as the cut usually is.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        cadence: Option<CardCadence>,
        /// Which of the pits, counted from 0.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        #[cfg_attr(feature = "schema", schemars(range(min = 0, max = 11)))]
        pit: Option<i64>,
        /// The temperature inside at which it is taken off, in millikelvin: from the published minimum of the cut in its
        /// form up to 100 °C (373,150 mK). Below the minimum the card is refused.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        #[cfg_attr(feature = "schema", schemars(range(min = 335_928, max = 373_150)))]
        pull_at_mk: Option<i64>,
        /// What it is meant to be wrapped in.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        wrap: Option<Wrap>,
        /// How long it is meant to rest, minutes: from the rest that goes with its published minimum up to 1,440.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        #[cfg_attr(feature = "schema", schemars(range(min = 0, max = 1_440)))]
        rest_min: Option<i64>,
    }
    /// What is not meat.
    CardDish {
        /// What it is called: 1 to 60 characters.
        #[cfg_attr(feature = "schema", schemars(length(min = 1, max = 60)))]
        name: String,
        /// Whether it is held hot.
        hot: bool,
    }
}

/// When the food is on the table.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum CardServe {
    /// A time of day where the card is read, 24 hours: "14:00".
    At(
        #[cfg_attr(
            feature = "schema",
            schemars(regex(pattern = r"^([01]\d|2[0-3]):[0-5]\d$"))
        )]
        String,
    ),
    /// So many minutes after the start, 0 to 20,160.
    AfterMin(#[cfg_attr(feature = "schema", schemars(range(min = 0, max = 20_160)))] i64),
}

/// How a meat is kept wet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum CardCadence {
    /// Not at all.
    None,
    /// Mopped every so many minutes, 10 to 240.
    Mop(#[cfg_attr(feature = "schema", schemars(range(min = 10, max = 240)))] i64),
    /// Spritzed every so many minutes, 10 to 240.
    Spritz(#[cfg_attr(feature = "schema", schemars(range(min = 10, max = 240)))] i64),
}

impl CardMeat {
    /// What was done to it, or what is taken where nobody said.
    pub fn done(&self) -> Form {
        self.form.unwrap_or(self.cut.form_unsaid())
    }
}

impl Card {
    /// The card as it is handed over: JSON without blanks.
    pub fn compact(&self) -> String {
        serde_json::to_string(self)
            .expect("a card holds integers and text, which JSON always takes")
    }

    /// The card as a file: JSON with a line for each field.
    pub fn pretty(&self) -> String {
        serde_json::to_string_pretty(self)
            .expect("a card holds integers and text, which JSON always takes")
    }
}
