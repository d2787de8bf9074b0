//! Baby back ribs: from the loin, leaner, curved and shorter than spare ribs, and done sooner.

use super::{Composition, CookTime, Cut, CutFacts, Degrees, Minutes, spare_ribs};

/// Done by bend and skewer as spare ribs are; lean enough that an hour too long dries them.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::BabyBackRibs,
        done_range: Degrees::from_f(190, 203),
        cook_time: CookTime::Whole {
            minutes: Minutes {
                least: 180,
                most: 270,
            },
        },
        composition: Composition::of(10192, [6_347, 1_907, 1_633, 103]),
        ..spare_ribs::facts()
    }
}
