//! The records of the kitchen and of its sheet.

use crate::{
    ids::CookId,
    screens::{Button, Caution, Link, Slip, records::records},
};
use serde::{Deserialize, Serialize};

records! {
    /// The kitchen of a cook: what is mixed, shared out and bought.
    KitchenScreen {
        /** Of which cook. */ cook: CookId,
        /** Heading. */ title: String,
        /** What this screen is, in a line. */ lead: String,
        /** Its sections, in the order of the work. */ parts: Vec<KitchenPart>,
        /** Where else to go. */ links: Vec<Link>,
        /** The label of the way to the sheet that is printed. */ to_sheet: String,
        /** Until when this is true. */ until: i64,
    }
    /// One section.
    KitchenPart {
        /** Its name: that of its slip. */ part: String,
        /** Heading. */ heading: String,
        /** What it is reckoned for, or what is lacking. */ lead: String,
        /** What is weighed, mixed, shared out or bought. */ groups: Vec<KitchenGroup>,
        /** What follows from it: salt, strength, cost, what is left out. */ notes: Vec<String>,
        /** What asks for an eye among that: too much salt, too little meat. */ flags: Vec<String>,
        /** Cautions. */ cautions: Vec<Caution>,
        /** Who wrote it down and when; empty = nobody did. */ by: String,
        /** The same as last time. */ buttons: Vec<Button>,
        /** What is written down here, filled in as it stands. */ slips: Vec<Slip>,
    }
    /// What belongs together: one pot, one list.
    KitchenGroup {
        /** Heading; may be empty. */ heading: String,
        /** Its lines. */ lines: Vec<KitchenLine>,
    }
    /// One line.
    KitchenLine {
        /** What it is. */ name: String,
        /** How much, in the viewer's units. */ amount: String,
        /** The same another way, or why; may be empty. */ detail: String,
    }
    /// The kitchen on one sheet of paper.
    KitchenSheet {
        /** Of which cook. */ cook: CookId,
        /** What it is called. */ title: String,
        /** When, how many, which meats. */ about: Vec<String>,
        /** The sections that have something to say, without their forms. */ parts: Vec<KitchenPart>,
        /** What is to be done, in order, each with a box to tick. */ jobs: KitchenGroup,
        /** How it is printed. */ how: String,
        /** Where else to go. */ links: Vec<Link>,
        /** Until when this is true. */ until: i64,
    }
}
