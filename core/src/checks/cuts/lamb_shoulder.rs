//! Lamb shoulder, for pulling: collagen like a pork butt, smaller, and done sooner.

use super::{
    BastingHint, CheckAgain, Composition, CookTime, Cut, CutFacts, Degrees, Minutes, WrapKind,
    pork_butt,
};

/// Done when a skewer slides in and the coldest reading stands at 195 °F or above.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::LambShoulder,
        done_range: Degrees::from_f(195, 203),
        basting: BastingHint::Mop { every_minutes: 60 },
        pit: Degrees::from_f(225, 275),
        time_at: Degrees::from_f(250, 275),
        cook_time: CookTime::PerPound {
            minutes: Minutes {
                least: 60,
                most: 90,
            },
        },
        check_again: CheckAgain {
            far_minutes: 45,
            near_minutes: 25,
        },
        wraps: vec![WrapKind::Foil, WrapKind::Pan, WrapKind::Paper],
        rest: Minutes {
            least: 30,
            most: 90,
        },
        hold_minutes_max: 180,
        composition: Composition::of(17242, [6_336, 1_707, 1_896, 91]),
        ..pork_butt::facts()
    }
}
