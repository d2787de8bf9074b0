//! The laws of the design that a run is held to, each in a file of its own.

pub mod law1;
pub mod law2;
pub mod law3;
