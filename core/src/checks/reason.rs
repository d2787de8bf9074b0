//! Why a verdict is what it is. Each reason is one line on a screen; numbers go in as they are.

use super::{Spot, Test, meaning::Meaning};
use crate::units::Mk;
use serde::{Deserialize, Serialize};

/// One reason. They come in the order in which they are to be read: safety first.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Reason {
    /// Something was recorded that this version cannot read and must not ignore.
    UpdateFirst,
    /// The coldest reading is below the published minimum.
    BelowMinimum {
        /// The coldest, corrected, in millikelvin.
        coldest: Mk,
        /// The minimum, in millikelvin.
        minimum: Mk,
    },
    /// The temperature is there; the rest off the fire that goes with it is not over.
    RestNeeded {
        /// Milliseconds of rest still to go.
        left_ms: i64,
    },
    /// The published minimum is reached, and this cut is tough there still: it is done far above.
    ToughAtMinimum {
        /// The coldest, corrected, in millikelvin.
        coldest: Mk,
    },
    /// The published minimum is shown.
    MinimumShown {
        /// The coldest, corrected, in millikelvin.
        coldest: Mk,
    },
    /// No temperature counts: the minimum is not shown.
    TemperatureNotShown,
    /// These places still have to be read, all within ten minutes.
    SpotsMissing {
        /// Which places, in the order to read them.
        spots: Vec<Spot>,
    },
    /// A probe that is left in does not show the minimum of this cut: read it by hand.
    ReadByHand,
    /// The thermometer is off by more than 2 °F; its readings were corrected.
    Corrected {
        /// How much it reads too hot, in millikelvin.
        off_mk: i64,
    },
    /// The thermometer is off by more than 5 °F; its readings do not count. Use another one.
    TooFarOff {
        /// How much it reads too hot, in millikelvin.
        off_mk: i64,
    },
    /// Nobody has checked this thermometer in 30 days: ice water, 32 °F.
    Unchecked,
    /// What the latest result of a test means.
    Found {
        /// Which test.
        test: Test,
        /// What it means.
        meaning: Meaning,
    },
    /// Two tests by feel are far apart; the less done one counts.
    FeelsDisagree,
    /// Tender by feel, but below the range where this cut usually is: try another place.
    FeelAheadOfTemperature,
    /// In the range where this cut usually is done, but tough by feel: the feel counts.
    FeelBehindTemperature,
    /// The color says wrap, but the rub still wipes off: the wrap would take the bark with it.
    WrapWouldSmear,
    /// A result is older than 30 minutes.
    Stale {
        /// Of which test.
        test: Test,
        /// How old, in minutes.
        minutes: i64,
    },
}

impl Reason {
    /// The Fluent message ids of all reasons. The variables of each message are the fields of its reason, by name.
    pub const KEYS: [&'static str; 17] = [
        "reason-update-first",
        "reason-below-minimum",
        "reason-rest-needed",
        "reason-minimum-shown",
        "reason-temperature-not-shown",
        "reason-spots-missing",
        "reason-read-by-hand",
        "reason-corrected",
        "reason-too-far-off",
        "reason-unchecked",
        "reason-found",
        "reason-feels-disagree",
        "reason-feel-ahead-of-temperature",
        "reason-feel-behind-temperature",
        "reason-wrap-would-smear",
        "reason-stale",
        "reason-tough-at-minimum",
    ];

    /// The Fluent message id of its text. That of [`Reason::Found`] takes the texts of the test and of the meaning.
    pub const fn key(&self) -> &'static str {
        match self {
            Self::UpdateFirst => Self::KEYS[0],
            Self::BelowMinimum { .. } => Self::KEYS[1],
            Self::RestNeeded { .. } => Self::KEYS[2],
            Self::MinimumShown { .. } => Self::KEYS[3],
            Self::TemperatureNotShown => Self::KEYS[4],
            Self::SpotsMissing { .. } => Self::KEYS[5],
            Self::ReadByHand => Self::KEYS[6],
            Self::Corrected { .. } => Self::KEYS[7],
            Self::TooFarOff { .. } => Self::KEYS[8],
            Self::Unchecked => Self::KEYS[9],
            Self::Found { .. } => Self::KEYS[10],
            Self::FeelsDisagree => Self::KEYS[11],
            Self::FeelAheadOfTemperature => Self::KEYS[12],
            Self::FeelBehindTemperature => Self::KEYS[13],
            Self::WrapWouldSmear => Self::KEYS[14],
            Self::Stale { .. } => Self::KEYS[15],
            Self::ToughAtMinimum { .. } => Self::KEYS[16],
        }
    }
}
