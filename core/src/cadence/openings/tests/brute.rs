//! The plain way, for pits small enough: every set of minutes, the smaller sets first.

use super::*;

/// What a plan is judged by: openings beside the fixed ones, deviation, sum of their minutes from now.
pub type Score = (i64, i64, i64);

/// The best score of all sets of minutes, by trying each. The horizon is at most 32 minutes.
pub fn best(pit: &LidOpenings) -> Score {
    let horizon = pit.horizon_min as u32;
    let fixed = pit
        .fixed_min
        .iter()
        .map(|at| at - pit.from_min)
        .filter(|at| (0..pit.horizon_min).contains(at));
    let fixed = fixed.fold(0u64, |set, at| set | 1 << at);
    (0..=horizon)
        .find_map(|size| {
            sets(horizon, size)
                .filter(|set| set & fixed == 0)
                .filter_map(|set| score(pit, set, fixed))
                .min()
        })
        .expect("opening at every minute keeps every window")
}

/// Every set of `size` minutes below `horizon`, one bit each.
fn sets(horizon: u32, size: u32) -> impl Iterator<Item = u64> {
    let first = (size <= horizon).then_some((1u64 << size) - 1);
    std::iter::successors(first, |set| {
        let low = set & set.wrapping_neg();
        let up = set + low;
        (low != 0).then(|| up | (((set ^ up) / low) >> 2))
    })
    .take_while(move |set| *set < 1 << horizon)
}

fn score(pit: &LidOpenings, set: u64, fixed: u64) -> Option<Score> {
    let strays = pit
        .needs
        .iter()
        .map(|need| strays(pit, need, set | fixed))
        .sum::<Option<i64>>()?;
    let minutes = (0..64).filter(|at| set >> at & 1 == 1).sum();
    Some((i64::from(set.count_ones()), strays, minutes))
}

/// The least deviation of one meat, if the pit is opened at `minutes`; none where a window cannot be kept.
fn strays(pit: &LidOpenings, need: &Need, minutes: u64) -> Option<i64> {
    let due = need.last_min + need.every_min - pit.from_min;
    let end = need.until_min.map_or(pit.horizon_min, |until| {
        pit.horizon_min.min(until - pit.from_min)
    });
    if end <= 0 {
        return Some(0);
    }
    if due + need.late_min >= 0 {
        return chain(need, due, end, minutes);
    }
    let now = minutes & 1 == 1;
    now.then(|| chain(need, need.every_min, end, minutes))?
}

fn chain(need: &Need, due: i64, end: i64, minutes: u64) -> Option<i64> {
    if due + need.late_min >= end {
        return Some(0);
    }
    let window = (due - need.early_min).max(0)..=due + need.late_min;
    let wettings = window.filter(|at| minutes >> at & 1 == 1);
    wettings
        .filter_map(|at| Some((at - due).abs() + chain(need, at + need.every_min, end, minutes)?))
        .min()
}
