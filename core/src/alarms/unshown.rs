//! A meat that came off before its published minimum was shown.
//!
//! Law: until a reading shows the minimum, or the meat is back on a pit, it is called for at once and again; "not this
//! time" does not end it. Once it is served it is no longer called for: serving it so is asked about first.

use super::{
    Due, Urgency,
    meats::{judged, put_off},
};
use crate::{
    cook::{Cook, Known, Piece},
    log::{Job, Stage},
};

/// The call for it: a check that is due since it came off, at no pit.
pub(super) fn due(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> Option<Due> {
    let off = is_unserved(piece, now)
        .then(|| piece.resting_since(now))
        .flatten()?;
    let shown = judged(known, cook, piece, now)
        .is_some_and(|verdict| verdict.safety.rest_left_ms.is_some());
    let job = Job::Check(piece.id);
    (!shown).then(|| Due::new(cook, job, put_off(cook, job, off, off, now), Urgency::Wake))
}

/// Off the fire, and neither on the table nor away.
fn is_unserved(piece: &Piece, now: i64) -> bool {
    let stage = piece.stage(now).map(|passed| passed.stage);
    matches!(stage, Some(Stage::Off | Stage::Held | Stage::CutUp))
}

/// Whether `job` is such a call, and no check on the pit.
pub fn is_read_or_back(known: &Known<'_>, job: Job, now: i64) -> bool {
    match job {
        Job::Check(piece) => known
            .piece(piece)
            .is_some_and(|(_, piece)| is_unserved(piece, now)),
        _ => false,
    }
}
