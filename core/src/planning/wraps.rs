//! Wraps on the run sheet: laid between the jobs of a plan that is made, when a meat is likely ready for it. Start at [`jobs`].
//!
//! Laws: a wrap moves no other job and wakes nobody; it is laid where a hand is free, and left out where none is. It is
//! expected, never due by the clock: its reason says what to look for.

use super::household::Planned;
use crate::{
    checks::cuts::{WrapKind, cut_facts},
    cook::{Cook, Piece},
    log::{Does, OnSheet, PlannedJob, PlannedWhy, Stage, Subject, Wrap},
    moment::MINUTE,
    plan::{MeatPlan, Plan},
    words::key,
};

/// What is said of a wrap.
const WHY: &str = key("plan-why-wrap");
/// How much of its time a meat is on when it is wrapped, in thousandths: ribs for their color, large cuts once they stand
/// still. Common practice, no source.
const RIBS: i64 = 500;
/// See [`RIBS`].
const OTHERS: i64 = 600;
/// Hands on to wrap one, minutes. Common practice, no source.
const HANDS_MIN: i64 = 10;
/// So far from the likely time a free hand is looked for, minutes.
const NEAR_MIN: i64 = 45;
/// The steps of that.
const STEP_MIN: i64 = 5;

/// One job for each meat that is meant to be wrapped, or usually is, and was not yet. Fires that are set anew take hands too.
pub(super) fn jobs(
    cook: &Cook,
    planned: &Planned,
    plan: &Plan,
    set: &[PlannedJob],
    now: i64,
) -> Vec<PlannedJob> {
    let set: Vec<i64> = set
        .iter()
        .map(|job| (job.at - plan.from_ms) / MINUTE)
        .collect();
    let mut laid: Vec<(i64, PlannedJob)> = vec![];
    for (meat, id) in plan.meats.iter().zip(&planned.pieces) {
        let found = cook.pieces.get(id).and_then(|piece| {
            let wrap = wrap(piece, now)?;
            let laid = laid.iter().map(|(at, _)| *at);
            let taken: Vec<i64> = laid.chain(set.iter().copied()).collect();
            let at = time(piece, meat, planned, plan, &taken)?;
            Some((at, job(piece, wrap, planned, at)))
        });
        laid.extend(found);
    }
    laid.into_iter().map(|(_, job)| job).collect()
}

/// What it is to be wrapped in; none where it was wrapped already, or is not wrapped.
fn wrap(piece: &Piece, now: i64) -> Option<Wrap> {
    let mut past = piece.stages.iter().filter(|passed| passed.when.at <= now);
    if past.any(|passed| matches!(passed.stage, Stage::Wrapped { .. } | Stage::Unwrapped)) {
        return None;
    }
    let usual = cut_facts(piece.cut).wraps.first().map(|kind| match kind {
        WrapKind::Paper => Wrap::Paper,
        WrapKind::Foil => Wrap::Foil,
        WrapKind::Boat => Wrap::Boat,
        WrapKind::Pan => Wrap::Pan,
    });
    piece.meant.and_then(|meant| meant.wrap).or(usual)
}

/// The free minute nearest to the likely one, before it may be done. What falls into a sleep waits for its end.
fn time(
    piece: &Piece,
    meat: &MeatPlan,
    planned: &Planned,
    plan: &Plan,
    taken: &[i64],
) -> Option<i64> {
    meat.pit?;
    let share = if piece.cut.is_pork_ribs() {
        RIBS
    } else {
        OTHERS
    };
    let likely = meat.on_min + (meat.off_min - meat.on_min) * share / 1_000;
    let mut likely = (likely.max(0) + STEP_MIN - 1) / STEP_MIN * STEP_MIN;
    let sleep = &planned.household.sleep;
    for window in sleep {
        if (window.from_min - HANDS_MIN < likely) && likely < window.until_min {
            likely = window.until_min;
        }
    }
    let first = meat.on_min + (meat.off_min - meat.on_min) / 4;
    let may = |at: &i64| {
        let asleep = sleep
            .iter()
            .any(|window| window.from_min < at + HANDS_MIN && *at < window.until_min);
        !asleep && first.max(0) <= *at && at + HANDS_MIN <= meat.off_early_min
    };
    let near = (0..=NEAR_MIN / STEP_MIN)
        .flat_map(|step| [likely + step * STEP_MIN, likely - step * STEP_MIN]);
    near.filter(may)
        .find(|at| is_free(planned, plan, taken, *at))
}

/// Whether a pair of hands is free from then on for as long as it takes.
fn is_free(planned: &Planned, plan: &Plan, taken: &[i64], at: i64) -> bool {
    let crosses =
        |from: i64, minutes: i64| minutes > 0 && from < at + HANDS_MIN && at < from + minutes;
    let jobs = plan.sheet.iter().filter(|job| !job.done);
    let busy = jobs
        .filter(|job| crosses(job.start_min, job.hands_min))
        .count();
    let wraps = taken
        .iter()
        .filter(|from| crosses(**from, HANDS_MIN))
        .count();
    ((busy + wraps) as i64) < planned.household.hands.max(1)
}

fn job(piece: &Piece, wrap: Wrap, planned: &Planned, at: i64) -> PlannedJob {
    let at = planned.household.from_ms + at * MINUTE;
    PlannedJob {
        job: OnSheet {
            does: Does::Wrap,
            on: Subject::Piece(piece.id),
            nth: 0,
        },
        at,
        until: at + HANDS_MIN * MINUTE,
        hands: 1,
        wakes: false,
        pit: None,
        temp: None,
        wrap: Some(wrap),
        what: String::new(),
        why: Some(PlannedWhy {
            key: WHY.to_owned(),
            args: vec![],
        }),
    }
}
