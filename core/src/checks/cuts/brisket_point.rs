//! Brisket point: the fat half alone, for slices or for cubes that go back on.

use super::{Composition, CookTime, Cut, CutFacts, Degrees, Minutes, brisket};
use crate::{checks::Spot, units::Mk};

/// As the whole brisket, and better a few degrees hotter: it has fat to spare.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::BrisketPoint,
        done_range: Degrees::from_f(198, 210),
        close_from: Mk::from_f(188),
        over_above: Some(Mk::from_f(215)),
        spots: vec![Spot::PointThick],
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
        hold_minutes_max: 360,
        composition: Composition::of(13807, [5_996, 1_765, 2_098, 82]),
        ..brisket::facts()
    }
}
