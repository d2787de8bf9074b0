//! The records of what to do with food whose fire went out.

use crate::{
    ids::{CookId, PieceId, PitId},
    screens::{Button, Caution, Line, Link, Slip, Weight, records::records},
};
use serde::{Deserialize, Serialize};

records! {
    /// What to do with the food of a pit whose fire went out.
    FireOutScreen {
        /** In which cook. */ cook: CookId,
        /** Which pit. */ pit: PitId,
        /** Heading. */ title: String,
        /** How the pit stands. */ state: Line,
        /** What is taken for granted, and what is not known. */ lead: Vec<String>,
        /** Each meat on it, those that ask most first. */ meats: Vec<FireOutMeat>,
        /** That nothing is on it; empty where something is. */ none: String,
        /** The slip on which is written what was read now. */ slips: Vec<Slip>,
        /** The rule, in sentences. */ rule: Vec<String>,
        /** Cautions. */ cautions: Vec<Caution>,
        /** Where else to go. */ links: Vec<Link>,
        /** Until when this is true. */ until: i64,
    }
    /// One meat whose fire went out.
    FireOutMeat {
        /** Which one. */ piece: PieceId,
        /** What it is called. */ name: String,
        /** What to do with it. */ answer: String,
        /** What it must still reach afterwards. */ then: String,
        /** The last good reading, and what was read since. */ read: Vec<String>,
        /** How long nobody knows, against which limit, and who published it. */ why: String,
        /** How much it asks for an eye. */ weight: Weight,
        /** Throw it away; where it is over, go on past that. */ buttons: Vec<Button>,
    }
}
