//! What is left of a meat that is on: by its forecast where there is one, else by how hot its pit was. Start at [`of`].
//!
//! Law: this makes a proposal and nothing else: a forecast's time is on a sheet only once a person accepted it.

use super::readings;
use crate::{
    ahead::Forecast,
    cook::{Cook, Known, Piece},
    ids::PitId,
    log::{Does, Subject},
    moment::MINUTE,
    plan::{Meat, OnPit, Quantiles, TimesAt},
    units::Mk,
};

/// A time goes with one over what the pit is above this, °F: see docs/plan.md, "Sources".
const SLOWER_TO_F: i64 = 140;
/// A forecast that was made longer ago says nothing of now, milliseconds. Common practice, no source.
const STALE_MS: i64 = 60 * MINUTE;
/// The score of 80 of 100 between those of 75 and 90 (0.6745, 0.8416, 1.2816), in thousandths.
const P80_BETWEEN: i64 = 275;
/// What a time is between, minutes: as the catalogue's tables are.
const MINUTES: (i64, i64) = (5, 2_880);
/// So much of its cooking is over at most while a meat is still on.
const OVER_MAX: i64 = 900;

/// The meat, its times those that are left of it where that is known better than by how long it is on.
pub(super) fn of(
    known: &Known<'_>,
    cook: &Cook,
    piece: &Piece,
    meat: Meat,
    (from, now): (i64, i64),
) -> Meat {
    let (Some(on), Some((pit, _))) = (meat.on, piece.pit(now)) else {
        return meat;
    };
    let held = held(known, cook, pit, now);
    let nearest = |temp: Mk| {
        let times = meat.times.iter();
        times
            .min_by_key(|times| (times.pit.0.abs_diff(temp.0), times.pit))
            .copied()
    };
    let Some(usual) = held.and_then(nearest) else {
        return meat;
    };
    let forecast = known.ahead.get(&piece.id).map(|ahead| &ahead.forecast);
    if let Some(left) = forecast.and_then(|forecast| left(forecast, (from, now))) {
        let times = meat
            .times
            .iter()
            .map(|times| scaled(left, usual.pit, times.pit));
        return Meat {
            times: times.collect(),
            on: Some(OnPit {
                over_permille: 0,
                ..on
            }),
            ..meat
        };
    }
    let since = piece.on_pit_at(now).unwrap_or(now);
    let Some(mean) = readings::mean(known, pit, since, now) else {
        return meat;
    };
    let minutes = ((now - since) / MINUTE).max(0);
    let was = minutes * over(mean).max(0) / over(usual.pit).max(1);
    let over_permille = (was * 1_000 / usual.minutes.p50.max(1)).clamp(0, OVER_MAX);
    Meat {
        on: Some(OnPit {
            over_permille,
            ..on
        }),
        ..meat
    }
}

/// How hot a pit is to be by the sheet at `now`, else by its band.
pub(super) fn held(known: &Known<'_>, cook: &Cook, pit: PitId, now: i64) -> Option<Mk> {
    let jobs = cook.sheets.now.iter().flat_map(|sheet| &sheet.plan.jobs);
    let sets = jobs.filter(|job| job.at <= now).filter(|job| {
        let at_pit = job.job.on == Subject::Pit(pit);
        let fire = at_pit && matches!(job.job.does, Does::Light | Does::Preheat | Does::Step);
        fire || (job.job.does == Does::PutOn && job.pit == Some(pit))
    });
    let planned = sets.filter_map(|job| job.temp).next_back();
    let band = || known.crew.pits.get(&pit)?.band.value;
    planned.or_else(|| band().map(|band| Mk(band.low.0.midpoint(band.high.0))))
}

/// Above what a time goes to nothing, millikelvin.
fn over(temp: Mk) -> i64 {
    temp.0 - Mk::from_f(SLOWER_TO_F).0
}

/// Minutes from the beginning of the plan, as the forecast has them.
fn left(forecast: &Forecast, (from, now): (i64, i64)) -> Option<Quantiles> {
    let done = forecast.done?;
    if now - forecast.made_for > STALE_MS {
        return None;
    }
    let minutes = |at: i64| ((at - from) / MINUTE).clamp(MINUTES.0, MINUTES.1);
    let p80 = done.p75 + (done.p90 - done.p75) * P80_BETWEEN / 1_000;
    Some(Quantiles {
        p10: minutes(done.p10),
        p50: minutes(done.p50),
        p80: minutes(p80),
        p90: minutes(done.p90),
    })
}

fn scaled(left: Quantiles, held: Mk, pit: Mk) -> TimesAt {
    let at = |minutes: i64| {
        let (times, by) = (over(held), over(pit).max(1));
        ((minutes * times + by / 2) / by).clamp(MINUTES.0, MINUTES.1)
    };
    TimesAt {
        pit,
        minutes: Quantiles {
            p10: at(left.p10),
            p50: at(left.p50),
            p80: at(left.p80),
            p90: at(left.p90),
        },
    }
}
