//! The last hours of every probe, as alarms and screens need them.

use crate::{moment::HOUR, units::Mk};
use std::collections::BTreeMap;

/// How far back the tails reach before the newest reading of their series.
pub const TAIL_MS: i64 = 6 * HOUR;

/// For each series (instrument, channel): its last readings by time, one a moment.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Tails {
    series: BTreeMap<(String, String), BTreeMap<i64, Mk>>,
}

impl Tails {
    /// Takes a reading. Of two at one moment the lower temperature is kept, whichever came first; what is older than
    /// [`TAIL_MS`] before the newest is let go.
    pub fn take(&mut self, source: &str, sensor: &str, at: i64, temp: Mk) {
        let tail = self
            .series
            .entry((source.into(), sensor.into()))
            .or_default();
        tail.entry(at)
            .and_modify(|known| *known = temp.min(*known))
            .or_insert(temp);
        let newest = tail.last_key_value().map_or(at, |(at, _)| *at);
        while tail
            .first_key_value()
            .is_some_and(|(at, _)| *at < newest - TAIL_MS)
        {
            tail.pop_first();
        }
    }

    /// Lets go of what a series holds later than `at`.
    pub fn forget_after(&mut self, source: &str, sensor: &str, at: i64) {
        if let Some(tail) = self.series.get_mut(&(source.into(), sensor.into())) {
            while tail.last_key_value().is_some_and(|(last, _)| *last > at) {
                tail.pop_last();
            }
        }
    }

    /// The readings of a series that are not later than `now`, oldest first.
    pub fn of(
        &self,
        source: &str,
        sensor: &str,
        now: i64,
    ) -> impl DoubleEndedIterator<Item = (i64, Mk)> + '_ {
        let tail = self.series.get(&(source.into(), sensor.into()));
        tail.into_iter()
            .flat_map(move |tail| tail.range(..=now).map(|(at, temp)| (*at, *temp)))
    }

    /// The last reading of a series at `now`.
    pub fn last(&self, source: &str, sensor: &str, now: i64) -> Option<(i64, Mk)> {
        self.of(source, sensor, now).next_back()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tail_is_the_same_whatever_order_its_readings_come_in() {
        let readings = [(10, 300), (20, 310), (10, 290), (20 + TAIL_MS, 320), (5, 1)];
        let mut forward = Tails::default();
        readings
            .iter()
            .for_each(|(at, temp)| forward.take("a", "b", *at, Mk(*temp)));
        let mut back = Tails::default();
        readings
            .iter()
            .rev()
            .for_each(|(at, temp)| back.take("a", "b", *at, Mk(*temp)));
        assert_eq!(forward, back);
        assert_eq!(
            forward.of("a", "b", i64::MAX).collect::<Vec<_>>(),
            [(20, Mk(310)), (20 + TAIL_MS, Mk(320))]
        );
        assert_eq!(forward.last("a", "b", 100), Some((20, Mk(310))));
    }
}
