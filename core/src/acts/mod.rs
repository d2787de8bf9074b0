//! What a person or a device can do: the acts, and what each records.
//!
//! Start at [`Act`]. `decide` turns an act into drafts of entries or a refusal, as a pure function of what is known;
//! the door writes the drafts in one transaction and folds them.

mod act;
pub mod decide;

pub use act::{Act, InOpening, MeatMove, NewDish, NewMeat, Outcome, PlannedMeat, Undo};
