//! What the sums of safety are asked of a meat, read off the log's state. Start at [`coming_up`] and [`standing_off`].
//!
//! Law: a reading that its thermometer's check does not let count counts for nothing, each place speaks for itself, and the
//! place that is worst off speaks for the meat.

use super::{Cook, Known, Piece, ahead::counts, verdict_input::verdict_input};
use crate::{
    checks::{
        Spot, TestResult, Trust,
        refused::{INSTANTS, READABLE},
    },
    ids::PitId,
    log::{Stage, Where},
    moment::MINUTE,
    readings::tails::TAIL_MS,
    safety::{
        Form,
        clocks::{Clock, Clocks, ClocksAnswer, Kept, Rules},
        food_log::{GAP_MS, TempAt},
        off_heat::{OffHeat, StandsOff, off_heat},
    },
    units::Mk,
};
use std::collections::BTreeMap;

/// A smoker's air is at least this: USDA and FDA, May 2012, as [`Source::UsdaSmokerAir`](crate::safety::Source) says.
pub const SMOKER_LEAST: Mk = Mk::from_f(225);
/// A reading of a pit speaks for it so long, milliseconds: as long as a probe may be silent. Common practice, no source.
const PIT_READ_MS: i64 = 15 * MINUTE;

/// How a meat is kept, as far as its clocks go.
pub fn kept(known: &Known<'_>, cook: &Cook, piece: &Piece) -> Kept {
    let is_public = known.crew.for_public.as_ref().is_some_and(|reg| reg.value);
    Kept {
        rules: match is_public {
            true => Rules::FoodCode,
            false => Rules::Consumer,
        },
        hot_air: cook.hot_air.value,
        intact: is_intact(piece),
        was_hot: false,
    }
}

/// Whole muscle with nothing pushed into it, and no poultry; what nobody said is not.
pub fn is_intact(piece: &Piece) -> bool {
    let whole = !piece.cut.is_poultry() && !piece.cut.is_ground();
    whole && piece.form.value == Form::Intact
}

/// What was read inside a meat, place by place, oldest first, as its thermometers' checks correct it.
pub fn heats(
    known: &Known<'_>,
    cook: &Cook,
    piece: &Piece,
    now: i64,
) -> BTreeMap<Spot, Vec<TempAt>> {
    let input = verdict_input(known, cook, piece, now);
    let mut all: BTreeMap<Spot, Vec<TempAt>> = BTreeMap::new();
    for dated in input.checks.iter().rev() {
        let (TestResult::Heat(heat), Some(standing)) = (dated.result, dated.standing) else {
            continue;
        };
        let temp = match standing.trust(heat.mk) {
            Trust::Counts(mk) | Trust::Corrected(mk) => mk,
            Trust::TooFarOff => continue,
        };
        let at = dated.at;
        all.entry(heat.spot).or_default().push(TempAt { at, temp });
    }
    all
}

/// A meat on its way up.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ComingUp {
    /// Since when it is on the fire, milliseconds since 1970.
    pub since: i64,
    /// Of the place that is worst off.
    pub clock: Clock,
    /// Whether every place that was read was hot once; where none was read, no.
    pub was_hot: bool,
    /// Whether anything was read at all.
    pub is_read: bool,
    /// Where one probe or more was taken out so long ago that what it read is not at hand any more.
    pub is_forgotten: bool,
}

