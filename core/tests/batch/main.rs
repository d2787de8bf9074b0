//! The kitchen's sums: published values, stories of the regatta lunch, and laws.

mod laws;
mod published;
mod stories;
mod table;
