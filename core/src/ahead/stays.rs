//! Which pit a meat was on, when. A meat that was moved has a stay in each.

use crate::{cook::Piece, ids::PitId, log::Stage};

/// From when to when, the end not included, a meat was on one pit: milliseconds since 1970.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Stay {
    pub pit: PitId,
    pub from: i64,
    pub until: i64,
}

/// The stays of a meat up to `until`, in order. What was moved before it went on begins with the going on.
pub(super) fn stays(piece: &Piece, put_on: i64, until: i64) -> Vec<Stay> {
    let staged = piece.stages.iter().filter_map(|passed| match passed.stage {
        Stage::OnPit { pit } => Some((passed.when.at, pit)),
        _ => None,
    });
    let moved = piece.moves.iter().map(|(when, pit, _)| (when.at, *pit));
    let mut places: Vec<(i64, PitId)> = staged
        .chain(moved)
        .filter(|(at, _)| *at < until)
        .map(|(at, pit)| (at.max(put_on), pit))
        .collect();
    places.sort_by_key(|(at, _)| *at);
    let ends: Vec<i64> = places.iter().skip(1).map(|(at, _)| *at).collect();
    let ends = ends.into_iter().chain([until]);
    places
        .into_iter()
        .zip(ends)
        .map(|((from, pit), until)| Stay { pit, from, until })
        .filter(|stay| stay.from < stay.until)
        .collect()
}
