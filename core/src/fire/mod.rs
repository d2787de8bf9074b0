//! The fire: what a pit loses, what it burns, when it is fed next, and how strong its smoke is.
//!
//! Start at [`fuel`] (heat balance, in the units that hands count), [`rhythm`] (when to feed next, learned from the log),
//! [`smoke`] (light, medium or strong, in words) and [`opening_cost`]. All of it is rough and says so: heating values are
//! published, what a pit loses is common practice, and what was learned at this pit goes before both. Nothing here judges
//! a meat, and nothing rings by it.
//!
//! Powers are watts, heat is kilojoules, masses are grams, all whole; [`Spread`] is how wrong it may be.

mod answer;
mod balance;
mod choices;
mod hands;
mod jobs;
mod loss;
mod moisture;
mod opening;
mod refused;
mod rhythm;
mod smoke;
mod unit;
mod value;
mod weather;

pub use answer::{FuelAnswer, FuelInput, Spread};
pub use balance::{fuel, power_w};
pub use hands::{FED_QUARTERS, FireDid, UNIT_GRAMS, VENT_QUARTERS, Vent};
pub use jobs::{FireJob, FireJobState, FireStands, fire_jobs};
pub use loss::PitLoss;
pub use moisture::{moisture_permille, wet_basis_permille};
pub use opening::{COST_SHOWN_MIN, OpeningCost, opening_cost};
pub use refused::NotAFire;
pub use rhythm::{Feed, Rhythm, rhythm};
pub use smoke::{
    SmokeAdvice, SmokeAnswer, SmokeFrom, SmokeInput, SmokeSeen, SmokeState, SmokeStrength,
    SmokeWood, smoke,
};
pub use unit::FuelUnit;
pub use value::{Fuel, heat_kj_per_kg};
pub use weather::{Ambient, Rain, Sun, Weather, WeatherTap, Wind};
