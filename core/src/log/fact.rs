//! The shapes of what happens: the bodies of entries. Integers and text only.
//!
//! To add a kind: a struct here, a line in `payload.rs`, an arm in the cook's or the crew's fold.

use super::{AcceptedPlan, Course, EntryKey, Job, Stamp, Strain};
use crate::{
    batch::Batch,
    cadence::Cadence,
    checks::{Cut, TestResult, cuts::Degrees},
    fire::{FireDid, FuelUnit, SmokeSeen, SmokeWood, Vent, WeatherTap},
    ids::{CookId, DishId, PieceId, PitId, ThermometerId},
    safety::Form,
    units::Mk,
};
use serde::{Deserialize, Serialize};

/// What a pit is, as far as fire and watching go.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum PitKind {
    /// A firebox of wood beside the chamber.
    StickBurner,
    /// A lidded bowl over charcoal.
    Kettle,
    /// An upright drum, charcoal below, meat above.
    Drum,
    /// Thick ceramic, sparing with air.
    Ceramic,
    /// An upright insulated box.
    Cabinet,
    /// Pellets fed by an auger.
    Pellet,
    /// An electric element.
    Electric,
}

/// What a meat is wrapped in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Wrap {
    /// Unwaxed butcher paper.
    Paper,
    /// Aluminum foil.
    Foil,
    /// Foil below, open above.
    Boat,
    /// A covered pan.
    Pan,
}

/// Where a meat is on its way from the board to the leftovers.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "is")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Stage {
    /// Fat and skin trimmed.
    Trimmed,
    /// In brine, or salted ahead.
    Brined,
    /// Rub on.
    Rubbed,
    /// Resting in the cold.
    Resting,
    /// On a pit.
    OnPit {
        /// Which one.
        pit: PitId,
    },
    /// Wrapped, still on the pit.
    Wrapped {
        /// In what.
        wrap: Wrap,
    },
    /// Out of the wrap, still on the pit.
    Unwrapped,
    /// Off the pit, venting and resting.
    Off,
    /// Held hot.
    Held,
    /// Cut or pulled.
    CutUp,
    /// On the table.
    Served,
    /// In the refrigerator.
    PutAway,
    /// Warmed again.
    Reheated,
    /// Thrown away: nobody eats of it.
    ThrownAway,
}

/// A caution that a person was told of and went on past. It is kept and shown, and rings no more.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Caveat {
    /// Ground, stuffed or poultry meat went on a pit under 225 °F.
    CoolPit,
    /// The food stood, or may have stood, where bacteria grow for longer than published.
    PastClock,
}

/// What a note, a field or an undo is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "thing", content = "id")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Subject {
    /// The crew and its habits.
    Crew,
    /// A cook.
    Cook(CookId),
    /// A pit.
    Pit(PitId),
    /// A meat.
    Piece(PieceId),
    /// A dish.
    Dish(DishId),
    /// A thermometer.
    Thermometer(ThermometerId),
}

/// One field of a thing. Fields merge one by one: the later wins, and who was overruled is said.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "field", content = "to")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Field {
    /// What it is called: 1 to 60 characters.
    Name(String),
    /// A pit's kind.
    PitKind(PitKind),
    /// A pit's grate, in square centimeters.
    GrateCm2(Option<i64>),
    /// How many minutes a pit may be left alone; none = never.
    AloneMinutes(Option<i64>),
    /// The temperatures a pit is held between and after how many minutes outside them it rings.
    Band(Band),
    /// When a cook is on the table.
    Serve(Option<Serve>),
    /// How many eat.
    People(Option<i64>),
    /// A meat's weight in grams.
    WeightG(Option<i64>),
    /// How often a meat is wetted.
    Cadence(Cadence),
    /// What was done to a meat before it came to the pit.
    Form(Form),
    /// The internal temperature at which a meat is taken off; none = the cut's own.
    PullAt(Option<Mk>),
    /// The default minutes between mops.
    MopMinutes(i64),
    /// The default minutes between spritzes.
    SpritzMinutes(i64),
    /// How high above the sea the pits stand, in meters.
    AltitudeM(i64),
    /// Whether the crew cooks for the public.
    ForPublic(bool),
    /// Whether the air around a cook's food is above 90 °F.
    HotAir(bool),
}

/// The temperatures a pit is held between, `low` below `high`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Band {
    /// The lowest that is well.
    pub low: Mk,
    /// The highest that is well.
    pub high: Mk,
    /// How many minutes outside it ring, 1 to 120.
    pub minutes: i64,
}

/// When food is on the table: an instant, with the zone it was said in.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Serve {
    /// Milliseconds since 1970.
    pub at: i64,
    /// IANA zone.
    pub zone: String,
}

/// Where a temperature is taken.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "in")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Where {
    /// The air of a pit at the grate.
    Pit {
        /// Which one.
        pit: PitId,
    },
    /// The inside of a meat.
    Piece {
        /// Which one.
        piece: PieceId,
        /// The spot, in the cook's words.
        spot: String,
    },
}

