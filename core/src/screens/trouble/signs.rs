//! Which troubles the readings of a pit show now.

use super::TroubleKind;
use crate::{
    alarms::{SILENT_MS, band_of},
    ids::PitId,
    log::Where,
    moment::MINUTE,
    screens::glance::Glance,
    units::Mk,
};

/// A pit falls where a probe lost so much, in millikelvin (10 °F), within [`FALLS_WITHIN_MS`]. Common practice, no source.
const FALLS_MK: i64 = 10 * 5_000 / 9;
/// See [`FALLS_MK`]: 20 min.
const FALLS_WITHIN_MS: i64 = 20 * MINUTE;

impl Glance<'_> {
    /// What the last readings show: nothing where there is none.
    pub(super) fn signs(&self, pit: PitId) -> Vec<TroubleKind> {
        let Some(last) = self.last_of_pit(pit) else {
            return vec![];
        };
        if last.by_probe && self.now.saturating_sub(last.at) >= SILENT_MS {
            return vec![TroubleKind::Silent];
        }
        let mut cooks = self.known.open_cooks();
        let band = cooks.find_map(|cook| band_of(&self.known, cook, pit, self.now));
        let mut all = vec![];
        all.extend(band.and_then(|band| match last.temp {
            temp if temp < band.low => Some(TroubleKind::Cold),
            temp if temp > band.high => Some(TroubleKind::Hot),
            _ => None,
        }));
        // What falls back into its band, or within it after running hot, is well.
        let is_hot = all.contains(&TroubleKind::Hot);
        all.extend((self.falls(pit, last.temp) && !is_hot).then_some(TroubleKind::Falling));
        all
    }

    fn falls(&self, pit: PitId, last: Mk) -> bool {
        let since = self.this_minute().saturating_sub(FALLS_WITHIN_MS);
        let probes = self.known.open_cooks().flat_map(|cook| &cook.probes);
        let here = probes.filter(|(_, probe)| probe.place == Where::Pit { pit });
        let highest = here
            .flat_map(|((source, sensor), _)| self.known.tails.of(source, sensor, self.now))
            .filter(|(at, _)| *at >= since)
            .map(|(_, temp)| temp)
            .max();
        highest.is_some_and(|highest| highest.0.saturating_sub(last.0) >= FALLS_MK)
    }
}
