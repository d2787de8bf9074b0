//! Reading what a person types: range-checked, in the viewer's units, with either decimal mark.
//!
//! Start at [`temperature`], [`weight`], [`duration`], [`clock`], [`datetime_field`], [`measure()`], [`name`]. What cannot be read is
//! refused, never guessed at, and the [`Refused`] says in the viewer's language what to type instead. Whatever is
//! written by [`format`](super::format) can be typed back.
//!
//! Unit and day words of every language are accepted whatever the viewer's: they do not clash, and a crew mixes them.

mod clock;
mod date;
mod duration;
mod hour;
mod kitchen;
mod measure;
mod name;
mod scan;
mod spoken;
mod temperature;
mod weight;

pub use clock::{Seek, clock, clock_there, time_field, when};
pub use date::{YEARS, datetime_field, instant};
pub use duration::{DURATION_MS, duration};
pub use kitchen::{amount, cents, permille, whole};
pub use measure::measure;
pub(crate) use name::is_hidden;
pub use name::{NAME_CHARS_MAX, name};
pub use temperature::{TEMPERATURE, temperature};
pub use weight::{MEAT_GRAMS, weight};

use super::{Arg, Refused, Words};

#[cfg(test)]
mod laws;
