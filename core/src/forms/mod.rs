//! What a person typed into the forms of a screen, read into the act it stands for, for shells that hold no rules.
//!
//! Start at [`check()`], [`start()`], the functions of `field`, and [`slip()`] for the slips of a screen. Each is a pure function of the viewer, what was typed
//! and, where a time of day is read, the moment. Law: what cannot be read is refused in the viewer's language, and
//! nothing is guessed at.

mod ago;
mod begin;
mod check;
mod cook_slip;
pub(crate) mod courses;
mod field;
mod filled;
mod kitchen;
mod kitchen_rows;
mod kitchen_salts;
mod meat_slip;
mod opening;
mod slip;
mod start;
#[cfg(test)]
mod tests;

pub use ago::{AGO_MINUTES, ago, done_ago};
pub use begin::{BeginMeatTyped, BeginTyped, begin};
pub use check::{CheckTyped, SpotTyped, check};
pub use field::{BandTyped, BathTyped, FieldTyped, band, bath, field, yes_or_no};
pub use filled::{FieldFilled, Filled};
pub use opening::{MovesTyped, OpeningMeatTyped, OpeningTyped, moves, opening};
pub use slip::{SlipFilled, cook_slip, meat_slip, slip};
pub use start::{MeatTyped, StartTyped, of_row, start};

use crate::{
    error::Refused,
    units::Mk,
    words::{Words, key, typed::temperature},
};
use std::ops::RangeInclusive;

/// Nothing where only blanks were typed.
fn given(text: &str) -> Option<&str> {
    Some(text.trim()).filter(|text| !text.is_empty())
}

/// A whole number; none where nothing was typed.
fn whole(say: &Words<'_>, text: &str) -> Result<Option<i64>, Refused> {
    let read = |text: &str| text.parse().map_err(|_| refused(say, key("form-unread")));
    given(text).map(read).transpose()
}

fn heat(say: &Words<'_>, text: &str, range: &RangeInclusive<Mk>) -> Result<Mk, Refused> {
    Ok(temperature(say, text, range)?)
}

fn refused(say: &Words<'_>, reason: &'static str) -> Refused {
    Refused::new(say.text(reason))
}
