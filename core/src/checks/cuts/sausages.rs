//! Fresh sausages of pork or beef: ground meat, done by temperature, whatever their color.

use super::{
    BastingHint, CheckAgain, Composition, CookTime, Cut, CutFacts, Degrees, DoneBy, Minutes,
};
use crate::{
    checks::{Spot, Test},
    safety::Source,
    units::Mk,
};

/// Done at 160 °F in three links read by hand from the end: the thickest, one from the coolest side, one between.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::Sausages,
        tests: vec![Test::Temperature],
        feel_by: vec![],
        done_by: DoneBy::Temperature,
        done_range: Degrees::from_f(160, 165),
        close_from: Mk::from_f(150),
        over_above: Some(Mk::from_f(180)),
        spots: vec![Spot::ThickestOne, Spot::CoolSideOne, Spot::MiddleOne],
        spots_needed: 3,
        by_hand: true,
        basting: BastingHint::Dry,
        pit: Degrees::from_f(225, 275),
        time_at: Degrees::from_f(225, 275),
        cook_time: CookTime::Whole {
            minutes: Minutes {
                least: 60,
                most: 120,
            },
        },
        first_check_percent: 75,
        check_again: CheckAgain {
            far_minutes: 20,
            near_minutes: 10,
        },
        wraps: vec![],
        rest: Minutes { least: 5, most: 10 },
        hold_minutes_max: 60,
        composition: Composition::of(7063, [5_658, 1_537, 2_478, 254]),
        source: Source::CommonPractice,
    }
}
