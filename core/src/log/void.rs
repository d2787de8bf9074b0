//! Undo: which entries count.
//!
//! Law: an entry is hidden while the last word on it is a void. Voiding twice is one void, so one restoring undoes both;
//! voiding the restoring hides it again. Only a later entry can void an earlier one, so there is no circle, and the
//! answer depends on the set of entries alone, not on their coming.

use super::EntryKey;
use std::collections::{BTreeMap, BTreeSet};

/// A void as the fold sees it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Void {
    /// The void's own name.
    pub key: EntryKey,
    /// What it takes back.
    pub targets: Vec<EntryKey>,
}

/// The hidden entries, voids among them, given all voids of a fold in the order of their entries, and a test for
/// "this entry comes before that void" (an entry not held counts as before).
///
/// Works from the last void back: what it finds still standing takes hold of its targets. A void that is taken back
/// takes all earlier voids of the same entry with it.
pub fn hidden(voids: &[Void], before: impl Fn(&EntryKey, &EntryKey) -> bool) -> BTreeSet<EntryKey> {
    let place: BTreeMap<EntryKey, usize> = voids
        .iter()
        .enumerate()
        .map(|(i, void)| (void.key, i))
        .collect();
    let mut gone = BTreeSet::new();
    // For each entry: voids of it placed below this index have been taken back.
    let mut restored_below: BTreeMap<EntryKey, usize> = BTreeMap::new();
    for (i, void) in voids.iter().enumerate().rev() {
        for target in &void.targets {
            let taken_back =
                gone.contains(&void.key) || restored_below.get(target).is_some_and(|end| i < *end);
            if taken_back || !before(target, &void.key) {
                continue;
            }
            gone.insert(*target);
            if let Some(&earlier) = place.get(target) {
                for restored in &voids[earlier].targets {
                    let end = restored_below.entry(*restored).or_default();
                    *end = (*end).max(i);
                }
            }
        }
    }
    gone
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::ids::{DeviceId, LogId};
    use uuid::Uuid;

    fn key(n: i64) -> EntryKey {
        EntryKey {
            log: LogId(Uuid::from_u128(1)),
            device: DeviceId(Uuid::from_u128(2)),
            n,
        }
    }

    fn hidden_of(voids: &[(i64, &[i64])]) -> Vec<i64> {
        let voids: Vec<Void> = voids
            .iter()
            .map(|(n, of)| Void {
                key: key(*n),
                targets: of.iter().map(|n| key(*n)).collect(),
            })
            .collect();
        hidden(&voids, |target, void| target.n < void.n)
            .into_iter()
            .map(|key| key.n)
            .collect()
    }

    #[test]
    fn a_void_hides_and_a_void_of_it_restores() {
        assert_eq!(hidden_of(&[(2, &[1])]), [1]);
        assert_eq!(hidden_of(&[(2, &[1]), (3, &[2])]), [2]);
        assert_eq!(hidden_of(&[(2, &[1]), (3, &[2]), (4, &[3])]), [1, 3]);
    }

    #[test]
    fn voiding_twice_is_one_void() {
        assert_eq!(hidden_of(&[(2, &[1]), (3, &[1])]), [1]);
        assert_eq!(
            hidden_of(&[(2, &[1]), (3, &[1]), (4, &[3])]),
            [3],
            "one restoring undoes both"
        );
        assert_eq!(
            hidden_of(&[(2, &[1]), (3, &[1]), (4, &[2])]),
            [2],
            "whichever of them it names"
        );
        assert_eq!(
            hidden_of(&[(2, &[1]), (4, &[2]), (5, &[1])]),
            [1, 2],
            "and a later void stands"
        );
    }

    #[test]
    fn nothing_voids_what_comes_after_it() {
        assert_eq!(hidden_of(&[(2, &[3]), (3, &[2])]), [2]);
        assert!(hidden_of(&[(2, &[2])]).is_empty());
    }
}
