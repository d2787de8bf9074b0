//! When the next check pays, from what the last results mean. Minutes are common practice, no source.

use super::{
    CutFacts, DoneState, Safety,
    cuts::DoneBy,
    meaning::{meaning, means_warmth, tells_progress},
    seen::Seen,
};
use crate::{checks::Test, moment::MINUTE};

/// Minutes from now; 0 = now; none = no more checks.
pub(super) fn next_check(
    facts: &CutFacts,
    seen: &Seen,
    safety: &Safety,
    state: DoneState,
) -> Option<i64> {
    match state {
        DoneState::Done | DoneState::Overdone | DoneState::UpdateToJudge => None,
        DoneState::CannotSay => Some(0),
        DoneState::TenderOnly => Some(minutes(safety.rest_left_ms.unwrap_or(0))),
        // Hot enough, and the rest that goes with it is all that lacks.
        DoneState::Close
            if facts.done_by == DoneBy::Temperature && safety.rest_left_ms > Some(0) =>
        {
            safety.rest_left_ms.map(minutes)
        }
        DoneState::NotYet | DoneState::Close => Some(patience(facts, seen, safety).unwrap_or(0)),
    }
}

/// Whole minutes, rounded up.
const fn minutes(ms: i64) -> i64 {
    (ms + MINUTE - 1) / MINUTE
}

/// The least done result decides: of all waits the longest.
fn patience(facts: &CutFacts, seen: &Seen, safety: &Safety) -> Option<i64> {
    let felt = seen
        .latest
        .iter()
        .filter(|(test, _)| tells(facts, seen, **test))
        .filter_map(|(_, (at, result))| {
            let wait = meaning(seen.cut, seen.form, result).next_minutes?;
            Some(left(seen, *at, wait))
        });
    let warm = safety.coldest.and_then(|mk| {
        let at = seen.readings.iter().map(|reading| reading.at).max()?;
        Some(left(
            seen,
            at,
            means_warmth(seen.cut, seen.form, mk).next_minutes?,
        ))
    });
    felt.chain(warm).max()
}

/// Once a deciding test was tried, or a bird was read, the hint of bones or joint is spent.
fn tells(facts: &CutFacts, seen: &Seen, test: Test) -> bool {
    let hint_spent = test == Test::BoneShowing && seen.feel(facts).is_some()
        || test == Test::Joint && !seen.readings.is_empty();
    test != Test::Temperature && tells_progress(facts, test) && !hint_spent
}

fn left(seen: &Seen, at: i64, wait: i64) -> i64 {
    (wait - (seen.now - at) / MINUTE).max(0)
}
