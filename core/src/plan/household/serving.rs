//! When people eat, and who is up at night.

use serde::{Deserialize, Serialize};

/// One time at which something is served or handed in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Serving {
    /// What it is called.
    pub name: String,
    /// When it should be.
    pub preferred: When,
    /// The latest it may be; the preferred time where nothing is said.
    #[serde(default)]
    pub latest: Option<When>,
    /// Where it is handed in: so many minutes before and after its time the table is open, 0 to 15.
    #[serde(default)]
    pub turn_in_min: Option<i64>,
}

/// A time.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum When {
    /// Minutes from the beginning.
    Min(i64),
    /// What the clock shows in the household's zone, `2026-06-07T14:00`.
    Wall(String),
}

/// From then until then, minutes from the beginning.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Window {
    /// From.
    pub from_min: i64,
    /// Until.
    pub until_min: i64,
}

/// Somebody who sits up by the fire.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Watch {
    /// Who.
    pub name: String,
    /// From, minutes from the beginning.
    pub from_min: i64,
    /// Until, minutes from the beginning.
    pub until_min: i64,
}
