//! What is known: the crew with its pits, thermometers and people, and each cook with its meats, folded from the log.
//!
//! Start at [`fold`]: state is a pure function of the set of entries, applied in the order (stamp, device, n) after the
//! voids among them have been settled. [`Crew`] holds what belongs to no cook, [`Cook`] one cook. Nothing here knows
//! the moment; what is due is derived from this state and a moment elsewhere.

pub mod ahead;
mod care;
mod courses;
mod crew;
pub mod fold;
mod known;
mod piece;
mod reg;
pub mod rhythm_facts;
pub mod safety_facts;
mod sheet;
mod state;
#[cfg(test)]
pub(crate) mod story;
pub mod verdict_input;

pub use care::{Answer, Answered, PitCare, Probe, Timed};
pub use courses::{COURSES_MAX, Courses};
pub(crate) use courses::{LATEST_MS, NRS, WINDOW_MIN};
pub(crate) use crew::overruling;
pub use crew::{Crew, Overruling, Person, Pit, Thermometer, ThermometerCheck, WatchTurn};
pub use known::{Known, Warning};
pub use piece::{HandReading, Pass, Passed, Piece, Wetted};
pub use reg::Reg;
pub use sheet::{Done, JOBS_MAX, KeptSheet, RunSheet, Sheets};
pub use state::{Cook, Dish, Kept, LastAct, Moved, Note, Saved, Trimmings};

/// Changes whenever the fold reads the same entries differently: cached state of another version is thrown away.
pub const FOLD_VERSION: i64 = 9;
