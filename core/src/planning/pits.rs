//! The pits of a cook, as a plan sees them. All figures are common practice, no source.

use crate::{
    cook::{Cook, Known, Pit},
    ids::PitId,
    log::{Does, PitKind, Subject},
    moment::MINUTE,
    plan::{self, PitTemp},
    units::Mk,
};
use std::collections::BTreeSet;

/// So many pits are planned at the most.
const PITS_MAX: usize = 6;
/// The grate of a pit that nobody measured, square centimeters.
const GRATE_CM2: i64 = 2_200;
/// The temperatures that any pit is held at, °F.
const HELD_F: [i64; 4] = [225, 250, 275, 325];
/// A pit that was lit counts as come up within so much of the least it is held at, °F.
const SHORT_F: i64 = 25;
/// Hands on while a pit is lit, minutes.
const LIGHT_MIN: i64 = 10;

/// The pits that the meats are on or meant for; where none is named, all there are.
pub(super) fn of(known: &Known<'_>, cook: &Cook, now: i64) -> Vec<(PitId, plan::Pit)> {
    let meant: BTreeSet<PitId> = cook
        .meats()
        .filter_map(|piece| Some(piece.pit(now)?.0))
        .collect();
    let all = known.crew.pits.values();
    let wanted = all.filter(|pit| meant.is_empty() || meant.contains(&pit.id));
    let mut names = super::household::Names::default();
    let made = wanted.take(PITS_MAX).map(|pit| {
        let name = names.own(&pit.name.value);
        let mut made = as_planned(pit, name, is_hot(cook, pit.id, now));
        if let Some(left) = still_cold(known, cook, pit, now).filter(|_| made.hot) {
            made.hot = false;
            made.preheat_min = left;
        }
        (pit.id, made)
    });
    made.collect()
}

/// A meat is on it, or it was lit by the sheet and not let go out since.
fn is_hot(cook: &Cook, id: PitId, now: i64) -> bool {
    let mut on = cook.meats().filter(|piece| piece.is_on_pit(now));
    on.any(|piece| piece.pit(now).is_some_and(|(pit, _)| pit == id))
        || lit_at(cook, id, now).is_some()
}

/// Minutes until a pit that was lit takes meat, where it does not yet: the rest of its time to come up, and where a fresh
/// reading shows that it is still cold after that, a quarter of an hour more. A pit that holds meat is taken as hot.
fn still_cold(known: &Known<'_>, cook: &Cook, pit: &Pit, now: i64) -> Option<i64> {
    let mut on = cook.meats().filter(|piece| piece.is_on_pit(now));
    if on.any(|piece| piece.pit(now).is_some_and(|(its, _)| its == pit.id)) {
        return None;
    }
    let lit = lit_at(cook, pit.id, now)?;
    let left = preheat(pit.kind.value) - (now - lit) / MINUTE;
    let read = super::readings::fresh(known, pit.id, now);
    let cold = read.is_some_and(|(at, temp)| at > lit && temp < Mk::from_f(HELD_F[0] - SHORT_F));
    match read {
        Some((at, _)) if at > lit && !cold => None,
        _ if left > 0 => Some(left),
        _ => cold.then_some(plan::GRID_MIN),
    }
}

/// Whether it was lit by the sheet and not let go out since.
pub(super) fn is_coming_up(cook: &Cook, id: PitId, now: i64) -> bool {
    lit_at(cook, id, now).is_some()
}

fn lit_at(cook: &Cook, id: PitId, now: i64) -> Option<i64> {
    let done = |does| {
        let jobs = cook.sheets.now.iter().flat_map(|sheet| &sheet.plan.jobs);
        let its = jobs.filter(|job| job.job.on == Subject::Pit(id) && job.job.does == does);
        its.filter_map(|job| cook.job_done(job, now))
            .filter(|done| !done.skipped)
            .map(|done| done.at)
            .max()
    };
    let lit = done(Does::Light)?;
    (Some(lit) > done(Does::LetOut)).then_some(lit)
}

fn as_planned(pit: &Pit, name: String, hot: bool) -> plan::Pit {
    let own = pit
        .band
        .value
        .map(|band| Mk((band.low.0 + band.high.0) / 2));
    let usual = HELD_F.map(Mk::from_f);
    let temps: BTreeSet<Mk> = usual.into_iter().chain(own).collect();
    plan::Pit {
        name,
        area_cm2: pit.grate_cm2.value.unwrap_or(GRATE_CM2).clamp(100, 100_000),
        temps: temps
            .into_iter()
            .map(|temp| PitTemp {
                temp,
                fuel_g_per_h: fuel(pit.kind.value, temp),
            })
            .collect(),
        preheat_min: preheat(pit.kind.value),
        light_min: LIGHT_MIN,
        alone_min: pit.alone_minutes.value.unwrap_or(0).clamp(0, 1_440),
        poultry_apart: false,
        may_step: true,
        hot,
    }
}

/// From the match to meat on, minutes.
const fn preheat(kind: PitKind) -> i64 {
    match kind {
        PitKind::StickBurner | PitKind::Ceramic => 60,
        PitKind::Drum | PitKind::Cabinet | PitKind::Kettle => 45,
        PitKind::Pellet | PitKind::Electric => 30,
    }
}

/// Fuel an hour, grams: what counts is which of two plans burns more, never how much to buy.
const fn fuel(kind: PitKind, temp: Mk) -> i64 {
    let over = (temp.0 - Mk::from_f(70).0) / 1_000;
    match kind {
        PitKind::StickBurner => 15 * over,
        PitKind::Kettle | PitKind::Drum => 5 * over,
        PitKind::Pellet => 7 * over,
        PitKind::Ceramic | PitKind::Cabinet => 3 * over,
        PitKind::Electric => 0,
    }
}
