//! The acts. Buttons on screens carry the act they stand for; a shell passes it back with the moment.

use crate::{
    batch::Batch,
    cadence::Cadence,
    checks::{Cut, TestResult, cuts::Degrees},
    fire::{FireDid, FuelUnit, SmokeSeen, SmokeWood, Vent, WeatherTap},
    ids::{CookId, DishId, PieceId, PitId, ThermometerId},
    log::{
        AcceptedPlan, Bath, Caveat, Course, EntryKey, Field, Job, PitKind, Serve, Stage, Stamp,
        Strain, Subject, Where, Wrap,
    },
    safety::Form,
    units::Mk,
};
use serde::{Deserialize, Serialize};

/// One thing that a person or a device did.
///
/// `at`, where an act has it, is when it happened as claimed, in milliseconds since 1970; none = now. It may lie up to
/// 48 hours back and 10 minutes ahead of the moment.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "act")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[allow(missing_docs, reason = "fields are named as in the facts they record")]
pub enum Act {
    /// Make a pit known to the crew.
    AddPit {
        name: String,
        kind: PitKind,
        grate_cm2: Option<i64>,
        alone_minutes: Option<i64>,
    },
    /// Make a thermometer known to the crew.
    AddThermometer { name: String },
    /// Hold a thermometer in ice or boiling water.
    CheckThermometer {
        thermometer: ThermometerId,
        against: Bath,
        read: Mk,
    },
    /// Set one field of a thing. `saw` is the stamp of the value that was on the screen.
    SetField {
        of: Subject,
        to: Field,
        saw: Option<Stamp>,
    },
    /// Say what this device is called.
    NameDevice { name: String },
    /// A notice was read.
    Dismiss { notice: String },
    /// Sleep until then, milliseconds since 1970: at most 24 hours ahead.
    Sleep { until: i64 },
    /// Be up.
    WakeUp,
    /// Answer what rings from now on; one line on the pit's state.
    TakeWatch { note: String },
    /// Begin a cook.
    StartCook {
        name: String,
        serve: Option<Serve>,
        people: Option<i64>,
        meats: Vec<NewMeat>,
        /// Whether it is invented, and every screen says so.
        #[serde(default)]
        demo: bool,
    },
    /// Begin a cook whose meats, dishes and notes are planned already, as from a cook card: all or nothing.
    StartPlanned {
        name: String,
        serve: Option<Serve>,
        people: Option<i64>,
        meats: Vec<PlannedMeat>,
        /// Up to 40.
        dishes: Vec<NewDish>,
        /// About the cook, up to 21, each 1 to 2,000 characters.
        notes: Vec<String>,
    },
    /// End a cook.
    FinishCook { cook: CookId },
    /// Add a meat to a cook.
    AddMeat { cook: CookId, meat: NewMeat },
    /// Cut a meat in parts, each with a name.
    Split { piece: PieceId, names: Vec<String> },
    /// Let several meats go on as one.
    Join { pieces: Vec<PieceId>, name: String },
    /// A meat came to a stage.
    SetStage {
        piece: PieceId,
        stage: Stage,
        at: Option<i64>,
    },
    /// A meat that needs a hot pit went on one under 225 °F, knowingly: the caution that was gone past is kept.
    PutOnAnyway {
        piece: PieceId,
        pit: PitId,
        at: Option<i64>,
    },
    /// Go on past a caution about a meat, knowingly.
    GoPast { piece: PieceId, caveat: Caveat },
    /// Move a meat to a pit, or to another spot of it.
    Move {
        piece: PieceId,
        pit: PitId,
        spot: String,
        at: Option<i64>,
    },
    /// Say whether the rub has set.
    AnswerRub {
        piece: PieceId,
        set: bool,
        at: Option<i64>,
    },
    /// Say of several meats whether the rub has set.
    AnswerRubs {
        pieces: Vec<PieceId>,
        set: bool,
        at: Option<i64>,
    },
    /// One opening of a pit with all that was done in it.
    Open {
        pit: Option<PitId>,
        wetted: Vec<PieceId>,
        turned: Vec<PieceId>,
        glazed: Vec<PieceId>,
        at: Option<i64>,
    },
    /// One opening of a pit with all that was done to each meat in it: all of it is recorded, or nothing.
    DoOpening {
        pit: Option<PitId>,
        meats: Vec<InOpening>,
        at: Option<i64>,
    },
    /// Move several meats in one opening, such as all one place on. Those that already sit there are passed over.
    MoveMeats {
        moves: Vec<MeatMove>,
        at: Option<i64>,
    },
    /// A pass over the tests of a meat.
    Check {
        piece: PieceId,
        results: Vec<TestResult>,
        at: Option<i64>,
    },
    /// A temperature read by a person.
    Read {
        cook: CookId,
        place: Where,
        thermometer: Option<ThermometerId>,
        temp: Mk,
        at: Option<i64>,
    },
    /// Say where a probe sits.
    BindProbe {
        cook: CookId,
        source: String,
        sensor: String,
        place: Where,
        thermometer: Option<ThermometerId>,
    },
    /// Fuel was put on.
    Feed {
        cook: CookId,
        pit: PitId,
        what: String,
        at: Option<i64>,
    },
    /// A vent was changed.
    ChangeVent {
        cook: CookId,
        pit: PitId,
        how: String,
        at: Option<i64>,
    },
    /// The fire was seen to.
    SeeFire {
        cook: CookId,
        pit: PitId,
        at: Option<i64>,
    },
    /// Fuel was put on, in quarters of what hands count, 1 to 400.
    FeedUnits {
        cook: CookId,
        pit: PitId,
        unit: FuelUnit,
        quarters: i64,
        at: Option<i64>,
    },
    /// A vent was set, in quarters: 0 is shut, 4 is open.
    SetVent {
        cook: CookId,
        pit: PitId,
        vent: Vent,
        quarters: i64,
        at: Option<i64>,
    },
    /// Something was done at the fire.
    TendFire {
        cook: CookId,
        pit: PitId,
        did: FireDid,
        at: Option<i64>,
    },
    /// Say one of the four taps of the weather at the pits, from now on.
    SayWeather { cook: CookId, said: WeatherTap },
    /// Say what wood smokes in a pit, from now on.
    SayWood {
        cook: CookId,
        pit: PitId,
        wood: SmokeWood,
    },
    /// Say that the wood of a pit is burnt to coals before it goes on, or mixed with a milder one.
    TameWood {
        cook: CookId,
        pit: PitId,
        wood: SmokeWood,
    },
    /// A fire was found out; until when it burned for certain, milliseconds since 1970.
    FindFireOut {
        cook: CookId,
        pit: PitId,
        burned_until: i64,
        at: Option<i64>,
    },
    /// The smoke of a pit was seen or smelled.
    WatchSmoke {
        cook: CookId,
        pit: PitId,
        seen: SmokeSeen,
        at: Option<i64>,
    },
    /// Accept a time at which a pit is fed next, within a day from now: it rings then.
    PlanFeed { cook: CookId, pit: PitId, due: i64 },
    /// Say what one of a unit weighs at a pit, 10 to 50,000 g.
    WeighUnit {
        pit: PitId,
        unit: FuelUnit,
        grams: i64,
    },
    /// Accept a plan: its jobs ring, and the cook is on the table when it says.
    AcceptPlan { cook: CookId, plan: AcceptedPlan },
    /// Accept the plan that was replaced or dropped, by the entry that accepted it.
    AcceptAgain { cook: CookId, entry: EntryKey },
    /// Go on without a plan.
    DropPlan { cook: CookId },
    /// Say what is served when, whole; none = all at the hour of the table.
    PlanCourses { cook: CookId, courses: Vec<Course> },
    /// Keep the accepted sheet, whatever no longer fits on it: it is not told again until something further does not.
    KeepSheet {
        cook: CookId,
        sheet: EntryKey,
        against: Vec<Strain>,
    },
    /// Leave jobs out this time.
    Skip { cook: CookId, jobs: Vec<Job> },
    /// Do jobs later, 1 to 240 minutes.
    Later {
        cook: CookId,
        jobs: Vec<Job>,
        minutes: i64,
    },
    /// Answer a ring that no other act answers.
    Answer { cook: CookId, job: Job },
    /// Write something down, 1 to 2,000 characters.
    Note {
        cook: CookId,
        about: Subject,
        text: String,
    },
    /// Add a dish to a cook.
    AddDish {
        cook: CookId,
        name: String,
        hot: bool,
    },
    /// A dish is ready, or not after all.
    ReadyDish {
        cook: CookId,
        dish: DishId,
        ready: bool,
    },
    /// Write a section of a cook's kitchen down, whole.
    PlanBatch { cook: CookId, batch: Batch },
    /// Keep what was trimmed off, weighed: 1 to 60,000 grams, and a line on it.
    KeepTrimmings {
        cook: CookId,
        piece: Option<PieceId>,
        g: i64,
        what: String,
    },
    /// Say what a level cup of your own salt weighs, grams.
    WeighSalt { cup_g: Option<i64> },
    /// Take entries back; of a taking-back, restore.
    Undo { targets: Vec<EntryKey> },
    /// Erase entries for good, on every device that meets this one.
    Erase { targets: Vec<EntryKey> },
}

