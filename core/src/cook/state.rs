//! One cook, as the log tells it.

use super::{Answer, Courses, Piece, PitCare, Probe, Reg, Sheets, Timed, fold::By};
use crate::{
    batch::{Batch, BatchKind},
    fire::WeatherTap,
    ids::{CookId, DeviceId, DishId, PieceId, PitId},
    log::{CookStarted, EntryKey, Job, Serve, Subject},
};
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};

/// What is not meat.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Dish {
    /// Its id.
    pub id: DishId,
    /// What it is called.
    pub name: Reg<String>,
    /// Whether it is held hot.
    pub hot: bool,
    /// Whether it is ready, and since when.
    pub ready: Option<Timed>,
}

/// Something written down.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Note {
    /// When.
    pub when: Timed,
    /// About what.
    pub about: Subject,
    /// What.
    pub text: String,
}

/// A section of the kitchen, as it was written down.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Kept {
    /// When.
    pub when: Timed,
    /// What.
    pub batch: Batch,
}

/// What was trimmed off and kept.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Trimmings {
    /// When it was weighed.
    pub when: Timed,
    /// Of which meat, if of one.
    pub piece: Option<PieceId>,
    /// Grams.
    pub g: i64,
    /// What it is and what for.
    pub what: String,
}

/// The last act of a device in a cook, to offer its undo.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct LastAct {
    /// The entries of it, in order.
    pub entries: Vec<EntryKey>,
    /// When, as claimed.
    pub at: i64,
    /// When it was recorded, by the stamp: milliseconds since 1970, wrong where clocks are.
    pub recorded: i64,
    /// What kind of thing.
    pub kind: String,
}

/// A probe as it sat before it was placed anew.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Moved {
    /// Which one, by instrument and channel.
    pub series: (String, String),
    /// Where it sat, and since when.
    pub probe: Probe,
    /// Until when, as claimed: milliseconds since 1970, not included.
    pub until: i64,
}

/// From when to when a series was read that an entry of the cook announces.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Saved {
    /// The first reading, milliseconds since 1970.
    pub from: i64,
    /// The last.
    pub to: i64,
}

/// One cook.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Cook {
    /// Its id.
    pub id: CookId,
    /// What it is called.
    pub name: Reg<String>,
    /// When it is on the table.
    pub serve: Reg<Option<Serve>>,
    /// How many eat.
    pub people: Reg<Option<i64>>,
    /// Whether the air around its food is above 90 °F.
    pub hot_air: Reg<bool>,
    /// Whether it is invented.
    pub demo: bool,
    /// When it began.
    pub started_at: i64,
    /// When it was ended.
    pub finished: Option<Timed>,
    /// Its meats.
    pub pieces: BTreeMap<PieceId, Piece>,
    /// Its dishes.
    pub dishes: BTreeMap<DishId, Dish>,
    /// What was done for its pits.
    pub pits: BTreeMap<PitId, PitCare>,
    /// The weather at its pits, as it was said, since when.
    pub weather: Vec<(Timed, WeatherTap)>,
    /// Where its probes sit, by instrument and channel.
    pub probes: BTreeMap<(String, String), Probe>,
    /// Where its probes sat before, each until when: what one read there stays with what it sat in.
    pub probes_before: Vec<Moved>,
    /// What was saved of each series, by instrument and channel: in whole, however many runs it came in.
    pub saved: BTreeMap<(String, String), Saved>,
    /// Jobs answered without being done.
    pub answers: Vec<Answer>,
    /// How often each job was answered, done, skipped or put off, what was taken back counted too: it only rises.
    pub ordinals: BTreeMap<Job, i64>,
    /// What was written down.
    pub notes: Vec<Note>,
    /// The sections of its kitchen, as they were written down last.
    pub batches: BTreeMap<BatchKind, Kept>,
    /// What was trimmed off and kept.
    pub trimmings: Vec<Trimmings>,
    /// What is served when, beside the hour of its table.
    pub courses: Courses,
    /// The plans that were accepted.
    pub sheets: Sheets,
    /// The last act of each device.
    pub last_acts: BTreeMap<DeviceId, LastAct>,
    /// Entries taken back.
    pub hidden: BTreeSet<EntryKey>,
    /// Whether an entry must be understood that this version does not know: nothing may be judged.
    pub must_update: bool,
    /// Entries whose claimed time is more than this version takes as possible are counted here by device.
    pub odd_clocks: BTreeMap<DeviceId, i64>,
    /// How many entries it was folded from.
    pub entries: i64,
}

impl Cook {
    /// A cook as it began.
    pub fn started(fact: CookStarted, at: i64, by: By) -> Self {
        Self {
            id: fact.id,
            name: Reg::new(fact.name, by),
            serve: Reg::new(fact.serve, by),
            people: Reg::new(fact.people, by),
            hot_air: Reg::new(false, by),
            demo: fact.demo,
            started_at: at,
            finished: None,
            pieces: BTreeMap::new(),
            dishes: BTreeMap::new(),
            pits: BTreeMap::new(),
            weather: vec![],
            probes: BTreeMap::new(),
            probes_before: vec![],
            saved: BTreeMap::new(),
            answers: vec![],
            ordinals: BTreeMap::new(),
            notes: vec![],
            batches: BTreeMap::new(),
            trimmings: vec![],
            courses: Courses::default(),
            sheets: Sheets::default(),
            last_acts: BTreeMap::new(),
            hidden: BTreeSet::new(),
            must_update: false,
            odd_clocks: BTreeMap::new(),
            entries: 0,
        }
    }

    /// The meats that are still meats of their own.
    pub fn meats(&self) -> impl Iterator<Item = &Piece> {
        self.pieces.values().filter(|piece| piece.is_itself())
    }

    /// Whether it is under way.
    pub fn is_open(&self) -> bool {
        self.finished.is_none()
    }
}
