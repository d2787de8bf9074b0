//! The records of a fire.

use crate::{
    acts::Undo,
    ids::{CookId, PitId},
    screens::{Button, Caution, Line, Link, Slip, records::records},
};
use serde::{Deserialize, Serialize};

records! {
    /// The fire of a pit: what to put on and do, when to feed next, its smoke, the weather.
    FireScreen {
        /** In which cook. */ cook: CookId,
        /** Of which pit. */ pit: PitId,
        /** Heading. */ title: String,
        /** How the pit stands. */ state: Line,
        /** When to feed next, how long it may be left, what openings cost where that is worth a word. */ next: Vec<Line>,
        /** Accepts the time to feed next: it rings then, and only then. */ accept: Option<Button>,
        /** What rings and what does not. */ rings: String,
        /** What is put on, one tap each. */ feed: FireGroup,
        /** The last act of this device, to be taken back. */ undo: Option<Undo>,
        /** The vents, by quarters. */ vents: Vec<FireGroup>,
        /** Heading of the vents. */ vents_title: String,
        /** Heading of the jobs. */ jobs_title: String,
        /** The jobs from lighting to shutdown. */ jobs: Vec<FireStep>,
        /** Heading of the smoke. */ smoke_title: String,
        /** Its wood, its strength, how it burns. */ smoke: Vec<Line>,
        /** What to do about it. */ smoke_advice: Vec<String>,
        /** How clean smoke is told from dirty. */ smoke_tell: String,
        /** What is seen, which wood: one tap each. */ smoke_taps: Vec<FireGroup>,
        /** Heading of the weather. */ weather_title: String,
        /** What it is good for. */ weather_lead: String,
        /** The weather in four taps. */ weather: Vec<FireGroup>,
        /** What one of a unit weighs here; none where nothing is weighed. */ weigh: Option<Slip>,
        /** What is published and what is not. */ source: String,
        /** Cautions of feeding it. */ cautions: Vec<Caution>,
        /** Where else to go. */ links: Vec<Link>,
        /** Until when this is true. */ until: i64,
    }
    /// Taps of one kind.
    FireGroup {
        /** Heading. */ heading: String,
        /** What was tapped last, in words. */ state: String,
        /** The taps. */ buttons: Vec<Button>,
    }
    /// One job of the fire.
    FireStep {
        /** What it is. */ name: String,
        /** Next, done, later: in words. */ state: String,
        /** Whether it is the next one. */ is_next: bool,
        /** How it is done. */ how: String,
        /** Did it. */ buttons: Vec<Button>,
        /** Cautions where the act happens. */ cautions: Vec<Caution>,
    }
}
