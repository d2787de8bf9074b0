//! The one door: everything goes through [`Slowbend`], in few verbs, all synchronous, all pull.
//!
//! | verb | does |
//! |---|---|
//! | [`open`](Slowbend::open) | opens or creates the database; what cannot be read is set aside and said |
//! | [`act`](Slowbend::act) | records one thing that was done, on disk when it returns, or refuses with a reason |
//! | [`readings`](Slowbend::readings) | takes probe readings, durable within a minute |
//! | [`probe_word`](Slowbend::probe_word) | takes what a Bluetooth probe sent, byte by byte |
//! | [`probe_words`](Slowbend::probe_words) | the same, many at once |
//! | [`absorb`](Slowbend::absorb) | takes entries of other devices |
//! | one call a screen | the screen as plain records |
//! | [`alarms`](Slowbend::alarms) | the ordered list of what must ring |
//! | [`work`](Slowbend::work) | the slow part, forecasts among it, in bounded steps |
//! | [`suspend`](Slowbend::suspend) | lets go of the disk before the platform freezes the process |
//!
//! Because shells only pull, a process that was killed needs nothing restored: it asks again.

mod act;
mod ahead;
mod alarms;
mod card;
mod clock;
mod exchange;
mod hear;
mod import;
mod known;
mod open;
mod probe;
mod readings;
mod screens;
#[cfg(test)]
mod tests;
mod work;

pub use exchange::{EXPORT_HEADER, ExportLine};
pub use import::Gathered;
pub use probe::WordTaken;
pub use readings::SensorReading;

use crate::{
    cook::{Cook, Crew, Warning, fold::Order},
    ids::{CookId, Names},
    log::Stamp,
    readings::Tails,
    store::{Group, Store},
};
use clock::ClockWatch;
use std::{
    collections::{BTreeMap, BTreeSet},
    path::PathBuf,
};

/// Where to open, and as whom.
#[derive(Clone, Debug)]
pub struct OpenArgs {
    /// The folder of the database; made if it is not there.
    pub place: PathBuf,
    /// Names this installation; kept outside backups, so that a copied database is noticed.
    pub install_id: String,
    /// 32 fresh random bytes, from which ids are made.
    pub entropy: [u8; 32],
}

/// The whole job of Slowbend on one device.
pub struct Slowbend {
    store: Option<Store>,
    args: OpenArgs,
    names: Names,
    /// The greatest stamp seen.
    stamp: Stamp,
    /// The number of this device's next entry.
    next_n: i64,
    crew: Crew,
    cooks: BTreeMap<CookId, Cook>,
    marks: BTreeMap<Group, Mark>,
    tails: Tails,
    /// The series whose sealed readings are in the tails.
    tailed: BTreeSet<(String, String)>,
    pending: readings::Pending,
    ahead: ahead::Forecasting,
    warnings: Vec<Warning>,
    clock: ClockWatch,
    /// What the wall clock said at the last look.
    utc_ms: i64,
}

/// How far a group's state has come.
#[derive(Clone, Copy, Debug, Default)]
struct Mark {
    /// The order of the last entry in it; none where it has none.
    last: Option<Order>,
    /// The arrival number it covers.
    seq: i64,
    /// How many entries were folded since it was cached.
    since_cached: i64,
}
