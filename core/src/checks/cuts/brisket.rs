//! Brisket, the whole packer: two muscles, done by feel in the flat, inside a range of temperature.

use super::{
    BastingHint, CheckAgain, Composition, CookTime, Cut, CutFacts, Degrees, DoneBy, Minutes,
    WrapKind,
};
use crate::{
    checks::{Spot, Test},
    safety::Source,
    units::Mk,
};

/// Done when a skewer slides into the flat and the coldest reading stands at 195 °F or above; then a long rest.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::Brisket,
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
        over_above: Some(Mk::from_f(212)),
        spots: vec![Spot::FlatThick, Spot::PointThick],
        spots_needed: 1,
        by_hand: false,
        basting: BastingHint::Spritz { every_minutes: 60 },
        pit: Degrees::from_f(225, 275),
        time_at: Degrees::from_f(225, 275),
        cook_time: CookTime::PerPound {
            minutes: Minutes {
                least: 45,
                most: 90,
            },
        },
        first_check_percent: 85,
        check_again: CheckAgain {
            far_minutes: 60,
            near_minutes: 30,
        },
        wraps: vec![WrapKind::Paper, WrapKind::Foil, WrapKind::Boat],
        rest: Minutes {
            least: 60,
            most: 240,
        },
        hold_minutes_max: 480,
        composition: Composition::of(13803, [6_108, 1_842, 1_906, 88]),
        source: Source::CommonPractice,
    }
}
