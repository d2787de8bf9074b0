//! What is known of any cut. All figures are common practice, no source.

use super::{Composition, CookTime, Cut, Minutes};
use crate::{
    checks::{Spot, Test},
    safety::{Source, keyed::keyed},
    units::Mk,
};
use serde::{Deserialize, Serialize};

keyed! {
    /// The animal a cut is from.
    Species {
        /// Pig.
        Pork = "species-pork",
        /// Cattle.
        Beef = "species-beef",
        /// Chicken.
        Chicken = "species-chicken",
        /// Turkey.
        Turkey = "species-turkey",
        /// Sheep, young.
        Lamb = "species-lamb",
        /// Pork, beef, or both.
        Mixed = "species-mixed",
        /// Chicken, turkey, or both.
        Poultry = "species-poultry",
    }
}

keyed! {
    /// What decides that a cut is done, once its minimum is shown.
    DoneBy {
        /// The feel alone.
        Feel = "done-by-feel",
        /// The feel, inside a range of temperature.
        FeelAndTemperature = "done-by-feel-and-temperature",
        /// The temperature alone.
        Temperature = "done-by-temperature",
    }
}

keyed! {
    /// What a meat may be wrapped in.
    WrapKind {
        /// Unwaxed butcher paper.
        Paper = "wrap-kind-paper",
        /// Aluminum foil.
        Foil = "wrap-kind-foil",
        /// Foil below, open above.
        Boat = "wrap-kind-boat",
        /// A covered pan.
        Pan = "wrap-kind-pan",
    }
}

/// How a cut is usually kept wet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum BastingHint {
    /// Not at all.
    Dry,
    /// With a brush or a small mop.
    Mop {
        /// Minutes between two.
        every_minutes: i64,
    },
    /// With a spray bottle.
    Spritz {
        /// Minutes between two.
        every_minutes: i64,
    },
}

/// A range of temperatures, both ends included.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Degrees {
    /// Lower end, in millikelvin.
    pub low: Mk,
    /// Upper end, in millikelvin.
    pub high: Mk,
}

impl Degrees {
    pub(super) const fn from_f(low: i64, high: i64) -> Self {
        Self {
            low: Mk::from_f(low),
            high: Mk::from_f(high),
        }
    }
}

/// How soon a check is worth another opening.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct CheckAgain {
    /// While it is far from done, in minutes.
    pub far_minutes: i64,
    /// When it is nearly done, in minutes.
    pub near_minutes: i64,
}

/// What is known of a cut: common practice, no source, but for the places where poultry is read.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct CutFacts {
    /// Which cut.
    pub cut: Cut,
    /// The tests, in the order to try them.
    pub tests: Vec<Test>,
    /// The tests among them that decide by feel.
    pub feel_by: Vec<Test>,
    /// What decides that it is done.
    pub done_by: DoneBy,
    /// The temperature inside at which it is usually done.
    pub done_range: Degrees,
    /// From here on it is nearly done by temperature, in millikelvin.
    pub close_from: Mk,
    /// Above this it is past its best by temperature, in millikelvin; none where the temperature does not tell.
    pub over_above: Option<Mk>,
    /// Where its temperature is read, in order.
    pub spots: Vec<Spot>,
    /// In how many of those places, at least, for its minimum to be shown.
    pub spots_needed: u32,
    /// Whether only readings by hand show its minimum.
    pub by_hand: bool,
    /// How it is usually kept wet.
    pub basting: BastingHint,
    /// The usual temperature of the pit.
    pub pit: Degrees,
    /// The temperature of the pit for which [`cook_time`](Self::cook_time) is meant.
    pub time_at: Degrees,
    /// How long it usually takes there, openings counted.
    pub cook_time: CookTime,
    /// When to check first: minutes after it went on, in hundredths of its shortest usual time.
    pub first_check_percent: i64,
    /// Minutes until the next check when a test finds it far from done, and when nearly.
    pub check_again: CheckAgain,
    /// What it may be wrapped in, the usual one first; empty where it is not wrapped.
    pub wraps: Vec<WrapKind>,
    /// How long to rest it before it is cut, in minutes.
    pub rest: Minutes,
    /// How long it keeps, held hot and wrapped at 140 °F or above, before it suffers, in minutes.
    pub hold_minutes_max: i64,
    /// What it is made of: published, [`Composition::SOURCE`].
    pub composition: Composition,
    /// Where all but the composition come from.
    pub source: Source,
}

impl CutFacts {
    /// Minutes after it went on when the first check pays, for a meat of so many grams (1 to 50,000).
    pub const fn first_check_minutes(&self, grams: i64) -> i64 {
        self.cook_time.for_grams(grams).least * self.first_check_percent / 100
    }

    /// Whether it is done far above its published minimum, by feel: what is shown of the minimum is then no word on
    /// whether it can be eaten with pleasure, and is never said as if it were.
    pub fn is_done_far_above(&self) -> bool {
        self.done_by != DoneBy::Temperature
    }

    /// Below this, in millikelvin, a tender feel is not believed: the reading, or the place of the skewer, is wrong.
    pub fn tender_from(&self) -> Mk {
        match self.done_by {
            DoneBy::Feel => self.close_from,
            DoneBy::FeelAndTemperature | DoneBy::Temperature => self.done_range.low,
        }
    }
}
