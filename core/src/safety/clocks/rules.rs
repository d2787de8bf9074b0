//! Whose limits hold for a food.

use crate::{
    moment::HOUR,
    safety::{
        Source,
        lethality::{COME_UP_FROM, COME_UP_TO},
    },
    units::Mk,
};
use serde::{Deserialize, Serialize};

/// Who is cooked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Rules {
    /// Family and friends: 40 to 140 °F, two hours, one where the air is above 90 °F. USDA.
    Consumer,
    /// The public: 41 to 135 °F, four hours by time alone. FDA Food Code 3-501.16 and 3-501.19(B), read in state adoptions.
    /// Local rules and licensed practice may ask for more.
    FoodCode,
}

/// How a food is kept, as far as its clocks go.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Kept {
    /// Whose limits hold.
    pub rules: Rules,
    /// Whether the air around it is above 90 °F.
    pub hot_air: bool,
    /// Whether it is whole muscle with nothing pushed into it, and no poultry; who does not know says no.
    pub intact: bool,
    /// Whether it was hot before the first reading.
    pub was_hot: bool,
}

/// Intact meat on its way up: FSIS Revised Appendix A.
const COME_UP_MS: i64 = crate::safety::lethality::COME_UP_MS;
/// What is not intact, on its way up to the hot limit: four hours, as by time alone in the Food Code; our own caution.
const UP_MS: i64 = 4 * HOUR;

impl Kept {
    /// Above this food is hot, millikelvin.
    pub const fn hot(self) -> Mk {
        match self.rules {
            Rules::Consumer => Mk::from_f(140),
            Rules::FoodCode => Mk::from_f(135),
        }
    }

    /// Up to this food is cold, millikelvin.
    pub const fn cold(self) -> Mk {
        match self.rules {
            Rules::Consumer => Mk::from_f(40),
            Rules::FoodCode => Mk::from_f(41),
        }
    }

    /// Between these bacteria grow, millikelvin.
    pub const fn danger(self) -> (Mk, Mk) {
        (self.cold(), self.hot())
    }

    /// Between these the way up is counted, millikelvin.
    pub const fn come_up_range(self) -> (Mk, Mk) {
        match self.intact {
            true => (COME_UP_FROM, COME_UP_TO),
            false => self.danger(),
        }
    }

    /// How long it may take to come up, and who says so.
    pub const fn coming_up(self) -> (i64, Source) {
        match self.intact {
            true => (COME_UP_MS, Source::FsisAppendixA),
            false => (UP_MS, Source::OwnCaution),
        }
    }

    /// How long it may stand once it was hot, and who says so. The hour of hot air holds under both rules.
    pub const fn standing(self) -> (i64, Source) {
        match (self.hot_air, self.rules) {
            (true, _) => (HOUR, Source::UsdaTwoHours),
            (false, Rules::Consumer) => (2 * HOUR, Source::UsdaTwoHours),
            (false, Rules::FoodCode) => (4 * HOUR, Source::FoodCodeTime),
        }
    }
}
