//! One reading that counts, and the latest of each place.

use super::Spot;
use crate::units::Mk;
use std::collections::BTreeMap;

/// A reading that counts, corrected.
#[derive(Clone, Copy, Debug)]
pub(super) struct Reading {
    pub at: i64,
    pub spot: Spot,
    pub mk: Mk,
    pub instant: bool,
}

/// The latest reading of each place; of two at one instant the colder.
pub(super) fn latest_by_spot<'a>(readings: &[&'a Reading]) -> BTreeMap<Spot, &'a Reading> {
    let mut latest: BTreeMap<Spot, &Reading> = BTreeMap::new();
    for reading in readings.iter().copied() {
        let known = latest.entry(reading.spot).or_insert(reading);
        if (reading.at, -reading.mk.0) > (known.at, -known.mk.0) {
            *known = reading;
        }
    }
    latest
}
