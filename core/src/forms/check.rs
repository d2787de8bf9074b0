//! A pass over the tests of a meat, as typed.

use super::{given, heat, refused};
use crate::{
    acts::Act,
    checks::{Temperature, TestResult},
    error::Refused,
    ids::{PieceId, ThermometerId},
    units::Mk,
    words::{Viewer, Words, key},
};
use serde::{Deserialize, Serialize};
use std::ops::RangeInclusive;

/// What may be read inside a meat: −20 to 200 °C, as [`Temperature`] holds it.
pub(super) const INSIDE: RangeInclusive<Mk> = Mk(253_150)..=Mk(473_150);

/// A pass over the tests of a meat, as typed on the screen of its check.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct CheckTyped {
    /// Which meat.
    pub piece: PieceId,
    /// The `value` of each outcome that was chosen.
    pub chosen: Vec<String>,
    /// What was typed at each spot; blanks = not read there.
    pub spots: Vec<SpotTyped>,
    /// The thermometer it was read with, if it is one of those listed.
    pub thermometer: Option<ThermometerId>,
    /// Read from a probe that stays in, not by hand.
    pub left_in: bool,
}

/// A temperature as typed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct SpotTyped {
    /// The spot as the screen names it in `SpotField::spot`.
    pub spot: String,
    /// What was typed.
    pub text: String,
}

/// The act of a pass.
///
/// # Errors
/// Where nothing was tried, or a temperature cannot be read.
pub fn check(viewer: &Viewer, typed: &CheckTyped) -> Result<Act, Refused> {
    let say = Words::of(viewer);
    let chosen = typed.chosen.iter().map(|value| chosen(&say, value));
    let read = typed.spots.iter().filter_map(|spot| {
        let text = given(&spot.text)?;
        Some(read(
            &say,
            (typed.thermometer, typed.left_in),
            &spot.spot,
            text,
        ))
    });
    let results = chosen.chain(read).collect::<Result<Vec<_>, _>>()?;
    if results.is_empty() {
        return Err(refused(&say, key("form-nothing-tried")));
    }
    Ok(Act::Check {
        piece: typed.piece,
        results,
        at: None,
    })
}

pub(super) fn chosen(say: &Words<'_>, value: &str) -> Result<TestResult, Refused> {
    serde_json::from_str(value).map_err(|_| refused(say, key("form-choose")))
}

/// A temperature at a spot: by which thermometer, and whether by a probe that stays in.
pub(super) fn read(
    say: &Words<'_>,
    (thermometer, left_in): (Option<ThermometerId>, bool),
    spot: &str,
    text: &str,
) -> Result<TestResult, Refused> {
    let mk = heat(say, text, &INSIDE)?;
    let spot = serde_json::from_value(spot.into());
    Ok(TestResult::Heat(Temperature {
        mk,
        spot: spot.map_err(|_| refused(say, key("form-choose")))?,
        thermometer,
        instant_read: !left_in,
    }))
}
