//! Several meats moved in one opening, such as all one place on. Start at [`several`].
//!
//! Law: each meat that is on a pit was reached through a lid, so the pits it left and came to count as opened.

use super::{Context, Decision, opening::nothing_done, pieces};
use crate::{
    acts::MeatMove,
    error::Refused,
    ids::{CookId, PitId},
    log::Draft,
    words::Arg,
};
use std::collections::BTreeSet;

/// Moves several meats; those that already sit where they are said to go are passed over.
pub(super) fn several(
    context: &mut Context<'_>,
    moves: &[MeatMove],
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let at = context.claimed(at)?;
    let (mut opened, mut moved, mut names) = (BTreeSet::new(), vec![], vec![]);
    for to in moves {
        let (cook, piece) = context.meat(to.piece)?;
        let spot = context.line(&to.spot)?;
        let then = at.max(context.now());
        let from = piece.pit(then).map(|(pit, spot)| (pit, spot.to_owned()));
        if from == Some((to.pit, spot.clone())) {
            continue;
        }
        if piece.is_on_pit(then) {
            let pits = from.into_iter().map(|(pit, _)| pit).chain([to.pit]);
            opened.extend(pits.map(|pit| (cook.id, pit)));
        }
        names.push(piece.name.value.clone());
        moved.extend(pieces::go(context, to.piece, to.pit, &spot, Some(at))?.drafts);
    }
    let say = context.say();
    if moved.is_empty() {
        return Err(say.refuse("error-move-nothing", &[]).into());
    }
    let said = say.with("act-moved-all", &[("names", Arg::Text(&say.list(&names)))]);
    moved.extend(opened.into_iter().map(|opened| lid_off(opened, at)));
    Ok(Decision::of(moved, said))
}

fn lid_off((cook, pit): (CookId, PitId), at: i64) -> Draft {
    Draft {
        cook: Some(cook),
        at,
        payload: nothing_done(Some(pit)).into(),
    }
}
