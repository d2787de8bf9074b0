//! One field of a thing, as typed in the settings. The names are those of [`Field`] in the log.

use super::{given, heat, refused, whole};
use crate::{
    acts::Act,
    error::Refused,
    ids::ThermometerId,
    log::{Band, Bath, Field, Stamp, Subject},
    units::Mk,
    words::{
        Measure, Viewer, Words, key,
        typed::{MEAT_GRAMS, measure, name, weight},
    },
};
use serde::{Deserialize, Serialize};
use std::ops::RangeInclusive;

/// The heat of a pit as it may be typed, −60 to 800 °C; the act says what a band may be.
const PIT: RangeInclusive<Mk> = Mk(213_150)..=Mk(1_073_150);
/// What a thermometer may show in ice or boiling water, −20 to 120 °C, its error included.
const BATH: RangeInclusive<Mk> = Mk(253_150)..=Mk(393_150);

/// One field as typed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct FieldTyped {
    /// Whose it is.
    pub of: Subject,
    /// Its name on the screen: `FieldLine::field`.
    pub field: String,
    /// What was typed.
    pub value: String,
    /// The value that was on the screen: `FieldLine::saw`.
    pub saw: Option<Stamp>,
}

/// The temperatures a pit is held between, as typed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct BandTyped {
    /// Which pit.
    pub of: Subject,
    /// The lowest that is well.
    pub low: String,
    /// The highest that is well.
    pub high: String,
    /// How many minutes outside it ring.
    pub minutes: String,
    /// The value that was on the screen.
    pub saw: Option<Stamp>,
}

/// What a thermometer showed in ice or boiling water, as typed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct BathTyped {
    /// Which thermometer.
    pub thermometer: ThermometerId,
    /// How high above the sea it boiled, if it was boiling water (blanks = at the sea); none = ice.
    pub boiling_at: Option<String>,
    /// What it showed.
    pub read: String,
}

/// The act that sets one field.
///
/// # Errors
/// Where it cannot be read, or is no field that is set by hand.
pub fn field(viewer: &Viewer, typed: &FieldTyped) -> Result<Act, Refused> {
    let say = Words::of(viewer);
    Ok(Act::SetField {
        of: typed.of,
        to: read(&say, &typed.field, &typed.value)?,
        saw: typed.saw,
    })
}

fn read(say: &Words<'_>, field: &str, text: &str) -> Result<Field, Refused> {
    let maybe = || whole(say, text);
    let number = || maybe()?.ok_or_else(|| refused(say, key("form-unread")));
    let choose = || refused(say, key("form-choose"));
    Ok(match field {
        "name" => Field::Name(name(say, text)?),
        "pit_kind" => Field::PitKind(serde_json::from_value(text.into()).map_err(|_| choose())?),
        "grate_cm2" => Field::GrateCm2(measured(say, Measure::Grate, text)?),
        "alone_minutes" => Field::AloneMinutes(maybe()?),
        "weight_g" => {
            let grams = |text| weight(say, text, &MEAT_GRAMS);
            Field::WeightG(given(text).map(grams).transpose()?)
        }
        "people" => Field::People(maybe()?),
        "mop_minutes" => Field::MopMinutes(number()?),
        "spritz_minutes" => Field::SpritzMinutes(number()?),
        "altitude_m" => {
            let height = measured(say, Measure::Altitude, text)?;
            Field::AltitudeM(height.ok_or_else(|| refused(say, key("form-unread")))?)
        }
        "for_public" => Field::ForPublic(yes_or_no(say, text).ok_or_else(choose)?),
        _ => return Err(choose()),
    })
}

/// "Yes" or "no" in the viewer's language, or as recorded; none for anything else.
pub fn yes_or_no(say: &Words<'_>, text: &str) -> Option<bool> {
    let typed = text.trim().to_lowercase();
    let says =
        |key: &str, recorded: &str| typed == recorded || typed == say.text(key).to_lowercase();
    match (says("answer-yes", "true"), says("answer-no", "false")) {
        (true, _) => Some(true),
        (_, true) => Some(false),
        _ => None,
    }
}

/// The act that sets a pit's band, whole.
///
/// # Errors
/// Where a number cannot be read.
pub fn band(viewer: &Viewer, typed: &BandTyped) -> Result<Act, Refused> {
    let say = Words::of(viewer);
    let minutes = whole(&say, &typed.minutes)?;
    let band = Band {
        low: heat(&say, &typed.low, &PIT)?,
        high: heat(&say, &typed.high, &PIT)?,
        minutes: minutes.ok_or_else(|| refused(&say, key("form-unread")))?,
    };
    Ok(Act::SetField {
        of: typed.of,
        to: Field::Band(band),
        saw: typed.saw,
    })
}

/// The act that records what a thermometer showed.
///
/// # Errors
/// Where the temperature cannot be read.
pub fn bath(viewer: &Viewer, typed: &BathTyped) -> Result<Act, Refused> {
    let say = Words::of(viewer);
    let against = match &typed.boiling_at {
        None => Bath::Ice,
        Some(height) => Bath::Boiling {
            altitude_m: measured(&say, Measure::Altitude, height)?.unwrap_or(0),
        },
    };
    Ok(Act::CheckThermometer {
        thermometer: typed.thermometer,
        against,
        read: heat(&say, &typed.read, &BATH)?,
    })
}

/// An area or a height in the viewer's units; none where nothing was typed.
fn measured(say: &Words<'_>, of: Measure, text: &str) -> Result<Option<i64>, Refused> {
    let read = |text| measure(say, of, text);
    Ok(given(text).map(read).transpose()?)
}
