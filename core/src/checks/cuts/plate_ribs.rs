//! Beef plate ribs: short ribs left as a plate, two inches of meat over long bones; cooked as a brisket on the bone.

use super::{
    CheckAgain, Composition, CookTime, Cut, CutFacts, Degrees, Minutes, WrapKind, brisket,
};
use crate::{
    checks::{Spot, Test},
    units::Mk,
};

/// Done when a skewer slides in over and between the bones and the thick meat stands at 198 °F or above.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::PlateRibs,
        tests: vec![
            Test::BarkSet,
            Test::WrapCall,
            Test::BoneShowing,
            Test::Temperature,
            Test::ProbeFeel,
        ],
        done_range: Degrees::from_f(198, 208),
        close_from: Mk::from_f(188),
        over_above: Some(Mk::from_f(213)),
        spots: vec![Spot::OverBone, Spot::BetweenBones],
        time_at: Degrees::from_f(250, 275),
        cook_time: CookTime::Whole {
            minutes: Minutes {
                least: 360,
                most: 540,
            },
        },
        check_again: CheckAgain {
            far_minutes: 45,
            near_minutes: 25,
        },
        wraps: vec![WrapKind::Paper, WrapKind::Foil],
        rest: Minutes {
            least: 30,
            most: 60,
        },
        hold_minutes_max: 240,
        composition: Composition::of(13147, [4_829, 1_440, 3_623, 68]),
        ..brisket::facts()
    }
}
