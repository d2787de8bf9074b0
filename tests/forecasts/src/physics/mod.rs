//! The other simulator: two dimensions, explicit steps, another set of property equations, a water balance of its own. It
//! shares no line with the core's heat. Start at [`run::run`].

pub mod food;
pub mod grid;
pub mod run;
pub mod skin;
