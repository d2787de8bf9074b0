//! The plan in the words of the input. Start with [`answer`].

use super::{
    LidOpenings, Need, Opening, Openings,
    meat::{DEVIATION, OPENING, Pit},
    search::{Found, Step, count},
};
use std::collections::BTreeMap;

/// What the search found, with the fixed openings that serve no meat added.
pub(super) fn answer(input: &LidOpenings, pit: &Pit, found: &Found) -> Openings {
    let mut overdue: Vec<_> = input
        .needs
        .iter()
        .filter(|need| passed(input, need))
        .collect();
    overdue.sort_unstable_by(|a, b| a.name.cmp(&b.name));
    let waited: i64 = overdue.iter().map(|need| need.late_min).sum();
    Openings {
        openings: openings(input, pit, &found.steps),
        count: count(found.cost),
        deviation_min: (found.cost % OPENING / DEVIATION) as i64 - waited,
        overdue: overdue.into_iter().map(|need| need.name.clone()).collect(),
        exact: found.at_least == found.cost,
        at_least: count(found.at_least),
    }
}

/// Whether the window of a meat that is still to be wetted closed before now. It is then held to be closing now, which
/// the search counts as `late_min` of deviation.
fn passed(input: &LidOpenings, need: &Need) -> bool {
    let wanted = need.until_min.is_none_or(|until| until > input.from_min);
    wanted && need.last_min + need.every_min + need.late_min < input.from_min
}

fn openings(input: &LidOpenings, pit: &Pit, steps: &[Step]) -> Vec<Opening> {
    let fixed = (0..)
        .zip(&pit.price)
        .filter(|(_, price)| **price == 0)
        .map(|(at, _)| (at, true));
    let mut times: BTreeMap<i16, bool> = steps.iter().map(|step| (step.at, false)).collect();
    times.extend(fixed);
    let names = |at| {
        steps
            .iter()
            .find(|step| step.at == at)
            .map_or(Vec::new(), |step| names(input, pit, step))
    };
    times
        .into_iter()
        .map(|(at, fixed)| Opening {
            at_min: input.from_min + i64::from(at),
            names: names(at),
            fixed,
        })
        .collect()
}

fn names(input: &LidOpenings, pit: &Pit, step: &Step) -> Vec<String> {
    let meats = pit
        .meats
        .iter()
        .enumerate()
        .filter(|(i, _)| step.meats >> i & 1 == 1);
    let mut names: Vec<_> = meats
        .flat_map(|(_, meat)| &meat.needs)
        .map(|i| input.needs[*i].name.clone())
        .collect();
    names.sort_unstable();
    names
}