impl Act {
    /// When it happened as claimed, where the act says so.
    pub const fn at_mut(&mut self) -> Option<&mut Option<i64>> {
        match self {
            Self::SetStage { at, .. }
            | Self::PutOnAnyway { at, .. }
            | Self::Move { at, .. }
            | Self::AnswerRub { at, .. }
            | Self::AnswerRubs { at, .. }
            | Self::Open { at, .. }
            | Self::Check { at, .. }
            | Self::Read { at, .. }
            | Self::Feed { at, .. }
            | Self::ChangeVent { at, .. }
            | Self::SeeFire { at, .. }
            | Self::FeedUnits { at, .. }
            | Self::SetVent { at, .. }
            | Self::TendFire { at, .. }
            | Self::WatchSmoke { at, .. } => Some(at),
            _ => None,
        }
    }
}

/// A meat to be added to a cook.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct NewMeat {
    /// What it is called; empty = the name of the cut.
    pub name: String,
    /// What it is.
    pub cut: Cut,
    /// What was done to it.
    pub form: Form,
    /// Grams, 30 to 60,000.
    pub weight_g: Option<i64>,
    /// How often it is wetted; none = what the cut usually gets.
    pub cadence: Option<Cadence>,
    /// The pit it will cook in, which also puts it on the sheet of that pit.
    pub pit: Option<PitId>,
}

