//! One opening of a pit, and meats that were moved, as typed.

use super::{
    SpotTyped,
    check::{chosen, read},
    given,
};
use crate::{
    acts::{Act, InOpening, MeatMove},
    checks::TestResult,
    error::Refused,
    ids::{PieceId, PitId, ThermometerId},
    screens::OpeningDoes,
    words::{Viewer, Words},
};
use serde::{Deserialize, Serialize};

/// One opening, as confirmed on its screen.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct OpeningTyped {
    /// Which pit.
    pub pit: PitId,
    /// The meats; those to which nothing was done may be among them.
    pub meats: Vec<OpeningMeatTyped>,
    /// The thermometer that all were read with, if it is one of those listed.
    pub thermometer: Option<ThermometerId>,
    /// When, milliseconds since 1970; none = now.
    pub at: Option<i64>,
}

/// One meat in an opening, as chosen and typed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct OpeningMeatTyped {
    /// Which one.
    pub piece: PieceId,
    /// What was done to it.
    pub does: Vec<OpeningDoes>,
    /// The `value` of each outcome that was chosen.
    pub chosen: Vec<String>,
    /// What was typed at each spot; blanks = not read there.
    pub spots: Vec<SpotTyped>,
    /// Read from a probe that stays in, not by hand.
    pub left_in: bool,
    /// What is to be remembered of it; blanks = nothing.
    pub note: String,
}

/// Where meats sit, as typed on the screen of the pits.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct MovesTyped {
    /// The meats; those that stay may be among them.
    pub moves: Vec<MeatMove>,
    /// When, milliseconds since 1970; none = now.
    pub at: Option<i64>,
}

/// The act of an opening.
///
/// # Errors
/// Where a temperature or an outcome cannot be read.
pub fn opening(viewer: &Viewer, typed: &OpeningTyped) -> Result<Act, Refused> {
    let say = Words::of(viewer);
    let meats = typed.meats.iter().map(|meat| one(&say, typed, meat));
    Ok(Act::DoOpening {
        pit: Some(typed.pit),
        meats: meats.collect::<Result<_, _>>()?,
        at: typed.at,
    })
}

/// The act that says where meats sit.
pub fn moves(typed: &MovesTyped) -> Act {
    Act::MoveMeats {
        moves: typed.moves.clone(),
        at: typed.at,
    }
}

fn one(
    say: &Words<'_>,
    typed: &OpeningTyped,
    meat: &OpeningMeatTyped,
) -> Result<InOpening, Refused> {
    let did = |does| meat.does.contains(&does);
    let own_mop = did(OpeningDoes::WetApart);
    Ok(InOpening {
        piece: meat.piece,
        wetted: did(OpeningDoes::Wet) || own_mop,
        own_mop,
        turned: did(OpeningDoes::Turn),
        glazed: did(OpeningDoes::Glaze),
        // Both at once is no answer that can be believed: the one that asks again stands.
        rub_set: match (did(OpeningDoes::RubSet), did(OpeningDoes::RubNotYet)) {
            (_, true) => Some(false),
            (true, false) => Some(true),
            (false, false) => None,
        },
        results: results(say, typed, meat)?,
        note: meat.note.trim().to_owned(),
    })
}

fn results(
    say: &Words<'_>,
    typed: &OpeningTyped,
    meat: &OpeningMeatTyped,
) -> Result<Vec<TestResult>, Refused> {
    let felt = meat.chosen.iter().map(|value| chosen(say, value));
    let heats = meat.spots.iter().filter_map(|spot| {
        let text = given(&spot.text)?;
        Some(read(
            say,
            (typed.thermometer, meat.left_in),
            &spot.spot,
            text,
        ))
    });
    felt.chain(heats).collect()
}
