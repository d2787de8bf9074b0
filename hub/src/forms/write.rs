//! What is written down during a cook: one function a form of that page.

use super::{
    Reading,
    cook::{cut, name, serve, weight},
    take,
};
use crate::{home::Home, pages::Page, typed::Typed, viewer::Reader};
use axum::{
    Form,
    extract::{Path, State},
    http::StatusCode,
    response::{IntoResponse, Response},
};
use slowbend_core::{
    acts::{Act, MeatMove, NewMeat},
    cadence::Cadence,
    error::Refused,
    ids::{CookId, PieceId, PitId},
    log::{Field, Subject, Where},
    units::Mk,
    words::typed::{self, Seek},
};
use std::{ops::RangeInclusive, sync::Arc};

/// What is read by hand in a pit or a meat: −60 to 800 °C, as files may hold it.
const ANYWHERE: RangeInclusive<Mk> = Mk(213_150)..=Mk(1_073_150);

type Read = fn(&Reading<'_>, CookId) -> Result<Act, Refused>;

/// The forms by the last part of their address.
const FORMS: [(&str, Read); 18] = [
    ("opening", opening),
    ("note", note),
    ("reading", reading),
    ("feed", feed),
    ("vent", vent),
    ("move", moved),
    ("meat", meat),
    ("dish", dish),
    ("serve", on_the_table),
    ("people", people),
    ("sleep", sleep),
    ("watch", watch),
    ("probe", probe),
    ("pits", moves),
    ("dish-note", dish_note),
    ("watch-line", watch_line),
    ("name", called),
    ("dish-name", dish_called),
];

/// Records what was written down, then shows what is next; what belongs to a page of its own shows there.
pub async fn post(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Path((cook, form)): Path<(uuid::Uuid, String)>,
    Form(fields): Form<Vec<(String, String)>>,
) -> Response {
    let cook = CookId(cook);
    let Some((_, read)) = FORMS.iter().find(|(known, _)| *known == form) else {
        return StatusCode::NOT_FOUND.into_response();
    };
    take(
        &home,
        &reader,
        Typed::from(fields),
        |reading| read(reading, cook),
        |back, _| match back {
            Page::Pits(_) | Page::Dishes(_) | Page::Watch(_) => back,
            _ => Page::Now(cook),
        },
    )
    .await
}

fn note(reading: &Reading<'_>, cook: CookId) -> Result<Act, Refused> {
    let text = reading.typed.text("text").trim().to_owned();
    Ok(Act::Note {
        cook,
        about: Subject::Cook(cook),
        text,
    })
}

fn reading(reading: &Reading<'_>, cook: CookId) -> Result<Act, Refused> {
    let temp = typed::temperature(&reading.say, reading.typed.text("temp"), &ANYWHERE);
    Ok(Act::Read {
        cook,
        place: place(reading)?,
        thermometer: reading.typed.parsed("thermometer", reading.words.choose)?,
        temp: temp.map_err(|refused| Refused::new(refused.reason))?,
        at: reading.at(),
    })
}

/// Each meat's own field says what was done to it.
fn opening(reading: &Reading<'_>, _: CookId) -> Result<Act, Refused> {
    let done = |what: &str| {
        let fields = reading.typed.0.iter().filter(|(_, value)| value == what);
        let ids = fields.filter_map(|(name, _)| name.strip_prefix("did-")?.parse().ok());
        ids.collect::<Vec<PieceId>>()
    };
    Ok(Act::Open {
        pit: reading.typed.parsed("pit", reading.words.choose)?,
        wetted: done("wet"),
        turned: done("turn"),
        glazed: done("glaze"),
        at: reading.at(),
    })
}

fn feed(reading: &Reading<'_>, cook: CookId) -> Result<Act, Refused> {
    let what = reading.typed.text("what").trim().to_owned();
    Ok(Act::Feed {
        cook,
        pit: pit(reading)?,
        what,
        at: reading.at(),
    })
}

fn vent(reading: &Reading<'_>, cook: CookId) -> Result<Act, Refused> {
    let how = reading.typed.text("how").trim().to_owned();
    Ok(Act::ChangeVent {
        cook,
        pit: pit(reading)?,
        how,
        at: reading.at(),
    })
}

fn moved(reading: &Reading<'_>, _: CookId) -> Result<Act, Refused> {
    let piece: PieceId = reading.picked("piece")?;
    let spot = reading.typed.text("spot").trim().to_owned();
    Ok(Act::Move {
        piece,
        pit: pit(reading)?,
        spot,
        at: reading.at(),
    })
}

fn meat(reading: &Reading<'_>, cook: CookId) -> Result<Act, Refused> {
    let typed = reading.typed;
    let named = typed
        .given("name")
        .map(|_| name(reading, "name"))
        .transpose()?;
    let meat = NewMeat {
        name: named.unwrap_or_default(),
        cut: cut(reading, "cut", "find")?,
        form: typed.chosen("prepared", reading.words.choose)?,
        weight_g: weight(reading, "weight")?,
        cadence: cadence(reading)?,
        pit: typed.parsed("pit", reading.words.choose)?,
    };
    Ok(Act::AddMeat { cook, meat })
}

/// A cadence as chosen; none = as the cut usually gets.
///
/// # Errors
/// Where it is none of the choices.
pub fn cadence(reading: &Reading<'_>) -> Result<Option<Cadence>, Refused> {
    match reading.typed.text("cadence") {
        "" => Ok(None),
        "none" => Ok(Some(Cadence::None)),
        "spritz" => Ok(Some(Cadence::spritz())),
        "mop" => Ok(Some(Cadence::mop())),
        _ => Err(Refused::new(reading.words.choose)),
    }
}

fn dish(reading: &Reading<'_>, cook: CookId) -> Result<Act, Refused> {
    let hot = reading.typed.text("hot") != "cold";
    Ok(Act::AddDish {
        cook,
        name: name(reading, "name")?,
        hot,
    })
}

fn on_the_table(reading: &Reading<'_>, cook: CookId) -> Result<Act, Refused> {
    let to = Field::Serve(serve(reading, "serve")?);
    Ok(Act::SetField {
        of: Subject::Cook(cook),
        to,
        saw: None,
    })
}

fn people(reading: &Reading<'_>, cook: CookId) -> Result<Act, Refused> {
    let to = Field::People(
        reading
            .typed
            .parsed("people", reading.words.people_unread)?,
    );
    Ok(Act::SetField {
        of: Subject::Cook(cook),
        to,
        saw: None,
    })
}

fn sleep(reading: &Reading<'_>, _: CookId) -> Result<Act, Refused> {
    let until = typed::clock(
        &reading.say,
        reading.typed.text("until"),
        reading.moment.utc_ms,
        Seek::Next,
    );
    Ok(Act::Sleep {
        until: until.map_err(|refused| Refused::new(refused.reason))?,
    })
}

fn watch(reading: &Reading<'_>, _: CookId) -> Result<Act, Refused> {
    Ok(Act::TakeWatch {
        note: reading.typed.text("note").trim().to_owned(),
    })
}

/// Each meat's own fields say where it sits.
fn moves(reading: &Reading<'_>, _: CookId) -> Result<Act, Refused> {
    let fields = reading.typed.0.iter();
    let pieces = fields.filter_map(|(name, _)| name.strip_prefix("pit-")?.parse().ok());
    let moves = pieces.map(|piece: PieceId| {
        let spot = reading.typed.text(&format!("spot-{piece}"));
        Ok(MeatMove {
            piece,
            pit: reading.picked(&format!("pit-{piece}"))?,
            spot: spot.trim().to_owned(),
        })
    });
    Ok(Act::MoveMeats {
        moves: moves.collect::<Result<_, Refused>>()?,
        at: reading.at(),
    })
}

fn dish_note(reading: &Reading<'_>, cook: CookId) -> Result<Act, Refused> {
    let about = Subject::Dish(reading.picked("dish")?);
    let text = reading.typed.text("text").trim().to_owned();
    Ok(Act::Note { cook, about, text })
}

fn called(reading: &Reading<'_>, cook: CookId) -> Result<Act, Refused> {
    Ok(Act::SetField {
        of: Subject::Cook(cook),
        to: Field::Name(name(reading, "name")?),
        saw: None,
    })
}

fn dish_called(reading: &Reading<'_>, _: CookId) -> Result<Act, Refused> {
    Ok(Act::SetField {
        of: Subject::Dish(reading.picked("dish")?),
        to: Field::Name(name(reading, "name")?),
        saw: None,
    })
}

/// A line for whoever takes the watch next.
fn watch_line(reading: &Reading<'_>, cook: CookId) -> Result<Act, Refused> {
    let (about, text) = (Subject::Crew, reading.typed.text("note").trim().to_owned());
    Ok(Act::Note { cook, about, text })
}

fn probe(reading: &Reading<'_>, cook: CookId) -> Result<Act, Refused> {
    Ok(Act::BindProbe {
        cook,
        source: name(reading, "source")?,
        sensor: name(reading, "sensor")?,
        place: place(reading)?,
        thermometer: reading.typed.parsed("thermometer", reading.words.choose)?,
    })
}

fn pit(reading: &Reading<'_>) -> Result<PitId, Refused> {
    reading.picked("pit")
}

/// Where a temperature is taken: `pit:` or `meat:` with the id of one.
fn place(reading: &Reading<'_>) -> Result<Where, Refused> {
    let unknown = || Refused::new(reading.words.choose);
    let (thing, id) = reading
        .typed
        .text("place")
        .split_once(':')
        .ok_or_else(unknown)?;
    let id: uuid::Uuid = id.parse().map_err(|_| unknown())?;
    match thing {
        "pit" => Ok(Where::Pit { pit: PitId(id) }),
        "meat" => {
            let spot = reading.typed.text("spot").trim().to_owned();
            Ok(Where::Piece {
                piece: PieceId(id),
                spot,
            })
        }
        _ => Err(unknown()),
    }
}
