//! The cook planned back from the hour the food must be on the table. Start at [`plan`]; docs/plan.md tells the model, the
//! objective and the proof.
//!
//! Law: no plan takes a meat off below its published minimum, holds one below 140 °F, has more jobs at once than hands, or
//! leaves a pit alone longer than it may be while the cook sleeps and nobody with a name has the watch.

mod alternatives;
mod answer;
mod catalogue;
mod chance;
mod check;
mod choice;
mod cost;
mod household;
mod model;
mod no_plan;
mod replan;
mod said;
mod search;
mod sheet;
mod solve;
mod times;
mod ways;

pub use answer::{
    Alternative, Answer, Cost, First, Job, MeatPlan, Of, PitPlan, Plan, Proof, Said, SaidArg,
    SaidValue, Step, What,
};
pub use catalogue::from_catalogue;
pub use household::{
    BUDGET_NODES, Dish, DishHeat, GRID_MIN, Happy, Hold, Household, Keeps, Meat, OnPit, Pit,
    PitTemp, Place, Prep, PrepKind, Quantiles, Serving, Span, TimesAt, Watch, When, Window,
};
pub use no_plan::NoPlan;
pub use replan::{Change, Replanned, changes, replan};
pub use solve::plan;
