//! The shapes of an accepted plan: one entry with all of its jobs written out, in integers and text.
//!
//! A job is named by what it is, on what, and which one of several ([`OnSheet`]), never by its time: the same job of a later
//! plan is the same job, so that what was done stays done and what rang is not rung twice.

use super::{Job, Serve, Stage, Subject, Wrap};
use crate::{
    ids::{PieceId, PitId},
    units::Mk,
};
use serde::{Deserialize, Serialize};

/// What is done by a line of a run sheet, in the order of a cook.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Does {
    /// A meat goes from the freezer to the refrigerator.
    Thaw,
    /// Fat and skin are trimmed.
    Trim,
    /// Into the brine, or salted ahead.
    Brine,
    /// The rub goes on.
    Rub,
    /// Into the cold to rest.
    RestCold,
    /// Somebody goes to sleep, until the end of the job.
    Sleep,
    /// A pit is lit.
    Light,
    /// A pit comes to its temperature.
    Preheat,
    /// A pit is brought to another temperature.
    Step,
    /// Fuel goes on.
    Feed,
    /// A meat goes on its pit.
    PutOn,
    /// A meat is wrapped.
    Wrap,
    /// From here on a meat is tried.
    Check,
    /// A meat is expected to come off: it is tried first.
    TakeOff,
    /// A meat stands open before it is boxed.
    Vent,
    /// A meat rests.
    Rest,
    /// A meat goes into where it is held hot.
    Hold,
    /// A probe goes into what is held.
    ProbeHold,
    /// A dish is worked on.
    Dish,
    /// A dish or a meat is warmed again.
    Reheat,
    /// A meat is cut or pulled.
    Cut,
    /// It is on the table.
    Serve,
    /// A pit goes out.
    LetOut,
}

/// What is done to a meat, in order.
const TO_MEAT: [Does; 16] = [
    Does::Thaw,
    Does::Trim,
    Does::Brine,
    Does::Rub,
    Does::RestCold,
    Does::PutOn,
    Does::Wrap,
    Does::Check,
    Does::TakeOff,
    Does::Vent,
    Does::Rest,
    Does::Hold,
    Does::ProbeHold,
    Does::Reheat,
    Does::Cut,
    Does::Serve,
];

impl Does {
    /// The name of the ring for it; never changed, for names of alarms are made of it.
    pub(crate) const fn ring(self) -> &'static str {
        match self {
            Self::Thaw => "sheet_thaw",
            Self::Trim => "sheet_trim",
            Self::Brine => "sheet_brine",
            Self::Rub => "sheet_rub",
            Self::RestCold => "sheet_rest_cold",
            Self::Sleep => "sheet_sleep",
            Self::Light => "sheet_light",
            Self::Preheat => "sheet_preheat",
            Self::Step => "sheet_step",
            Self::Feed => "sheet_feed",
            Self::PutOn => "sheet_put_on",
            Self::Wrap => "sheet_wrap",
            Self::Check => "sheet_check",
            Self::TakeOff => "sheet_take_off",
            Self::Vent => "sheet_vent",
            Self::Rest => "sheet_rest",
            Self::Hold => "sheet_hold",
            Self::ProbeHold => "sheet_probe_hold",
            Self::Dish => "sheet_dish",
            Self::Reheat => "sheet_reheat",
            Self::Cut => "sheet_cut",
            Self::Serve => "sheet_serve",
            Self::LetOut => "sheet_let_out",
        }
    }
}

impl Stage {
    /// Whether a meat that came to this stage has done with a job: with all that come before it on a sheet too.
    pub fn completes(self, does: Does) -> bool {
        TO_MEAT.contains(&does) && does <= self.last_job()
    }

    /// The first job of each kind that a meat has done with at this stage: rings for them are over.
    pub(super) fn jobs_done(self, piece: PieceId) -> impl Iterator<Item = Job> {
        let done = TO_MEAT
            .into_iter()
            .filter(move |does| self.completes(*does));
        done.map(move |does| {
            Job::Sheet(OnSheet {
                does,
                on: Subject::Piece(piece),
                nth: 0,
            })
        })
    }

