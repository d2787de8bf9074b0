//! What a cut is made of, raw, as published.

use crate::safety::Source;
use serde::{Deserialize, Serialize};

/// Water, protein, fat and ash of the edible part, raw, in hundredths of a gram per 100 g. What is missing to 100 g is
/// rounding, and sugar where there is some. Rows of USDA SR26, copied to `tests/published/composition.csv`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Composition {
    /// The number of the row in USDA's database.
    pub ndb: u32,
    /// Water.
    pub water: i64,
    /// Protein.
    pub protein: i64,
    /// Fat.
    pub fat: i64,
    /// Ash.
    pub ash: i64,
}

impl Composition {
    /// Who published it.
    pub const SOURCE: Source = Source::UsdaSr26;

    pub(super) const fn of(ndb: u32, [water, protein, fat, ash]: [i64; 4]) -> Self {
        Self {
            ndb,
            water,
            protein,
            fat,
            ash,
        }
    }
}
