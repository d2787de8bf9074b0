//! The cook card: a plan as one piece of JSON that another person can start from, as a file, pasted text or a QR code.
//!
//! Start at [`Card`], its shape. [`of_cook`] makes one of any cook, [`read`] takes one that somebody handed over, and
//! [`plan`] makes the act that begins a cook from it. Where it is short enough, [`qr`](crate::qr::qr()) draws it.
//!
//! Laws: a card is a wish, never a rule. What [`read`] passes lies in the ranges of the acts, and nothing on it is below a
//! published minimum: such a card is refused with a sentence. What [`of_cook`] makes, [`read`] passes. A later version of
//! the shape is refused; a field that version 1 does not have is left out and told, because a field that nobody here
//! understands could be a condition of the plan: kept in silence it would be handed on unchecked under our name.

mod clean;
mod fields;
mod heat;
mod made;
mod planned;
mod read;
mod shape;
mod strict;
#[cfg(test)]
mod tests;

pub use made::{CardAsk, of_cook};
pub use planned::{Begun, BegunMeat, plan};
pub use read::{BYTES_MAX, CardRead, CardText, check, read};
pub use shape::{Card, CardCadence, CardDish, CardHeat, CardMeat, CardPit, CardServe, VERSION};

/// The most meats on a card: what one act adds. Common practice, no source.
pub const MEATS_MAX: usize = 60;
/// The most pits on a card. Common practice, no source.
pub const PITS_MAX: usize = 12;
/// The most dishes on a card. Common practice, no source.
pub const DISHES_MAX: usize = 40;
/// The most notes on a card. Common practice, no source.
pub const NOTES_MAX: usize = 20;
/// The latest a cook may be on the table after its start, minutes: the fortnight that serving times are taken for.
pub const AFTER_MIN_MAX: i64 = 14 * 24 * 60;
