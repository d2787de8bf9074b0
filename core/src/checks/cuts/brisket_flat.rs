//! Brisket flat: the lean half alone, thin at one end and quick to dry.

use super::{Composition, CookTime, Cut, CutFacts, Degrees, Minutes, brisket};
use crate::{checks::Spot, units::Mk};

/// As the whole brisket; it has less fat to forgive an hour too long.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::BrisketFlat,
        done_range: Degrees::from_f(195, 203),
        over_above: Some(Mk::from_f(208)),
        spots: vec![Spot::FlatThick],
        cook_time: CookTime::PerPound {
            minutes: Minutes {
                least: 60,
                most: 90,
            },
        },
        rest: Minutes {
            least: 45,
            most: 120,
        },
        hold_minutes_max: 240,
        composition: Composition::of(13805, [5_907, 1_794, 2_218, 81]),
        ..brisket::facts()
    }
}
