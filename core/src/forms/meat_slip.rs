//! What is said about one meat beside its stage and its checks: one function a slip.

use super::{check::INSIDE, cook_slip::cadence, filled::Fields, heat, refused};
use crate::{
    acts::Act,
    error::Refused,
    ids::{CookId, PieceId},
    log::{Field, Subject},
    words::key,
};

type Read = fn(&Fields<'_>, CookId, PieceId) -> Result<Act, Refused>;

/// The slips by name.
pub(super) const MEAT_SLIPS: [(&str, Read); 8] = [
    ("note", note),
    ("weight", weight),
    ("cadence", wetting),
    ("prepared", prepared),
    ("pull", pull),
    ("name", called),
    ("split", split),
    ("join", join),
];

fn set(piece: PieceId, to: Field) -> Result<Act, Refused> {
    let of = Subject::Piece(piece);
    Ok(Act::SetField { of, to, saw: None })
}

fn note(fields: &Fields<'_>, cook: CookId, piece: PieceId) -> Result<Act, Refused> {
    let (about, text) = (Subject::Piece(piece), fields.trimmed("text"));
    Ok(Act::Note { cook, about, text })
}

fn weight(fields: &Fields<'_>, _: CookId, piece: PieceId) -> Result<Act, Refused> {
    set(piece, Field::WeightG(fields.weight("weight")?))
}

fn wetting(fields: &Fields<'_>, _: CookId, piece: PieceId) -> Result<Act, Refused> {
    let cadence = cadence(fields)?.ok_or_else(|| fields.unknown())?;
    set(piece, Field::Cadence(cadence))
}

fn prepared(fields: &Fields<'_>, _: CookId, piece: PieceId) -> Result<Act, Refused> {
    set(piece, Field::Form(fields.chosen("prepared")?))
}

/// Left empty, the cut's own temperature holds again.
fn pull(fields: &Fields<'_>, _: CookId, piece: PieceId) -> Result<Act, Refused> {
    let read = |text| heat(&fields.say, text, &INSIDE);
    let pull = fields.given("pull").map(read).transpose()?;
    set(piece, Field::PullAt(pull))
}

fn called(fields: &Fields<'_>, _: CookId, piece: PieceId) -> Result<Act, Refused> {
    set(piece, Field::Name(fields.name("name")?))
}

fn split(fields: &Fields<'_>, _: CookId, piece: PieceId) -> Result<Act, Refused> {
    let names = fields.filled.field("names").split(',').map(str::trim);
    let names = names.filter(|name| !name.is_empty()).map(str::to_owned);
    Ok(Act::Split {
        piece,
        names: names.collect(),
    })
}

/// With each meat that was chosen; the field comes once for each.
fn join(fields: &Fields<'_>, _: CookId, piece: PieceId) -> Result<Act, Refused> {
    let pairs = fields.filled.pairs().into_iter();
    let with = pairs
        .filter(|(name, _)| *name == "with")
        .map(|(_, id)| id.parse().map_err(|_| fields.unknown()));
    let mut pieces: Vec<PieceId> = with.collect::<Result<_, _>>()?;
    if pieces.is_empty() {
        return Err(refused(&fields.say, key("form-join-one")));
    }
    pieces.push(piece);
    let name = fields.name("name")?;
    Ok(Act::Join { pieces, name })
}
