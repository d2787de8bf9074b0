//! What happens to one meat.

use super::{Context, Decision, naming::told_apart, said::stage_key};
use crate::{
    checks::{Spot, TestResult, cut_facts},
    cook::Piece,
    error::Refused,
    ids::{PieceId, PitId},
    log::{
        Checked, Draft, Part, PieceMoved, PieceSplit, PiecesJoined, RubAnswered, Stage, StageSet,
        Subject,
    },
    words::Arg,
};
use std::collections::BTreeSet;

/// A meat is cut in at least two parts, and several meats that become one are at least two.
const PARTS_MIN: usize = 2;
/// And in at most so many. Common practice, no source.
const PARTS_MAX: usize = 20;
/// The most results of one pass: every test and every place, with room to read some again. Common practice, no source.
const RESULTS_MAX: usize = 40;

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
        typed => context.name(typed),
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
    let name = context.name(name)?;
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

/// A meat came to a stage. Going back is allowed: people make mistakes, and so does a stage said late.
pub(super) fn set_stage(
    context: &mut Context<'_>,
    id: PieceId,
    stage: Stage,
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let at = context.claimed(at)?;
    let (cook, piece) = context.meat(id)?;
    let name = ("name", Arg::Text(&piece.name.value));
    let say = context.say();
    let key = stage_key(stage);
    let said = match stage {
        Stage::OnPit { pit } => say.with(key, &[name, ("pit", Arg::Text(context.pit_name(pit)?))]),
        Stage::Wrapped { .. } | Stage::Unwrapped if piece.on_pit_at(i64::MAX).is_none() => {
            return Err(say.refuse("error-wrap-before-pit", &[name]).into());
        }
        _ => say.with(key, &[name]),
    };
    let fact = StageSet { piece: id, stage };
    let mut decision = Decision::one(Some(cook.id), at, fact, said);
    decision
        .drafts
        .extend(meant_for_another(context, piece, stage, at));
    Ok(decision)
}

/// A meat that was meant for one pit and is said, for a time before that was written down, to have gone on another:
/// one more move, so that the last word on its pit is the true one.
fn meant_for_another(context: &Context<'_>, piece: &Piece, stage: Stage, at: i64) -> Option<Draft> {
    let Stage::OnPit { pit } = stage else {
        return None;
    };
    let (cook, _) = context.known.piece(piece.id)?;
    let (when, meant, _) = piece.moves.iter().max_by_key(|(when, ..)| when.at)?;
    let only_meant = piece.on_pit_at(i64::MAX).is_none();
    let overridden = *meant != pit && when.at >= at && only_meant;
    let fact = PieceMoved {
        piece: piece.id,
        pit,
        spot: String::new(),
    };
    overridden.then(|| Draft {
        cook: Some(cook.id),
        at: when.at.max(context.now()),
        payload: fact.into(),
    })
}

/// A meat was moved.
pub(super) fn go(
    context: &mut Context<'_>,
    id: PieceId,
    pit: PitId,
    spot: &str,
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let at = context.claimed(at)?;
    let (cook, piece) = context.meat(id)?;
    let args = [
        ("name", Arg::Text(&piece.name.value)),
        ("pit", Arg::Text(context.pit_name(pit)?)),
    ];
    let said = context.say().with("act-moved", &args);
    let fact = PieceMoved {
        piece: id,
        pit,
        spot: context.line(spot)?,
    };
    Ok(Decision::one(Some(cook.id), at, fact, said))
}

/// Says whether the rub has set.
pub(super) fn answer_rub(
    context: &mut Context<'_>,
    id: PieceId,
    set: bool,
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let at = context.claimed(at)?;
    let (cook, piece) = context.meat(id)?;
    let args = [("name", Arg::Text(&piece.name.value))];
    let said = if set {
        context.say().with("act-rub-set", &args)
    } else {
        context.say().with("act-rub-not-set", &args)
    };
    Ok(Decision::one(
        Some(cook.id),
        at,
        RubAnswered { piece: id, set },
        said,
    ))
}

/// A pass over the tests of a meat.
pub(super) fn check(
    context: &mut Context<'_>,
    id: PieceId,
    results: &[TestResult],
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let at = context.claimed(at)?;
    let (cook, piece) = context.meat(id)?;
    let say = context.say();
    if results.is_empty() || results.len() > RESULTS_MAX {
        let args = [("limit", Arg::Number(RESULTS_MAX as i64))];
        return Err(say.refuse("error-check-count", &args).into());
    }
    for result in results {
        sound_result(context, piece, result)?;
    }
    let said = say.with("act-checked", &[("name", Arg::Text(&piece.name.value))]);
    let results = results.to_vec();
    Ok(Decision::one(
        Some(cook.id),
        at,
        Checked { piece: id, results },
        said,
    ))
}

/// Whether the cut has that test, and for a temperature that place; a known thermometer; a temperature meat can have.
fn sound_result(context: &Context<'_>, piece: &Piece, result: &TestResult) -> Result<(), Refused> {
    let name = ("name", Arg::Text(&piece.name.value));
    let say = context.say();
    if !cut_facts(piece.cut).tests.contains(&result.test()) {
        return Err(say.refuse("error-test-not-its-own", &[name]).into());
    }
    let TestResult::Heat(heat) = result else {
        return Ok(());
    };
    context.heat(heat.mk, &super::ranges::MEAT)?;
    context.maybe_thermometer(heat.thermometer)?;
    let places = piece.cut.spots(piece.form.value);
    if heat.spot == Spot::Elsewhere || places.contains(&heat.spot) {
        return Ok(());
    }
    Err(say.refuse("error-spot-not-its-own", &[name]).into())
}
