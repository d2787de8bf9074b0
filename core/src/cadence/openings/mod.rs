//! The fewest openings of one pit that keep every meat's window. Start with [`lid_openings`].
//!
//! A meat last wetted at minute `last` is due at `last + every`, and may be wetted from `early` before to `late` after.
//! Its next window counts from the minute it was in fact wetted, so that one opening moves all that follow. Minutes at
//! which the pit is opened anyway cost nothing and are used where they help.
//!
//! **Law.** No window that can be kept is broken: each meat is wetted inside each of its windows, until the window
//! reaches past the end (the horizon, or the minute it is wrapped). A window that has already passed counts as due now,
//! and the answer names the meat. Among all plans that do so, the answer has
//! 1. the fewest openings beside the fixed ones, then
//! 2. the least sum of minutes between each wetting and its due minute, then
//! 3. the least sum of opening minutes, that is, the earliest.
//!
//! Plans that are still equal are told apart by the search, always in the same way; the order in which meats are given
//! changes nothing.
//!
//! # How, and at what price
//! Dynamic programming over minutes: what is left to pay depends only on the minute of the last opening and the due
//! minute of each meat. For one meat and for two the costs are tabled whole: with a horizon of H
//! minutes, windows of W and a cadence of N, that takes H·W and at most about H·N·W steps. Each meat more is one more
//! factor of about N. So the tables of the pairs, which never say more than what many meats cost, lead a best-first
//! search over the same states (A*; Hart, Nilsson and Raphael 1968, from memory). Meats that are due together with the
//! same rhythm count as one.
//!
//! The search stops at a budget of openings weighed, not of seconds; up to three meats it is far beyond need. Past it
//! the answer is the best plan met so far, which keeps every window all the same, and says `exact: false` and the count
//! that no plan can go below.

mod answer;
mod check;
mod guide;
mod meat;
mod pair;
mod search;
#[cfg(test)]
mod tests;

use super::Refused;
use serde::{Deserialize, Serialize};

/// The longest horizon taken, minutes: a day.
pub const HORIZON_MIN_MAX: i64 = 24 * 60;
/// The most meats taken in one pit.
pub const NEEDS_MAX: usize = 12;

/// What is known of one pit. Minutes are whole minutes on any one scale, such as minutes since midnight.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct LidOpenings {
    /// The minute it is now; -1,000,000,000 to 1,000,000,000, as every minute here.
    pub from_min: i64,
    /// How far ahead to plan, minutes, 1 to 1440.
    pub horizon_min: i64,
    /// The meats in the pit, at most 12, each with a name of its own.
    pub needs: Vec<Need>,
    /// The minutes at which the pit will be opened anyway (a check, a feed, a turn); those outside the horizon do not
    /// matter.
    #[serde(default)]
    pub fixed_min: Vec<i64>,
}

/// How often one meat is to be wetted.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Need {
    /// What the meat is called.
    pub name: String,
    /// The minute it was last wetted; for a first wetting, the minute that is due less `every_min`.
    pub last_min: i64,
    /// The cadence: minutes from one wetting to the next, 10 to 240.
    pub every_min: i64,
    /// How many minutes before it is due it may be wetted, 0 to half of `every_min`.
    pub early_min: i64,
    /// How many minutes after it was due it may still be wetted, 0 to half of `every_min`.
    pub late_min: i64,
    /// The minute from which on it is not wetted any more (wrapped, glazed, off the pit), if that is known.
    #[serde(default)]
    pub until_min: Option<i64>,
}

/// When to open the pit.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Openings {
    /// The openings in order of time, the fixed ones within the horizon among them.
    pub openings: Vec<Opening>,
    /// How many of them are not fixed: what was made as small as can be.
    pub count: i64,
    /// The sum of minutes between each wetting and its due minute; for a window that had passed, counted from now.
    pub deviation_min: i64,
    /// The meats whose window had passed before `from_min`: due now.
    pub overdue: Vec<String>,
    /// Whether no better plan exists; false where the search stopped at its budget.
    pub exact: bool,
    /// No plan has fewer openings than this; equal to `count` where `exact`.
    pub at_least: i64,
}

/// One time the pit is open.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Opening {
    /// The minute.
    pub at_min: i64,
    /// The meats to wet, in order of name; none where the opening is for something else.
    pub names: Vec<String>,
    /// Whether the pit is opened then anyway.
    pub fixed: bool,
}

/// Lays the openings of one pit, or says what is wrong with the input.
///
/// ```
/// use slowbend_core::cadence::openings::{LidOpenings, Need, lid_openings};
/// let need = |name: &str, last_min, every_min| Need {
///     name: name.into(), last_min, every_min, early_min: 10, late_min: 10, until_min: None,
/// };
/// let pit = LidOpenings {
///     from_min: 0,
///     horizon_min: 60,
///     needs: vec![need("ribs", -10, 30), need("shoulder", -30, 60)],
///     fixed_min: vec![],
/// };
/// let plan = lid_openings(&pit).unwrap();
/// assert_eq!((plan.count, plan.openings[0].at_min), (1, 20));
/// assert_eq!(plan.openings[0].names, ["ribs", "shoulder"]);
/// ```
pub fn lid_openings(input: &LidOpenings) -> Result<Openings, Refused> {
    check::check(input)?;
    let pit = meat::Pit::of(input);
    let found = search::best_plan(&pit, search::budget(pit.meats.len()));
    Ok(answer::answer(input, &pit, &found))
}
