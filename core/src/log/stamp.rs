//! The hybrid logical clock: Kulkarni, Demirbas, Madappa, Avva, Leone, "Logical Physical Clocks", OPODIS 2014
//! (algorithm from memory).
//!
//! Law: a stamp is greater than every stamp its writer had seen, and stays as near to the wall clock as that allows.
//! Stamps order entries and nothing else; what a person reads comes from `at`.

use serde::{Deserialize, Serialize};

/// 47 bits of milliseconds since 1970 above 16 bits of counter, in one integer that compares as the pair does.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(transparent)]
pub struct Stamp(pub i64);

#[cfg(feature = "ffi")]
uniffi::custom_type!(Stamp, i64, { lower: |stamp| stamp.0, try_lift: |ms| Ok(Stamp(ms)) });

const COUNTER_BITS: u32 = 16;
/// No wall clock lifts a stamp above this, about the year 3084, so that a clock past all use leaves room as well.
const WALL_MAX: i64 = 1 << (61 - COUNTER_BITS);

impl Stamp {
    /// The greatest stamp that is written or taken from another device, about the year 4200. Who has seen it writes it
    /// again: entries of one stamp are in order by device and n, and none is refused by the others.
    pub const MAX: Self = Self(1 << 62);

    /// The stamp of an entry written when the wall says `utc_ms`, after all that `self` had seen.
    #[must_use]
    pub fn tick(self, utc_ms: i64) -> Self {
        let wall = utc_ms.clamp(0, WALL_MAX) << COUNTER_BITS;
        Self(wall.max(self.0.saturating_add(1))).min(Self::MAX)
    }

    /// What was seen, once `other` has been seen too.
    #[must_use]
    pub fn seen(self, other: Self) -> Self {
        self.max(other)
    }

    /// The milliseconds in it: near the writer's wall clock, for warnings only.
    pub fn wall_ms(self) -> i64 {
        self.0 >> COUNTER_BITS
    }

    /// Whether another device may have written it.
    pub fn is_sound(self) -> bool {
        self.0 > 0 && self <= Self::MAX
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_phone_set_to_2099_lifts_the_stamps_after_it_and_they_still_rise() {
        let far = Stamp::default().tick(4_070_908_800_000);
        let ours = Stamp::default()
            .tick(1_795_000_000_000)
            .seen(far)
            .tick(1_795_000_000_001);
        assert!(ours > far);
        assert_eq!(ours.wall_ms(), 4_070_908_800_000);
    }

    #[test]
    fn whatever_clock_or_stranger_lifts_it_the_next_stamp_is_taken_by_others() {
        let absurd_clock = Stamp::default().tick(i64::MAX);
        assert!(absurd_clock.tick(i64::MAX).is_sound());
        assert!(Stamp::MAX.is_sound() && Stamp::MAX.tick(i64::MAX).is_sound());
    }

    proptest! {
        #[test]
        fn a_stamp_is_after_all_that_was_seen(walls in proptest::collection::vec(any::<i64>(), 1..50)) {
            let mut last = Stamp::default();
            for wall in walls {
                let next = last.tick(wall);
                prop_assert!(next > last);
                last = next;
            }
        }

        #[test]
        fn with_a_good_clock_it_is_the_wall(wall in 1_000_000_000_000i64..4_000_000_000_000) {
            prop_assert_eq!(Stamp::default().tick(wall).wall_ms(), wall);
        }
    }
}
