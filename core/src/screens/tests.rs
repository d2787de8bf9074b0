//! Stories and laws of the screens, on an invented regatta lunch for fourteen at two o'clock.

mod firsts;
mod goldens;
mod laws;
mod lines;
mod probes;
pub(in crate::screens) mod regatta;
mod shown;
