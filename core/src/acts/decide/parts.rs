//! Meats that become others: cut in parts, or several that go on as one.

use super::{Context, Decision, naming::told_apart};
use crate::{
    cook::Piece,
    error::Refused,
    ids::PieceId,
    log::{Part, PieceSplit, PiecesJoined, Subject},
    words::Arg,
};
use std::collections::BTreeSet;

/// A meat is cut in at least two parts, and several meats that become one are at least two.
const PARTS_MIN: usize = 2;
/// And in at most so many. Common practice, no source.
const PARTS_MAX: usize = 20;
/// Cuts a meat in parts. An empty name becomes the meat's own, numbered. What each part weighs is not known.
pub(super) fn split(
    context: &mut Context<'_>,
    id: PieceId,
    names: &[String],
) -> Result<Decision, Refused> {
    let (cook, whole) = context.meat(id)?;
    few_enough(context, names.len())?;
    let whole_name = &whole.name.value;
    let wanted = names.iter().map(|name| match context.line(name)?.as_str() {
        "" => Ok(whole_name.clone()),
        typed => context.food_name(typed),
    });
    let wanted = wanted.collect::<Result<Vec<String>, Refused>>()?;
    let others = cook.pieces.values().filter(|piece| piece.id != id);
    let taken: BTreeSet<String> = others.map(|piece| piece.name.value.clone()).collect();
    let names = told_apart(&wanted, &taken);
    let say = context.say();
    let args = [
        ("name", Arg::Text(whole_name)),
        ("parts", Arg::Text(&say.list(&names))),
    ];
    let said = say.with("act-split", &args);
    let into: Vec<Part> = names
        .into_iter()
        .map(|name| part(context, name, None))
        .collect();
    let made = into.iter().map(|part| Subject::Piece(part.piece)).collect();
    let fact = PieceSplit { piece: id, into };
    Ok(Decision::one(Some(cook.id), context.now(), fact, said).making(made))
}

/// Lets several meats go on as one. They must be of one cut, because the cut decides the tests and the minimum.
pub(super) fn join(
    context: &mut Context<'_>,
    ids: &[PieceId],
    name: &str,
) -> Result<Decision, Refused> {
    let ids: Vec<PieceId> = BTreeSet::from_iter(ids).into_iter().copied().collect();
    few_enough(context, ids.len())?;
    let name = context.food_name(name)?;
    let (cook, first) = context.meat(ids[0])?;
    let parts: Result<Vec<&Piece>, Refused> =
        ids.iter().map(|id| context.meat_of(cook.id, *id)).collect();
    let parts = parts?;
    if parts.iter().any(|part| part.cut != first.cut) {
        return Err(context.say().refuse("error-join-cuts", &[]).into());
    }
    let weighed: Option<Vec<i64>> = parts.iter().map(|part| part.weight_g.value).collect();
    let weight_g = weighed.map(|grams| grams.into_iter().fold(0, i64::saturating_add));
    let say = context.say();
    let names: Vec<&str> = parts.iter().map(|part| &*part.name.value).collect();
    let args = [
        ("name", Arg::Text(&name)),
        ("parts", Arg::Text(&say.list(&names))),
    ];
    let said = say.with("act-joined", &args);
    let into = part(context, name, weight_g);
    let made = vec![Subject::Piece(into.piece)];
    let fact = PiecesJoined { pieces: ids, into };
    Ok(Decision::one(Some(cook.id), context.now(), fact, said).making(made))
}

fn few_enough(context: &Context<'_>, parts: usize) -> Result<(), Refused> {
    if (PARTS_MIN..=PARTS_MAX).contains(&parts) {
        return Ok(());
    }
    let args = [
        ("low", Arg::Number(PARTS_MIN as i64)),
        ("high", Arg::Number(PARTS_MAX as i64)),
    ];
    Err(context.say().refuse("error-parts-range", &args).into())
}

fn part(context: &mut Context<'_>, name: String, weight_g: Option<i64>) -> Part {
    Part {
        piece: PieceId(context.new_id()),
        name,
        weight_g,
    }
}
