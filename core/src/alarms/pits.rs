//! What pits ask for: a probe that runs outside the band, one that has gone silent, and where no probe sees to the
//! fire, somebody who does.
//!
//! Only pits with a meat on them are watched; a feed time that a person accepted rings with or without a meat, with or without
//! a probe.

use super::{
    Due, Urgency,
    meats::{last_answer, put_off},
};
use crate::{
    checks::cut_facts,
    cook::{Answered, Cook, Known, Pit, Timed, ahead::counts},
    fire::FireDid,
    ids::PitId,
    log::{Band, Job, Stage, Where},
    moment::MINUTE,
    units::Mk,
};
use std::collections::BTreeSet;

/// A probe that has said nothing for so long has gone silent. Common practice, no source.
pub const SILENT_MS: i64 = 15 * MINUTE;
/// After an opening, a feed or a change of vent a pit may run outside its band for so long before that counts. Common
/// practice, no source.
pub const MUTED_MS: i64 = 10 * MINUTE;
/// The band of a pit that nobody gave one: the usual temperatures of the meats on it, so much wider on either side, for
/// so long. Common practice, no source.
pub const WIDER_MK: i64 = 25 * 5_000 / 9;
const WIDER_MINUTES: i64 = 15;
/// After how many minutes outside its band a pit may ring: what another device claims beyond it counts as the nearer end.
const BAND_MINUTES: (i64, i64) = (1, 120);
/// With no probe the fire is seen to after so many minutes at the least and at the most. Common practice, no source.
pub const ROUND_MIN: i64 = 60;
/// See [`ROUND_MIN`].
pub const ROUND_MAX: i64 = 90;

/// All that the pits of a cook ask for.
pub(super) fn due(known: &Known<'_>, cook: &Cook, now: i64) -> Vec<Due> {
    let used: BTreeSet<PitId> = cook
        .meats()
        .filter(|piece| piece.is_on_pit(now))
        .filter_map(|piece| Some(piece.pit(now)?.0))
        .collect();
    let planned = cook.pits.keys().filter(|pit| !used.contains(pit));
    let planned = planned.filter_map(|pit| {
        let due = fire_round(known, cook, *pit, now, false)?;
        Some(Due {
            pit: Some(*pit),
            ..due
        })
    });
    let planned: Vec<Due> = planned.collect();
    used.into_iter()
        .flat_map(|pit| of_pit(known, cook, pit, now))
        .chain(planned)
        .collect()
}

fn of_pit(known: &Known<'_>, cook: &Cook, pit: PitId, now: i64) -> Vec<Due> {
    let probes: Vec<_> = cook
        .probes
        .iter()
        .filter(|(_, p)| p.place == Where::Pit { pit } && counts(p.since.at, now))
        .collect();
    let mut all = vec![];
    let last = probes
        .iter()
        .map(|(series, probe)| last_word(known, series, probe.since.at, now));
    if let Some(last) = last.max() {
        all.push(silent(cook, pit, last, now));
        all.extend(outside(known, cook, pit, now));
    }
    // A probe that never spoke sees to no fire.
    let spoke = probes
        .iter()
        .any(|(series, probe)| has_spoken(known, series, probe.since.at, now));
    all.extend(fire_round(known, cook, pit, now, !spoke));
    all.iter_mut().for_each(|due| due.pit = Some(pit));
    all
}

fn last_word(known: &Known<'_>, (source, sensor): &(String, String), since: i64, now: i64) -> i64 {
    known
        .tails
        .last(source, sensor, now)
        .map_or(since, |(at, _)| at.max(since))
}

fn has_spoken(
    known: &Known<'_>,
    (source, sensor): &(String, String),
    since: i64,
    now: i64,
) -> bool {
    let last = known.tails.last(source, sensor, now);
    last.is_some_and(|(at, _)| at >= since)
}

/// Laid in advance, and pushed on by each reading: a dead probe still rings.
fn silent(cook: &Cook, pit: PitId, last: i64, now: i64) -> Due {
    let job = Job::Silent(pit);
    let seen = last_answer(cook, job, now, |how| !matches!(how, Answered::Later(_)));
    let at = seen.map_or(last, |at| at.max(last)) + SILENT_MS;
    Due::new(cook, job, put_off(cook, job, at, last, now), Urgency::Wake)
}

fn outside(known: &Known<'_>, cook: &Cook, pit: PitId, now: i64) -> Option<Due> {
    let band = band_of(known, cook, pit, now)?;
    let quiet_until = last_tended(cook, pit, now).map_or(i64::MIN, |at| at + MUTED_MS);
    let job = Job::Outside(pit);
    let seen =
        last_answer(cook, job, now, |how| !matches!(how, Answered::Later(_))).unwrap_or(i64::MIN);
    let began = outside_since(known, cook, pit, band, now)?;
    let since = began.max(quiet_until).max(seen);
    Some(Due::new(
        cook,
        job,
        put_off(cook, job, since + band.minutes * MINUTE, began, now),
        Urgency::Wake,
    ))
}

/// Since when the last readings of the pit's probes have all been outside the band; of several, the longest.
fn outside_since(known: &Known<'_>, cook: &Cook, pit: PitId, band: Band, now: i64) -> Option<i64> {
    let out = |temp: Mk| temp < band.low || temp > band.high;
    let probes = cook
        .probes
        .iter()
        .filter(|(_, probe)| probe.place == Where::Pit { pit });
    let since = probes.filter_map(|((source, sensor), probe)| {
        let tail = known
            .tails
            .of(source, sensor, now)
            .rev()
            .take_while(|(at, _)| *at >= probe.since.at);
        tail.take_while(|(_, temp)| out(*temp))
            .last()
            .map(|(at, _)| at)
    });
    since.min()
}

