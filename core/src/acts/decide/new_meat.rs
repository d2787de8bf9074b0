//! Meats that come to a cook. Start at [`drafts`].

use super::{Context, naming::told_apart};
use crate::{
    acts::NewMeat,
    cadence::Cadence,
    checks::{Cut, cut_facts, cuts::BastingHint},
    cook::Crew,
    error::Refused,
    ids::{CookId, PieceId},
    log::{Draft, PieceAdded, PieceMoved},
    words::Arg,
};
use std::collections::BTreeSet;

/// The most meats that one act adds. Common practice, no source.
const MEATS_MAX: usize = 60;

/// The meats as entries, with their ids and names.
pub(super) struct Added {
    /// One entry for each meat, and one for each pit that was named.
    pub drafts: Vec<Draft>,
    /// The ids, in the order of the act.
    pub ids: Vec<PieceId>,
    /// What they are called.
    pub names: Vec<String>,
}

/// Adds `meats` to a cook whose meats are called `taken`.
///
/// A pit that is named is the pit a meat is meant for: it is recorded as a move, which puts the meat on the sheet of
/// that pit ([`Piece::pit`](crate::cook::Piece::pit)) and no fire under it, since only a stage says that it is on.
pub(super) fn drafts(
    context: &mut Context<'_>,
    cook: CookId,
    meats: &[NewMeat],
    taken: &BTreeSet<String>,
) -> Result<Added, Refused> {
    if meats.len() > MEATS_MAX {
        let args = [("limit", Arg::Number(MEATS_MAX as i64))];
        return Err(context.say().refuse("error-meats-many", &args).into());
    }
    let wanted: Result<Vec<String>, Refused> = meats
        .iter()
        .map(|meat| wanted_name(context, meat))
        .collect();
    let names = told_apart(&wanted?, taken);
    let mut added = Added {
        drafts: vec![],
        ids: vec![],
        names,
    };
    for (i, meat) in meats.iter().enumerate() {
        let piece = PieceId(context.new_id());
        let fact = fact(context, piece, added.names[i].clone(), meat)?;
        added.ids.push(piece);
        added.drafts.push(draft(context, cook, fact));
        if let Some(pit) = meat.pit {
            let pit = context.pit(pit)?.id;
            let spot = String::new();
            added
                .drafts
                .push(draft(context, cook, PieceMoved { piece, pit, spot }));
        }
    }
    Ok(added)
}

fn draft(context: &Context<'_>, cook: CookId, fact: impl Into<crate::log::Payload>) -> Draft {
    Draft {
        cook: Some(cook),
        at: context.now(),
        payload: fact.into(),
    }
}

/// The name as typed; where nothing can be read in it, the name of the cut.
fn wanted_name(context: &Context<'_>, meat: &NewMeat) -> Result<String, Refused> {
    let typed = context.line(&meat.name)?;
    match typed.as_str() {
        "" => context.name(&context.say().text(meat.cut.key())),
        _ => context.food_name(&typed),
    }
}

fn fact(
    context: &Context<'_>,
    piece: PieceId,
    name: String,
    meat: &NewMeat,
) -> Result<PieceAdded, Refused> {
    let usual = || usual_cadence(meat.cut, context.known.crew);
    Ok(PieceAdded {
        piece,
        name,
        cut: meat.cut,
        form: meat.form,
        weight_g: context.weight(meat.weight_g)?,
        cadence: context.cadence(meat.cadence.unwrap_or_else(usual))?,
    })
}

/// How a cut is usually kept wet, at the minutes that the crew is used to.
fn usual_cadence(cut: Cut, crew: &Crew) -> Cadence {
    match cut_facts(cut).basting {
        BastingHint::Dry => Cadence::None,
        BastingHint::Mop { every_minutes } => Cadence::Mop {
            every_min: crew
                .mop_minutes
                .as_ref()
                .map_or(every_minutes, |own| own.value),
        },
        BastingHint::Spritz { every_minutes } => Cadence::Spritz {
            every_min: crew
                .spritz_minutes
                .as_ref()
                .map_or(every_minutes, |own| own.value),
        },
    }
}
