//! The whole job of Slowbend, with no clock, no network and no platform.

pub mod cadence;
pub mod checks;
pub mod ids;
pub mod moment;
pub mod readings;
pub mod safety;
pub mod units;
pub mod words;

#[cfg(feature = "ffi")]
uniffi::setup_scaffolding!();
