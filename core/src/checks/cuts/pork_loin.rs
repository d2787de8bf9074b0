//! Pork loin: lean, no collagen to melt, done by temperature at its minimum and a rest.

use super::{
    BastingHint, CheckAgain, Composition, CookTime, Cut, CutFacts, Degrees, DoneBy, Minutes,
};
use crate::{
    checks::{Spot, Test},
    safety::Source,
    units::Mk,
};

/// Done at 145 °F in the middle and three minutes of rest off the fire; every degree more costs juice.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::PorkLoin,
        tests: vec![Test::Temperature],
        feel_by: vec![],
        done_by: DoneBy::Temperature,
        done_range: Degrees::from_f(145, 150),
        close_from: Mk::from_f(135),
        over_above: Some(Mk::from_f(160)),
        spots: vec![Spot::Center],
        spots_needed: 1,
        by_hand: false,
        basting: BastingHint::Dry,
        pit: Degrees::from_f(225, 300),
        time_at: Degrees::from_f(250, 275),
        cook_time: CookTime::PerPound {
            minutes: Minutes {
                least: 25,
                most: 40,
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
        hold_minutes_max: 30,
        composition: Composition::of(10020, [6_692, 1_974, 1_258, 96]),
        source: Source::CommonPractice,
    }
}
