//! What a meat of a past cook can teach: on which pit it was, and when it was done.

use super::asked::found_done;
use crate::{cook::Piece, ids::PitId, log::Stage};

/// A meat that can teach something.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Taught {
    /// The one pit it was on.
    pub pit: PitId,
    /// When it was done, milliseconds since 1970: first found so by feel, or else come off.
    pub done_at: i64,
}

/// None where it was on several pits, never came off, or was split or joined: nobody knows then what took so long.
pub fn taught_by(piece: &Piece) -> Option<Taught> {
    let whole = piece.is_itself() && piece.from.is_empty();
    let off = piece.off_at(i64::MAX).filter(|_| whole)?;
    let put_on = piece.on_pit_at(off)?;
    let done_at = found_done(piece, off).unwrap_or(off);
    let staged = piece.stages.iter().filter_map(|passed| match passed.stage {
        Stage::OnPit { pit } => Some(pit),
        _ => None,
    });
    let mut pits: Vec<PitId> = staged
        .chain(piece.moves.iter().map(|(_, pit, _)| *pit))
        .collect();
    pits.dedup();
    match pits[..] {
        [pit] if put_on < done_at => Some(Taught { pit, done_at }),
        _ => None,
    }
}
