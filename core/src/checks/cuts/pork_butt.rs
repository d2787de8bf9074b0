//! Pork butt: done by feel, inside a range of temperature. Big enough that a probe left in tells the truth.

use super::{
    BastingHint, CheckAgain, Composition, CookTime, Cut, CutFacts, Degrees, DoneBy, Minutes,
    WrapKind,
};
use crate::{
    checks::{Spot, Test},
    safety::Source,
    units::Mk,
};

/// Done when a skewer slides in and the coldest reading stands at 195 °F or above; pulled apart after a long rest.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::PorkButt,
        tests: vec![
            Test::BarkSet,
            Test::WrapCall,
            Test::Temperature,
            Test::ProbeFeel,
        ],
        feel_by: vec![Test::ProbeFeel],
        done_by: DoneBy::FeelAndTemperature,
        done_range: Degrees::from_f(195, 205),
        close_from: Mk::from_f(185),
        over_above: Some(Mk::from_f(210)),
        spots: vec![Spot::Center, Spot::NearBladeBone],
        spots_needed: 1,
        by_hand: false,
        basting: BastingHint::Spritz { every_minutes: 60 },
        pit: Degrees::from_f(225, 275),
        time_at: Degrees::from_f(225, 275),
        cook_time: CookTime::PerPound {
            minutes: Minutes {
                least: 60,
                most: 105,
            },
        },
        first_check_percent: 85,
        check_again: CheckAgain {
            far_minutes: 60,
            near_minutes: 30,
        },
        wraps: vec![
            WrapKind::Paper,
            WrapKind::Foil,
            WrapKind::Boat,
            WrapKind::Pan,
        ],
        rest: Minutes {
            least: 45,
            most: 120,
        },
        hold_minutes_max: 240,
        composition: Composition::of(10080, [6_918, 1_742, 1_236, 83]),
        source: Source::CommonPractice,
    }
}
