//! One opening as one act: the pit was opened, and all that was done to each meat in it. Start at [`all`].
//!
//! Law: it becomes entries of the kinds that each part would become alone, in one breath and for one instant, so that they
//! stand and are taken back together; what one part would refuse refuses the whole.

use super::{
    Context, Decision, checking, cooks,
    opening::{self, Reached},
    pieces,
};
use crate::{
    acts::InOpening,
    error::Refused,
    ids::{PieceId, PitId},
    log::{Draft, Subject},
    words::Arg,
};
use std::collections::BTreeSet;

/// Records an opening with all that was done in it; of nothing done, the opening alone.
pub(super) fn all(
    context: &mut Context<'_>,
    pit: Option<PitId>,
    meats: &[InOpening],
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let at = context.claimed(at)?;
    let meats: Vec<&InOpening> = meats.iter().filter(|meat| meat.is_something()).collect();
    each_once(context, &meats)?;
    let those = |done: &dyn Fn(&InOpening) -> bool| -> Vec<PieceId> {
        let meats = meats.iter().filter(|meat| done(meat));
        meats.map(|meat| meat.piece).collect()
    };
    let reached = Reached {
        wetted: &those(&|meat| meat.wetted),
        turned: &those(&|meat| meat.turned),
        glazed: &those(&|meat| meat.glazed),
        own_mop: &those(&|meat| meat.own_mop),
        touched: &those(&|_| true),
    };
    let opened = opening::open_with(context, pit, &reached, Some(at))?;
    let (mut drafts, mut said) = (opened.drafts, vec![opened.said]);
    for meat in meats {
        for part in parts(context, meat, at)? {
            drafts.extend(part.drafts.into_iter().map(|draft| Draft { at, ..draft }));
            said.push(part.said);
        }
    }
    said.retain(|sentence| !sentence.is_empty());
    Ok(Decision::of(drafts, said.join(" ")))
}

/// What was done to one meat beside wetting, turning and glazing.
fn parts(context: &mut Context<'_>, meat: &InOpening, at: i64) -> Result<Vec<Decision>, Refused> {
    let mut parts = vec![];
    if let Some(set) = meat.rub_set {
        rub_before_mop(context, meat)?;
        parts.push(pieces::answer_rub(context, meat.piece, set, Some(at))?);
    }
    if !meat.results.is_empty() {
        parts.push(checking::check(
            context,
            meat.piece,
            &meat.results,
            Some(at),
        )?);
    }
    if !meat.note.trim().is_empty() {
        let (cook, piece) = context.meat(meat.piece)?;
        let about = Subject::Piece(piece.id);
        parts.push(cooks::note(context, cook.id, about, &meat.note)?);
    }
    Ok(parts)
}

/// A rub that has not set is not mopped: the mop would carry it off.
fn rub_before_mop(context: &Context<'_>, meat: &InOpening) -> Result<(), Refused> {
    if meat.rub_set != Some(false) || !meat.wetted {
        return Ok(());
    }
    let (_, piece) = context.meat(meat.piece)?;
    let args = [("name", Arg::Text(&piece.name.value))];
    Err(context.say().refuse("error-opening-rub", &args).into())
}

fn each_once(context: &Context<'_>, meats: &[&InOpening]) -> Result<(), Refused> {
    let mut told = BTreeSet::new();
    for meat in meats {
        if !told.insert(meat.piece) {
            let (_, piece) = context.meat(meat.piece)?;
            let args = [("name", Arg::Text(&piece.name.value))];
            return Err(context.say().refuse("error-opening-twice", &args).into());
        }
    }
    Ok(())
}
