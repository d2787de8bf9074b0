//! Fresh sausages of chicken or turkey: ground poultry, so 165 °F.

use super::{Composition, Cut, CutFacts, Degrees, sausages};
use crate::units::Mk;

/// As other fresh sausages, at 165 °F.
pub fn facts() -> CutFacts {
    CutFacts {
        cut: Cut::PoultrySausages,
        done_range: Degrees::from_f(165, 170),
        close_from: Mk::from_f(155),
        composition: Composition::of(7955, [7_042, 1_879, 808, 224]),
        ..sausages::facts()
    }
}
