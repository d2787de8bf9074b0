//! One field of a thing, as typed in the settings. The names are those of [`Field`] in the log.

use super::{Reading, cook};
use slowbend_core::{error::Refused, forms::yes_or_no, log::Field, words::Measure};

/// Reads the field called `field` from the form's `from`.
///
/// # Errors
/// Where it cannot be read, or is no field that is set by hand.
pub fn read(reading: &Reading<'_>, field: &str, from: &str) -> Result<Field, Refused> {
    let words = reading.words;
    let maybe = || reading.typed.parsed::<i64>(from, words.field_unread);
    let number = || maybe()?.ok_or_else(|| Refused::new(words.field_unread));
    Ok(match field {
        "name" => Field::Name(cook::name(reading, from)?),
        "pit_kind" => Field::PitKind(reading.typed.chosen(from, words.choose)?),
        "grate_cm2" => Field::GrateCm2(reading.measure(from, Measure::Grate)?),
        "alone_minutes" => Field::AloneMinutes(maybe()?),
        "weight_g" => Field::WeightG(cook::weight(reading, from)?),
        "people" => Field::People(maybe()?),
        "mop_minutes" => Field::MopMinutes(number()?),
        "spritz_minutes" => Field::SpritzMinutes(number()?),
        "altitude_m" => Field::AltitudeM(
            reading
                .measure(from, Measure::Altitude)?
                .ok_or_else(|| Refused::new(words.field_unread))?,
        ),
        "for_public" => Field::ForPublic(
            yes_or_no(&reading.say, reading.typed.text(from))
                .ok_or_else(|| Refused::new(words.choose))?,
        ),
        _ => return Err(Refused::new(words.choose)),
    })
}
