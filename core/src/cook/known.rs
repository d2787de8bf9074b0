//! All that a screen, an alarm or a decision may look at: one borrow of what is known here.

use super::{Cook, Crew, Piece};
use crate::{
    ahead::{Forecasts, Lessons},
    ids::{CookId, DeviceId, PieceId},
    readings::Tails,
};
use std::collections::BTreeMap;

/// What is known, on this device, of the crew and of the cooks that are loaded.
#[derive(Clone, Copy, Debug)]
pub struct Known<'a> {
    /// What belongs to no cook.
    pub crew: &'a Crew,
    /// The cooks under way, and past ones that somebody asked for.
    pub cooks: &'a BTreeMap<CookId, Cook>,
    /// The last hours of every probe.
    pub tails: &'a Tails,
    /// The last forecast of each meat on a pit. Screens alone read them: no ring, no rhythm and no verdict does.
    pub ahead: &'a Forecasts,
    /// What past cooks taught of pits and cuts.
    pub lessons: &'a Lessons,
    /// This device.
    pub device: DeviceId,
    /// What happened to this device that a person should be told.
    pub warnings: &'a [Warning],
}

/// What happened to this device that a person should be told.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Warning {
    /// The database could not be read and was set aside.
    SetAside {
        /// The file's new name.
        file: String,
        /// How many entries could be taken over.
        entries: u64,
    },
    /// The database is a copy of another installation's: this one goes on under a name of its own.
    Cloned,
    /// The device's clock was moved; reminders were laid again.
    ClockMoved {
        /// By how many milliseconds, forward positive.
        by_ms: i64,
        /// When it was noticed, by the new clock.
        at: i64,
    },
    /// Entries came under a name that was taken, and lost; they are kept aside.
    Forked {
        /// How many.
        entries: i64,
    },
    /// A device writes stamps far from this one's clock.
    OddClock {
        /// Which one.
        device: DeviceId,
        /// What its stamps say, milliseconds since 1970.
        stamp_ms: i64,
    },
}

impl<'a> Known<'a> {
    /// The meat of that id with its cook.
    pub fn piece(&self, id: PieceId) -> Option<(&'a Cook, &'a Piece)> {
        self.cooks
            .values()
            .find_map(|cook| Some((cook, cook.pieces.get(&id)?)))
    }

    /// The cooks under way.
    pub fn open_cooks(&self) -> impl Iterator<Item = &'a Cook> {
        self.cooks.values().filter(|cook| cook.is_open())
    }
}
