//! The units that hands count, and what one weighs.

use super::Fuel;
use crate::log::PitKind;
use serde::{Deserialize, Serialize};

/// What hands put on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum FuelUnit {
    /// A split of wood.
    Split,
    /// A chunk of wood, as large as a fist.
    Chunk,
    /// A chimney of charcoal.
    Chimney,
    /// A basket of charcoal.
    Basket,
    /// A hopper of pellets.
    Hopper,
}

impl FuelUnit {
    /// All of them.
    pub const ALL: [Self; 5] = [
        Self::Split,
        Self::Chunk,
        Self::Chimney,
        Self::Basket,
        Self::Hopper,
    ];

    /// What hands put on in such a pit, the usual first; none where it burns nothing.
    pub const fn of_pit(kind: PitKind) -> &'static [Self] {
        match kind {
            PitKind::StickBurner => &[Self::Split, Self::Chimney],
            PitKind::Kettle | PitKind::Drum | PitKind::Ceramic | PitKind::Cabinet => {
                &[Self::Chimney, Self::Basket, Self::Chunk]
            }
            PitKind::Pellet => &[Self::Hopper],
            PitKind::Electric => &[Self::Chunk],
        }
    }

    /// What one weighs, grams: common practice, no source. A pit's own value goes before it.
    pub const fn usual_g(self) -> i64 {
        match self {
            Self::Split => 800,
            Self::Chunk => 80,
            Self::Chimney => 1_800,
            Self::Basket => 4_500,
            Self::Hopper => 9_000,
        }
    }

    /// What it is of.
    pub const fn fuel(self) -> Fuel {
        match self {
            Self::Split | Self::Chunk => Fuel::Wood,
            Self::Chimney | Self::Basket => Fuel::Lump,
            Self::Hopper => Fuel::Pellets,
        }
    }

    /// Whether it keeps such a pit hot; a chunk on charcoal only smokes.
    pub const fn feeds(self, kind: PitKind) -> bool {
        match (self, kind) {
            (Self::Chunk, kind) => matches!(kind, PitKind::StickBurner),
            _ => true,
        }
    }
}
