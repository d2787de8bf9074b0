//! What crosses crates: the simulator with its laws, stories, and helpers of the tests in `tests/`.
//!
//! Start at [`sim`]: one seed is one run of a small world of devices, and the same seed is the same run. [`kit`] opens a door
//! with a cook under way; [`stories`] are nights told as files.

pub mod kit;
pub mod sim;
pub mod stories;