/// A meat to be added, with what is meant for it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct PlannedMeat {
    /// The meat.
    pub meat: NewMeat,
    /// When it is taken off: never below the published minimum; none = at the cut's own temperature.
    pub pull_at: Option<Mk>,
    /// What it is meant to be wrapped in.
    pub wrap: Option<Wrap>,
    /// How long it is meant to rest, minutes: never shorter than the rest that goes with its published minimum.
    pub rest_min: Option<i64>,
    /// What the air of its pit is meant to be held between.
    pub pit_heat: Option<Degrees>,
}

/// A dish to be added to a cook.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct NewDish {
    /// What it is called.
    pub name: String,
    /// Whether it is held hot.
    pub hot: bool,
}

/// What was done to one meat in an opening.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct InOpening {
    /// Which one.
    pub piece: PieceId,
    /// It was mopped or spritzed.
    pub wetted: bool,
    /// With a mop, brush and bowl that touched nothing else.
    pub own_mop: bool,
    /// It was turned.
    pub turned: bool,
    /// It was glazed.
    pub glazed: bool,
    /// Whether a fingertip came away clean, if the rub was touched.
    pub rub_set: Option<bool>,
    /// What came of its tests, if it was tried.
    pub results: Vec<TestResult>,
    /// What is to be remembered of it; blanks = nothing.
    pub note: String,
}

impl InOpening {
    /// Nothing done yet to that meat.
    pub const fn of(piece: PieceId) -> Self {
        Self {
            piece,
            wetted: false,
            own_mop: false,
            turned: false,
            glazed: false,
            rub_set: None,
            results: vec![],
            note: String::new(),
        }
    }

    /// Whether anything was done to it.
    pub fn is_something(&self) -> bool {
        let by_hand = self.wetted || self.turned || self.glazed || self.rub_set.is_some();
        by_hand || !self.results.is_empty() || !self.note.trim().is_empty()
    }
}

/// Where one meat sits from now on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct MeatMove {
    /// Which one.
    pub piece: PieceId,
    /// In which pit.
    pub pit: PitId,
    /// On which level or spot, in words; may be empty.
    pub spot: String,
}

/// What an act did.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Outcome {
    /// What was done, spoken back in a few words.
    pub said: String,
    /// The entries that were recorded.
    pub entries: Vec<EntryKey>,
    /// What was made by it, in the order of the act.
    pub made: Vec<Subject>,
    /// How to take it back.
    pub undo: Option<Undo>,
    /// Whether it had been recorded before under the same token: nothing was added.
    pub repeated: bool,
}

/// How to take something back.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Undo {
    /// What would be taken back, in a few words.
    pub label: String,
    /// The act that does it.
    pub act: Act,
    /// Until when it is shown huge, milliseconds since 1970.
    pub until: i64,
}
