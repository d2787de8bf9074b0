//! A cook's beginning and end, its meats, and what is written down.

use super::{Context, Decision, new_meat, ranges};
use crate::{
    acts::NewMeat,
    error::Refused,
    ids::CookId,
    log::{CookFinished, CookStarted, Draft, Noted, Serve, Subject},
    words::Arg,
};
use std::collections::BTreeSet;

/// Begins a cook.
pub(super) fn start(
    context: &mut Context<'_>,
    name: &str,
    serve: Option<&Serve>,
    people: Option<i64>,
    meats: &[NewMeat],
    demo: bool,
) -> Result<Decision, Refused> {
    let name = context.name(name)?;
    let said = context
        .say()
        .with("act-cook-started", &[("name", Arg::Text(&name))]);
    let begun = CookStarted {
        name,
        serve: serve.map(|serve| context.serving(serve)).transpose()?,
        people: context.maybe(people, &ranges::PEOPLE)?,
        demo,
        id: CookId(context.new_id()),
    };
    let cook = begun.id;
    let added = new_meat::drafts(context, cook, meats, &BTreeSet::new())?;
    let mut drafts = vec![Draft {
        cook: Some(cook),
        at: context.now(),
        payload: begun.into(),
    }];
    drafts.extend(added.drafts);
    let pieces = added.ids.into_iter().map(Subject::Piece);
    let made = std::iter::once(Subject::Cook(cook)).chain(pieces).collect();
    Ok(Decision::of(drafts, said).making(made))
}

/// Ends a cook.
pub(super) fn finish(context: &mut Context<'_>, cook: CookId) -> Result<Decision, Refused> {
    let known = context.cook(cook)?;
    let args = [("name", Arg::Text(&known.name.value))];
    if !known.is_open() {
        return Err(context.say().refuse("error-cook-over", &args).into());
    }
    let said = context.say().with("act-cook-finished", &args);
    Ok(Decision::one(
        Some(cook),
        context.now(),
        CookFinished {},
        said,
    ))
}

/// Adds a meat.
pub(super) fn add_meat(
    context: &mut Context<'_>,
    cook: CookId,
    meat: &NewMeat,
) -> Result<Decision, Refused> {
    let known = context.cook(cook)?;
    let taken = known
        .pieces
        .values()
        .map(|piece| piece.name.value.clone())
        .collect();
    let added = new_meat::drafts(context, cook, std::slice::from_ref(meat), &taken)?;
    let args = [("name", Arg::Text(&added.names[0]))];
    let said = context.say().with("act-added", &args);
    let made = added.ids.into_iter().map(Subject::Piece).collect();
    Ok(Decision::of(added.drafts, said).making(made))
}

/// Writes something down.
pub(super) fn note(
    context: &mut Context<'_>,
    cook: CookId,
    about: Subject,
    text: &str,
) -> Result<Decision, Refused> {
    context.cook(cook)?;
    let about = context.about(cook, about)?;
    let text = context.note_text(text)?;
    let said = context.say().text("act-noted");
    Ok(Decision::one(
        Some(cook),
        context.now(),
        Noted { about, text },
        said,
    ))
}
