//! A cook to begin from a card, as typed.

use super::{given, refused, start::serve, whole};
use crate::{
    acts::Act,
    card::{Begun, BegunMeat, plan, read},
    error::Refused,
    ids::PitId,
    moment::Moment,
    words::{
        Viewer, Words, key,
        typed::{MEAT_GRAMS, name, weight},
    },
};
use serde::{Deserialize, Serialize};

/// A cook to begin from a card, as typed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct BeginTyped {
    /// The card: `BeginScreen::card`.
    pub card: String,
    /// What the cook is called; blanks = as the card has it.
    pub name: String,
    /// When it is on the table: "2 pm tomorrow"; blanks = not said.
    pub serve: String,
    /// How many eat; blanks = not said.
    pub people: String,
    /// The meats of the card, in its order.
    pub meats: Vec<BeginMeatTyped>,
}

/// A meat of the card, as typed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct BeginMeatTyped {
    /// Whether it is left out this time.
    pub left_out: bool,
    /// Its weight; blanks = not weighed.
    pub weight: String,
    /// The pit it will cook in, if it is known.
    pub pit: Option<PitId>,
}

/// The act that begins it.
///
/// # Errors
/// Where the card is none, or a time, a number or a weight cannot be read.
pub fn begin(viewer: &Viewer, typed: &BeginTyped, moment: &Moment) -> Result<Act, Refused> {
    let say = Words::of(viewer);
    let card = read(&say, &typed.card)?.card;
    if typed.meats.len() != card.meats.len() {
        return Err(refused(&say, key("form-choose")));
    }
    let meats = typed.meats.iter().map(|typed| meat(&say, typed));
    let begun = Begun {
        name: match given(&typed.name) {
            Some(typed) => name(&say, typed)?,
            None => card.name.clone(),
        },
        serve: serve(&say, &typed.serve, moment)?,
        people: whole(&say, &typed.people)?,
        meats: meats.collect::<Result<_, _>>()?,
    };
    if begun.meats.iter().all(Option::is_none) {
        return Err(refused(&say, key("begin-no-meat")));
    }
    Ok(plan(&say, &card, &begun))
}

fn meat(say: &Words<'_>, typed: &BeginMeatTyped) -> Result<Option<BegunMeat>, Refused> {
    if typed.left_out {
        return Ok(None);
    }
    let read = |text| weight(say, text, &MEAT_GRAMS);
    Ok(Some(BegunMeat {
        weight_g: given(&typed.weight).map(read).transpose()?,
        pit: typed.pit,
    }))
}
