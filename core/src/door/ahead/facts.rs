//! The facts of a meat, readings and all.

use super::Slowbend;
use crate::{
    ahead::{Facts, Sitting, asked},
    error::Trouble,
    ids::{CookId, PieceId},
    readings::Reading,
};

impl Slowbend {
    /// What a forecast of `piece` for the grid's `now` may look at; none where it is on no pit.
    pub(super) fn facts_of(
        &mut self,
        cook: CookId,
        piece: PieceId,
        now: i64,
    ) -> Result<Option<Facts>, Trouble> {
        let known = self.known();
        let both = || {
            let cook = known.cooks.get(&cook)?;
            Some((cook, cook.pieces.get(&piece)?))
        };
        let Some(asked) = both().and_then(|(cook, piece)| asked(&known, cook, piece, now)) else {
            return Ok(None);
        };
        let (pit, inside) = (self.read(&asked.pit)?, self.read(&asked.inside)?);
        Ok(Some(asked.facts(&pit, &inside)))
    }

    fn read(&mut self, sat: &[Sitting]) -> Result<Vec<Vec<Reading>>, Trouble> {
        sat.iter()
            .map(|sat| {
                let (source, sensor) = &sat.series;
                let last = sat.until.saturating_sub(1);
                Ok(self.readings_between(source, sensor, sat.from, last)?.0)
            })
            .collect()
    }
}
