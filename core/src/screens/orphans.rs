//! What belongs to something taken back.

use super::glance::Glance;
use crate::{
    cook::Cook,
    ids::PieceId,
    log::{Payload, Where},
};

impl Glance<'_> {
    /// Whether what it is about was taken back.
    pub fn is_orphan(&self, cook: &Cook, payload: &Payload) -> bool {
        let gone = |piece: &PieceId| !cook.pieces.contains_key(piece);
        match payload {
            Payload::PieceSplit(fact) => gone(&fact.piece),
            Payload::StageSet(fact) => gone(&fact.piece),
            Payload::PieceMoved(fact) => gone(&fact.piece),
            Payload::RubAnswered(fact) => gone(&fact.piece),
            Payload::Checked(fact) => gone(&fact.piece),
            Payload::PiecesJoined(fact) => fact.pieces.iter().all(gone),
            Payload::TrimmingsKept(fact) => fact.piece.as_ref().is_some_and(gone),
            Payload::DishReady(fact) => !cook.dishes.contains_key(&fact.dish),
            Payload::Read(fact) => match &fact.place {
                Where::Piece { piece, .. } => gone(piece),
                Where::Pit { pit } => !self.known.crew.pits.contains_key(pit),
            },
            Payload::Opened(fact) => {
                let done = [&fact.wetted, &fact.turned, &fact.glazed];
                let mut all = done.into_iter().flatten().peekable();
                all.peek().is_some() && all.all(gone)
            }
            _ => false,
        }
    }
}
