//! Turkey breast: done by temperature. Lean, so every degree past its minimum costs juice.

use super::{
    BastingHint, CheckAgain, Composition, CookTime, Cut, CutFacts, Degrees, DoneBy, Minutes,
};
use crate::{
    checks::{Spot, Test},
    safety::Source,
    units::Mk,
};

/// Done on the coldest of three places read by hand within one pass; a probe left in only tells when to read them.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::TurkeyBreast,
        tests: vec![Test::Temperature],
        feel_by: vec![],
        done_by: DoneBy::Temperature,
        done_range: Degrees::from_f(165, 170),
        close_from: Mk::from_f(155),
        over_above: Some(Mk::from_f(180)),
        spots: vec![Spot::UpperThick, Spot::LowerThick, Spot::InnerBreastbone],
        spots_needed: 3,
        by_hand: true,
        basting: BastingHint::Dry,
        pit: Degrees::from_f(250, 325),
        time_at: Degrees::from_f(250, 325),
        cook_time: CookTime::PerPound {
            minutes: Minutes {
                least: 20,
                most: 35,
            },
        },
        first_check_percent: 75,
        check_again: CheckAgain {
            far_minutes: 20,
            near_minutes: 10,
        },
        wraps: vec![],
        rest: Minutes {
            least: 15,
            most: 30,
        },
        hold_minutes_max: 60,
        composition: Composition::of(5191, [7_005, 2_189, 702, 91]),
        source: Source::CommonPractice,
    }
}
