//! All that a screen, an alarm or a decision may look at: one borrow of what is known here.

use super::{Cook, Crew, Piece};
use crate::{
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
    /// This device.
    pub device: DeviceId,
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