/// What a thermometer is checked against.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "against")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Bath {
    /// Crushed ice and water, 32 °F.
    Ice,
    /// Boiling water at this many meters above the sea.
    Boiling {
        /// Meters above the sea, −500 to 6,000.
        altitude_m: i64,
    },
}

macro_rules! facts {
    ($($(#[$doc:meta])* $name:ident { $($(#[$field_doc:meta])* $field:ident : $kind:ty),* $(,)? })*) => { $(
        $(#[$doc])*
        #[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
        pub struct $name { $($(#[$field_doc])* pub $field: $kind),* }
    )* };
}

facts! {
    /// This device writes in this log from now on.
    CrewJoined {}
    /// What this device is called on others' screens.
    DeviceNamed { /** 1 to 60 characters. */ name: String }
    /// A pit that the crew has.
    PitAdded {
        /** Its id. */ pit: PitId,
        /** What it is called. */ name: String,
        /** What it is. */ kind: PitKind,
        /** Square centimeters of grate. */ grate_cm2: Option<i64>,
        /** How long it may be left alone. */ alone_minutes: Option<i64>,
    }
    /// A thermometer that the crew has.
    ThermometerAdded { /** Its id. */ thermometer: ThermometerId, /** What it is called. */ name: String }
    /// A thermometer was held in ice or boiling water.
    ThermometerChecked {
        /** Which one. */ thermometer: ThermometerId,
        /** In what. */ against: Bath,
        /** What it ought to read. */ expected: Mk,
        /** What it read. */ read: Mk,
    }
    /// One field was set, by somebody who saw the value stamped `saw`.
    FieldSet {
        /** Of what. */ of: Subject,
        /** To what. */ to: Field,
        /** The stamp of the value it replaced, as seen by who set it. */ saw: Option<Stamp>,
    }
    /// A notice was read and need not be shown again.
    Dismissed { /** Which one. */ notice: String }
    /// The holder of this device sleeps until then.
    Slept { /** Milliseconds since 1970. */ until: i64 }
    /// The holder of this device is up.
    Woke {}
    /// The holder of this device answers what rings from now on.
    WatchTaken { /** One line on the pit's state. */ note: String }
    /// A cook begins.
    CookStarted {
        /** Its id. */ id: CookId,
        /** What it is called. */ name: String,
        /** When it is on the table. */ serve: Option<Serve>,
        /** How many eat. */ people: Option<i64>,
        /** Whether it is the demo: invented. */ demo: bool,
    }
    /// A cook is over.
    CookFinished {}
    /// A meat of the cook.
    PieceAdded {
        /** Its id. */ piece: PieceId,
        /** What it is called. */ name: String,
        /** What it is. */ cut: Cut,
        /** What was done to it. */ form: Form,
        /** Grams. */ weight_g: Option<i64>,
        /** How often it is wetted. */ cadence: Cadence,
    }
    /// What is meant for a meat: a wish that is shown and that nothing rings or judges by.
    PieceMeant { /** Which one. */ piece: PieceId, /** What. */ meant: Meant }
    /// A meat was cut in several, each going its own way.
    PieceSplit { /** Which one. */ piece: PieceId, /** Into these. */ into: Vec<Part> }
    /// Several meats go on as one.
    PiecesJoined { /** These. */ pieces: Vec<PieceId>, /** As this. */ into: Part }
    /// A meat came to a stage.
    StageSet { /** Which one. */ piece: PieceId, /** To what. */ stage: Stage }
    /// A meat was moved within a pit or to another.
    PieceMoved { /** Which one. */ piece: PieceId, /** To which pit. */ pit: PitId, /** Level or spot, in words. */ spot: String }
    /// Whether a fingertip came away clean.
    RubAnswered { /** Which meat. */ piece: PieceId, /** Whether it has set. */ set: bool }
    /// A pit was opened; all that was done at once.
    Opened {
        /** Which one. */ pit: Option<PitId>,
        /** Meats that were wetted. */ wetted: Vec<PieceId>,
        /** Meats that were turned. */ turned: Vec<PieceId>,
        /** Meats that were glazed. */ glazed: Vec<PieceId>,
    }
    /// A pass over the tests of a meat.
    Checked { /** Which meat. */ piece: PieceId, /** What came of it. */ results: Vec<TestResult> }
    /// A temperature read by a person.
    Read { /** Where. */ place: Where, /** By what. */ thermometer: Option<ThermometerId>, /** How hot. */ temp: Mk }
    /// A probe's sensor sits there from now on.
    ProbeBound {
        /** The instrument. */ source: String,
        /** Its channel. */ sensor: String,
        /** Where it sits. */ place: Where,
        /** Which thermometer it is. */ thermometer: Option<ThermometerId>,
    }
    /// A run of probe readings lies beside the log.
    SeriesSaved {
        /** The instrument. */ source: String,
        /** Its channel. */ sensor: String,
        /** The first reading. */ from: i64,
        /** The last. */ to: i64,
        /** How many. */ count: i64,
        /** BLAKE3 of the bytes, hexadecimal. */ hash: String,
    }
    /// Fuel was put on.
    Fed { /** Which pit. */ pit: PitId, /** What and how much, in words. */ what: String }
    /// A vent was changed.
    VentChanged { /** Which pit. */ pit: PitId, /** How, in words. */ how: String }
    /// Somebody saw to the fire.
    FireSeen { /** Which pit. */ pit: PitId }
    /// Fuel was put on, in what hands count.
    FedUnits {
        /** Which pit. */ pit: PitId,
        /** What. */ unit: FuelUnit,
        /** How much, in quarters of one: 1 to 400. */ quarters: i64,
        /** What else is to be said of it, in words. */ what: String,
    }
    /// A vent was set.
    VentSet {
        /** Which pit. */ pit: PitId,
        /** Which vent. */ vent: Vent,
        /** How far it is open, in quarters: 0 to 4. */ quarters: i64,
        /** What else is to be said of it, in words. */ how: String,
    }
    /// Something was done at the fire.
    FireTended { /** Which pit. */ pit: PitId, /** What. */ did: FireDid }
    /// What the weather is at the pits, from then on.
    WeatherSaid { /** One of its four taps. */ said: WeatherTap }
    /// What wood smokes in a pit, from then on.
    WoodSaid { /** Which pit. */ pit: PitId, /** Which wood. */ wood: SmokeWood }
    /// The wood that smokes in a pit is burnt to coals before it goes on, or mixed with a milder one, from then on.
    WoodTamed { /** Which pit. */ pit: PitId, /** Which wood. */ wood: SmokeWood }
    /// A fire was found out: until when it burned for certain.
    FireFoundOut { /** Which pit. */ pit: PitId, /** Milliseconds since 1970. */ burned_until: i64 }
    /// Somebody saw or smelled the smoke of a pit.
    SmokeWatched { /** Which pit. */ pit: PitId, /** What was seen. */ seen: SmokeSeen }
    /// A pit is to be fed next at a time that a person accepted: it rings then.
    FeedPlanned { /** Which pit. */ pit: PitId, /** Milliseconds since 1970. */ due: i64 }
    /// What one of a unit weighs at a pit.
    UnitWeighed { /** Which pit. */ pit: PitId, /** Which unit. */ unit: FuelUnit, /** Grams, 10 to 50,000. */ grams: i64 }
    /// A job is not done this time.
    Skipped { /** Which one. */ job: Job }
    /// A job is done later.
    PutOff { /** Which one. */ job: Job, /** By how many minutes. */ minutes: i64 }
    /// A ring was answered that no other act answers.
    Answered { /** Which one. */ job: Job }
    /// Somebody went on past a caution.
    WentPast { /** Which meat. */ piece: PieceId, /** Past what. */ caveat: Caveat }
    /// Somebody wrote something down.
    Noted { /** About what. */ about: Subject, /** What. */ text: String }
    /// A dish of the cook.
    DishAdded { /** Its id. */ dish: DishId, /** What it is called. */ name: String, /** Whether it is held hot. */ hot: bool }
    /// A dish is ready, or not after all.
    DishReady { /** Which one. */ dish: DishId, /** Whether it is. */ ready: bool }
    /// A section of a cook's kitchen was written down, whole: of two, the later counts.
    BatchPlanned { /** Which one, and how. */ batch: Batch }
    /// What was trimmed off was weighed and kept.
    TrimmingsKept { /** Of which meat, if of one. */ piece: Option<PieceId>, /** Grams. */ g: i64, /** What it is and what for, in words. */ what: String }
    /// What a level cup of the crew's own salt weighs.
    SaltWeighed { /** Grams; none = not known any more. */ cup_g: Option<i64> }
    /// A plan was accepted: its jobs ring from now on.
    PlanAccepted { /** All of it. */ plan: AcceptedPlan }
    /// The cook goes on without a plan.
    PlanDropped {}
    /// What is served when, where not all of a cook is at the hour of its table: whole, of two the later counts.
    CoursesPlanned { /** All of them; none = all at the hour of the table. */ courses: Vec<Course> }
    /// A person was told that the sheet no longer fits, and keeps it.
    SheetKept { /** The entry that accepted it. */ sheet: EntryKey, /** Against what. */ against: Vec<Strain> }
    /// Entries were taken back; of a void, restored.
    Voided { /** Which ones. */ targets: Vec<EntryKey> }
    /// Entries were erased for good.
    ErasedFor { /** Which ones. */ targets: Vec<EntryKey> }
}

/// What is meant for a meat when it is planned.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Meant {
    /// What it is to be wrapped in.
    pub wrap: Option<Wrap>,
    /// How long it is to rest, minutes.
    pub rest_min: Option<i64>,
    /// What the air of its pit is to be held between.
    pub pit: Option<Degrees>,
}

/// A meat that came of splitting or joining.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Part {
    /// Its id.
    pub piece: PieceId,
    /// What it is called.
    pub name: String,
    /// Grams.
    pub weight_g: Option<i64>,
}
