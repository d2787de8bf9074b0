//! Reading a card that somebody handed over. Start at [`read`].

use super::{
    AFTER_MIN_MAX, Card, CardCadence, CardDish, CardMeat, CardPit, CardServe, DISHES_MAX,
    MEATS_MAX, NOTES_MAX, PITS_MAX, VERSION, clean,
    fields::{Fields, Place},
    heat, strict,
};
use crate::{
    acts::decide::{PEOPLE_RANGE, pull_at, rest_minutes},
    cadence::{EVERY_MIN_MAX, EVERY_MIN_MIN},
    checks::Cut,
    error::Refused,
    ids::DeviceId,
    safety::Form,
    units::Mk,
    words::{Arg, Viewer, Words, typed::MEAT_GRAMS},
};
use chrono::NaiveTime;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use uuid::Uuid;

/// The longest card that is read, bytes: sixty meats and twenty long notes fit. Common practice, no source.
pub const BYTES_MAX: usize = 64 * 1024;

/// A card that was read.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct CardRead {
    /// The card, every field in its range.
    pub card: Card,
    /// What whoever starts from it should know: what was left out, and what was taken out.
    pub told: Vec<String>,
}

/// What [`check`] takes.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct CardText {
    /// The card as text: JSON, at most 64 KiB.
    pub text: String,
}

/// Reads a card for whoever reads English; the sum of that name.
///
/// # Errors
/// As [`read`].
pub fn check(input: &CardText) -> Result<CardRead, Refused> {
    let viewer = Viewer::default_for(DeviceId(Uuid::nil()));
    read(&Words::of(&viewer), &input.text)
}

/// Reads a card from its text.
///
/// # Errors
/// A sentence that names the place: where the text is no card, is of a later version, lies outside a range, or wishes for
/// less than a published minimum.
pub fn read(say: &Words<'_>, text: &str) -> Result<CardRead, Refused> {
    let text = text.trim_matches(|c: char| c.is_whitespace() || c == '\u{feff}');
    if text.is_empty() {
        return Err(say.refuse("card-empty", &[]).into());
    }
    if text.len() > BYTES_MAX {
        let limit = [("limit", Arg::Number(BYTES_MAX as i64 / 1024))];
        return Err(say.refuse("card-long", &limit).into());
    }
    let value = strict::strict(text).map_err(|error| no_json(say, text, &error))?;
    let mut told = vec![];
    let mut fields = Fields::of(*say, Place::default(), value, &mut told)
        .map_err(|_| Refused::from(say.refuse("card-none", &[])))?;
    version(&mut fields)?;
    let card = card(&mut fields)?;
    fields.end();
    Ok(CardRead { card, told })
}

/// Text that went through another program often has its straight quotes made curly: that is said, because it can be mended.
fn no_json(say: &Words<'_>, text: &str, error: &serde_json::Error) -> Refused {
    if text.starts_with('{') && text.contains(['“', '”', '«', '»']) {
        return say.refuse("card-quotes", &[]).into();
    }
    let args = [
        ("line", Arg::Number(error.line() as i64)),
        ("column", Arg::Number(error.column() as i64)),
    ];
    say.refuse("card-unread", &args).into()
}

fn version(fields: &mut Fields<'_>) -> Result<(), Refused> {
    let version = fields.take("slowbend_card");
    match version.as_ref().and_then(Value::as_i64) {
        Some(VERSION) => Ok(()),
        Some(later) if later > VERSION => {
            let args = [
                ("version", Arg::Number(later)),
                ("known", Arg::Number(VERSION)),
            ];
            Err(fields.say.refuse("card-newer", &args).into())
        }
        _ => Err(fields.say.refuse("card-none", &[]).into()),
    }
}

fn card(fields: &mut Fields<'_>) -> Result<Card, Refused> {
    let name = fields.name("name")?;
    let by = fields.written("by")?;
    let by = by.map(|by| clean::line(&fields.say, &fields.place.field("by"), &by));
    let serve = fields.inside("serve", serve)?;
    let people = fields.whole("people", PEOPLE_RANGE)?;
    let pits = fields.each("pits", PITS_MAX, pit)?;
    let meats = fields.each("meats", MEATS_MAX, |meat| self::meat(meat, pits.len()))?;
    if meats.is_empty() {
        return Err(fields.missing("meats"));
    }
    Ok(Card {
        slowbend_card: VERSION,
        name,
        by: by.transpose()?.flatten(),
        serve,
        people,
        pits,
        meats,
        dishes: fields.each("dishes", DISHES_MAX, dish)?,
        notes: notes(fields)?,
    })
}

