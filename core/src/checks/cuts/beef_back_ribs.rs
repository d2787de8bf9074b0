//! Beef back ribs: what stays on the bones when the rib roast is cut off; thin meat between big bones.

use super::{
    BastingHint, Composition, CookTime, Cut, CutFacts, Degrees, Minutes, WrapKind, spare_ribs,
};
use crate::checks::Test;

/// Done by the skewer between the bones; stiff bones bend little, so the bend does not decide.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::BeefBackRibs,
        tests: vec![
            Test::BarkSet,
            Test::WrapCall,
            Test::BoneShowing,
            Test::ProbeFeel,
            Test::Temperature,
        ],
        feel_by: vec![Test::ProbeFeel],
        basting: BastingHint::Spritz { every_minutes: 60 },
        time_at: Degrees::from_f(250, 275),
        cook_time: CookTime::Whole {
            minutes: Minutes {
                least: 210,
                most: 330,
            },
        },
        wraps: vec![WrapKind::Foil, WrapKind::Paper],
        composition: Composition::of(23236, [5_391, 1_615, 2_842, 73]),
        ..spare_ribs::facts()
    }
}
