//! What an import did, counted: nothing is dropped in silence.

use super::{
    refusals::{Fault, Refused},
    series::Reading,
    told::Told,
};
use crate::words::Words;
use serde::{Deserialize, Serialize};

/// How many refusals and jumps are told one by one; the rest are counted.
pub const TOLD_MAX: usize = 10;

/// What an import did. With one temperature column, `rows = taken + doubled + refused + blank`.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Report {
    /// Rows after the header.
    pub rows: u64,
    /// Readings given to the sink.
    pub taken: u64,
    /// Readings that another one of the same instant stood for (see [`settle`](super::settle)).
    pub doubled: u64,
    /// Rows and cells refused: a row with a bad time counts once, a bad temperature counts for its cell only.
    pub refused: u64,
    /// Temperature cells that were empty: a probe that was not heard.
    pub blank: u64,
    /// The first [`TOLD_MAX`] refusals.
    pub first_refusals: Vec<Refused>,
    /// Earliest instant taken, ms UTC.
    pub from: Option<i64>,
    /// Latest instant taken, ms UTC.
    pub to: Option<i64>,
    /// Readings kept, but further from their neighbor than a pit or meat can go in the time between.
    pub jumps: u64,
    /// The first [`TOLD_MAX`] jumps.
    pub first_jumps: Vec<Jump>,
    /// Readings earlier than the one on the row before; kept, and put in order. All but one of a file that runs backward.
    pub out_of_order: u64,
}

/// A reading far from its neighbor.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Jump {
    /// Line of the file, from 1.
    pub line: u64,
    /// Whose.
    pub sensor: String,
    /// The neighbor on a row before.
    pub before: Reading,
    /// The reading that is far from it.
    pub reading: Reading,
}

impl Report {
    /// The first refusal's sentence, or what an import of empty cells has to say.
    pub fn first_said(&self, say: &Words<'_>) -> String {
        match self.first_refusals.first() {
            Some(refused) => refused.said(say),
            None => say.text("readings-all-empty"),
        }
    }

    #[cold]
    pub(super) fn refuse(&mut self, line: u64, sensor: Option<&str>, cell: &[u8], fault: Fault) {
        self.refused += 1;
        if self.first_refusals.len() < TOLD_MAX {
            self.first_refusals
                .push(Refused::new(line, sensor, cell, fault));
        }
    }

    #[cold]
    pub(super) fn jump(&mut self, jump: Jump) {
        self.jumps += 1;
        if self.first_jumps.len() < TOLD_MAX {
            self.first_jumps.push(jump);
        }
    }

    pub(super) fn span(&mut self, from: i64, to: i64) {
        self.from = Some(self.from.map_or(from, |earliest| earliest.min(from)));
        self.to = Some(self.to.map_or(to, |latest| latest.max(to)));
    }
}
