//! How often a meat is mopped or spritzed, and the fewest openings of a pit that keep every window.
//!
//! Start with [`Cadence`], what was chosen for one meat. [`cluster`] makes one wetting of what several phones
//! recorded, [`rhythm`] says what comes next for one meat, [`share`] who may be wetted from one mop, and
//! [`openings`] lays the openings of one pit.

pub mod cluster;
pub mod openings;
pub mod rhythm;
pub mod share;

use crate::moment::MINUTE;
use serde::{Deserialize, Serialize};

/// Minutes between two spritzes unless told otherwise. Common practice, no source.
pub const SPRITZ_EVERY_MIN: i64 = 60;
/// Minutes between two mops unless told otherwise. Common practice, no source.
pub const MOP_EVERY_MIN: i64 = 30;
/// The shortest cadence taken, minutes: below it the pit never comes back to heat. Common practice, no source.
pub const EVERY_MIN_MIN: i64 = 10;
/// The longest cadence taken, minutes. Common practice, no source.
pub const EVERY_MIN_MAX: i64 = 240;

/// What was chosen for one meat: how it is wetted, and how often.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Cadence {
    /// Left alone.
    #[default]
    None,
    /// A fine spray.
    Spritz {
        /// Minutes from one to the next, 10 to 240.
        every_min: i64,
    },
    /// A wet going over with a mop or a brush.
    Mop {
        /// Minutes from one to the next, 10 to 240.
        every_min: i64,
    },
}

impl Cadence {
    /// A spritz each [`SPRITZ_EVERY_MIN`].
    pub const fn spritz() -> Self {
        Self::Spritz {
            every_min: SPRITZ_EVERY_MIN,
        }
    }

    /// A mop each [`MOP_EVERY_MIN`].
    pub const fn mop() -> Self {
        Self::Mop {
            every_min: MOP_EVERY_MIN,
        }
    }

    /// Minutes from one wetting to the next; nothing for a meat that is left alone.
    pub const fn every_min(self) -> Option<i64> {
        match self {
            Self::None => None,
            Self::Spritz { every_min } | Self::Mop { every_min } => Some(every_min),
        }
    }

    /// How far a wetting may stray from its due minute, to either side: a quarter of the cadence, whole minutes
    /// rounded down. Common practice, no source.
    pub const fn slack_min(every_min: i64) -> i64 {
        every_min / 4
    }

    /// Refuses a cadence outside 10 to 240 minutes.
    pub fn check(self) -> Result<(), Refused> {
        match self.every_min() {
            Some(every) if !(EVERY_MIN_MIN..=EVERY_MIN_MAX).contains(&every) => {
                Err(Refused::new(format!(
                    "Every {every} minutes is not a cadence: choose from {EVERY_MIN_MIN} to {EVERY_MIN_MAX} minutes, \
                 or none."
                )))
            }
            _ => Ok(()),
        }
    }
}

/// The cadence in milliseconds; what was never checked is brought into range, so that no arithmetic can run away.
const fn every_ms(every_min: i64) -> i64 {
    let least = if every_min < EVERY_MIN_MIN {
        EVERY_MIN_MIN
    } else {
        every_min
    };
    (if least > EVERY_MIN_MAX {
        EVERY_MIN_MAX
    } else {
        least
    }) * MINUTE
}

/// Why an input was not taken, and what to do instead.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{reason}")]
pub struct Refused {
    /// One sentence in English that says what to change.
    pub reason: String,
}

impl Refused {
    fn new(reason: impl Into<String>) -> Self {
        Self {
            reason: reason.into(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cadence_reads_as_the_log_writes_it() {
        let text = r#"{"kind":"mop","every_min":30}"#;
        assert_eq!(
            serde_json::from_str::<Cadence>(text).unwrap(),
            Cadence::mop()
        );
        assert_eq!(serde_json::to_string(&Cadence::mop()).unwrap(), text);
        assert_eq!(
            serde_json::to_string(&Cadence::None).unwrap(),
            r#"{"kind":"none"}"#
        );
    }

    #[test]
    fn only_ten_to_two_hundred_and_forty_minutes_are_taken() {
        for (every_min, taken) in [
            (i64::MIN, false),
            (0, false),
            (9, false),
            (10, true),
            (240, true),
            (241, false),
        ] {
            assert_eq!(
                Cadence::Mop { every_min }.check().is_ok(),
                taken,
                "mop every {every_min}"
            );
            assert_eq!(
                Cadence::Spritz { every_min }.check().is_ok(),
                taken,
                "spritz every {every_min}"
            );
        }
        assert_eq!(Cadence::None.check(), Ok(()));
        let refused = Cadence::Mop { every_min: 5 }.check().unwrap_err();
        assert!(
            refused.reason.contains("choose from 10 to 240 minutes"),
            "{refused}"
        );
    }

    #[test]
    fn an_unchecked_cadence_cannot_run_away() {
        assert_eq!(every_ms(i64::MAX), 240 * MINUTE);
        assert_eq!(every_ms(-3), 10 * MINUTE);
    }
}
