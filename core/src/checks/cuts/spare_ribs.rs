//! Spare ribs, the whole slab: done by feel. Thin meat between bones that carry heat, so a probe left in tells little.
//! Entries of before the trimmed slab had a name of its own say this for both.

use super::{
    BastingHint, CheckAgain, Composition, CookTime, Cut, CutFacts, Degrees, DoneBy, Minutes,
    WrapKind,
};
use crate::{
    checks::{Spot, Test},
    safety::Source,
    units::Mk,
};

/// Done by bend and skewer; the minimum is shown by one reading by hand between two middle bones, touching neither.
/// A leave-in probe there touches bone or air sooner or later: it does not show the minimum.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::SpareRibs,
        tests: vec![
            Test::BarkSet,
            Test::WrapCall,
            Test::BoneShowing,
            Test::Bend,
            Test::ProbeFeel,
            Test::Temperature,
        ],
        feel_by: vec![Test::Bend, Test::ProbeFeel],
        done_by: DoneBy::Feel,
        done_range: Degrees::from_f(195, 203),
        close_from: Mk::from_f(180),
        over_above: None,
        spots: vec![Spot::BetweenBones],
        spots_needed: 1,
        by_hand: true,
        basting: BastingHint::Mop { every_minutes: 30 },
        pit: Degrees::from_f(225, 275),
        time_at: Degrees::from_f(275, 275),
        cook_time: CookTime::Whole {
            minutes: Minutes {
                least: 240,
                most: 360,
            },
        },
        first_check_percent: 90,
        check_again: CheckAgain {
            far_minutes: 40,
            near_minutes: 20,
        },
        wraps: vec![WrapKind::Paper, WrapKind::Foil, WrapKind::Boat],
        rest: Minutes {
            least: 10,
            most: 20,
        },
        hold_minutes_max: 120,
        composition: Composition::of(10088, [5_975, 1_547, 2_340, 67]),
        source: Source::CommonPractice,
    }
}
