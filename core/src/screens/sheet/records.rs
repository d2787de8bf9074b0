//! The records of the run sheet.

use crate::{
    ids::CookId,
    screens::{Button, Caution, Line, Link, Place, Weight, records::records},
};
use serde::{Deserialize, Serialize};

records! {
    /// The run sheet of a cook: the accepted plan as a list of times and jobs.
    RunSheetScreen {
        /** Of which cook. */ cook: CookId,
        /** Heading: what the cook is called. */ title: String,
        /** When it is on the table and for how many, the chance of being ready, who accepted the plan. */ about: Vec<String>,
        /** The jobs, day by day. */ days: Vec<SheetDay>,
        /** That there is no sheet yet, and what to do. */ none: Option<String>,
        /** What is done next, with its buttons; none where all is done. */ next: Option<SheetLine>,
        /** The plan that was replaced or dropped: what it would change, and one button to take it. */ other: Option<OtherPlan>,
        /** Going on without the plan; asked about first. */ drop: Option<Button>,
        /** The sheet as plain words, to be sent. */ text: String,
        /** The sheet as a calendar file (RFC 5545); empty where there is none. */ calendar: String,
        /** A name for that file. */ calendar_name: String,
        /** Labels. */ labels: SheetLabels,
        /** Where else to go. */ links: Vec<Link>,
        /** Cautions. */ cautions: Vec<Caution>,
        /** Until when this is true. */ until: i64,
    }
    /// One day of a sheet.
    SheetDay { /** Its heading. */ heading: String, /** Its jobs, by time. */ lines: Vec<SheetLine> }
    /// One job.
    SheetLine {
        /** When, milliseconds since 1970. */ at: i64,
        /** When, to be read. */ time: String,
        /** What is done, on what. */ job: String,
        /** Why then; may be empty. */ why: String,
        /** Done when, left out, late, or how long until then; may be empty. */ state: String,
        /** Whether it is done or left out. */ ticked: bool,
        /** How much it asks for an eye. */ weight: Weight,
        /** What can be done about it now. */ buttons: Vec<Button>,
        /** Where it leads. */ link: Option<Place>,
    }
    /// The plan that was replaced or dropped.
    OtherPlan {
        /** Whose it was, and when. */ about: String,
        /** What taking it would change. */ changes: Vec<Line>,
        /** Takes it. */ take: Button,
    }
    /// The labels of the page.
    SheetLabels {
        /** The heading of what is next. */ next: String,
        /** The heading of the other plan. */ other: String,
        /** The link to the calendar file. */ calendar: String,
        /** What the calendar file is for. */ calendar_how: String,
        /** The label of the sheet as words. */ text: String,
        /** What printing gives. */ print: String,
        /** The heading of the hand-out. */ hand_out: String,
        /** The link to the cook card. */ card: String,
    }
    /// One sheet for each student, counted back from each one's own serving time.
    HandOutScreen {
        /** Of which cook. */ cook: CookId,
        /** Heading: what the cook is called. */ title: String,
        /** What this is. */ lead: String,
        /** Label of the list of students. */ label: String,
        /** How the list is written. */ how: String,
        /** The button that makes them. */ make: String,
        /** What was typed. */ typed: String,
        /** Why the list was not taken. */ refused: Option<String>,
        /** A sheet for each. */ sheets: Vec<StudentSheet>,
        /** What stands on each. */ minimums: Vec<String>,
        /** Cautions. */ cautions: Vec<Caution>,
        /** Where else to go. */ links: Vec<Link>,
        /** Until when this is true. */ until: i64,
    }
    /// The sheet of one student.
    StudentSheet {
        /** Whose. */ name: String,
        /** When it is on their table. */ serve: String,
        /** The jobs, day by day. */ days: Vec<SheetDay>,
    }
}
