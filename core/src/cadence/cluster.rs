//! One wetting out of what several phones recorded of it. Start with [`clusters`].
//!
//! Two of a crew may both tap "mopped" for the same mop. Wettings of one meat that lie within one [`window_ms`] of
//! the first are one, and count at the first one's `at`. One device never taps twice for one mop: its second wetting
//! is a second one, however soon.
//!
//! **Law.** The clusters are a function of the wettings alone, whatever order they arrived in; each wetting is in
//! exactly one cluster; no cluster holds a device twice or reaches past its window.

use super::{Cadence, every_ms};
use crate::{ids::DeviceId, moment::MINUTE};

/// One recorded wetting of one meat.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Wetting {
    /// When it happened, as claimed; milliseconds since 1970.
    pub at: i64,
    /// Who recorded it.
    pub device: DeviceId,
    /// The caller's own number for it.
    pub entry: u64,
}

/// The wettings that are one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cluster {
    /// When it happened: the first of its members.
    pub at: i64,
    /// All that recorded it, in order of (at, device, entry); never empty.
    pub members: Vec<Wetting>,
}

impl Cluster {
    fn takes(&self, wetting: &Wetting, window: i64) -> bool {
        wetting.at.saturating_sub(self.at) <= window
            && self
                .members
                .iter()
                .all(|member| member.device != wetting.device)
    }
}

/// How long after the first a wetting still is the same one, milliseconds: four minutes, or a quarter of the cadence
/// where that is less. Common practice, no source.
pub fn window_ms(cadence: Cadence) -> i64 {
    let longest = 4 * MINUTE;
    cadence
        .every_min()
        .map_or(longest, |every| longest.min(every_ms(every) / 4))
}

/// The wettings of one meat, told apart: clusters in order of time. A wetting joins the earliest cluster that is still
/// open to it; ties are settled by (at, device, entry).
pub fn clusters(wettings: &[Wetting], cadence: Cadence) -> Vec<Cluster> {
    let window = window_ms(cadence);
    let mut sorted = wettings.to_vec();
    sorted.sort_unstable();
    let mut clusters: Vec<Cluster> = Vec::new();
    let mut open = 0;
    for wetting in sorted {
        while clusters
            .get(open)
            .is_some_and(|first| wetting.at.saturating_sub(first.at) > window)
        {
            open += 1;
        }
        match clusters[open..]
            .iter_mut()
            .find(|cluster| cluster.takes(&wetting, window))
        {
            Some(cluster) => cluster.members.push(wetting),
            None => clusters.push(Cluster {
                at: wetting.at,
                members: vec![wetting],
            }),
        }
    }
    clusters
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use uuid::Uuid;

    fn wetting(minute: i64, device: u128, entry: u64) -> Wetting {
        Wetting {
            at: minute * MINUTE,
            device: DeviceId(Uuid::from_u128(device)),
            entry,
        }
    }

    fn entries(clusters: &[Cluster]) -> Vec<Vec<u64>> {
        clusters
            .iter()
            .map(|cluster| cluster.members.iter().map(|member| member.entry).collect())
            .collect()
    }

    #[test]
    fn two_phones_that_tap_for_one_mop_make_one() {
        let told = clusters(
            &[wetting(33, 2, 1), wetting(30, 1, 0), wetting(60, 1, 2)],
            Cadence::mop(),
        );
        assert_eq!(entries(&told), [vec![0, 1], vec![2]]);
        assert_eq!(told[0].at, 30 * MINUTE);
    }

    #[test]
    fn the_window_is_anchored_on_the_first_and_does_not_creep() {
        let told = clusters(
            &[wetting(0, 1, 0), wetting(3, 2, 1), wetting(6, 3, 2)],
            Cadence::spritz(),
        );
        assert_eq!(entries(&told), [vec![0, 1], vec![2]]);
    }

    #[test]
    fn a_second_tap_of_one_phone_is_a_second_mop_and_others_fill_the_first_one_first() {
        let taps = [
            wetting(0, 1, 0),
            wetting(1, 1, 1),
            wetting(2, 2, 2),
            wetting(3, 2, 3),
        ];
        assert_eq!(
            entries(&clusters(&taps, Cadence::mop())),
            [vec![0, 2], vec![1, 3]]
        );
    }

    #[test]
    fn a_short_cadence_narrows_the_window_to_its_quarter() {
        let often = Cadence::Mop { every_min: 10 };
        assert_eq!(window_ms(often), 2 * MINUTE + MINUTE / 2);
        assert_eq!(window_ms(Cadence::None), 4 * MINUTE);
        assert_eq!(
            entries(&clusters(&[wetting(0, 1, 0), wetting(3, 2, 1)], often)),
            [vec![0], vec![1]]
        );
        assert_eq!(
            entries(&clusters(
                &[wetting(0, 1, 0), wetting(4, 2, 1)],
                Cadence::mop()
            )),
            [vec![0, 1]]
        );
    }

    #[test]
    fn claims_from_the_ends_of_time_are_told_apart_too() {
        let far = |at, entry| Wetting {
            at,
            ..wetting(0, 1, entry)
        };
        assert_eq!(
            clusters(&[far(i64::MAX, 0), far(i64::MIN, 1)], Cadence::mop()).len(),
            2
        );
    }

    proptest! {
        #[test]
        fn the_order_of_arrival_changes_nothing(
            (taps, shuffled) in prop::collection::vec((0i64..40, 0u128..4, 0u64..50), 0..24).prop_flat_map(|raw| {
                let taps: Vec<_> = raw.into_iter().map(|(m, d, e)| wetting(m, d, e)).collect();
                (Just(taps.clone()), Just(taps).prop_shuffle())
            }),
            every_min in 10i64..=240,
        ) {
            let cadence = Cadence::Mop { every_min };
            let told = clusters(&taps, cadence);
            prop_assert_eq!(&told, &clusters(&shuffled, cadence));
            let mut all: Vec<_> = told.iter().flat_map(|cluster| cluster.members.clone()).collect();
            all.sort_unstable();
            let mut given = taps;
            given.sort_unstable();
            prop_assert_eq!(all, given);
            prop_assert!(told.is_sorted_by_key(|cluster| cluster.at));
            for cluster in &told {
                prop_assert!(cluster.members.iter().all(|m| (0..=window_ms(cadence)).contains(&(m.at - cluster.at))));
                let devices: std::collections::BTreeSet<_> = cluster.members.iter().map(|m| m.device).collect();
                prop_assert_eq!(devices.len(), cluster.members.len());
            }
        }
    }
}
