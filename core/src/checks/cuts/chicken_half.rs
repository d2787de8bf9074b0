//! Half a chicken: flat, so it cooks evenly; 60 to 80 minutes at 325 to 350 °F. At 275 °F it takes longer and the skin stays tough.

use super::{CheckAgain, Composition, CookTime, Cut, CutFacts, Minutes, chicken_whole};

/// As a whole chicken, by the half.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::ChickenHalf,
        cook_time: CookTime::Whole {
            minutes: Minutes {
                least: 60,
                most: 80,
            },
        },
        check_again: CheckAgain {
            far_minutes: 15,
            near_minutes: 10,
        },
        composition: Composition::of(5006, [6_599, 1_860, 1_506, 79]),
        ..chicken_whole::facts()
    }
}
