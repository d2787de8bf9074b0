//! Salt for a brine. Start at [`brine`]. This is `slowbend sum brine`.
//!
//! "A five percent brine" is said of two things: salt by the weight of the water, and salt by the weight of the brine,
//! water and salt together. The input says which, and the answer gives both.

use super::{
    Grams, Milligrams, NotABatch,
    amount::up,
    refused::{MEAT_G, What, within},
};
use crate::safety::{CautionKind, Doing, cautions_at};
use serde::{Deserialize, Serialize};

/// The most salt that dissolves, in thousandths of the weight of the brine: 26.3 % at 20 °C (357 g a liter of water, read
/// in an encyclopedia's article on saline water; a hydrometer page gives 26.5 % at 60 to 77 °F).
pub const SATURATED_PERMILLE: i64 = 263;
/// The same by the weight of the water: 356.
pub(super) const fn saturated_of_water() -> i64 {
    SATURATED_PERMILLE * 1000 / (1000 - SATURATED_PERMILLE)
}

/// The most salt in meat that is taken for meant, in thousandths: 5 %. Common practice is 0.5 to 1.5 %, no source.
pub const MEAT_PERMILLE_MAX: i64 = 50;

/// What is to be brined, and how salty.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct BrineInput {
    /// The water, grams (a milliliter is a gram to a fifth of a percent): 20 to 500,000.
    pub water_g: Grams,
    /// How salty.
    pub wanted: Wanted,
}

/// How salty a brine is to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Wanted {
    /// So that meat and water end equally salty when the meat is left in it long enough: equilibrium.
    InTheMeat {
        /// The meat, grams, 20 to 500,000; all of it counts as if it were water, as is common practice.
        meat_g: Grams,
        /// The salt aimed at, thousandths of meat, water and salt together, 1 to 50.
        permille: i64,
    },
    /// Salt by the weight of the water.
    OfTheWater {
        /// Thousandths, from 1 to what dissolves (356).
        permille: i64,
    },
    /// Salt by the weight of the brine.
    OfTheBrine {
        /// Thousandths, from 1 to what dissolves (263).
        permille: i64,
    },
}

/// A brine.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct BrineAnswer {
    /// The salt to weigh, rounded up to the milligram.
    pub salt_mg: Milligrams,
    /// How strong it is at first: salt by the weight of the water, in hundredths of a percent.
    pub of_the_water: i64,
    /// The same by the weight of the brine, in hundredths of a percent.
    pub of_the_brine: i64,
    /// What to heed: brine that held raw meat.
    pub cautions: Vec<CautionKind>,
}

/// How much salt goes into the water.
///
/// Salt of p thousandths of a whole to which w grams belong beside it is `w × p ÷ (1000 − p)`: by definition.
///
/// # Errors
/// [`NotABatch`] for a number out of range and for more salt than dissolves.
pub fn brine(input: &BrineInput) -> Result<BrineAnswer, NotABatch> {
    let water = input.water_g;
    within(What::Water, water.0, MEAT_G)?;
    let salt = salt(water, input.wanted)?;
    let water = water.milligrams();
    if salt.0 > up(water.0, SATURATED_PERMILLE, 1000 - SATURATED_PERMILLE) {
        return Err(NotABatch::Saturated);
    }
    Ok(BrineAnswer {
        salt_mg: salt,
        of_the_water: nearest(salt, water),
        of_the_brine: nearest(salt, salt + water),
        cautions: cautions_at(Doing::Preparing),
    })
}

fn salt(water: Grams, wanted: Wanted) -> Result<Milligrams, NotABatch> {
    let beside = |all: Grams, permille: i64| up(all.milligrams().0, permille, 1000 - permille);
    Ok(Milligrams(match wanted {
        Wanted::InTheMeat { meat_g, permille } => {
            within(What::Meat, meat_g.0, MEAT_G)?;
            within(What::InTheMeat, permille, 1..=MEAT_PERMILLE_MAX)?;
            beside(meat_g + water, permille)
        }
        Wanted::OfTheWater { permille } => {
            within(What::OfTheWater, permille, 1..=1000)?;
            water.0 * permille
        }
        Wanted::OfTheBrine { permille } => {
            within(What::OfTheBrine, permille, 1..=999)?;
            beside(water, permille)
        }
    }))
}

/// Hundredths of a percent, to the nearest.
fn nearest(part: Milligrams, whole: Milligrams) -> i64 {
    (part.0 * 10_000 + whole.0 / 2) / whole.0
}
