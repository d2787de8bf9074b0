//! What is mixed, bought and shared out. Start at [`rub()`], [`brine()`], [`mop()`], [`portions()`] or [`shopping()`]; each is
//! `slowbend sum` of its name, what a cook keeps of them is a [`Batch`], and docs/kitchen.md sets published values beside ours.
//!
//! Laws: mass is conserved (what is weighed out adds up to what was asked, and a meat to what is trimmed, cooked away,
//! left as bone and eaten); nothing is ever negative; more people never need less meat. All is whole numbers, so that
//! two phones say the same. What is rounded is rounded to the side that is missed less: salt and what is bought up,
//! what is eaten down.

mod amount;
mod apportion;
mod brine;
mod mop;
mod plan;
mod portions;
mod refused;
mod rub;
mod shopping;
mod yields;

pub use amount::{Cents, Grams, Milligrams, Milliliters};
pub use brine::{BrineAnswer, BrineInput, MEAT_PERMILLE_MAX, SATURATED_PERMILLE, Wanted, brine};
pub use mop::{
    AHEAD_MIN_MAX, HELD_AT_LEAST, MopAnswer, MopInput, MopMeat, MopPart, Pot, PotPart, Wetting, mop,
};
pub use plan::{
    Batch, BatchKind, BrinePlan, BrineWay, MopPlan, PortionShare, PortionsPlan, RubPlan,
    ShoppingPlan,
};
pub use portions::{
    Appetite, Feeds, MeatAnswer, PortionMeat, PortionsAnswer, PortionsInput, Range, portions,
};
pub(crate) use refused::{LINES_MAX, MEAT_G};
pub use refused::{List, NotABatch, What};
pub use rub::{
    AlsoSalt, Basis, COMMON_MG_PER_KG, CUP_G, Level, RubAnswer, RubInput, RubPart, SODIUM_OF_SALT,
    SaltFrom, SaltKind, SaltShare, TABLE_SALT_A_CUP, WeighedPart, rub,
};
pub use shopping::{
    AtHome, CountedIn, Extra, Line, Price, ShoppingAnswer, ShoppingInput, shopping,
};
pub use yields::{CutYield, Grounds, cut_yield};
