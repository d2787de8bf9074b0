//! What a plan says. Start at [`Answer`].

use crate::{safety::CautionKind, units::Mk};
use serde::{Deserialize, Serialize};

/// The plan, with its chance, its proof, and what else could be done.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Answer {
    /// The plan to follow.
    pub plan: Plan,
    /// Whether nothing better exists.
    pub proof: Proof,
    /// Nodes visited.
    pub nodes: i64,
    /// Other plans, and what each costs beside this one; up to three.
    pub alternatives: Vec<Alternative>,
    /// What to heed.
    pub cautions: Vec<CautionKind>,
}

/// One whole plan.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Plan {
    /// When its minutes begin, milliseconds since 1970.
    pub from_ms: i64,
    /// The run sheet: all jobs in order of time.
    pub sheet: Vec<Job>,
    /// Each meat, in the order given.
    pub meats: Vec<MeatPlan>,
    /// Each pit, in the order given.
    pub pits: Vec<PitPlan>,
    /// When each serving is planned, minutes, in the order given.
    pub servings_min: Vec<i64>,
    /// The chance that everything is ready by then, permille.
    pub chance_permille: i64,
    /// What the plan costs, gravest first.
    pub cost: Cost,
}

/// What a plan costs. One of an earlier line outweighs any amount of a later one.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Cost {
    /// Permille below the chosen confidence of being ready, added up over the meats.
    pub not_ready_permille: i64,
    /// Minutes after the preferred time, added up over the servings.
    pub late_min: i64,
    /// Kelvin outside the range a meat is happy in, at worst, added up over the meats.
    pub temperature_k: i64,
    /// Quarters of an hour up while asleep or while nothing should ring.
    pub night_quarters: i64,
    /// Minutes away from the best hold, and of waiting cut, added up.
    pub hold_min: i64,
    /// Openings of the pits to put on and take off, and changes of their temperature.
    pub openings: i64,
    /// Fuel, grams, down to a quarter of a gram: in quarters of a gram.
    pub fuel_quarter_g: i64,
}

/// Whether nothing better exists.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Proof {
    /// Nothing better exists on this grid.
    Optimal,
    /// The nodes ran out before that was shown.
    Gap {
        /// No plan costs less than this.
        at_least: Cost,
    },
}

/// What is done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum What {
    /// From the freezer into the refrigerator.
    Thaw,
    /// Into the brine.
    Brine,
    /// Trim it.
    Trim,
    /// Rub it.
    Rub,
    /// Light the pit; until: meat goes on.
    Light,
    /// Feed the pit, or see that it burns.
    Feed,
    /// Change the pit to a temperature.
    Step,
    /// Put it on.
    PutOn,
    /// Begin to check.
    CheckFrom,
    /// Take it off: at the expected time, until the latest planned one.
    TakeOff,
    /// Let it stand open.
    Vent,
    /// Let it rest where it stands.
    Rest,
    /// Hold it in a place.
    Hold,
    /// Put a probe in what is held.
    ProbeHold,
    /// Cut it.
    Cut,
    /// Make a dish.
    Make,
    /// Warm a dish again.
    Reheat,
    /// Let the pit go out.
    LetOut,
    /// Serve, or hand in.
    Serve,
    /// Sleep.
    Sleep,
}

/// One line of the run sheet.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Job {
    /// A name that stays the same when the plan is made anew: what and of whom.
    pub id: String,
    /// What.
    pub what: What,
    /// Whose it is.
    pub of: Of,
    /// When it begins, minutes.
    pub start_min: i64,
    /// When it ends, minutes: as expected, or where `what` says so, at the latest.
    pub end_min: i64,
    /// Hands on, minutes, from its start.
    pub hands_min: i64,
    /// The pit it is done at.
    pub pit: Option<usize>,
    /// The place it is held in.
    pub place: Option<usize>,
    /// The temperature of the pit.
    pub temp: Option<Mk>,
    /// Why then.
    pub why: Said,
    /// Done already: it does not move.
    pub done: bool,
}

/// Whose job it is: a place in the household's lists, from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Of {
    /// A meat's.
    Meat(usize),
    /// A dish's.
    Dish(usize),
    /// A pit's.
    Pit(usize),
    /// A serving's.
    Serving(usize),
    /// The cook's.
    Cook,
}

/// Something to be said: a message key with what it stands for.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Said {
    /// The message key.
    pub key: String,
    /// Its variables.
    pub args: Vec<SaidArg>,
}

/// One variable of a message.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SaidArg {
    /// Its name.
    pub name: String,
    /// What it stands for.
    pub value: SaidValue,
}

/// What a variable stands for; each is written in the viewer's units.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum SaidValue {
    /// A name.
    Name(String),
    /// A count.
    Count(i64),
    /// A time, milliseconds since 1970.
    At(i64),
    /// A span, minutes.
    Minutes(i64),
    /// A temperature.
    Temp(Mk),
    /// A weight, grams.
    Grams(i64),
    /// A message of its own.
    Message(String),
}

/// What is planned for a meat; minutes from the beginning.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct MeatPlan {
    /// The pit; none where it is off already.
    pub pit: Option<usize>,
    /// On.
    pub on_min: i64,
    /// Off in 10 of 100 cooks.
    pub off_early_min: i64,
    /// Off as expected.
    pub off_min: i64,
    /// Off with the chosen confidence, or as late as the serving allows.
    pub off_late_min: i64,
    /// Where it is held; none: it rests where it stands.
    pub place: Option<usize>,
    /// Not into that place before, minutes: its heat would not last. Until then it stays hot where it cooked.
    pub box_from_min: i64,
    /// Cut from.
    pub cut_min: i64,
    /// Served.
    pub serve_min: i64,
    /// The chance that it is ready in time, permille.
    pub chance_permille: i64,
}

/// What is planned for a pit; minutes from the beginning.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct PitPlan {
    /// Whether it is used at all.
    pub used: bool,
    /// Lit.
    pub light_min: i64,
    /// Out: the last meat is off.
    pub out_min: i64,
    /// The temperature it begins with.
    pub temp: Mk,
    /// The temperature it is changed to, and when.
    pub step: Option<Step>,
    /// Fuel, grams.
    pub fuel_g: i64,
}

/// A change of a pit's temperature.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Step {
    /// When, minutes.
    pub at_min: i64,
    /// To what.
    pub temp: Mk,
}

/// Another plan, and what was put first to find it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Alternative {
    /// What was put first.
    pub first: First,
    /// What it gains and costs beside the plan, one thing each.
    pub says: Vec<Said>,
    /// The plan.
    pub plan: Plan,
}

/// What is put first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum First {
    /// Being ready.
    Ready,
    /// The temperatures that the meats are happy in.
    Temperature,
    /// Sleep.
    Sleep,
    /// The best hold.
    Hold,
    /// Few openings.
    Openings,
    /// Little fuel.
    Fuel,
}
