//! What may come due, and what it is done on.

use super::{OnSheet, Subject};
use crate::ids::{CookId, PieceId, PitId};
use serde::{Deserialize, Serialize};

/// What a job is, together with its object the name under which it rings.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "job", content = "of")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Job {
    /// See whether the rub has set.
    RubSet(PieceId),
    /// Wet a meat.
    Wet(PieceId),
    /// Glaze a meat.
    Glaze(PieceId),
    /// Try a meat.
    Check(PieceId),
    /// Take a meat off: it has reached its pull point.
    Pull(PieceId),
    /// Put a served meat away before it has stood too long.
    PutAway(PieceId),
    /// Read a meat that is not whole muscle: it has to be hot before it was too long on the way up.
    ComeUp(PieceId),
    /// Read a meat that came off: nothing shows that it is still hot.
    KeepHot(PieceId),
    /// Make the food ready: serving time comes.
    Serve(CookId),
    /// See to the fire, since no probe does.
    FireRound(PitId),
    /// A pit is outside its band.
    Outside(PitId),
    /// A pit's probe has gone silent.
    Silent(PitId),
    /// The cook's sleep is over.
    WakeUp(CookId),
    /// A job of the accepted run sheet.
    Sheet(OnSheet),
}

impl Job {
    /// What it is done on.
    pub const fn object(self) -> Subject {
        match self {
            Self::RubSet(piece)
            | Self::Wet(piece)
            | Self::Glaze(piece)
            | Self::Check(piece)
            | Self::Pull(piece)
            | Self::PutAway(piece)
            | Self::ComeUp(piece)
            | Self::KeepHot(piece) => Subject::Piece(piece),
            Self::FireRound(pit) | Self::Outside(pit) | Self::Silent(pit) => Subject::Pit(pit),
            Self::Serve(cook) | Self::WakeUp(cook) => Subject::Cook(cook),
            Self::Sheet(planned) => planned.on,
        }
    }

    /// The meat it is done on, if on one.
    pub const fn piece(self) -> Option<PieceId> {
        match self.object() {
            Subject::Piece(piece) => Some(piece),
            _ => None,
        }
    }
}