/// How a meat comes up; none where it was never on a pit, or its times are none.
pub fn coming_up(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> Option<ComingUp> {
    let since = piece
        .on_pit_at(now)
        .filter(|at| INSTANTS.contains(at) && INSTANTS.contains(&now))?;
    let kept = kept(known, cook, piece);
    let places = heats(known, cook, piece, now);
    let answers = places
        .values()
        .map(|readings| clocks_from(kept, since, readings, now));
    let answers: Vec<ClocksAnswer> = match places.is_empty() {
        true => clocks_from(kept, since, &[], now).into_iter().collect(),
        false => answers.flatten().collect(),
    };
    let was_hot = answers.iter().all(|answer| answer.was_hot);
    let clock = answers
        .into_iter()
        .max_by_key(|answer| (!answer.was_hot, answer.coming_up.spent_ms))?
        .coming_up;
    Some(ComingUp {
        since,
        clock,
        was_hot,
        is_read: !places.is_empty(),
        is_forgotten: is_forgotten(cook, piece, now),
    })
}

/// The clocks of one place from the time it went on: until something was read it is taken for cold, and its clock runs.
fn clocks_from(kept: Kept, since: i64, readings: &[TempAt], now: i64) -> Option<ClocksAnswer> {
    let mut so_far = Clocks::of(kept);
    let readings = readings.iter().filter(|reading| reading.at >= since);
    let soon = |reading: &&TempAt| reading.at <= since + GAP_MS;
    let began = readings.clone().next().filter(soon);
    let low = Mk(kept.come_up_range().0.0 + 1);
    let start = TempAt {
        at: since,
        temp: began.map_or(low, |reading| reading.temp),
    };
    so_far.push(start).ok()?;
    for reading in readings {
        so_far.push(*reading).ok();
    }
    so_far.answer(now, vec![])
}

/// Whether one place was hot by what was read of it from `since` on, as far as that can be believed.
pub fn was_hot(kept: Kept, since: i64, readings: &[TempAt], now: i64) -> bool {
    clocks_from(kept, since, readings, now).is_some_and(|answer| answer.was_hot)
}

/// Whether a probe left the meat so long ago that its readings may have been let go.
fn is_forgotten(cook: &Cook, piece: &Piece, now: i64) -> bool {
    let mut left = cook.probes_before.iter();
    left.any(|moved| {
        let here = matches!(moved.probe.place, Where::Piece { piece: id, .. } if id == piece.id);
        here && moved.until < now.saturating_sub(TAIL_MS)
    })
}

/// How a meat stands since it came off; none where it is not off, was put away or thrown away.
pub fn standing_off(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> Option<StandsOff> {
    let stage = piece.stage(now)?.stage;
    let is_out = matches!(
        stage,
        Stage::Off | Stage::Held | Stage::CutUp | Stage::Served | Stage::Reheated
    );
    let since = piece
        .resting_since(now)
        .filter(|at| is_out && INSTANTS.contains(at) && INSTANTS.contains(&now))?;
    let mut readings: Vec<TempAt> = heats(known, cook, piece, now)
        .into_values()
        .flatten()
        .chain(left_in(known, cook, piece, since, now))
        .filter(|reading| reading.at >= since)
        .collect();
    readings.sort_by_key(|reading| (reading.at, reading.temp));
    let readings = coldest_of_passes(&readings);
    let warmed: Vec<i64> = piece
        .stages
        .iter()
        .filter(|passed| passed.stage == Stage::Reheated && passed.when.at >= since)
        .map(|passed| passed.when.at)
        .collect();
    off_heat(&OffHeat {
        kept: kept(known, cook, piece),
        since,
        readings: &readings,
        warmed: &warmed,
        now,
    })
}

/// Of readings that were taken in one pass over several places, the coldest speaks.
fn coldest_of_passes(readings: &[TempAt]) -> Vec<TempAt> {
    let pass = |reading: &TempAt| reading.at.div_euclid(GAP_MS);
    readings
        .chunk_by(|a, b| pass(a) == pass(b))
        .filter_map(|one| one.iter().min_by_key(|reading| reading.temp).copied())
        .collect()
}

/// What probes that were left in it read since it came off, the coldest of every few minutes.
fn left_in<'a>(
    known: &'a Known<'_>,
    cook: &'a Cook,
    piece: &'a Piece,
    since: i64,
    now: i64,
) -> impl Iterator<Item = TempAt> + 'a {
    let held = piece.stages.iter().any(|passed| {
        matches!(passed.stage, Stage::Held) && (since..=now).contains(&passed.when.at)
    });
    let sits = cook.probes.iter().filter(move |(_, probe)| {
        held && counts(probe.since.at, now)
            && matches!(&probe.place, Where::Piece { piece: id, .. } if *id == piece.id)
    });
    sits.flat_map(move |((source, sensor), probe)| {
        let from = since.max(probe.since.at);
        let tail = known.tails.of(source, sensor, now);
        let tail = tail.filter(move |(at, temp)| *at >= from && READABLE.contains(temp));
        super::verdict_input::coldest_of_stretches(tail)
            .into_iter()
            .map(|(at, temp)| TempAt { at, temp })
    })
}

/// How hot a pit is that is too cool for ground, stuffed or poultry meat: by what was read of it lately, else by what it is
/// held at. None where it is hot enough, or nothing is known.
pub fn too_cool(known: &Known<'_>, pit: PitId, now: i64) -> Option<Mk> {
    let lately = last_of_pit(known, pit, now).filter(|last| now - last.at <= PIT_READ_MS);
    let band = known
        .crew
        .pits
        .get(&pit)
        .and_then(|pit| pit.band.value.as_ref());
    let held = band.map(|band| Mk(band.low.0.midpoint(band.high.0)));
    let heat = lately.map(|last| last.temp).or(held)?;
    (heat < SMOKER_LEAST).then_some(heat)
}

/// Whether the pit that takes it has to be a hot one: ground, stuffed or poultry.
pub fn needs_hot_pit(piece: &Piece) -> bool {
    let form = matches!(piece.form.value, Form::Ground | Form::Stuffed);
    form || piece.cut.is_poultry() || piece.cut.is_ground()
}

/// The last that was read of a pit's air, by hand or by a probe, in any cook under way.
pub fn last_of_pit(known: &Known<'_>, pit: PitId, now: i64) -> Option<TempAt> {
    let by_hand = known
        .open_cooks()
        .filter_map(|cook| cook.pits.get(&pit))
        .flat_map(|care| &care.read)
        .filter(|(when, ..)| counts(when.at, now))
        .map(|(when, temp, _)| TempAt {
            at: when.at.min(now),
            temp: *temp,
        });
    let by_probe = known
        .open_cooks()
        .flat_map(|cook| &cook.probes)
        .filter(|(_, probe)| probe.place == Where::Pit { pit })
        .filter_map(|((source, sensor), _)| known.tails.last(source, sensor, now))
        .map(|(at, temp)| TempAt { at, temp });
    by_hand
        .chain(by_probe)
        .filter(|last| INSTANTS.contains(&last.at))
        .max_by_key(|last| (last.at, last.temp))
}

#[cfg(test)]
mod tests;
