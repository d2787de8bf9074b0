//! What must ring, when, and how loudly.
//!
//! Start at [`due`]: what is to be done in each cook, as a pure function of what is known and the moment. [`rings`]
//! makes of it the ordered list that a shell makes the platform's list equal to; [`said`] puts that list into words.
//!
//! States of an alarm, none of them stored but one: **waiting** (its time is ahead), **rung** (it sounded on this
//! device for its present time; durable), **answered** (an entry answers its job, so the name is never used again),
//! **expired** (the job is no more: the meat came off, the cook ended).
//!
//! No alarm is computed from a live forecast.

mod answer;
mod due;
mod id;
mod list;
mod meats;
mod openings;
mod pits;
mod said;
mod sleep;
mod standing;
#[cfg(test)]
mod tests;
mod unshown;
mod urgency;
mod zone;

pub use answer::Answer;
pub use due::{Due, due, due_in};
pub use id::AlarmId;
pub use list::{CALLS_APART_MS, NAGS_MIN, Ring, Rings, Rung, SECOND_EAR_MS, rings};
pub use meats::{is_to_put_away, pull_point};
pub use pits::{MUTED_MS, PlannedFeed, ROUND_MAX, ROUND_MIN, SILENT_MS, band_of, planned_feed};
pub use said::{Alarm, AlarmList, said};
pub use standing::standing;
pub use unshown::is_read_or_back;
pub use urgency::Urgency;
pub use zone::{COME_UP_LEAD_MS, put_away_limit};
