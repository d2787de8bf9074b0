//! Stories and laws of the screens, on an invented regatta lunch for fourteen at two o'clock.

mod asked;
mod courses;
mod fire;
mod firsts;
mod goldens;
mod kitchen;
mod laws;
mod lines;
mod opening;
mod probes;
pub(in crate::screens) mod regatta;
mod safety;
mod sheet;
mod shown;
mod slips;
mod trouble;
