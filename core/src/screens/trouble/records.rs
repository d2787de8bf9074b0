//! The records of what to try when the fire is not as it should be.

use crate::{
    ids::{CookId, PitId},
    screens::{Button, Caution, Line, Link, records::records},
};
use serde::{Deserialize, Serialize};

/// What can be wrong with a fire.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum TroubleKind {
    /// Fat burns, flames reach the meat.
    FlareUp,
    /// The pit is below its band.
    Cold,
    /// The pit is above its band.
    Hot,
    /// It falls.
    Falling,
    /// Its probe says nothing.
    Silent,
    /// The smoke is thick.
    Smoke,
    /// Rain or wind.
    Rain,
}

records! {
    /// What to try when the fire of a pit is not as it should be, for the kind of pit.
    TroubleScreen {
        /** In which cook. */ cook: CookId,
        /** Which pit. */ pit: PitId,
        /** Heading. */ title: String,
        /** How the pit stands. */ state: Line,
        /** What the list is, in one sentence. */ lead: String,
        /** The troubles, those that are known to be there first. */ troubles: Vec<TroubleCard>,
        /** Said above the steps: where they come from. */ source: String,
        /** Heading of what it means for the food. */ food: String,
        /** Heading of what was done, for the buttons. */ did: String,
        /** Fed, vent, seen to. */ buttons: Vec<Button>,
        /** Where else to go. */ links: Vec<Link>,
        /** Until when this is true. */ until: i64,
    }
    /// One trouble.
    TroubleCard {
        /** Which one. */ trouble: TroubleKind,
        /** What it is called: what a person sees. */ name: String,
        /** Whether readings show it now. */ is_now: bool,
        /** What to try, in this order. */ steps: Vec<String>,
        /** Cautions of the steps. */ cautions: Vec<Caution>,
        /** What it means for the food. */ food: Vec<Caution>,
    }
}
