//! Probes: published values, laws over all bytes, and the clocks that probes have.

mod clocks;
mod laws;
mod numbers;
mod published;
mod refusals;
