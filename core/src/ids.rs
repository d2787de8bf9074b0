//! Typed names of things. UUID v7 names cooks, meats, pits, dishes and thermometers; entries are named by
//! [`EntryKey`](crate::log::EntryKey) instead, because a device can only promise "my n-th", never "the n-th".
//!
//! Core rolls no die: [`Names`] makes v7 ids out of the moment, a counter and the entropy given at open.

use serde::{Deserialize, Serialize};
use std::{fmt, str::FromStr};
use uuid::Uuid;

macro_rules! id {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(pub Uuid);

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                self.0.fmt(f)
            }
        }

        impl fmt::Debug for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, concat!(stringify!($name), "({})"), self.0)
            }
        }

        impl FromStr for $name {
            type Err = uuid::Error;
            fn from_str(text: &str) -> Result<Self, uuid::Error> {
                Uuid::parse_str(text).map(Self)
            }
        }

        #[cfg(feature = "ffi")]
        uniffi::custom_type!($name, String, {
            lower: |id| id.to_string(),
            try_lift: |text| Ok(text.parse()?),
        });
    };
}

id!(
    /// The crew whose log this is; made at first open.
    LogId
);
id!(
    /// One installation of Slowbend on one device.
    DeviceId
);
id!(
    /// One cook: one occasion, from rub to leftovers.
    CookId
);
id!(
    /// What meat is cooked in.
    PitId
);
id!(
    /// One meat: a slab, a half bird, a shoulder.
    PieceId
);
id!(
    /// What is not meat.
    DishId
);
id!(
    /// A thermometer, a thing with an offset and a last check.
    ThermometerId
);

/// Makes v7 ids without a die: the same entropy, counter and moment give the same id. Those made in one millisecond rise in
/// the order in which they were made (the counter of RFC 9562, 6.2, method 1; from memory), so that meats and pits which were
/// named together are listed as they were named.
#[derive(Clone, Debug)]
pub struct Names {
    entropy: [u8; 32],
    counter: u64,
}

impl Names {
    /// `entropy` must be fresh at each open (the bindings and the hub read it from the platform).
    pub fn new(entropy: [u8; 32]) -> Self {
        Self {
            entropy,
            counter: 0,
        }
    }

    /// The next id, its time part `utc_ms` (negative counts as 0).
    pub fn next(&mut self, utc_ms: i64) -> Uuid {
        self.counter += 1;
        let hash = blake3::keyed_hash(&self.entropy, &self.counter.to_le_bytes());
        let mut tail = [0u8; 10];
        tail.copy_from_slice(&hash.as_bytes()[..10]);
        // The 12 bits after the version; the version takes the four above them.
        tail[..2].copy_from_slice(&(self.counter as u16 & 0xFFF).to_be_bytes());
        uuid::Builder::from_unix_timestamp_millis(utc_ms.max(0) as u64, &tail).into_uuid()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_same_entropy_gives_the_same_names_and_no_name_comes_twice() {
        let run = || {
            let mut names = Names::new([7; 32]);
            (0..100)
                .map(|_| names.next(1_795_000_000_000))
                .collect::<Vec<_>>()
        };
        let first = run();
        assert_eq!(first, run());
        let set: std::collections::BTreeSet<_> = first.iter().collect();
        assert_eq!(set.len(), 100);
        assert!(first.iter().all(|id| id.get_version_num() == 7));
    }

    #[test]
    fn names_made_in_one_millisecond_rise_as_they_were_made() {
        let mut names = Names::new([9; 32]);
        let made: Vec<_> = (0..4_000).map(|_| names.next(1_795_000_000_000)).collect();
        assert!(made.is_sorted());
    }
}
