//! A slip of a screen, filled in. What is on it is told by [`Slip`](crate::screens::Slip).

use super::{
    FieldFilled, Filled, cook_slip::COOK_SLIPS, filled::Fields, meat_slip::MEAT_SLIPS, refused,
};
use crate::{
    acts::Act,
    error::Refused,
    ids::{CookId, PieceId},
    moment::Moment,
    words::{Viewer, Words, key},
};
use serde::{Deserialize, Serialize};

/// A slip as it was filled in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct SlipFilled {
    /// In which cook.
    pub cook: CookId,
    /// About which meat, where it is a slip of one.
    pub piece: Option<PieceId>,
    /// Which slip: `Slip::slip`.
    pub slip: String,
    /// Its fields.
    pub fields: Vec<FieldFilled>,
}

/// The act that a slip stands for.
///
/// # Errors
/// Where a field cannot be read, or there is no such slip.
pub fn slip(viewer: &Viewer, filled: &SlipFilled, moment: &Moment) -> Result<Act, Refused> {
    let SlipFilled {
        cook,
        piece,
        slip,
        fields,
    } = filled;
    match piece {
        Some(piece) => meat_slip(viewer, (*cook, *piece), slip, fields, moment),
        None => cook_slip(viewer, *cook, slip, fields, moment),
    }
}

/// The act of a slip of a cook.
///
/// # Errors
/// As [`slip`].
pub fn cook_slip(
    viewer: &Viewer,
    cook: CookId,
    slip: &str,
    filled: &dyn Filled,
    moment: &Moment,
) -> Result<Act, Refused> {
    let fields = reader(viewer, filled, moment);
    let known = COOK_SLIPS.iter().find(|(name, _)| *name == slip);
    let (_, read) = known.ok_or_else(|| no_such(&fields.say))?;
    read(&fields, cook)
}

/// The act of a slip of a meat.
///
/// # Errors
/// As [`slip`].
pub fn meat_slip(
    viewer: &Viewer,
    (cook, piece): (CookId, PieceId),
    slip: &str,
    filled: &dyn Filled,
    moment: &Moment,
) -> Result<Act, Refused> {
    let fields = reader(viewer, filled, moment);
    let known = MEAT_SLIPS.iter().find(|(name, _)| *name == slip);
    let (_, read) = known.ok_or_else(|| no_such(&fields.say))?;
    read(&fields, cook, piece)
}

fn reader<'a>(viewer: &'a Viewer, filled: &'a dyn Filled, moment: &'a Moment) -> Fields<'a> {
    Fields {
        say: Words::of(viewer),
        moment,
        filled,
    }
}

fn no_such(say: &Words<'_>) -> Refused {
    refused(say, key("form-choose"))
}
