//! What a meat is judged by, read off the log's state. Start at [`verdict_input`].
//!
//! Law: nothing here makes a meat look more done than the record does. Readings that lie outside what meat can be are
//! left out when hot and kept when cold, a probe counts only while the meat is on the pit, and of many probe readings
//! the coldest are kept.

use super::{Cook, Crew, Known, Pass, Piece, Thermometer, ahead::counts};
use crate::{
    checks::{
        DatedResult, Spot, Standing, Temperature, TestResult, VerdictInput,
        refused::{INSTANTS, OFF_MAX_MK, READABLE, RESULTS_MAX},
    },
    ids::ThermometerId,
    log::Where,
    moment::MINUTE,
    units::Mk,
};

/// Of a probe's readings, the coldest in each stretch of this length is judged, in milliseconds: what is dropped can
/// only have been hotter.
pub const PROBE_STRETCH_MS: i64 = 5 * MINUTE;

/// All that is known of `piece` for a verdict at `now`: its passes, readings by hand, and probes left in it.
/// Of more than can be judged at once the latest are kept.
pub fn verdict_input(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> VerdictInput {
    let mut checks: Vec<DatedResult> = piece
        .checks
        .iter()
        .flat_map(|pass| of_pass(known.crew, pass, now))
        .chain(by_hand(known.crew, piece, now))
        .chain(of_probes(known, cook, piece, now))
        .filter(|dated| counts(dated.at, now) && INSTANTS.contains(&dated.at))
        .map(|dated| DatedResult {
            at: dated.at.min(now),
            ..dated
        })
        .collect();
    checks.sort_by_key(|dated| std::cmp::Reverse((dated.at, dated.result)));
    checks.truncate(RESULTS_MAX);
    VerdictInput {
        cut: piece.cut,
        form: piece.form.value,
        checks,
        now,
        resting_since: piece.resting_since(now).filter(|at| INSTANTS.contains(at)),
        unknown_must_understand: cook.must_update || known.crew.must_update,
    }
}

/// How a thermometer stands: by its last check that counts at `now`, or not at all.
pub fn standing(crew: &Crew, thermometer: Option<ThermometerId>, now: i64) -> Standing {
    thermometer
        .and_then(|id| crew.thermometers.get(&id))
        .and_then(|thermometer| last_check(thermometer, now))
        .unwrap_or(Standing::Unchecked)
}

fn last_check(thermometer: &Thermometer, now: i64) -> Option<Standing> {
    let counting = thermometer
        .checks
        .iter()
        .filter(|check| counts(check.when.at, now) && INSTANTS.contains(&check.when.at));
    let check = counting.reduce(|a, b| if b.when.at >= a.when.at { b } else { a })?;
    let off = check.read.0.saturating_sub(check.expected.0);
    Some(Standing::Checked {
        off_mk: off.clamp(-OFF_MAX_MK, OFF_MAX_MK),
        at: check.when.at.min(now),
    })
}

fn of_pass<'a>(crew: &'a Crew, pass: &'a Pass, now: i64) -> impl Iterator<Item = DatedResult> + 'a {
    pass.results.iter().filter_map(move |result| match result {
        TestResult::Heat(heat) => heat_at(crew, pass.when.at, *heat, now),
        felt => Some(DatedResult {
            result: *felt,
            at: pass.when.at,
            standing: None,
        }),
    })
}

fn by_hand<'a>(
    crew: &'a Crew,
    piece: &'a Piece,
    now: i64,
) -> impl Iterator<Item = DatedResult> + 'a {
    piece.read.iter().filter_map(move |reading| {
        let heat = Temperature {
            mk: reading.temp,
            spot: spot_named(&reading.spot),
            thermometer: reading.thermometer,
            instant_read: true,
        };
        heat_at(crew, reading.when.at, heat, now)
    })
}

fn of_probes<'a>(
    known: &'a Known<'_>,
    cook: &'a Cook,
    piece: &'a Piece,
    now: i64,
) -> impl Iterator<Item = DatedResult> + 'a {
    let on = piece.on_pit_at(now);
    let rests = piece.resting_since(now).unwrap_or(now);
    let sits = cook
        .probes
        .iter()
        .map(move |(series, probe)| (series, probe, rests));
    let sat = cook.probes_before.iter().map(move |moved| {
        let until = moved.until.saturating_sub(1).min(rests);
        (&moved.series, &moved.probe, until)
    });
    sits.chain(sat)
        .filter_map(move |(series, probe, until)| match &probe.place {
            Where::Piece { piece: id, spot } if *id == piece.id => {
                let from = on?.max(probe.since.at);
                Some((series, probe.thermometer, spot_named(spot), from, until))
            }
            _ => None,
        })
        .flat_map(move |((source, sensor), thermometer, spot, from, until)| {
            let tail = known.tails.of(source, sensor, until);
            coldest_of_stretches(tail.filter(move |(at, _)| *at >= from))
                .into_iter()
                .filter_map(move |(at, mk)| {
                    let heat = Temperature {
                        mk,
                        spot,
                        thermometer,
                        instant_read: false,
                    };
                    heat_at(known.crew, at, heat, now)
                })
        })
}

/// The coldest reading of each stretch, and the very last one.
pub(super) fn coldest_of_stretches(tail: impl Iterator<Item = (i64, Mk)>) -> Vec<(i64, Mk)> {
    let mut kept: Vec<(i64, Mk)> = vec![];
    let mut newest = None;
    for (at, mk) in tail {
        newest = Some((at, mk));
        let stretch = |at: i64| at.div_euclid(PROBE_STRETCH_MS);
        match kept.last_mut() {
            Some(last) if stretch(last.0) == stretch(at) => {
                if mk <= last.1 {
                    *last = (at, mk);
                }
            }
            _ => kept.push((at, mk)),
        }
    }
    kept.extend(newest.filter(|newest| kept.last() != Some(newest)));
    kept
}

/// A temperature with the standing of its thermometer as last checked: a check after the reading counts too.
fn heat_at(crew: &Crew, at: i64, heat: Temperature, now: i64) -> Option<DatedResult> {
    (heat.mk <= *READABLE.end()).then(|| DatedResult {
        result: TestResult::Heat(Temperature {
            mk: heat.mk.max(*READABLE.start()),
            ..heat
        }),
        at,
        standing: Some(standing(crew, heat.thermometer, now)),
    })
}

/// The spot that is recorded as `name`; what is in a cook's own words is elsewhere, and can only show a meat cold.
pub fn spot_named(name: &str) -> Spot {
    spot_word(name).unwrap_or(Spot::Elsewhere)
}

/// The spot that is recorded as `name`, if it is one that is known by a name.
pub fn spot_word(name: &str) -> Option<Spot> {
    serde_json::from_value(serde_json::Value::String(name.into())).ok()
}

#[cfg(test)]
mod tests;
