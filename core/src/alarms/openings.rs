//! Wettings of one pit, bent to the fewest openings, around what is due there anyway.

use super::Due;
use crate::{
    cadence::Cadence,
    cadence::openings::{LidOpenings, NEEDS_MAX, Need, Openings, lid_openings},
    cook::{Cook, Known},
    ids::PitId,
    log::Job,
    moment::MINUTE,
};
use std::collections::BTreeSet;

/// How far ahead openings are planned, minutes.
pub const AHEAD_MIN: i64 = 180;

/// Moves each wetting that is still ahead to the opening planned for it.
pub(super) fn bend(known: &Known<'_>, cook: &Cook, now: i64, all: &mut [Due]) {
    let pits: BTreeSet<PitId> = all
        .iter()
        .filter(|due| is_wet(due))
        .filter_map(|due| due.pit)
        .collect();
    for pit in pits {
        if let Some(plan) = plan(known, cook, pit, now, all) {
            take_over(&plan, pit, now, all);
        }
    }
}

fn is_wet(due: &Due) -> bool {
    matches!(due.job, Job::Wet(_))
}

fn take_over(plan: &Openings, pit: PitId, now: i64, all: &mut [Due]) {
    for due in all
        .iter_mut()
        .filter(|due| is_wet(due) && due.pit == Some(pit) && due.at > now)
    {
        let name = name_of(due.job);
        if let Some(opening) = plan
            .openings
            .iter()
            .find(|opening| opening.names.contains(&name))
        {
            due.at = (opening.at_min * MINUTE).max(due.from);
        }
    }
}

/// The openings of a pit for the next hours; none where there is nothing to bend.
pub fn plan(known: &Known<'_>, cook: &Cook, pit: PitId, now: i64, all: &[Due]) -> Option<Openings> {
    let _ = known;
    let here = || all.iter().filter(move |due| due.pit == Some(pit));
    let needs: Vec<Need> = here()
        .filter_map(|due| need(cook, due))
        .take(NEEDS_MAX)
        .collect();
    let fixed_min: Vec<i64> = here()
        .filter(|due| !is_wet(due) && due.at >= now)
        .map(|due| minute(due.at))
        .collect();
    if needs.len() + fixed_min.len() < 2 || needs.is_empty() {
        return None;
    }
    lid_openings(&LidOpenings {
        from_min: minute(now),
        horizon_min: AHEAD_MIN,
        needs,
        fixed_min,
    })
    .ok()
}

fn need(cook: &Cook, due: &Due) -> Option<Need> {
    let Job::Wet(piece) = due.job else {
        return None;
    };
    let every_min = cook
        .pieces
        .get(&piece)?
        .cadence
        .value
        .every_min()?
        .clamp(10, 240);
    let slack = Cadence::slack_min(every_min);
    let last_min = minute(due.at) - every_min;
    Some(Need {
        name: name_of(due.job),
        last_min,
        every_min,
        early_min: slack,
        late_min: slack,
        until_min: None,
    })
}

fn name_of(job: Job) -> String {
    match job {
        Job::Wet(piece) => piece.to_string(),
        other => format!("{other:?}"),
    }
}

/// Whole minutes since 1970, rounded up: nothing is called before its time.
fn minute(at: i64) -> i64 {
    at.div_euclid(MINUTE) + i64::from(at.rem_euclid(MINUTE) > 0)
}
