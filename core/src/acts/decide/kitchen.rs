//! The kitchen of a cook: its batches, what was trimmed off, and what a cup of the crew's salt weighs.

use super::{Context, Decision, ranges};
use crate::{
    batch::{Basis, Batch, NotABatch, SaltKind},
    error::Refused,
    ids::{CookId, PieceId},
    log::{BatchPlanned, SaltWeighed, TrimmingsKept},
    words::{Arg, key},
};

/// Writes a section down, whole; its names are cleaned, and it is one that can be meant.
pub(super) fn plan(
    context: &mut Context<'_>,
    cook: CookId,
    batch: &Batch,
) -> Result<Decision, Refused> {
    context.cook(cook)?;
    let mut batch = batch.clone();
    for name in batch.names_mut() {
        *name = context.name(name)?;
    }
    batch.check().map_err(|wrong| context.not_a_batch(&wrong))?;
    for piece in batch.pieces() {
        context.meat_of(cook, piece)?;
    }
    context.own_cup(&batch)?;
    let said = match &batch {
        Batch::Rub(_) => key("act-rub-planned"),
        Batch::Brine(_) => key("act-brine-planned"),
        Batch::Mop(_) => key("act-mop-planned"),
        Batch::Portions(_) => key("act-portions-planned"),
        Batch::Shopping(_) => key("act-shopping-planned"),
    };
    let said = context.say().text(said);
    let now = context.now();
    Ok(Decision::one(Some(cook), now, BatchPlanned { batch }, said))
}

/// Keeps what was trimmed off.
pub(super) fn trimmings(
    context: &mut Context<'_>,
    cook: CookId,
    piece: Option<PieceId>,
    g: i64,
    what: &str,
) -> Result<Decision, Refused> {
    context.cook(cook)?;
    let piece = piece
        .map(|piece| context.meat_of(cook, piece).map(|its| its.id))
        .transpose()?;
    let fact = TrimmingsKept {
        piece,
        g: context.whole(g, &ranges::TRIMMINGS_G)?,
        what: context.line(what)?,
    };
    let weight = context.say().weight(g);
    let args = [("weight", Arg::Text(&weight))];
    let said = context.say().with("act-trimmings-kept", &args);
    Ok(Decision::one(Some(cook), context.now(), fact, said))
}

/// Says what a cup of the crew's salt weighs.
pub(super) fn weigh_salt(
    context: &mut Context<'_>,
    cup_g: Option<i64>,
) -> Result<Decision, Refused> {
    let cup_g = context.maybe(cup_g, &ranges::CUP_G)?;
    let said = context.say().text("act-habit-saved");
    Ok(Decision::one(
        None,
        context.now(),
        SaltWeighed { cup_g },
        said,
    ))
}

impl Context<'_> {
    fn not_a_batch(&self, wrong: &NotABatch) -> Refused {
        Refused::new(wrong.said(&self.say()))
    }

    /// By volume, something has to be known of each cup: its own weight, table salt's, or that of the crew's salt.
    fn own_cup(&self, batch: &Batch) -> Result<(), Refused> {
        let Batch::Rub(plan) = batch else {
            return Ok(());
        };
        let salt_known = self.known.crew.salt_cup_g.is_some();
        let known = |kind| match kind {
            SaltKind::TableSalt => true,
            SaltKind::OtherSalt => salt_known,
            SaltKind::Salted { .. } | SaltKind::Unsalted => false,
        };
        let by_cup = plan.basis == Basis::Volume;
        let mut parts = plan.parts.iter();
        match parts.find(|part| by_cup && part.cup_g.is_none() && !known(part.kind)) {
            Some(part) => Err(self.not_a_batch(&NotABatch::CupNotWeighed {
                name: part.name.clone(),
            })),
            None => Ok(()),
        }
    }
}
