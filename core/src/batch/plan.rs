//! What is kept of a cook's kitchen: each section as one entry, whole; of two, the later counts. Start at [`Batch`].
//!
//! These shapes, and those of the sums that they are made of (parts, salts, prices), lie in the log: they are never
//! changed. Weights of meats are no part of them: they are the meats' own, read when something is reckoned.

use super::{
    AlsoSalt, Appetite, AtHome, Basis, Extra, Grams, MopPart, NotABatch, Price, RubPart,
    SATURATED_PERMILLE,
    brine::{MEAT_PERMILLE_MAX, saturated_of_water},
    mop, portions,
    refused::{List, MEAT_G, What, counted, within},
    rub, shopping,
};
use crate::ids::PieceId;
use serde::{Deserialize, Serialize};

/// A section of the kitchen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum BatchKind {
    /// The rub.
    Rub,
    /// The brine.
    Brine,
    /// The mop.
    Mop,
    /// Who eats how much of what.
    Portions,
    /// What is bought.
    Shopping,
}

impl BatchKind {
    /// All of them, as a cook comes to them.
    pub const ALL: [Self; 5] = [
        Self::Rub,
        Self::Brine,
        Self::Mop,
        Self::Portions,
        Self::Shopping,
    ];
}

/// One section as it was written down.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "of")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Batch {
    /// The rub.
    Rub(RubPlan),
    /// The brine.
    Brine(BrinePlan),
    /// The mop.
    Mop(MopPlan),
    /// Who eats how much of what.
    Portions(PortionsPlan),
    /// What is bought.
    Shopping(ShoppingPlan),
}

