//! What is written down during a cook: one function a slip.

use super::{field::yes_or_no, filled::Fields, kitchen};
use crate::{
    acts::{Act, MeatMove, NewMeat},
    cadence::Cadence,
    checks::Cut,
    error::Refused,
    ids::{CookId, PieceId, PitId},
    log::{Field, Subject},
    moment::MINUTE,
    screens::the_cut,
};

type Read = fn(&Fields<'_>, CookId) -> Result<Act, Refused>;

/// The slips by name.
pub(super) const COOK_SLIPS: [(&str, Read); 29] = [
    ("opening", opening),
    ("note", note),
    ("reading", reading),
    ("feed", feed),
    ("vent", vent),
    ("move", moved),
    ("meat", meat),
    ("dish", dish),
    ("serve", serve),
    ("people", people),
    ("sleep", sleep),
    ("watch", watch),
    ("probe", probe),
    ("pits", moves),
    ("name", called),
    ("dish-note", dish_note),
    ("dish-name", dish_called),
    ("watch-line", watch_line),
    ("hot-air", hot_air),
    ("rub", kitchen::rub),
    ("brine", kitchen::brine),
    ("mop", kitchen::mop),
    ("portions", kitchen::portions),
    ("shopping", kitchen::shopping),
    ("trimmings", kitchen::trimmings),
    ("salt", kitchen::salt),
    ("weigh", weigh),
    ("found-out", found_out),
    ("courses", super::courses::courses),
];

fn note(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    Ok(Act::Note {
        cook,
        about: Subject::Cook(cook),
        text: fields.trimmed("text"),
    })
}

fn reading(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    let temp = fields.heat("temp")?;
    Ok(Act::Read {
        cook,
        place: fields.place("place")?,
        thermometer: fields.any_id("thermometer")?,
        temp,
        at: fields.at(),
    })
}

/// Each meat's own field says what was done to it.
fn opening(fields: &Fields<'_>, _: CookId) -> Result<Act, Refused> {
    let done = |what: &str| {
        let pairs = fields.filled.pairs().into_iter();
        let ids = pairs
            .filter(|(_, text)| *text == what)
            .filter_map(|(name, _)| name.strip_prefix("did-")?.parse().ok());
        ids.collect::<Vec<PieceId>>()
    };
    Ok(Act::Open {
        pit: fields.any_id("pit")?,
        wetted: done("wet"),
        turned: done("turn"),
        glazed: done("glaze"),
        at: fields.at(),
    })
}

fn feed(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    Ok(Act::Feed {
        cook,
        pit: fields.id("pit")?,
        what: fields.trimmed("what"),
        at: fields.at(),
    })
}

fn vent(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    Ok(Act::ChangeVent {
        cook,
        pit: fields.id("pit")?,
        how: fields.trimmed("how"),
        at: fields.at(),
    })
}

fn moved(fields: &Fields<'_>, _: CookId) -> Result<Act, Refused> {
    Ok(Act::Move {
        piece: fields.id("piece")?,
        pit: fields.id("pit")?,
        spot: fields.trimmed("spot"),
        at: fields.at(),
    })
}

fn meat(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    let meat = NewMeat {
        name: fields.any_name("name")?,
        cut: cut(fields)?,
        form: fields.chosen("prepared")?,
        weight_g: fields.weight("weight")?,
        cadence: cadence(fields)?,
        pit: fields.any_id("pit")?,
    };
    Ok(Act::AddMeat { cook, meat })
}

/// The cut that was chosen; where none was, the one that the typed name means.
fn cut(fields: &Fields<'_>) -> Result<Cut, Refused> {
    match fields.given("cut") {
        Some(_) => fields.chosen("cut"),
        None => the_cut(fields.say.viewer(), fields.filled.field("find")),
    }
}

/// A cadence as chosen; none = as the cut usually gets.
pub(super) fn cadence(fields: &Fields<'_>) -> Result<Option<Cadence>, Refused> {
    match fields.filled.field("cadence") {
        "" => Ok(None),
        "none" => Ok(Some(Cadence::None)),
        "spritz" => Ok(Some(Cadence::spritz())),
        "mop" => Ok(Some(Cadence::mop())),
        _ => Err(fields.unknown()),
    }
}

fn dish(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    let hot = fields.filled.field("hot") != "cold";
    Ok(Act::AddDish {
        cook,
        name: fields.name("name")?,
        hot,
    })
}

fn serve(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    set(cook, Field::Serve(fields.serve("serve")?))
}

fn people(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    set(cook, Field::People(fields.whole("people")?))
}

fn set(cook: CookId, to: Field) -> Result<Act, Refused> {
    let of = Subject::Cook(cook);
    Ok(Act::SetField { of, to, saw: None })
}

fn sleep(fields: &Fields<'_>, _: CookId) -> Result<Act, Refused> {
    Ok(Act::Sleep {
        until: fields.clock("until")?,
    })
}

fn watch(fields: &Fields<'_>, _: CookId) -> Result<Act, Refused> {
    Ok(Act::TakeWatch {
        note: fields.trimmed("note"),
    })
}

fn probe(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    Ok(Act::BindProbe {
        cook,
        source: fields.name("source")?,
        sensor: fields.name("sensor")?,
        place: fields.place("place")?,
        thermometer: fields.any_id("thermometer")?,
    })
}

/// Each meat's own fields say where it sits.
fn moves(fields: &Fields<'_>, _: CookId) -> Result<Act, Refused> {
    let pairs = fields.filled.pairs().into_iter();
    let pieces = pairs.filter_map(|(name, _)| name.strip_prefix("pit-")?.parse().ok());
    let moves = pieces.map(|piece: PieceId| {
        Ok(MeatMove {
            piece,
            pit: fields.id(&format!("pit-{piece}"))?,
            spot: fields.trimmed(&format!("spot-{piece}")),
        })
    });
    Ok(Act::MoveMeats {
        moves: moves.collect::<Result<_, Refused>>()?,
        at: fields.at(),
    })
}

fn called(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    set(cook, Field::Name(fields.name("name")?))
}

fn dish_note(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    Ok(Act::Note {
        cook,
        about: Subject::Dish(fields.id("dish")?),
        text: fields.trimmed("text"),
    })
}

fn dish_called(fields: &Fields<'_>, _: CookId) -> Result<Act, Refused> {
    Ok(Act::SetField {
        of: Subject::Dish(fields.id("dish")?),
        to: Field::Name(fields.name("name")?),
        saw: None,
    })
}

/// Whether the air around the food is above 90 °F.
fn hot_air(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    let yes = yes_or_no(&fields.say, fields.filled.field("hot-air"));
    set(cook, Field::HotAir(yes.ok_or_else(|| fields.unknown())?))
}

/// What one of a unit of fuel weighs at a pit: `unit` is the pit, a blank, and the unit's name in the log.
/// An option of a slip that names a pit and something of it.
fn of_pit<'f>(fields: &'f Fields<'_>, field: &str) -> Result<(PitId, &'f str), Refused> {
    let unknown = || fields.unknown();
    let (pit, what) = fields
        .filled
        .field(field)
        .split_once(' ')
        .ok_or_else(unknown)?;
    Ok((pit.parse().map_err(|_| unknown())?, what))
}

fn weigh(fields: &Fields<'_>, _: CookId) -> Result<Act, Refused> {
    let unknown = || fields.unknown();
    let (pit, unit) = of_pit(fields, "unit")?;
    let unit = serde_json::from_value(unit.into());
    let weight = fields.unit_weight("weight")?;
    Ok(Act::WeighUnit {
        pit,
        unit: unit.map_err(|_| unknown())?,
        grams: weight.ok_or_else(unknown)?,
    })
}

/// A line for whoever takes the watch next.
fn watch_line(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    Ok(Act::Note {
        cook,
        about: Subject::Crew,
        text: fields.trimmed("note"),
    })
}

/// Which pit, and how many minutes ago it burned for certain.
fn found_out(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    let (pit, minutes) = of_pit(fields, "until")?;
    let minutes: i64 = minutes.parse().map_err(|_| fields.unknown())?;
    let ago = minutes.saturating_mul(MINUTE);
    Ok(Act::FindFireOut {
        cook,
        pit,
        burned_until: fields.moment.utc_ms.saturating_sub(ago),
        at: None,
    })
}