    const fn last_job(self) -> Does {
        match self {
            Self::Trimmed => Does::Trim,
            Self::Brined => Does::Brine,
            Self::Rubbed => Does::Rub,
            Self::Resting => Does::RestCold,
            Self::OnPit { .. } => Does::PutOn,
            Self::Wrapped { .. } | Self::Unwrapped => Does::Wrap,
            Self::Off => Does::TakeOff,
            Self::Held => Does::Hold,
            Self::Reheated => Does::Reheat,
            Self::CutUp => Does::Cut,
            Self::Served | Self::PutAway | Self::ThrownAway => Does::Serve,
        }
    }
}

/// A job of a run sheet, by what it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct OnSheet {
    /// What is done.
    pub does: Does,
    /// On what.
    pub on: Subject,
    /// Which of several of the kind, counted from 0.
    pub nth: i64,
}

/// One job of an accepted plan.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct PlannedJob {
    /// What it is.
    pub job: OnSheet,
    /// When it begins, milliseconds since 1970.
    pub at: i64,
    /// When it is over; never before `at`.
    pub until: i64,
    /// How many hands it takes, 0 to 3.
    pub hands: i64,
    /// Whether it rings whoever sleeps: the plan puts it into the night on purpose.
    #[serde(default)]
    pub wakes: bool,
    /// At which pit.
    #[serde(default)]
    pub pit: Option<PitId>,
    /// How hot its pit is to be.
    #[serde(default)]
    pub temp: Option<Mk>,
    /// What a meat is wrapped in.
    #[serde(default)]
    pub wrap: Option<Wrap>,
    /// More on it in a person's own words, up to 200 characters; may be empty.
    #[serde(default)]
    pub what: String,
    /// Why then.
    #[serde(default)]
    pub why: Option<PlannedWhy>,
}

/// Why a job is when it is: the key of a message that every language has, with what goes into it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct PlannedWhy {
    /// Which message. One that a reader does not know says nothing.
    pub key: String,
    /// What goes into it, up to 6.
    pub args: Vec<WhyArg>,
}

/// What goes into a sentence under its name.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct WhyArg {
    /// Its name in the sentence.
    pub name: String,
    /// What stands there.
    pub value: WhyValue,
}

/// A value that each reader is told in their own units, zone and names.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "is", content = "value")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum WhyValue {
    /// An instant, milliseconds since 1970.
    Time(i64),
    /// A length of time.
    Minutes(i64),
    /// A temperature.
    Temp(Mk),
    /// A number.
    Count(i64),
    /// A weight.
    Grams(i64),
    /// What a meat is called.
    Piece(PieceId),
    /// What a pit is called.
    Pit(PitId),
    /// As it is.
    Text(String),
    /// A message of its own, by its key.
    Message(String),
}

/// What was said for the plan beside the cook itself, so that it can be planned anew.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct PlanAsked {
    /// How many pairs of hands there are, 1 to 3.
    #[serde(default)]
    pub hands: i64,
    /// The night, from: minutes after midnight where it is served.
    #[serde(default)]
    pub sleep_from_min: Option<i64>,
    /// The night, to.
    #[serde(default)]
    pub sleep_to_min: Option<i64>,
    /// Somebody has the watch while the others sleep.
    #[serde(default)]
    pub watched: bool,
    /// Not before this, milliseconds since 1970; none = from when it is planned.
    #[serde(default)]
    pub not_before: Option<i64>,
    /// How many minutes after its time it may be on the table at the latest.
    #[serde(default)]
    pub late_min: Option<i64>,
    /// There is a cooler to hold meat in.
    #[serde(default)]
    pub cooler: bool,
    /// There is an oven to hold meat in.
    #[serde(default)]
    pub oven: bool,
}

/// A plan as it is accepted.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct AcceptedPlan {
    /// When it is on the table by this plan.
    pub serve: Serve,
    /// The jobs.
    pub jobs: Vec<PlannedJob>,
    /// The chance of being ready by then, in thousandths, where it was worked out.
    #[serde(default)]
    pub chance_permille: Option<i64>,
    /// What was said for it.
    #[serde(default)]
    pub asked: PlanAsked,
}
