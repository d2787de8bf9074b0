//! What is not meat.

use super::Span;
use serde::{Deserialize, Serialize};

/// A dish.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Dish {
    /// What it is called.
    pub name: String,
    /// Its place in the list of servings, from 0.
    pub serving: usize,
    /// Hands on to make it, minutes, at its beginning.
    pub hands_min: i64,
    /// On the fire, minutes, hands-on time included.
    pub cook_min: i64,
    /// Where it cooks.
    pub heat: DishHeat,
    /// From ready to served, minutes: at best no more than the least, never more than the most.
    pub keeps: Span,
    /// Warmed again just before it is served, on a burner, minutes; 0 is never.
    #[serde(default)]
    pub reheat_min: i64,
}

/// Where a dish cooks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum DishHeat {
    /// Nowhere: it is cold, or only put together.
    None,
    /// On one burner of the stove.
    Burner,
    /// In any pit, at whatever temperature.
    Pit {
        /// Grate it takes, square centimeters.
        area_cm2: i64,
    },
}
