//! What must ring, when, and how loudly.
//!
//! Start at [`due`]: what is to be done in each cook, as a pure function of what is known and the moment. [`list`] makes
//! of it the ordered list of alarms that a shell makes the platform's list equal to.
//!
//! No alarm is computed from a live forecast.

mod due;
mod id;
mod urgency;

pub use due::{Due, due, due_in};
pub use id::AlarmId;
pub use urgency::Urgency;
