//! The whole job of Slowbend, with no clock, no network and no platform.

pub mod acts;
pub mod ahead;
pub mod air;
pub mod alarms;
pub mod batch;
pub mod cadence;
pub mod calendar;
pub mod card;
pub mod catalogue;
pub mod chart;
pub mod checks;
pub mod cook;
pub mod door;
pub mod error;
pub mod finish;
pub mod fire;
pub mod forms;
pub mod heat;
pub mod ids;
pub mod log;
pub mod moment;
pub mod plan;
pub mod planning;
pub mod probes;
pub mod qr;
pub mod readings;
pub mod safety;
pub mod screens;
pub mod store;
pub mod units;
pub mod words;

#[cfg(feature = "ffi")]
uniffi::setup_scaffolding!();
