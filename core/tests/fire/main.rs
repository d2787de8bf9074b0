//! The fire's sums: published values, stories of the regatta lunch, and laws.

mod jobs;
mod laws;
mod published;
mod smoke;
mod stories;
#[path = "../batch/table.rs"]
mod table;
