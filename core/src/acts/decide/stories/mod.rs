//! Nights told act by act: what each act records, what it says, and what is refused with what to do instead.

mod cooks;
mod courses;
mod crew;
mod fires;
mod one_opening;
mod openings;
mod pieces;
mod pits;
mod plans;
mod refusals;
mod undo;
