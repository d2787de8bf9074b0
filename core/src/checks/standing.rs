//! How far a thermometer can be trusted. Start at [`Standing::trust`].

use crate::{moment::HOUR, units::Mk};
use serde::{Deserialize, Serialize};

/// Beyond this the reading is corrected and the verdict says so: 2 °F in millikelvin. Common practice, no source.
pub const CORRECT_BEYOND_MK: i64 = 1_111;
/// Beyond this no temperature is judged: 5 °F in millikelvin. Common practice, no source.
pub const TOO_FAR_BEYOND_MK: i64 = 2_778;
/// A check older than this counts as none, though what it found is still corrected: 30 days in milliseconds. Common
/// practice, no source.
pub const CHECK_LASTS_MS: i64 = 30 * 24 * HOUR;

/// How a thermometer stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Standing {
    /// It was held in ice water or boiling water.
    Checked {
        /// What it read less what it ought to, in millikelvin: 1,000 reads 1 K too hot. −100,000 to 100,000.
        off_mk: i64,
        /// When, in milliseconds since 1970.
        at: i64,
    },
    /// Nobody has said so.
    Unchecked,
}

/// What is made of a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trust {
    /// Counts as this.
    Counts(Mk),
    /// Counts as this, and the verdict says that it was corrected.
    Corrected(Mk),
    /// Does not count.
    TooFarOff,
}

impl Standing {
    /// What a reading of `raw` is taken for. Within 2 °F, a thermometer that reads hot is corrected and one that reads
    /// cold is not: the small doubt always counts as cold.
    pub const fn trust(self, raw: Mk) -> Trust {
        let off = self.off_mk();
        match off.abs() {
            beyond if beyond > TOO_FAR_BEYOND_MK => Trust::TooFarOff,
            beyond if beyond > CORRECT_BEYOND_MK => Trust::Corrected(Mk(raw.0 - off)),
            _ if off > 0 => Trust::Counts(Mk(raw.0 - off)),
            _ => Trust::Counts(raw),
        }
    }

    /// What it reads too hot, in millikelvin, as far as known.
    pub const fn off_mk(self) -> i64 {
        match self {
            Self::Checked { off_mk, .. } => off_mk,
            Self::Unchecked => 0,
        }
    }

    /// Whether a check of it counts at `now`, in milliseconds since 1970.
    pub const fn is_checked(self, now: i64) -> bool {
        match self {
            Self::Checked { at, .. } => now - at <= CHECK_LASTS_MS,
            Self::Unchecked => false,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn off(off_mk: i64) -> Trust {
        Standing::Checked { off_mk, at: 0 }.trust(Mk(340_000))
    }

    #[test]
    fn two_and_five_fahrenheit_degrees_are_the_borders() {
        assert_eq!(off(1_111), Trust::Counts(Mk(338_889)));
        assert_eq!(off(1_112), Trust::Corrected(Mk(338_888)));
        assert_eq!(off(-1_112), Trust::Corrected(Mk(341_112)));
        assert_eq!(off(2_778), Trust::Corrected(Mk(337_222)));
        assert_eq!(off(2_779), Trust::TooFarOff);
        assert_eq!(off(-2_779), Trust::TooFarOff);
    }

    #[test]
    fn a_small_doubt_counts_as_cold() {
        assert_eq!(off(900), Trust::Counts(Mk(339_100)));
        assert_eq!(off(-900), Trust::Counts(Mk(340_000)));
        assert_eq!(
            Standing::Unchecked.trust(Mk(340_000)),
            Trust::Counts(Mk(340_000))
        );
    }

    #[test]
    fn a_check_lapses_after_thirty_days() {
        let checked = Standing::Checked {
            off_mk: 0,
            at: 1_000,
        };
        assert!(checked.is_checked(1_000 + CHECK_LASTS_MS));
        assert!(!checked.is_checked(1_001 + CHECK_LASTS_MS));
    }
}
