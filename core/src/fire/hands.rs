//! What hands do at a fire beside feeding it.

use super::choices::choices;

choices! {
    /// Where air goes.
    Vent {
        /// In, below or at the firebox.
        Lower,
        /// Out, above or at the chimney.
        Upper,
    }
    /// What was done at the fire.
    FireDid {
        /// It was lit, or switched on.
        Lit,
        /// The coals glow, or the wood burns clear.
        CoalsReady,
        /// The water pan was filled.
        Water,
        /// Ash was taken out.
        Ash,
        /// Grease was emptied.
        Grease,
        /// It was shut down.
        ShutDown,
    }
}

/// A vent is open by quarters: 0 is shut, 4 is open.
pub const VENT_QUARTERS: std::ops::RangeInclusive<i64> = 0..=4;
/// Quarters of a unit put on at once: a quarter to a hundred. Common practice, no source.
pub const FED_QUARTERS: std::ops::RangeInclusive<i64> = 1..=400;
/// What one unit may weigh, grams. Common practice, no source.
pub const UNIT_GRAMS: std::ops::RangeInclusive<i64> = 10..=50_000;
