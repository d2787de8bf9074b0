//! The name of an alarm: the hash of (cook, kind, job, ordinal), whatever its time, so that a change of time moves the
//! platform's alarm and never doubles it.

use crate::{
    ids::CookId,
    log::{Job, Subject},
};
use serde::{Deserialize, Serialize};
use std::fmt;
use uuid::Uuid;

/// 128 bits, shown as 32 hexadecimal digits.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct AlarmId(pub [u8; 16]);

impl AlarmId {
    /// The alarm of the `ordinal`-th time that `job` of `cook` comes up, `nag` times rung before.
    pub fn of(cook: CookId, job: Job, ordinal: i64, nag: i64) -> Self {
        let mut hasher = blake3::Hasher::new();
        let (kind, object) = job.parts();
        for part in [cook.0.as_bytes().as_slice(), kind.as_bytes(), &object] {
            hasher
                .update(&(part.len() as u64).to_le_bytes())
                .update(part);
        }
        if let Job::Sheet(planned) = job {
            hasher.update(&planned.nth.to_le_bytes());
        }
        hasher
            .update(&ordinal.to_le_bytes())
            .update(&nag.to_le_bytes());
        let mut id = [0; 16];
        id.copy_from_slice(&hasher.finalize().as_bytes()[..16]);
        Self(id)
    }

    /// The alarm that stands for all that did not fit in a list: "open Slowbend".
    pub const OPEN_SLOWBEND: Self = Self(*b"open slowbend...");
}

impl fmt::Display for AlarmId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
    }
}

impl fmt::Debug for AlarmId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "AlarmId({self})")
    }
}

impl std::str::FromStr for AlarmId {
    type Err = String;
    fn from_str(text: &str) -> Result<Self, String> {
        let broken = || format!("'{text}' is not the name of an alarm (32 hexadecimal digits)");
        if text.len() != 32 || !text.is_ascii() {
            return Err(broken());
        }
        let mut id = [0; 16];
        for (i, byte) in id.iter_mut().enumerate() {
            *byte = u8::from_str_radix(&text[2 * i..2 * i + 2], 16).map_err(|_| broken())?;
        }
        Ok(Self(id))
    }
}

impl Serialize for AlarmId {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for AlarmId {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = std::borrow::Cow::<'de, str>::deserialize(deserializer)?;
        text.parse().map_err(serde::de::Error::custom)
    }
}

#[cfg(feature = "ffi")]
uniffi::custom_type!(AlarmId, String, {
    lower: |id| id.to_string(),
    try_lift: |text| text.parse::<AlarmId>().map_err(|reason| uniffi::deps::anyhow::anyhow!(reason)),
});

impl Job {
    /// The kind of the job and the bytes of its object.
    fn parts(&self) -> (&'static str, [u8; 16]) {
        let (kind, id) = match self {
            Self::RubSet(piece) => ("rub_set", piece.0),
            Self::Wet(piece) => ("wet", piece.0),
            Self::Glaze(piece) => ("glaze", piece.0),
            Self::Check(piece) => ("check", piece.0),
            Self::Pull(piece) => ("pull", piece.0),
            Self::PutAway(piece) => ("put_away", piece.0),
            Self::ComeUp(piece) => ("come_up", piece.0),
            Self::KeepHot(piece) => ("keep_hot", piece.0),
            Self::Serve(cook) => ("serve", cook.0),
            Self::FireRound(pit) => ("fire_round", pit.0),
            Self::Outside(pit) => ("outside", pit.0),
            Self::Silent(pit) => ("silent", pit.0),
            Self::WakeUp(cook) => ("wake_up", cook.0),
            Self::Sheet(planned) => (planned.does.ring(), id_of(planned.on)),
        };
        (kind, id.into_bytes())
    }
}

const fn id_of(subject: Subject) -> Uuid {
    match subject {
        Subject::Crew => Uuid::nil(),
        Subject::Cook(id) => id.0,
        Subject::Pit(id) => id.0,
        Subject::Piece(id) => id.0,
        Subject::Dish(id) => id.0,
        Subject::Thermometer(id) => id.0,
    }
}
