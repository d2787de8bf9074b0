//! Readings by the minute: a probe that speaks each second says no more of a meat than one that speaks each minute.

use crate::{moment::MINUTE, readings::Reading, units::Mk};
use std::collections::BTreeMap;

/// Of each whole minute the middle reading, so that a spike is none; of two in the middle the colder. `readings` rise by
/// time; `shift` millikelvin are added to each.
pub(super) fn by_minute(readings: &[Reading], shift: i64) -> Vec<Reading> {
    let minute = |reading: &Reading| reading.at.div_euclid(MINUTE);
    readings
        .chunk_by(|a, b| minute(a) == minute(b))
        .map(|run| Reading {
            at: minute(&run[0]).saturating_mul(MINUTE),
            temp: Mk(middle(run).saturating_add(shift)),
        })
        .collect()
}

fn middle(run: &[Reading]) -> i64 {
    let mut temps: Vec<i64> = run.iter().map(|reading| reading.temp.0).collect();
    temps.sort_unstable();
    temps[(temps.len() - 1) / 2]
}

/// What a person read, the coldest of each minute: of several places read in one pass that one counts.
pub(super) fn coldest_by_minute(read: impl Iterator<Item = Reading>) -> Vec<Reading> {
    let mut coldest: BTreeMap<i64, Mk> = BTreeMap::new();
    for reading in read {
        let minute = reading.at.div_euclid(MINUTE).saturating_mul(MINUTE);
        let kept = coldest.entry(minute).or_insert(reading.temp);
        *kept = (*kept).min(reading.temp);
    }
    coldest
        .into_iter()
        .map(|(at, temp)| Reading { at, temp })
        .collect()
}

/// Several probes in one pit as one: of each minute the mean of those that spoke; what hands read fills the minutes in
/// which none did.
pub(super) fn as_one(probes: &[Vec<Reading>], by_hand: Vec<Reading>) -> Vec<Reading> {
    let mut minutes: BTreeMap<i64, Vec<i64>> = BTreeMap::new();
    for reading in probes.iter().flatten() {
        minutes.entry(reading.at).or_default().push(reading.temp.0);
    }
    for reading in by_hand {
        minutes
            .entry(reading.at)
            .or_insert_with(|| vec![reading.temp.0]);
    }
    let mean = |temps: Vec<i64>| Mk(temps.iter().sum::<i64>().div_euclid(temps.len() as i64));
    minutes
        .into_iter()
        .map(|(at, temps)| Reading {
            at,
            temp: mean(temps),
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(second: i64, temp: i64) -> Reading {
        Reading {
            at: second * 1_000,
            temp: Mk(temp),
        }
    }

    #[test]
    fn a_spike_within_a_minute_is_none_and_each_minute_has_one_reading() {
        let spoken = [at(1, 300), at(20, 900), at(40, 310), at(61, 320)];
        assert_eq!(by_minute(&spoken, 5), [at(0, 315), at(60, 325)]);
        assert_eq!(by_minute(&[], 5), []);
    }

    #[test]
    fn of_several_places_read_at_once_the_coldest_counts() {
        let read = [at(70, 350), at(10, 360), at(30, 340)];
        assert_eq!(
            coldest_by_minute(read.into_iter()),
            [at(0, 340), at(60, 350)]
        );
    }

    #[test]
    fn two_probes_in_a_pit_are_one_and_a_hand_fills_their_silence() {
        let probes = [vec![at(0, 400), at(60, 410)], vec![at(0, 420)]];
        let by_hand = vec![at(60, 999), at(120, 405)];
        assert_eq!(
            as_one(&probes, by_hand),
            [at(0, 410), at(60, 410), at(120, 405)]
        );
    }
}
