//! How long a cut usually takes. Start at [`CookTime::for_grams`].

use serde::{Deserialize, Serialize};

/// A range of minutes, both ends included.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Minutes {
    /// At least, in minutes.
    pub least: i64,
    /// At most, in minutes.
    pub most: i64,
}

/// How long a cut usually takes at its usual pit temperature.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum CookTime {
    /// As thin as it is, its weight hardly matters.
    Whole {
        /// Minutes on the pit.
        minutes: Minutes,
    },
    /// In proportion to its weight.
    PerPound {
        /// Minutes on the pit for each pound (453.592 g).
        minutes: Minutes,
    },
}

impl CookTime {
    /// Minutes on the pit for a meat of so many grams, rounded down and up to whole minutes. Grams: 1 to 50,000.
    pub const fn for_grams(self, grams: i64) -> Minutes {
        match self {
            Self::Whole { minutes } => minutes,
            // One pound is 453.59237 g by definition.
            Self::PerPound {
                minutes: Minutes { least, most },
            } => Minutes {
                least: (grams * least * 100_000).div_euclid(45_359_237),
                most: (grams * most * 100_000 + 45_359_236).div_euclid(45_359_237),
            },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_weight_gives_a_range_of_whole_minutes() {
        let per_pound = CookTime::PerPound {
            minutes: Minutes {
                least: 60,
                most: 90,
            },
        };
        assert_eq!(
            per_pound.for_grams(3_629),
            Minutes {
                least: 480,
                most: 721
            }
        );
        let whole = CookTime::Whole {
            minutes: Minutes {
                least: 300,
                most: 420,
            },
        };
        assert_eq!(whole.for_grams(1_400), whole.for_grams(1_800));
    }
}
