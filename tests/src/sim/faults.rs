//! What a disk may hold after the power fails in the middle of writing.
//!
//! Model: what was synced before stays; of what was being written, each sector of 512 bytes may be there or not, and the
//! last one may be torn. SQLite syncs the WAL at each commit (FULL), and again before a checkpoint touches the main file,
//! so what is torn is either the end of the WAL or the pages of a checkpoint whose WAL is whole. ("Atomic Commit In
//! SQLite" and "Write-Ahead Logging", sqlite.org, from memory.)

use super::rng::Rng;
use std::path::Path;

const SECTOR: usize = 512;

/// The bytes of a database and of its WAL.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Files {
    /// The main file.
    pub db: Vec<u8>,
    /// The write-ahead log; empty where there is none.
    pub wal: Vec<u8>,
}

impl Files {
    /// As they are in `folder`.
    pub fn of(folder: &Path) -> Self {
        let read = |name: &str| std::fs::read(folder.join(name)).unwrap_or_default();
        Self {
            db: read("slowbend.db"),
            wal: read("slowbend.db-wal"),
        }
    }

    /// Puts them into `folder`.
    ///
    /// # Panics
    /// When they cannot be written: then nothing can be tested.
    pub fn put(&self, folder: &Path) {
        std::fs::write(folder.join("slowbend.db"), &self.db).expect("the folder can be written");
        if !self.wal.is_empty() {
            std::fs::write(folder.join("slowbend.db-wal"), &self.wal)
                .expect("the folder can be written");
        }
    }

    /// What may be found where the power failed somewhere between `self` and `after`.
    pub fn torn(&self, after: &Self, rng: &mut Rng) -> Self {
        if self.db != after.db {
            return Self {
                db: torn(&self.db, &after.db, 0, rng),
                wal: after.wal.clone(),
            };
        }
        let synced = common(&self.wal, &after.wal);
        Self {
            db: after.db.clone(),
            wal: torn(&self.wal, &after.wal, synced, rng),
        }
    }

    /// The same with the WAL's growth since `self` cut at each of the places where a write may end: every sector, and
    /// in the middle of the first and the last one.
    pub fn cuts(&self, after: &Self) -> Vec<Self> {
        let synced = common(&self.wal, &after.wal);
        let grown = after.wal.len() - synced;
        let mut ends: Vec<usize> = (0..=grown).step_by(SECTOR).collect();
        ends.extend([1, 31, grown.saturating_sub(1), grown]);
        ends.iter()
            .filter(|end| **end <= grown)
            .map(|end| Self {
                db: after.db.clone(),
                wal: overlay(&self.wal, &after.wal[..synced + end]),
            })
            .collect()
    }
}

/// How many bytes both begin with.
fn common(before: &[u8], after: &[u8]) -> usize {
    before.iter().zip(after).take_while(|(a, b)| a == b).count()
}

/// `new` written over the beginning of `old`.
fn overlay(old: &[u8], new: &[u8]) -> Vec<u8> {
    let mut bytes = new.to_vec();
    bytes.extend(old.get(new.len()..).unwrap_or_default());
    bytes
}

/// Sector by sector `before` or `after` from byte `synced` on, cut somewhere.
fn torn(before: &[u8], after: &[u8], synced: usize, rng: &mut Rng) -> Vec<u8> {
    let end = synced + rng.below(after.len().max(before.len()) - synced + 1);
    let mut bytes = overlay(before, &after[..end.min(after.len())]);
    let losing = rng.chance(50);
    let mut at = synced;
    while losing && at < bytes.len() {
        let to = (at + SECTOR).min(bytes.len());
        if rng.chance(20) {
            let old = before.get(at..to).map_or(vec![0; to - at], <[u8]>::to_vec);
            bytes[at..to].copy_from_slice(&old);
        }
        at = to;
    }
    bytes
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_synced_before_is_never_touched() {
        let before = Files {
            db: vec![1; 4096],
            wal: vec![2; 3000],
        };
        let mut after = before.clone();
        after.wal.extend(vec![3; 5000]);
        let mut rng = Rng::new(5);
        for _ in 0..200 {
            let torn = before.torn(&after, &mut rng);
            assert_eq!(torn.db, before.db);
            assert!(torn.wal.len() <= after.wal.len());
            assert_eq!(torn.wal[..3000], before.wal[..]);
        }
        assert!(before.cuts(&after).contains(&before));
        assert!(before.cuts(&after).contains(&after));
    }
}
