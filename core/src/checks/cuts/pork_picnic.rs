//! Pork picnic: the lower shoulder with the arm bone, cooked as the butt above it.

use super::{Composition, Cut, CutFacts, pork_butt};
use crate::checks::Spot;

/// As pork butt; read a finger from the arm bone too, where it lags.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::PorkPicnic,
        spots: vec![Spot::Center, Spot::NearBone],
        composition: Composition::of(10074, [6_834, 1_871, 1_251, 98]),
        ..pork_butt::facts()
    }
}
