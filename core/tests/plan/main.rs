//! The run sheet: stories, laws over invented households with a checker of its own, and the chance against simulated cooks.

mod chance;
mod checker;
mod invent;
mod laws;
mod refusals;
mod stories;
