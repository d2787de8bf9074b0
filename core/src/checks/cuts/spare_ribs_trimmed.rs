//! Spare ribs trimmed square: the same slab without its tips and flap, so it cooks a little sooner and more evenly.

use super::{CookTime, Cut, CutFacts, Minutes, spare_ribs};

/// As whole spare ribs, half an hour sooner.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::SpareRibsTrimmed,
        cook_time: CookTime::Whole {
            minutes: Minutes {
                least: 210,
                most: 330,
            },
        },
        first_check_percent: 90,
        ..spare_ribs::facts()
    }
}