macro_rules! plans {
    ($($(#[$doc:meta])* $name:ident { $($(#[$field_doc:meta])* $field:ident : $kind:ty),* $(,)? })*) => { $(
        $(#[$doc])*
        #[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
        #[cfg_attr(feature = "ffi", derive(uniffi::Record))]
        pub struct $name { $($(#[$field_doc])* pub $field: $kind),* }
    )* };
}

plans! {
    /// A rub.
    RubPlan {
        /** For these meats; none = all of the cook. */ pieces: Vec<PieceId>,
        /** Grams a kilogram of meat, 1 to 200. */ g_per_kg: i64,
        /** What the parts are parts of. */ basis: Basis,
        /** What is in it. */ parts: Vec<RubPart>,
        /** Salt that comes otherwise. */ also: Vec<AlsoSalt>,
    }
    /// A brine.
    BrinePlan {
        /** For these meats; none = all of the cook. */ pieces: Vec<PieceId>,
        /** The water, grams. */ water_g: Grams,
        /** What the salt is a share of. */ way: BrineWay,
        /** Thousandths. */ permille: i64,
    }
    /// A mop.
    MopPlan {
        /** What it is mixed of, by volume. */ parts: Vec<MopPart>,
        /** What stays in pot and brush, percent on top. */ spare_percent: i64,
        /** How long meats are kept wet from when the first is on, minutes; none = until the table. */ wet_min: Option<i64>,
    }
    /// Who eats how much of what.
    PortionsPlan {
        /** Adults. */ adults: i64,
        /** Children. */ children: i64,
        /** How hungry they are. */ appetite: Appetite,
        /** What is said of single meats; of the others, what is common. */ meats: Vec<PortionShare>,
    }
    /// What is said of one meat.
    PortionShare {
        /** Which one. */ piece: PieceId,
        /** Its part of what is eaten. */ share: i64,
        /** What is trimmed off, percent; none = what is common for the cut. */ trim_percent: Option<i64>,
    }
    /// What is bought beside what the sums ask for, what is at home, and what things cost.
    ShoppingPlan {
        /** Whatever else is needed. */ extras: Vec<Extra>,
        /** What is at home. */ at_home: Vec<AtHome>,
        /** What things cost. */ prices: Vec<Price>,
    }
}

/// What the salt of a brine is a share of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum BrineWay {
    /// Meat and water together, left until they are even.
    InTheMeat,
    /// The water.
    OfTheWater,
    /// The brine.
    OfTheBrine,
}

impl BrineWay {
    /// The most thousandths: what anybody eats, or what dissolves.
    pub const fn most(self) -> i64 {
        match self {
            Self::InTheMeat => MEAT_PERMILLE_MAX,
            Self::OfTheWater => saturated_of_water(),
            Self::OfTheBrine => SATURATED_PERMILLE,
        }
    }
}

impl Batch {
    /// Which section it is.
    pub const fn kind(&self) -> BatchKind {
        match self {
            Self::Rub(_) => BatchKind::Rub,
            Self::Brine(_) => BatchKind::Brine,
            Self::Mop(_) => BatchKind::Mop,
            Self::Portions(_) => BatchKind::Portions,
            Self::Shopping(_) => BatchKind::Shopping,
        }
    }

    /// Whether it can be meant, before anything is known of the meats.
    ///
    /// # Errors
    /// [`NotABatch`], as the sum of its section.
    pub fn check(&self) -> Result<(), NotABatch> {
        match self {
            Self::Rub(plan) => {
                rub::check_recipe(plan.g_per_kg, &plan.parts)?;
                rub::check_also(&plan.also)?;
                counted(List::Meats, plan.pieces.len(), 0..=200)
            }
            Self::Brine(plan) => {
                within(What::Water, plan.water_g.0, MEAT_G)?;
                let what = match plan.way {
                    BrineWay::InTheMeat => What::InTheMeat,
                    BrineWay::OfTheWater => What::OfTheWater,
                    BrineWay::OfTheBrine => What::OfTheBrine,
                };
                within(what, plan.permille, 1..=plan.way.most())?;
                counted(List::Meats, plan.pieces.len(), 0..=200)
            }
            Self::Mop(plan) => {
                within(What::Spare, plan.spare_percent, 0..=100)?;
                let ahead = plan.wet_min.unwrap_or(1);
                within(What::Ahead, ahead, 1..=mop::AHEAD_MIN_MAX)?;
                mop::check_parts(&plan.parts)
            }
            Self::Portions(plan) => {
                portions::check_people(plan.adults, plan.children)?;
                counted(List::Meats, plan.meats.len(), 0..=200)?;
                let mut meats = plan.meats.iter();
                meats.try_for_each(|one| portions::check_share("", one.share, one.trim_percent))
            }
            Self::Shopping(plan) => {
                shopping::check_lists(&plan.extras, &plan.at_home, &plan.prices)
            }
        }
    }

    /// The same for another cook: what was said of meats and of a larder stays with this one.
    pub fn for_another(&self) -> Self {
        match self.clone() {
            Self::Rub(plan) => Self::Rub(RubPlan {
                pieces: vec![],
                also: vec![],
                ..plan
            }),
            Self::Brine(plan) => Self::Brine(BrinePlan {
                pieces: vec![],
                ..plan
            }),
            Self::Portions(plan) => Self::Portions(PortionsPlan {
                meats: vec![],
                ..plan
            }),
            Self::Shopping(plan) => Self::Shopping(ShoppingPlan {
                at_home: vec![],
                ..plan
            }),
            Self::Mop(plan) => Self::Mop(plan),
        }
    }

    /// The names in it, to be cleaned where they come in.
    pub(crate) fn names_mut(&mut self) -> Vec<&mut String> {
        match self {
            Self::Rub(plan) => plan.parts.iter_mut().map(|part| &mut part.name).collect(),
            Self::Mop(plan) => plan.parts.iter_mut().map(|part| &mut part.name).collect(),
            Self::Shopping(plan) => {
                let extras = plan.extras.iter_mut().map(|one| &mut one.name);
                let home = plan.at_home.iter_mut().map(|one| &mut one.name);
                let prices = plan.prices.iter_mut().map(|one| &mut one.name);
                extras.chain(home).chain(prices).collect()
            }
            Self::Brine(_) | Self::Portions(_) => vec![],
        }
    }

    /// The meats it names.
    pub fn pieces(&self) -> Vec<PieceId> {
        match self {
            Self::Rub(plan) => plan.pieces.clone(),
            Self::Brine(plan) => plan.pieces.clone(),
            Self::Portions(plan) => plan.meats.iter().map(|meat| meat.piece).collect(),
            Self::Mop(_) | Self::Shopping(_) => vec![],
        }
    }
}
