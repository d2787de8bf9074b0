//! Whole chicken: done by temperature, in a pit hot enough to crisp the skin.

use super::{
    BastingHint, CheckAgain, Composition, CookTime, Cut, CutFacts, Degrees, DoneBy, Minutes,
};
use crate::{
    checks::{Spot, Test},
    safety::Source,
    units::Mk,
};

/// Done on the coldest of three places read by hand within one pass. The places are those that FSIS names for a whole
/// bird: innermost thigh, innermost wing, thickest breast (from memory). A loose leg says when to read them, no more.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::ChickenWhole,
        tests: vec![Test::Joint, Test::Temperature],
        feel_by: vec![],
        done_by: DoneBy::Temperature,
        done_range: Degrees::from_f(165, 175),
        close_from: Mk::from_f(155),
        over_above: Some(Mk::from_f(185)),
        spots: vec![Spot::BreastThick, Spot::ThighInner, Spot::WingInner],
        spots_needed: 3,
        by_hand: true,
        basting: BastingHint::Dry,
        pit: Degrees::from_f(275, 350),
        time_at: Degrees::from_f(325, 350),
        cook_time: CookTime::PerPound {
            minutes: Minutes {
                least: 20,
                most: 27,
            },
        },
        first_check_percent: 75,
        check_again: CheckAgain {
            far_minutes: 20,
            near_minutes: 10,
        },
        wraps: vec![],
        rest: Minutes {
            least: 10,
            most: 20,
        },
        hold_minutes_max: 45,
        composition: Composition::of(5006, [6_599, 1_860, 1_506, 79]),
        source: Source::CommonPractice,
    }
}
