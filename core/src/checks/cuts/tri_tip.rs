//! Tri-tip: a lean beef roast, done by temperature. Cooks like it redder than its published minimum; no verdict does.

use super::{Composition, CookTime, Cut, CutFacts, Degrees, Minutes, pork_loin};
use crate::units::Mk;

/// Done at 145 °F in the middle and three minutes of rest off the fire.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::TriTip,
        over_above: Some(Mk::from_f(165)),
        pit: Degrees::from_f(225, 275),
        time_at: Degrees::from_f(225, 275),
        cook_time: CookTime::Whole {
            minutes: Minutes {
                least: 60,
                most: 120,
            },
        },
        composition: Composition::of(13954, [7_008, 2_064, 855, 103]),
        ..pork_loin::facts()
    }
}
