//! The records of the hours ahead of one meat.

use crate::screens::{Button, records::records};
use serde::{Deserialize, Serialize};

records! {
    /// The hours ahead of one meat: a forecast, which nothing rings or judges by.
    AheadCard {
        /** Heading. */ heading: String,
        /** When it will likely be ready, with how sure that is. */ ready: String,
        /** From when a check is worth its opening. */ check: Option<String>,
        /** Puts its next check there, where it would ring sooner. */ accept: Option<Button>,
        /** Where it stands still. */ stall: Option<String>,
        /** Heading of the choices. */ choices_heading: String,
        /** What would change it. */ choices: Vec<AheadChoice>,
        /** What was left out, how old it is, that it is rough, and that it is no check. */ notes: Vec<String>,
    }
    /// Something that could be done, and when it would then be ready.
    AheadChoice {
        /** What. */ label: String,
        /** When it would then be ready. */ ready: String,
        /** How much sooner or later that is. */ shift: String,
    }
}
