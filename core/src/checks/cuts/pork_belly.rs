//! Pork belly: a slab half of fat, done when the fat has gone soft.

use super::{
    CheckAgain, Composition, CookTime, Cut, CutFacts, Degrees, Minutes, WrapKind, pork_butt,
};
use crate::checks::Spot;

/// Done when a skewer slides in and the middle stands at 195 °F or above.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::PorkBelly,
        spots: vec![Spot::Center],
        pit: Degrees::from_f(225, 275),
        time_at: Degrees::from_f(250, 275),
        cook_time: CookTime::Whole {
            minutes: Minutes {
                least: 240,
                most: 360,
            },
        },
        check_again: CheckAgain {
            far_minutes: 45,
            near_minutes: 20,
        },
        wraps: vec![WrapKind::Foil, WrapKind::Pan, WrapKind::Paper],
        rest: Minutes {
            least: 20,
            most: 60,
        },
        hold_minutes_max: 180,
        composition: Composition::of(10005, [3_674, 934, 5_301, 49]),
        ..pork_butt::facts()
    }
}
