//! The records of the run sheet.

use crate::{
    ids::CookId,
    screens::{Button, Caution, Line, Link, Place, Slip, Weight, records::records},
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
        /** Why it no longer fits, and the way to a new one; none where it does. */ #[serde(default)] fits: Option<SheetFits>,
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
    /// That the accepted sheet no longer fits.
    SheetFits {
        /** That it does not. */ heading: String,
        /** Why, a sentence each. */ says: Vec<String>,
        /** The way to a new one, which shows what it would change. */ see: Link,
        /** Keeps the sheet: it is not told again until something further no longer fits. */ keep: Button,
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
        /** The link to a plan for guests who come an hour late. */ hour_later: String,
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
    /// Planning a cook: what is said for the plan, and what comes of it.
    PlanScreen {
        /** Of which cook. */ cook: CookId,
        /** Heading. */ title: String,
        /** What this is. */ lead: String,
        /** What is known already: the cook, and when it is on the table. */ about: Vec<String>,
        /** Why the accepted sheet no longer fits; none where it does, or there is none. */ #[serde(default)] fits: Option<SheetFits>,
        /** Why there is no plan, then each single change that would make one; empty where there is one, or none was asked for. */ refused: Vec<String>,
        /** The plan, then up to three others. */ proposals: Vec<PlanProposal>,
        /** What the fields hold. */ typed: PlanTyped,
        /** The form on which is said what is served when, for a cook that is not served at one time; none where no hour is known. */ #[serde(default)] courses: Option<Slip>,
        /** The labels of the form. */ labels: PlanLabels,
        /** Where else to go. */ links: Vec<Link>,
        /** Cautions. */ cautions: Vec<Caution>,
        /** Until when this is true. */ until: i64,
    }
    /// One plan that can be accepted.
    PlanProposal {
        /** Which it is. */ heading: String,
        /** When it is on the table by it. */ serve: String,
        /** The chance of being ready by then. */ chance: String,
        /** What it gains and costs beside the first. */ says: Vec<String>,
        /** What it changes of the accepted plan; empty where there is none. */ changes: Vec<Line>,
        /** Its jobs, day by day. */ days: Vec<SheetDay>,
        /** Accepts it whole. */ accept: Button,
    }
    /// What a person types for a plan.
    #[derive(Default)]
    PlanTyped {
        /** Whether a plan is asked for; if not, the fields are filled with what is known. */ go: bool,
        /** How much later than said the guests come, minutes. */ later_min: i64,
        /** How many pairs of hands: 1 to 3. */ hands: String,
        /** Asleep from, "22:00"; blank = no sleep is kept. */ sleep_from: String,
        /** Asleep to, "06:00". */ sleep_to: String,
        /** Somebody has the watch at night. */ watched: bool,
        /** There is a cooler to hold meat in. */ cooler: bool,
        /** There is an oven to hold meat in. */ oven: bool,
        /** How many minutes late it may be at the most; blank = none. */ late: String,
    }
    /// The labels of the plan page.
    PlanLabels {
        /** Label of the hands. */ hands: String,
        /** Label of when sleep begins. */ sleep_from: String,
        /** Label of when it ends. */ sleep_to: String,
        /** Label of the watch. */ watched: String,
        /** Label of the cooler. */ cooler: String,
        /** Label of the oven. */ oven: String,
        /** Label of how late it may be. */ late: String,
        /** The button that asks for a plan. */ go: String,
        /** The link to a plan for guests who come an hour late. */ hour_later: String,
        /** Heading of the jobs of a plan. */ jobs: String,
        /** Heading of what a plan changes. */ changes: String,
        /** The link that leaves all as it is. */ refuse: String,
    }
}
