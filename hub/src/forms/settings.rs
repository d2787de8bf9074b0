//! Pits, thermometers, habits, this device's name, and the viewer's choices.

use super::{Reading, back, cook::name, field, on_saying, take};
use crate::{home::Home, pages::Page, typed::Typed, viewer::Reader, words::words, zone};
use axum::{
    Form,
    extract::{Path, State},
    http::{HeaderValue, StatusCode, header},
    response::{IntoResponse, Response},
};
use slowbend_core::{
    acts::Act,
    error::Refused,
    log::{Band, Bath, Field, Stamp, Subject},
    units::Mk,
    words::{Measure, typed::temperature},
};
use std::{ops::RangeInclusive, sync::Arc};

/// The heat of a pit as it may be typed; core says what a band may be.
const PIT: RangeInclusive<Mk> = Mk(213_150)..=Mk(1_073_150);
/// What a thermometer may show in ice or boiling water, −20 to 120 °C, its error included.
const BATH: RangeInclusive<Mk> = Mk(253_150)..=Mk(393_150);

type Read = fn(&Reading<'_>) -> Result<Act, Refused>;

/// The forms by the last part of their address.
const FORMS: [(&str, Read); 6] = [
    ("pit", pit),
    ("thermometer", thermometer),
    ("device", device),
    ("field", one_field),
    ("band", band),
    ("bath", bath),
];

/// Records one setting, then shows the settings again.
pub async fn post(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Path(form): Path<String>,
    Form(fields): Form<Vec<(String, String)>>,
) -> Response {
    let typed = Typed::from(fields);
    if form == "viewer" {
        return viewer(&home, reader, typed).await;
    }
    let Some((_, read)) = FORMS.iter().find(|(known, _)| *known == form) else {
        return StatusCode::NOT_FOUND.into_response();
    };
    let next = |back, _: &_| match back {
        Page::Thermometers => back,
        _ => Page::Settings,
    };
    take(&home, &reader, typed, read, next).await
}

/// The viewer's choices go into their cookie and nowhere else.
async fn viewer(home: &Arc<Home>, mut reader: Reader, typed: Typed) -> Response {
    if let Some(zone) = typed.given("zone")
        && !zone::is_known(zone.trim())
    {
        let unread = Refused::new(words(reader.viewer.locale).zone_unread);
        return super::again(home, &reader, typed, unread.into()).await;
    }
    // The demo's zone is its own and belongs in nobody's cookie.
    let is_demo = home.invented.is_some();
    for (name, value) in typed
        .0
        .iter()
        .filter(|(name, _)| !(is_demo && name == "zone"))
    {
        reader.choose(name, value.trim());
    }
    let mut answer = on_saying(home, back(&typed), words(reader.viewer.locale).saved);
    if let Ok(cookie) = HeaderValue::from_str(&reader.set_cookie()) {
        answer.headers_mut().insert(header::SET_COOKIE, cookie);
    }
    answer
}

fn pit(reading: &Reading<'_>) -> Result<Act, Refused> {
    let typed = reading.typed;
    Ok(Act::AddPit {
        name: name(reading, "name")?,
        kind: typed.chosen("kind", reading.words.choose)?,
        grate_cm2: reading.measure("grate", Measure::Grate)?,
        alone_minutes: typed.parsed("alone", reading.words.field_unread)?,
    })
}

fn thermometer(reading: &Reading<'_>) -> Result<Act, Refused> {
    Ok(Act::AddThermometer {
        name: name(reading, "name")?,
    })
}

fn device(reading: &Reading<'_>) -> Result<Act, Refused> {
    Ok(Act::NameDevice {
        name: name(reading, "name")?,
    })
}

fn one_field(reading: &Reading<'_>) -> Result<Act, Refused> {
    let to = field::read(reading, reading.typed.text("field"), "value")?;
    Ok(Act::SetField {
        of: subject(reading)?,
        to,
        saw: saw(reading)?,
    })
}

fn band(reading: &Reading<'_>) -> Result<Act, Refused> {
    let minutes = reading
        .typed
        .parsed("minutes", reading.words.field_unread)?;
    let band = Band {
        low: heat(reading, "low", &PIT)?,
        high: heat(reading, "high", &PIT)?,
        minutes: minutes.ok_or_else(|| Refused::new(reading.words.field_unread))?,
    };
    Ok(Act::SetField {
        of: subject(reading)?,
        to: Field::Band(band),
        saw: saw(reading)?,
    })
}

fn bath(reading: &Reading<'_>) -> Result<Act, Refused> {
    let Subject::Thermometer(thermometer) = subject(reading)? else {
        return Err(Refused::new(reading.words.choose));
    };
    let altitude_m = reading.measure("altitude", Measure::Altitude)?;
    let against = match reading.typed.text("against") {
        "ice" => Bath::Ice,
        _ => Bath::Boiling {
            altitude_m: altitude_m.ok_or_else(|| height_needed(reading))?,
        },
    };
    Ok(Act::CheckThermometer {
        thermometer,
        against,
        read: heat(reading, "read", &BATH)?,
    })
}

/// Each 500 ft are about 1 °F: a height that was guessed would blame the thermometer.
fn height_needed(reading: &Reading<'_>) -> Refused {
    Refused::new(reading.say.text("thermometers-height-needed"))
}

fn heat(reading: &Reading<'_>, name: &str, range: &RangeInclusive<Mk>) -> Result<Mk, Refused> {
    temperature(&reading.say, reading.typed.text(name), range)
        .map_err(|refused| Refused::new(refused.reason))
}

fn subject(reading: &Reading<'_>) -> Result<Subject, Refused> {
    serde_json::from_str(reading.typed.text("of")).map_err(|_| Refused::new(reading.words.choose))
}

fn saw(reading: &Reading<'_>) -> Result<Option<Stamp>, Refused> {
    Ok(reading
        .typed
        .parsed("saw", reading.words.choose)?
        .map(Stamp))
}
