//! Noticing that the device's clock was moved: the wall against the time since boot, which nobody sets.

use super::Slowbend;
use crate::{
    cook::Warning,
    moment::{Moment, SECOND},
};

/// Differences up to this are drift and correction, not a move. Common practice, no source.
pub(super) const MOVED_MS: i64 = 90 * SECOND;

/// The wall minus the time since boot, at the last look.
#[derive(Clone, Debug, Default)]
pub(super) struct ClockWatch {
    seen: Option<(String, i64)>,
}

impl ClockWatch {
    /// By how much the clock was moved since the last look, if it was.
    fn moved(&mut self, moment: &Moment) -> Option<i64> {
        let offset = moment.utc_ms.saturating_sub(moment.since_boot_ms);
        let before = self.seen.replace((moment.boot_id.clone(), offset));
        let (boot, was) = before?;
        let by = offset.saturating_sub(was);
        (boot == moment.boot_id && by.abs() > MOVED_MS).then_some(by)
    }
}

impl Slowbend {
    /// Looks at the clock; every verb does.
    pub(super) fn notice_clock(&mut self, moment: &Moment) {
        self.utc_ms = moment.utc_ms;
        if let Some(by_ms) = self.clock.moved(moment) {
            self.warnings
                .retain(|warning| !matches!(warning, Warning::ClockMoved { .. }));
            self.warn(Warning::ClockMoved {
                by_ms,
                at: moment.utc_ms,
            });
            self.reload_tails();
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_moved_clock_is_noticed_once_and_a_restart_is_no_move() {
        let mut watch = ClockWatch::default();
        let start = Moment::at(1_795_000_000_000, "America/Chicago");
        assert_eq!(watch.moved(&start), None);
        assert_eq!(watch.moved(&start.plus(3_600_000)), None);
        let moved = Moment {
            utc_ms: start.utc_ms - 3_600_000,
            ..start.plus(60_000)
        };
        assert_eq!(watch.moved(&moved), Some(-3_660_000));
        assert_eq!(watch.moved(&moved), None);
        let restarted = Moment {
            boot_id: "next".into(),
            since_boot_ms: 5,
            ..start
        };
        assert_eq!(watch.moved(&restarted), None);
    }
}
