//! The records of the pits.

use crate::{
    ids::{CookId, PieceId, PitId},
    screens::{Button, Caution, Line, Link, PitChoice, records::records},
};
use serde::{Deserialize, Serialize};

records! {
    /// What sits where on each pit, and how each pit stands.
    PitsScreen {
        /** In which cook. */ cook: CookId,
        /** Heading. */ title: String,
        /** The pits. */ pits: Vec<PitCard>,
        /** What to say where there is none. */ none: String,
        /** All pits a meat can go to. */ choices: Vec<PitChoice>,
        /** The labels of the form that says what sits where. */ labels: PitsLabels,
        /** Where else to go. */ links: Vec<Link>,
        /** Cautions. */ cautions: Vec<Caution>,
        /** Until when this is true. */ until: i64,
    }
    /// One pit.
    PitCard {
        /** Which one. */ pit: PitId,
        /** Its temperature and its band; a tap leads to what to try where it is not as it should be. */ line: Line,
        /** How long it may be left, when it was last fed, opened, seen to. */ facts: Vec<Line>,
        /** What sits on it, by spot. */ meats: Vec<PlacedMeat>,
        /** Levels and spots to choose from, in words. */ spots: Vec<String>,
        /** All one place on, all turned, fed, vent, opened. */ buttons: Vec<Button>,
        /** Its opening, its troubles. */ links: Vec<Link>,
    }
    /// A meat where it sits.
    PlacedMeat {
        /** Which one. */ piece: PieceId,
        /** What it is called. */ name: String,
        /** Level or spot, in words; empty = not said. */ spot: String,
        /** The same for who reads it: "spot not said". */ state: String,
    }
    /// The labels of the form that says what sits where.
    PitsLabels {
        /** Heading. */ heading: String,
        /** One sentence on it. */ lead: String,
        /** Label of the pit. */ pit: String,
        /** Label of the level or spot. */ spot: String,
        /** The button. */ submit: String,
    }
}
