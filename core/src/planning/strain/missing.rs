//! Meats and dishes that a sheet knows nothing of.

use super::{Strained, Why, open, strained};
use crate::{
    cook::{Cook, RunSheet},
    ids::PieceId,
    log::{Does, OnSheet, Subject},
};
use std::collections::BTreeSet;

/// Meats and dishes that came to the cook after the sheet.
pub(super) fn missing<'a>(
    cook: &'a Cook,
    sheet: &'a RunSheet,
    now: i64,
) -> impl Iterator<Item = Strained> + 'a {
    let on: BTreeSet<Subject> = sheet.plan.jobs.iter().map(|job| job.job.on).collect();
    let gone = move |of: &Subject| {
        let mut lineage = vec![*of];
        if let Subject::Piece(id) = of {
            lineage.extend(ancestors(cook, *id).into_iter().map(Subject::Piece));
        }
        !lineage.iter().any(|of| on.contains(of))
    };
    let does = |of: Subject| match of {
        Subject::Dish(_) => Does::Dish,
        _ => Does::PutOn,
    };
    let named = move |on: Subject| OnSheet {
        does: does(on),
        on,
        nth: 0,
    };
    let open = open(cook, now).into_iter().filter(gone);
    open.map(move |of| strained(named(of), 0, Why::Missing))
}

fn ancestors(cook: &Cook, id: PieceId) -> BTreeSet<PieceId> {
    let (mut found, mut next) = (BTreeSet::new(), vec![id]);
    while let Some(piece) = next.pop().and_then(|id| cook.pieces.get(&id)) {
        next.extend(
            piece
                .from
                .iter()
                .copied()
                .filter(|from| found.insert(*from)),
        );
    }
    found
}
