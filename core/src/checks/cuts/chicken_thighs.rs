//! Chicken thighs: safe at their minimum, better hotter, when what is tough in dark meat has gone soft.

use super::{CheckAgain, Composition, CookTime, Cut, CutFacts, Degrees, Minutes, chicken_whole};
use crate::{
    checks::{Spot, Test},
    units::Mk,
};

/// Done at 175 °F in the coldest of three thighs read by hand: the thickest, one from the coolest side, one between.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::ChickenThighs,
        tests: vec![Test::Temperature],
        done_range: Degrees::from_f(175, 185),
        close_from: Mk::from_f(165),
        over_above: Some(Mk::from_f(195)),
        spots: vec![Spot::ThickestOne, Spot::CoolSideOne, Spot::MiddleOne],
        cook_time: CookTime::Whole {
            minutes: Minutes {
                least: 45,
                most: 70,
            },
        },
        check_again: CheckAgain {
            far_minutes: 15,
            near_minutes: 10,
        },
        rest: Minutes { least: 5, most: 10 },
        composition: Composition::of(5091, [6_647, 1_652, 1_661, 81]),
        ..chicken_whole::facts()
    }
}
