//! The border to Kotlin, Swift and Python: one object, records in and out, no logic.
//!
//! Start at [`Slowbend`]. The records it takes and gives are the core's own; their foreign forms are derived there, under
//! its feature `ffi`, and never written twice. How the foreign code is made is told in the README beside this crate.

#[cfg(feature = "echo")]
mod echo;
mod forms;
mod screens;
mod slowbend;

#[cfg(feature = "echo")]
pub use echo::*;
pub use slowbend::Slowbend;

uniffi::setup_scaffolding!();