fn serve(fields: &mut Fields<'_>) -> Result<CardServe, Refused> {
    if let Some(after) = fields.whole("after_min", 0..=AFTER_MIN_MAX)? {
        return Ok(CardServe::AfterMin(after));
    }
    let at = fields.written("at")?;
    let at = at.ok_or_else(|| fields.missing("at"))?;
    match clock(&at) {
        Some(_) => Ok(CardServe::At(at)),
        None => Err(fields.place.field("at").shape(&fields.say)),
    }
}

/// A time of day as a card has it: "14:00".
pub(super) fn clock(text: &str) -> Option<NaiveTime> {
    let is_whole = text.len() == 5;
    NaiveTime::parse_from_str(text, "%H:%M")
        .ok()
        .filter(|_| is_whole)
}

fn pit(fields: &mut Fields<'_>) -> Result<CardPit, Refused> {
    let kind = fields.choice("kind")?;
    Ok(CardPit {
        name: fields.name("name")?,
        kind: kind.ok_or_else(|| fields.missing("kind"))?,
        held: fields.inside("held", heat::held)?,
    })
}

fn meat(fields: &mut Fields<'_>, pits: usize) -> Result<CardMeat, Refused> {
    let cut: Option<Cut> = fields.choice("cut")?;
    let cut = cut.ok_or_else(|| fields.missing("cut"))?;
    let form: Option<Form> = fields.choice("form")?;
    let done = form.unwrap_or(cut.form_unsaid());
    let pull = fields.whole("pull_at_mk", 0..=2_000_000)?;
    pull_at(&fields.say, cut, done, pull.map(Mk)).map_err(|refused| below(fields, &refused))?;
    let rest_min = fields.whole("rest_min", 0..=i64::from(u32::MAX))?;
    rest_minutes(&fields.say, cut, done, rest_min).map_err(|refused| below(fields, &refused))?;
    let named = fields.written("name")?;
    let place = fields.place.field("name");
    let name = named.map(|name| clean::name(&fields.say, &place, &name));
    let last_pit = i64::try_from(pits).unwrap_or(i64::MAX) - 1;
    Ok(CardMeat {
        name: name.transpose()?,
        cut,
        form: form.filter(|form| *form != cut.form_unsaid()),
        weight_g: fields.whole("weight_g", MEAT_GRAMS)?,
        cadence: cadence(fields)?,
        pit: fields.whole("pit", 0..=last_pit)?,
        pull_at_mk: pull,
        wrap: fields.choice("wrap")?,
        rest_min,
    })
}

fn below(fields: &Fields<'_>, refused: &Refused) -> Refused {
    fields.place.refused(&fields.say, &refused.reason)
}

fn cadence(fields: &mut Fields<'_>) -> Result<Option<CardCadence>, Refused> {
    if fields.is_text("cadence", "none") {
        fields.take("cadence");
        return Ok(Some(CardCadence::None));
    }
    fields.inside("cadence", |one| {
        let every = EVERY_MIN_MIN..=EVERY_MIN_MAX;
        match (
            one.whole("mop", every.clone())?,
            one.whole("spritz", every)?,
        ) {
            (Some(minutes), None) => Ok(CardCadence::Mop(minutes)),
            (None, Some(minutes)) => Ok(CardCadence::Spritz(minutes)),
            _ => Err(one.place.shape(&one.say)),
        }
    })
}

fn dish(fields: &mut Fields<'_>) -> Result<CardDish, Refused> {
    let hot = fields.take("hot").ok_or_else(|| fields.missing("hot"))?;
    let hot = hot.as_bool();
    Ok(CardDish {
        name: fields.name("name")?,
        hot: hot.ok_or_else(|| fields.place.field("hot").shape(&fields.say))?,
    })
}

fn notes(fields: &mut Fields<'_>) -> Result<Vec<String>, Refused> {
    let place = fields.place.field("notes");
    let list = fields.list("notes", NOTES_MAX)?;
    let mut notes = vec![];
    for (index, value) in list.into_iter().enumerate() {
        let place = place.at(index);
        let text = fields.as_text(&place, value)?;
        notes.push(clean::note(&fields.say, &place, &text)?);
    }
    Ok(notes)
}
