//! One temperature an instant. The rule, whatever order readings come in: same instant and same temperature are one
//! reading; same instant and different temperatures keep the first in the order (at, temp), that is the lower one –
//! of two claims about meat, the colder is the careful one.
//!
//! Because the rule is a minimum, settling parts and then their union equals settling all at once: chunks of a series
//! may overlap, repeat and arrive in any order.

use super::series::Reading;

/// Sorts by time and keeps one reading an instant.
pub fn settle(readings: &mut Vec<Reading>) {
    if !is_settled(readings) {
        readings.sort_unstable();
        readings.dedup_by_key(|reading| reading.at);
    }
}

/// True when times rise strictly.
pub fn is_settled(readings: &[Reading]) -> bool {
    readings.windows(2).all(|pair| pair[0].at < pair[1].at)
}

/// The readings of a series out of its chunks, in any order.
pub fn union(chunks: impl IntoIterator<Item = Vec<Reading>>) -> Vec<Reading> {
    let mut all: Vec<Reading> = chunks.into_iter().flatten().collect();
    settle(&mut all);
    all
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Mk;
    use proptest::prelude::*;

    fn reading(at: i64, temp: i64) -> Reading {
        Reading { at, temp: Mk(temp) }
    }

    fn few() -> impl Strategy<Value = Vec<Reading>> {
        prop::collection::vec(
            (0i64..12, 0i64..4).prop_map(|(at, temp)| reading(at, temp)),
            0..40,
        )
    }

    #[test]
    fn the_same_twice_is_one_and_of_two_claims_the_colder_stays() {
        let mut readings = vec![reading(2, 9), reading(1, 5), reading(2, 7), reading(1, 5)];
        settle(&mut readings);
        assert_eq!(readings, [reading(1, 5), reading(2, 7)]);
    }

    proptest! {
        #[test]
        fn order_does_not_matter(readings in few().prop_shuffle(), seed in any::<prop::sample::Index>()) {
            let mut turned = readings.clone();
            let by = if turned.is_empty() { 0 } else { seed.index(turned.len()) };
            turned.rotate_left(by);
            turned.reverse();
            prop_assert_eq!(union([readings]), union([turned]));
        }

        #[test]
        fn settled_parts_settle_to_the_settled_whole(a in few(), b in few()) {
            let whole = union([a.clone(), b.clone()]);
            prop_assert_eq!(union([union([b]), union([a])]), whole.clone());
            prop_assert!(is_settled(&whole));
        }
    }
}
