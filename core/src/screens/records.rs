//! The records of all screens. Text is ready to show in the viewer's language and units.

use crate::{
    acts::{Act, Undo},
    checks::Cut,
    ids::{CookId, PieceId, PitId},
    log::EntryKey,
};
use serde::{Deserialize, Serialize};

macro_rules! records {
    ($($(#[$doc:meta])* $name:ident { $($(#[$field_doc:meta])* $field:ident : $kind:ty),* $(,)? })*) => { $(
        $(#[$doc])*
        #[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
        #[cfg_attr(feature = "ffi", derive(uniffi::Record))]
        pub struct $name { $($(#[$field_doc])* pub $field: $kind),* }
    )* };
}
pub(super) use records;

/// How much a line asks for a person's eye. Never told by color alone: `Line::state` says it in words.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Weight {
    /// Must be seen to: safety, fire, pull point.
    Wake,
    /// Is due.
    Call,
    /// Comes soon.
    Soon,
    /// Is well.
    Calm,
    /// Was taken back, or is over.
    Faint,
}

/// What a button is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Tone {
    /// The one that is meant. Where one touch must not do it, `Button::confirm` asks first.
    Main,
    /// Another one.
    Plain,
    /// One that is asked about before it is done: `Button::confirm` holds the question.
    Grave,
}

/// Where a link leads.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "to")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Place {
    /// The first screen.
    Start,
    /// The screen of the propped phone.
    Now {
        /// Of which cook.
        cook: CookId,
    },
    /// One meat.
    Piece {
        /// Which one.
        piece: PieceId,
    },
    /// Trying one meat.
    Check {
        /// Which one.
        piece: PieceId,
    },
    /// What happened.
    Timeline {
        /// In which cook.
        cook: CookId,
    },
    /// What can be written down.
    Write {
        /// In which cook.
        cook: CookId,
    },
    /// Pits, thermometers and habits.
    Settings,
    /// Readings with their chart.
    Readings {
        /// Whose.
        of: super::ReadingsOf,
    },
    /// Checking thermometers.
    Thermometers,
    /// One opening of a pit.
    Opening {
        /// In which cook.
        cook: CookId,
        /// Of which pit.
        pit: PitId,
    },
    /// What sits where on each pit.
    Pits {
        /// In which cook.
        cook: CookId,
    },
    /// What is not meat.
    Dishes {
        /// Of which cook.
        cook: CookId,
    },
    /// What is mixed, shared out and bought.
    Kitchen {
        /// In which cook.
        cook: CookId,
    },
    /// The same on one sheet of paper.
    KitchenSheet {
        /// Of which cook.
        cook: CookId,
    },
    /// The run sheet.
    RunSheet {
        /// Of which cook.
        cook: CookId,
    },
    /// Planning a cook.
    Plan {
        /// Which one.
        cook: CookId,
    },
    /// Who has the watch.
    Watch {
        /// In which cook.
        cook: CookId,
    },
    /// The fire of a pit: what to put on and do, when to feed next, its smoke.
    Fire {
        /// In which cook.
        cook: CookId,
        /// Of which pit.
        pit: PitId,
    },
    /// What to try when the fire is not as it should be.
    Trouble {
        /// In which cook.
        cook: CookId,
        /// Of which pit.
        pit: PitId,
    },
    /// What to do with the food whose fire went out.
    FireOut {
        /// In which cook.
        cook: CookId,
        /// Of which pit.
        pit: PitId,
    },
    /// The temperatures that were read.
    TempLog {
        /// In which cook.
        cook: CookId,
    },
    /// A sheet for each student.
    HandOut {
        /// Of which cook.
        cook: CookId,
    },
    /// The card of a cook.
    Card {
        /// Of which one.
        cook: CookId,
    },
    /// Beginning a cook as an earlier one was.
    Again {
        /// As which one.
        cook: CookId,
    },
    /// Beginning a cook from a card that was handed over.
    Cards,
    /// All cuts.
    Cuts,
    /// What is known of one cut.
    Cut {
        /// Which one.
        cut: Cut,
    },
}

records! {
    /// Something to tap.
    Button {
        /// What it says.
        label: String,
        /// What it does.
        act: Act,
        /// What it is.
        tone: Tone,
        /// The question to ask first, if one must be asked.
        confirm: Option<String>,
    }
    /// Somewhere to go.
    Link { /** What it says. */ label: String, /** Where it leads. */ place: Place }
    /// A caution where the act happens.
    Caution { /** What to heed. */ text: String, /** Who says so. */ source: String, /** How one that is told once is put away for good. */ #[serde(default)] dismiss: Option<Button> }
    /// Something to be told once.
    Notice { /** What it says. */ text: String, /** How to put it away, if it can be. */ dismiss: Option<Button> }
    /// One line about one thing.
    Line {
        /// What it is called.
        name: String,
        /// How it stands, in words.
        state: String,
        /// The rest, smaller.
        detail: String,
        /// How much it asks for an eye.
        weight: Weight,
        /// Where a tap on it leads.
        link: Option<Place>,
    }
    /// The first screen.
    StartScreen {
        /** What it is called. */ title: String,
        /** One sentence for who is here the first time. */ lead: String,
        /** Cooks under way, soonest due first. */ open: Vec<Line>,
        /** Past cooks, latest first, one page. */ past: Vec<Line>,
        /** The cursor of the next page of past cooks. */ past_next: Option<i64>,
        /** What past cooks taught of pits and cuts. */ #[serde(default)] learned: Vec<Line>,
        /** The cuts that can be chosen. */ cuts: Vec<CutChoice>,
        /** The pits that are known. */ pits: Vec<PitChoice>,
        /** Warnings and merges to be told. */ notices: Vec<Notice>,
        /** The labels of the form that starts a cook. */ form: StartForm,
        /** The shorter ways to begin: as the last cook, from a card; and all cuts. */ #[serde(default)] links: Vec<Link>,
        /** Until when this is true. */ until: i64,
    }
    /// The labels of the form that starts a cook.
    StartForm {
        /** Heading. */ heading: String,
        /** Label of the name. */ name: String,
        /** Label of the serving time. */ serve: String,
        /** Label of how many eat. */ people: String,
        /** Label of the meats. */ meats: String,
        /** Label of a meat's weight, with the unit. */ weight: String,
        /** Label of the pit. */ pit: String,
        /** The button. */ start: String,
        /** The button for the demo. */ demo: String,
        /** What the demo is. */ demo_lead: String,
    }
    /// A cut to choose.
    CutChoice { /** Which one. */ cut: Cut, /** What it is called. */ name: String, /** One line on it. */ detail: String }
    /// All cuts, or those that were searched for.
    CutsScreen {
        /** Heading. */ title: String,
        /** One sentence on it. */ lead: String,
        /** Label of the field for a name. */ find: String,
        /** The button that searches. */ search: String,
        /** The link to all cuts. */ all: String,
        /** What is sought. */ sought: String,
        /** The cuts found, the nearest first. */ cuts: Vec<CutChoice>,
        /** That none is found, and what to do. */ none: Option<String>,
        /** Until when this is true. */ until: i64,
    }
    /// One cut: what is known of it.
    CutScreen {
        /** Which one. */ cut: Cut,
        /** What it is called. */ title: String,
        /** Its other names. */ also: String,
        /** What it is. */ about: String,
        /** Pit, time, done, minimum, wetting, wrap, rest, hold. */ facts: Vec<CutFact>,
        /** Heading of the tests. */ tests_heading: String,
        /** The tests, in the order to do them. */ tests: Vec<CutTest>,
        /** Heading of what goes wrong. */ wrong_heading: String,
        /** What goes wrong. */ wrong: String,
        /** Heading of what it is made of. */ made_of_heading: String,
        /** Water, protein, fat, ash. */ made_of: Vec<CutFact>,
        /** Cautions. */ cautions: Vec<Caution>,
        /** The link to all cuts. */ all: String,
        /** Until when this is true. */ until: i64,
    }
    /// One value with where it comes from.
    CutFact {
        /** What it is called. */ name: String,
        /** The value. */ value: String,
        /** What it means; empty where it says itself. */ how: String,
        /** Who says so, or that nobody does. */ source: String,
    }
    /// One test of a cut, to be read.
    CutTest {
        /** What it is called. */ name: String,
        /** How it is done. */ how: String,
        /** What can come of it. */ outcomes: Vec<CutOutcome>,
        /** Where it is read; empty where it is no temperature. */ spots: Vec<String>,
    }
    /// One outcome of a test and what it means for the cut.
    CutOutcome { /** What is seen. */ label: String, /** What it means. */ means: String }
    /// A pit to choose.
    PitChoice { /** Which one. */ pit: PitId, /** What it is called. */ name: String, /** One line on it. */ detail: String }
    /// The one next thing, huge.
    Headline {
        /** The verb: one to four words. */ verb: String,
        /** On what. */ what: String,
        /** When, as a countdown or "now". */ when: String,
        /** When it is due, milliseconds since 1970; none = nothing is. */ due: Option<i64>,
        /** Why, in one line. */ why: String,
        /** How much it asks for an eye. */ weight: Weight,
        /** Did it, later, not this time. */ buttons: Vec<Button>,
        /** Where more is to be done about it. */ link: Option<Link>,
        /** The cautions that belong to this act. */ cautions: Vec<Caution>,
        /** What to say aloud. */ speech: String,
    }
    /// Now: the screen of a propped phone.
    Pitside {
        /** The cook. */ cook: CookId,
        /** What it is called. */ title: String,
        /** The clock, large. */ clock: String,
        /** How long until it is on the table. */ serve: String,
        /** The one next thing. */ now: Headline,
        /** What comes after, in order. */ next: Vec<Line>,
        /** The meats, worst first, those that fit. */ meats: Vec<Line>,
        /** Each of these meats in few letters, for a line that is read at two meters: "14 min", "late", "Done". */ #[serde(default)] briefs: Vec<String>,
        /** The rest, counted, if any. */ rest: Option<String>,
        /** How the rest is counted where fewer fit: the first for one meat left out, the next for two, and so on. */ #[serde(default)] counts: Vec<String>,
        /** The rest, in the same order, to be listed once it is asked for. */ #[serde(default)] others: Vec<Line>,
        /** The pits. */ pits: Vec<Line>,
        /** Who has the watch, who sleeps. */ watch: Vec<String>,
        /** Acts that are always at hand: fed the fire, opened, sleep, watch. */ more: Vec<Button>,
        /** Where else to go. */ links: Vec<Link>,
        /** The last act, to be taken back. */ undo: Option<Undo>,
        /** Warnings and merges to be told. */ notices: Vec<Notice>,
        /** Until when this is true. */ until: i64,
    }
    /// Before you sleep: what the core knows of the night ahead.
    NightScreen {
        /** The pits, and whether their probes are heard. */ pits: Vec<Line>,
        /** The probes that sit somewhere, and what they said last. */ #[serde(default)] probes: Vec<Line>,
        /** What is known to wake, soonest first. */ wakes: Vec<Line>,
        /** How long each pit may be left. */ alone: Vec<Line>,
        /** Until when this is true. */ until: i64,
    }
    /// One meat.
    PieceScreen {
        /** Which one. */ piece: PieceId,
        /** Its cook. */ cook: CookId,
        /** Its cut, of which there is a screen. */ cut: Cut,
        /** What it is called. */ title: String,
        /** Cut, weight, what was done to it. */ about: String,
        /** Where it is and since when. */ state: String,
        /** What is next for it and why. */ next: Vec<Line>,
        /** The hours ahead, where they are forecast. */ #[serde(default)] ahead: Option<super::AheadCard>,
        /** Facts: pit, cadence, wrap, last wetting, pull point. */ facts: Vec<Line>,
        /** Its verdict in words. */ verdict: VerdictText,
        /** Heading of its safety. */ #[serde(default)] safety_heading: String,
        /** The rule, what readings come to, the clocks, what was gone past, each with who says so. */ #[serde(default)] safety: Vec<Line>,
        /** What was found and when. */ checks: Vec<Line>,
        /** Stages it can go to, and other acts. */ buttons: Vec<Button>,
        /** What else can be said about it. */ #[serde(default)] slips: Vec<super::Slip>,
        /** Where else to go. */ links: Vec<Link>,
        /** Cautions. */ cautions: Vec<Caution>,
        /** Until when this is true. */ until: i64,
    }
    /// A verdict in words.
    VerdictText {
        /** Done, not yet, cannot say. */ headline: String,
        /** Why, line by line. */ reasons: Vec<String>,
        /** The safety minimum and whether it was shown. */ safety: String,
        /** When to check next, if so. */ next: Option<String>,
        /** How much it asks for an eye. */ weight: Weight,
        /** What was not checked: a thermometer, an update. */ doubts: Vec<String>,
    }
    /// Trying one meat.
    CheckScreen {
        /** Which one. */ piece: PieceId,
        /** Its cook. */ cook: CookId,
        /** Its cut, of which there is a screen. */ cut: Cut,
        /** Heading. */ title: String,
        /** The tests, in the order to do them. */ tests: Vec<TestForm>,
        /** Thermometers to choose from. */ thermometers: Vec<ThermometerChoice>,
        /** The label of the button that records the pass. */ submit: String,
        /** What the checks so far say. */ verdict: VerdictText,
        /** Where else to go. */ links: Vec<Link>,
        /** Cautions. */ cautions: Vec<Caution>,
        /** Until when this is true. */ until: i64,
    }
    /// One test with how to do it and its possible outcomes.
    TestForm {
        /** A name for form fields, unique on the screen. */ field: String,
        /** What it is called. */ name: String,
        /** How it is done. */ how: String,
        /** What can come of it. */ outcomes: Vec<OutcomeChoice>,
        /** For a temperature: the spots, each a number to type. */ spots: Vec<SpotField>,
    }
    /// One outcome to choose.
    OutcomeChoice {
        /** What it says. */ label: String,
        /** What it means. */ means: String,
        /** The result that it records, as JSON of `TestResult`. */ value: String,
    }
    /// One spot where a temperature is taken.
    SpotField { /** A name for form fields. */ field: String, /** The spot in words. */ name: String, /** The spot as recorded. */ spot: String, /** The unit's sign. */ unit: String }
    /// A thermometer to choose.
    ThermometerChoice { /** Its id. */ id: String, /** What it is called. */ name: String, /** When it was checked and by how much it is off. */ detail: String }
    /// What happened.
    Timeline {
        /** The cook. */ cook: CookId,
        /** Heading. */ title: String,
        /** What happened, latest first, one page. */ lines: Vec<Happened>,
        /** The cursor of the next page. */ next: Option<i64>,
        /** Its card, its temperature log, the same begun again. */ #[serde(default)] links: Vec<Link>,
        /** Until when this is true. */ until: i64,
    }
    /// One thing that happened.
    Happened {
        /** Which entry. */ entry: EntryKey,
        /** When, as claimed: milliseconds since 1970. */ at: i64,
        /** Its day, the same text for all of one day: "Saturday, June 13". */ day: String,
        /** The time of that day. */ clock: String,
        /** When, in the viewer's zone. */ when: String,
        /** What. */ what: String,
        /** By whom, if not by the viewer's device. */ who: String,
        /** Taken back, belonging to something taken back, erased; empty = it counts. */ standing: String,
        /** How to take it back or restore it. */ undo: Option<Button>,
    }
    /// Pits, thermometers and habits.
    Settings {
        /** Heading. */ title: String,
        /** The pits. */ pits: Vec<Editable>,
        /** The thermometers. */ thermometers: Vec<Editable>,
        /** The crew's habits. */ habits: Vec<Editable>,
        /** The choices of the viewer: language, units, hours. */ viewer: Vec<ViewerChoice>,
        /** The labels of forms. */ labels: SettingsLabels,
        /** Where else to go. */ links: Vec<Link>,
        /** Warnings and merges to be told. */ notices: Vec<Notice>,
        /** What this device is called; empty = it has no name yet. */ #[serde(default)] device_name: String,
        /** Where more is kept: the version, the folder's health. */ about: Vec<String>,
        /** Until when this is true. */ until: i64,
    }
    /// The labels of the forms on the settings screen.
    SettingsLabels {
        /** Heading of pits. */ pits: String, /** Heading of thermometers. */ thermometers: String, /** Heading of habits. */ habits: String,
        /** Heading of the viewer's choices. */ viewer: String,
        /** Label of a name. */ name: String, /** Label of a kind. */ kind: String, /** Label of the grate, with the unit. */ grate: String, /** Label of minutes alone. */ alone: String,
        /** Button that adds a pit. */ add_pit: String, /** Button that adds a thermometer. */ add_thermometer: String,
        /** Button that saves. */ save: String,
        /** Heading of the ice check. */ check: String, /** Label of what it read. */ read: String, /** Label of the ice. */ ice: String, /** Label of boiling. */ boiling: String, /** Label of the altitude, with the unit. */ altitude: String,
        /** Kinds of pits. */ kinds: Vec<KindChoice>,
    }
    /// A kind of pit to choose.
    KindChoice { /** Which one. */ kind: crate::log::PitKind, /** What it is called. */ name: String }
    /// A thing with fields that can be set.
    Editable {
        /** What it is. */ of: crate::log::Subject,
        /** What it is called. */ name: String,
        /** One line on it. */ detail: String,
        /** Its fields. */ fields: Vec<FieldLine>,
    }
    /// A field with its value and the stamp of it, to be passed back as `saw`.
    FieldLine {
        /** A name for form fields. */ field: String,
        /** What it is called. */ label: String,
        /** Its value as text to edit. */ value: String,
        /** The unit's sign. */ unit: String,
        /** What it does, in one sentence; may be empty. */ #[serde(default)] hint: String,
        /** The value on this screen. */ saw: Option<crate::log::Stamp>,
    }
    /// One choice of the viewer's.
    ViewerChoice { /** A name for form fields. */ field: String, /** What it is called. */ label: String, /** The options: value and label. */ options: Vec<ChoiceOption> }
    /// One option.
    ChoiceOption { /** As recorded. */ value: String, /** As shown. */ label: String, /** Whether it is the present one. */ chosen: bool }
}