/// What a pit is held between: as set for it, or by what is on it.
pub fn band_of(known: &Known<'_>, cook: &Cook, pit: PitId, now: i64) -> Option<Band> {
    if let Some(band) = known.crew.pits.get(&pit).and_then(|pit| pit.band.value) {
        let minutes = band.minutes.clamp(BAND_MINUTES.0, BAND_MINUTES.1);
        return Some(Band { minutes, ..band });
    }
    let on = cook
        .meats()
        .filter(|piece| piece.is_on_pit(now) && piece.pit(now).is_some_and(|(at, _)| at == pit));
    let usual =
        on.map(|piece| cut_facts(piece.cut).pit)
            .reduce(|a, b| crate::checks::cuts::Degrees {
                low: a.low.min(b.low),
                high: a.high.max(b.high),
            })?;
    let (low, high) = (Mk(usual.low.0 - WIDER_MK), Mk(usual.high.0 + WIDER_MK));
    Some(Band {
        low,
        high,
        minutes: WIDER_MINUTES,
    })
}

/// The round where no probe `sees` to the fire, or the feed time that was accepted, whichever is sooner.
fn fire_round(known: &Known<'_>, cook: &Cook, pit: PitId, now: i64, unseen: bool) -> Option<Due> {
    let job = Job::FireRound(pit);
    let answered = last_answer(cook, job, now, |how| !matches!(how, Answered::Later(_)));
    let seen = cook.pits.get(&pit).and_then(|care| latest(&care.seen, now));
    let last = [last_tended(cook, pit, now), seen, answered]
        .into_iter()
        .flatten()
        .max();
    let since = last.unwrap_or(cook.started_at.min(now));
    let round = since + round_minutes(known, known.crew.pits.get(&pit), since, now) * MINUTE;
    let round = unseen.then_some((round, since));
    let planned = planned_feed(known, cook, pit, now).map(|plan| (plan.due, plan.since));
    let (at, since) = round.into_iter().chain(planned).min()?;
    Some(Due::new(
        cook,
        job,
        put_off(cook, job, at, since, now),
        Urgency::Wake,
    ))
}

/// A time to feed next that was accepted and still stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PlannedFeed {
    /// When it was accepted, milliseconds since 1970.
    pub since: i64,
    /// When it is due.
    pub due: i64,
}

/// The feed time that was accepted last, until the pit is fed or shut down, until its round is answered, or until somebody
/// tends the fire at that time or later.
pub fn planned_feed(known: &Known<'_>, cook: &Cook, pit: PitId, now: i64) -> Option<PlannedFeed> {
    let care = cook.pits.get(&pit)?;
    let kind = known.crew.pits.get(&pit)?.kind.value;
    let planned = care.planned.iter().filter(|(when, _)| counts(when.at, now));
    let (when, due) = planned.max_by_key(|(when, due)| (when.at, *due))?;
    let (since, due) = (
        when.at,
        (*due).min(when.at.saturating_add(24 * 60 * MINUTE)),
    );
    let job = Job::FireRound(pit);
    let over = last_answer(cook, job, now, |how| !matches!(how, Answered::Later(_)));
    let fed = care
        .heats(kind)
        .map(|when| when.at)
        .filter(|at| counts(*at, now))
        .max();
    let shut = care.did.iter().filter(|(_, did)| *did == FireDid::ShutDown);
    let shut = shut
        .map(|(when, _)| when.at)
        .filter(|at| counts(*at, now))
        .max();
    let is_over = [over, fed, shut]
        .into_iter()
        .flatten()
        .any(|at| at >= since);
    let tended = last_tended(cook, pit, now).max(latest(&care.seen, now));
    let is_done = is_over || tended.is_some_and(|at| at >= due);
    (!is_done).then_some(PlannedFeed { since, due })
}

/// How long the fire may go unseen. A pit that may be left alone for longer does not wake a sleeper before that.
fn round_minutes(known: &Known<'_>, pit: Option<&Pit>, last: i64, now: i64) -> i64 {
    let alone = pit
        .and_then(|pit| pit.alone_minutes.value)
        .unwrap_or(0)
        .clamp(0, 24 * 60);
    let round = alone.clamp(ROUND_MIN, ROUND_MAX);
    let sleeper = known.crew.people.get(&known.device).is_some_and(|person| {
        let sleeps = person.sleeps();
        let at = (last + round * MINUTE).max(now);
        sleeps
            .iter()
            .any(|(from, to)| (*from..*to).contains(&at) && counts(*from, now))
    });
    if sleeper { round.max(alone) } else { round }
}

/// When a pit was last opened, fed, vented or given a meat.
pub(super) fn last_tended(cook: &Cook, pit: PitId, now: i64) -> Option<i64> {
    let care = cook.pits.get(&pit);
    let done = care
        .into_iter()
        .flat_map(|care| [&care.opened, &care.fed, &care.vents]);
    let put_on = cook
        .pieces
        .values()
        .flat_map(|piece| &piece.stages)
        .filter(|p| p.stage == Stage::OnPit { pit });
    let put_on = put_on
        .map(|passed| passed.when.at)
        .filter(|at| counts(*at, now))
        .max();
    done.filter_map(|times| latest(times, now))
        .chain(put_on)
        .max()
}

fn latest(times: &[Timed], now: i64) -> Option<i64> {
    times
        .iter()
        .map(|when| when.at)
        .filter(|at| counts(*at, now))
        .max()
}
