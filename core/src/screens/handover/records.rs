//! The record of the watch.

use crate::{
    ids::CookId,
    screens::{Button, Line, Link, records::records},
};
use serde::{Deserialize, Serialize};

records! {
    /// Who has the watch, and the line with which it is handed over.
    WatchScreen {
        /** In which cook. */ cook: CookId,
        /** Heading. */ title: String,
        /** Who has it, who sleeps. */ held: Vec<String>,
        /** Whether who sees this has it: then the line is left for whoever comes next. */ is_mine: bool,
        /** What the form does, in one sentence. */ lead: String,
        /** Label of the line. */ label: String,
        /** The line as far as it is known, to be changed or kept. */ note: String,
        /** The button: take the watch, or leave the line. */ submit: String,
        /** Sleep and waking. */ buttons: Vec<Button>,
        /** How the pits stand. */ pits: Vec<Line>,
        /** Who had it before, latest first. */ past: Vec<Line>,
        /** Heading of those. */ past_heading: String,
        /** Where else to go. */ links: Vec<Link>,
        /** Until when this is true. */ until: i64,
    }
}
