//! Food where bacteria grow: meat that is not whole muscle and does not get hot, and meat that came off and is not known to
//! be hot.
//!
//! Law: each ring comes of a recorded fact (when it went on, when it came off, what was read) and a published limit, and none
//! of a forecast. A reading that shows it hot ends it; who goes on past it says so, which is kept, and rings no more.

use super::{
    Due, Urgency,
    meats::{answered_since, put_off},
};
use crate::{
    cook::{
        Cook, Known, Piece,
        ahead::counts,
        safety_facts::{coming_up, is_intact, kept, standing_off},
    },
    log::{Job, Stage},
    moment::MINUTE,
};

/// So long before the limit of the way up it rings: time to read it, and to get it hot. Our own caution, no source.
pub const COME_UP_LEAD_MS: i64 = 30 * MINUTE;
/// So long before its limit what came off is to be read. Our own caution, no source.
const KEEP_HOT_LEAD_MS: i64 = 15 * MINUTE;

pub(super) fn due(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> Vec<Due> {
    let up = come_up(known, cook, piece, now);
    let hot = keep_hot(known, cook, piece, now);
    up.into_iter().chain(hot).collect()
}

/// On a pit, not whole muscle, and no reading of every place shows it hot.
fn come_up(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> Option<Due> {
    if !piece.is_on_pit(now) || is_intact(piece) {
        return None;
    }
    let up = coming_up(known, cook, piece, now).filter(|up| !up.was_hot && !up.is_forgotten)?;
    let job = Job::ComeUp(piece.id);
    let limit = up.since.saturating_add(up.clock.limit_ms);
    let first = limit.saturating_sub(COME_UP_LEAD_MS);
    let read = last_by_hand(piece, now).filter(|at| *at >= first);
    let at = read.map_or(first, |at| limit.max(at.saturating_add(COME_UP_LEAD_MS)));
    let open = !went_past(piece, first, now) && !answered_since(cook, job, first, now);
    open.then(|| Due::new(cook, job, put_off(cook, job, at, first, now), Urgency::Wake))
}

/// Off the pit and not served yet: read below the hot limit, or not read for long.
fn keep_hot(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> Option<Due> {
    let stage = piece.stage(now)?.stage;
    if !matches!(
        stage,
        Stage::Off | Stage::Held | Stage::CutUp | Stage::Reheated
    ) {
        return None;
    }
    let stands = standing_off(known, cook, piece, now)?;
    let job = Job::KeepHot(piece.id);
    let (base, urgency) = match stands.below_since {
        Some(below) => (below.at, Urgency::Wake),
        None => (stands.hot_at, Urgency::Call),
    };
    let at = match stands.below_since {
        Some(below) => below.at,
        None => base.saturating_add(stands.clock.limit_ms - KEEP_HOT_LEAD_MS),
    };
    let open = !went_past(piece, base, now) && !answered_since(cook, job, base, now);
    open.then(|| Due::new(cook, job, put_off(cook, job, at, base, now), urgency))
}

/// How long a meat that was served may stand before it has to be away, milliseconds: what it was read below the hot limit
/// before it was served counts too.
pub fn put_away_limit(known: &Known<'_>, cook: &Cook, piece: &Piece, served: i64, now: i64) -> i64 {
    let (limit, _) = kept(known, cook, piece).standing();
    let before = standing_off(known, cook, piece, served.min(now));
    let below = before.filter(|stands| stands.below_since.is_some());
    let spent = below.map_or(0, |stands| stands.clock.spent_ms - stands.clock.unknown_ms);
    (limit - spent).max(0)
}

fn went_past(piece: &Piece, since: i64, now: i64) -> bool {
    let mut past = piece.went_past.iter();
    past.any(|(when, caveat)| {
        *caveat == crate::log::Caveat::PastClock && when.at >= since && counts(when.at, now)
    })
}

/// When a person last read a temperature inside it.
fn last_by_hand(piece: &Piece, now: i64) -> Option<i64> {
    let heat =
        |result: &crate::checks::TestResult| matches!(result, crate::checks::TestResult::Heat(_));
    let passes = piece
        .checks
        .iter()
        .filter(|pass| pass.results.iter().any(heat))
        .map(|pass| pass.when.at);
    let read = piece.read.iter().map(|reading| reading.when.at);
    passes.chain(read).filter(|at| counts(*at, now)).max()
}
