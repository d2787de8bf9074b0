//! Stages of one meat, its moves, and whether its rub has set.

use super::{Context, Decision, said::stage_key};
use crate::{
    cook::Piece,
    error::Refused,
    ids::{PieceId, PitId},
    log::{Caveat, Draft, PieceMoved, RubAnswered, Stage, StageSet, WentPast},
    words::Arg,
};
use std::collections::BTreeSet;

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

/// A meat that needs a hot pit went on a cool one: the stage, and what was gone past, in one breath.
pub(super) fn put_on_anyway(
    context: &mut Context<'_>,
    id: PieceId,
    pit: PitId,
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let mut decision = set_stage(context, id, Stage::OnPit { pit }, at)?;
    let past = go_past(context, id, Caveat::CoolPit)?;
    decision.said = format!("{} {}", decision.said, past.said);
    let at = context.claimed(at)?;
    let drafts = past.drafts.into_iter().map(|draft| Draft { at, ..draft });
    decision.drafts.extend(drafts);
    Ok(decision)
}

/// Somebody goes on past a caution.
pub(super) fn go_past(
    context: &mut Context<'_>,
    id: PieceId,
    caveat: Caveat,
) -> Result<Decision, Refused> {
    let (cook, _) = context.meat(id)?;
    let said = context.say().text("act-went-past");
    let fact = WentPast { piece: id, caveat };
    Ok(Decision::one(Some(cook.id), context.now(), fact, said))
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

/// Says of several meats of one cook whether the rub has set: an entry for each, all or none.
pub(super) fn answer_rubs(
    context: &mut Context<'_>,
    ids: &[PieceId],
    set: bool,
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let ids: BTreeSet<PieceId> = ids.iter().copied().collect();
    let mut names = vec![];
    let mut drafts = vec![];
    for id in ids {
        names.push(context.meat(id)?.1.name.value.clone());
        drafts.extend(answer_rub(context, id, set, at)?.drafts);
    }
    let say = context.say();
    if drafts.is_empty() {
        return Err(say.refuse("error-open-nothing", &[]).into());
    }
    let names = say.list(&names);
    let key = match set {
        true => "act-rub-set",
        false => "act-rub-not-set",
    };
    let said = say.with(key, &[("name", Arg::Text(&names))]);
    Ok(Decision::of(drafts, said))
}
