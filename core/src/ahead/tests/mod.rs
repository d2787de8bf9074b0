//! From a cook's log to facts, and from facts along the grid.

mod along;
mod asks;
mod laws;
pub(crate) mod tiny;
