//! A platform that obeys: it holds the list it was given, sounds what is due by the device's wall clock even where the
//! process is dead, and tells what sounded when the process next runs.

use slowbend_core::alarms::{AlarmId, AlarmList};
use std::collections::BTreeMap;

/// The alarms of one device, as the platform holds them.
#[derive(Clone, Debug, Default)]
pub struct Platform {
    laid: Vec<(i64, Vec<AlarmId>)>,
    untold: Vec<AlarmId>,
    sounded: BTreeMap<AlarmId, Vec<i64>>,
}

impl Platform {
    /// Makes its list equal to `list`.
    pub fn lay(&mut self, list: &AlarmList) {
        self.laid = list
            .alarms
            .iter()
            .map(|alarm| (alarm.at, alarm.covers.clone()))
            .collect();
    }

    /// Sounds all that is due by the wall; answers with how many rings that were.
    pub fn pass(&mut self, wall_ms: i64) -> usize {
        let due = |(at, _): &(i64, Vec<AlarmId>)| *at <= wall_ms;
        let (rings, laid): (Vec<_>, Vec<_>) =
            std::mem::take(&mut self.laid).into_iter().partition(due);
        self.laid = laid;
        for id in rings.iter().flat_map(|(_, covers)| covers) {
            self.sounded.entry(*id).or_default().push(wall_ms);
            self.untold.push(*id);
        }
        rings.len()
    }

    /// What sounded and is told now, at `wall_ms`.
    pub fn take_untold(&mut self, wall_ms: i64) -> Vec<AlarmId> {
        let untold = std::mem::take(&mut self.untold);
        for id in &untold {
            self.sounded.entry(*id).or_default().push(wall_ms);
        }
        untold
    }

    /// When `id` sounded, and when that was told, by the wall of the time.
    pub fn sounded(&self, id: &AlarmId) -> &[i64] {
        self.sounded.get(id).map_or(&[], Vec::as_slice)
    }
}
