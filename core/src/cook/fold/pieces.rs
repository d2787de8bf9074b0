//! What happens to meats.

use super::{By, Known};
use crate::{
    cook::{Cook, Passed, Piece, Reg, Timed},
    ids::PieceId,
    log::{Part, Payload, PieceAdded},
    safety::Form,
};

/// Applies what concerns meats: adding, splitting, joining, stages, moves, the rub.
pub fn apply(cook: &mut Cook, known: &Known, payload: &Payload) {
    let when = Timed {
        at: known.at,
        entry: known.key,
    };
    match payload {
        Payload::PieceAdded(fact) => {
            cook.pieces
                .entry(fact.piece)
                .or_insert_with(|| Piece::added(fact.clone(), known.by()));
        }
        Payload::PieceMeant(fact) => {
            if let Some(piece) = cook.pieces.get_mut(&fact.piece) {
                piece.meant = Some(fact.meant);
            }
        }
        Payload::PieceSplit(split) => self::split(cook, split.piece, &split.into, known.by()),
        Payload::PiecesJoined(joined) => join(cook, &joined.pieces, &joined.into, known.by()),
        Payload::StageSet(set) => {
            if let Some(piece) = cook.pieces.get_mut(&set.piece) {
                piece.stages.push(Passed {
                    stage: set.stage,
                    when,
                });
            }
        }
        Payload::PieceMoved(moved) => {
            if let Some(piece) = cook.pieces.get_mut(&moved.piece) {
                piece.moves.push((when, moved.pit, moved.spot.clone()));
            }
        }
        Payload::RubAnswered(answered) => {
            if let Some(piece) = cook.pieces.get_mut(&answered.piece) {
                piece.rub.push((when, answered.set));
            }
        }
        _ => {}
    }
}

/// The parts go on where the whole was: same stages, wettings and rub. Its checks stay with it: what was shown of the
/// whole is shown of no part.
fn split(cook: &mut Cook, id: PieceId, into: &[Part], by: By) {
    let Some(whole) = cook.pieces.get_mut(&id) else {
        return;
    };
    whole.became.extend(into.iter().map(|part| part.piece));
    let whole = whole.clone();
    for part in into {
        let piece = follow(&whole, part, whole.form.value, &[id], by);
        cook.pieces.entry(part.piece).or_insert(piece);
    }
}

/// The joined meat goes on where the first of its parts was, under the strictest minimum among them.
fn join(cook: &mut Cook, ids: &[PieceId], into: &Part, by: By) {
    let parts: Vec<&Piece> = ids.iter().filter_map(|id| cook.pieces.get(id)).collect();
    let Some(first) = parts.first() else { return };
    let strictest = parts
        .iter()
        .max_by_key(|part| strictness(part))
        .unwrap_or(first);
    let piece = Piece {
        cut: strictest.cut,
        ..follow(first, into, strictest.form.value, ids, by)
    };
    for id in ids {
        if let Some(part) = cook.pieces.get_mut(id) {
            part.became.push(into.piece);
        }
    }
    cook.pieces.entry(into.piece).or_insert(piece);
}

/// The higher minimum is the stricter, and of two the one that more has to be shown for: a stuffing, poultry.
fn strictness(part: &Piece) -> (i64, bool, bool) {
    let form = part.form.value;
    let minimum = crate::safety::minimum(part.cut, form).temp.0;
    (minimum, form == Form::Stuffed, part.cut.is_poultry())
}

fn follow(first: &Piece, part: &Part, form: Form, from: &[PieceId], by: By) -> Piece {
    let added = PieceAdded {
        piece: part.piece,
        name: part.name.clone(),
        cut: first.cut,
        form,
        weight_g: part.weight_g,
        cadence: first.cadence.value,
    };
    Piece {
        pull_at: Reg::new(first.pull_at.value, by),
        meant: first.meant,
        stages: first.stages.clone(),
        moves: first.moves.clone(),
        rub: first.rub.clone(),
        wetted: first.wetted.clone(),
        went_past: first.went_past.clone(),
        from: from.to_vec(),
        ..Piece::added(added, by)
    }
}
