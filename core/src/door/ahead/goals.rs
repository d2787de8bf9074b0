//! Which meats are to be followed to which facts.

use super::{Forecasting, Slowbend, name_of_run, name_of_shown};
use crate::{
    ahead::{Ahead, print},
    error::Trouble,
    ids::{CookId, PieceId},
    moment::HOUR,
};

/// A meat that has been on for longer than this was forgotten, and so is its forecast: 36 h. Common practice, no source.
const FOLLOWED_MS: i64 = 36 * HOUR;

impl Slowbend {
    /// Sets a goal for each meat on a pit whose forecast is not that of its facts at `now`, and lets go of the others.
    pub(super) fn set_goals(&mut self, now: i64) -> Result<(), Trouble> {
        let meats = self.meats_on_pits(now);
        self.let_go_of_others(&meats)?;
        for (cook, piece) in meats {
            let Some(facts) = self.facts_of(cook, piece, now)? else {
                continue;
            };
            let ahead = &mut self.ahead;
            let stands =
                ahead.of.get(&piece) == Some(&print(&facts)) && ahead.shown.contains_key(&piece);
            let followed = facts.put_on > now.saturating_sub(FOLLOWED_MS);
            ahead.goals.remove(&piece);
            if !stands && followed {
                if !ahead
                    .runs
                    .get(&piece)
                    .is_some_and(|run| run.leads_to(&facts))
                {
                    ahead.runs.remove(&piece);
                }
                ahead.goals.insert(piece, facts);
            }
        }
        Ok(())
    }

    fn meats_on_pits(&self, now: i64) -> Vec<(CookId, PieceId)> {
        let before = now.saturating_sub(1);
        let open = self.cooks.values().filter(|cook| cook.is_open());
        open.flat_map(|cook| {
            let on = cook.meats().filter(|piece| piece.is_on_pit(before));
            on.map(|piece| (cook.id, piece.id))
        })
        .collect()
    }

    fn let_go_of_others(&mut self, meats: &[(CookId, PieceId)]) -> Result<(), Trouble> {
        let is_on = |piece: &PieceId| meats.iter().any(|(_, on)| on == piece);
        let Forecasting { shown, runs, .. } = &self.ahead;
        let over = shown
            .keys()
            .chain(runs.keys())
            .filter(|piece| !is_on(piece));
        for piece in over.copied().collect::<Vec<_>>() {
            let ahead = &mut self.ahead;
            ahead.shown.remove(&piece);
            ahead.of.remove(&piece);
            ahead.runs.remove(&piece);
            let store = self.store()?;
            store.drop_kept(&name_of_run(piece))?;
            store.drop_kept(&name_of_shown(piece))?;
        }
        self.ahead.goals.retain(|piece, _| is_on(piece));
        Ok(())
    }

    /// Reads the last forecasts that were finished, so that the first screen after a kill has them.
    pub(in crate::door) fn load_forecasts(&mut self) -> Result<(), Trouble> {
        self.ahead.stir();
        let Some(made) = self.ahead.made else {
            return Ok(());
        };
        for (_, piece) in self.meats_on_pits(i64::MAX) {
            let row = self
                .store()?
                .kept::<(i64, [u8; 32], Ahead)>(&name_of_shown(piece))?;
            if let Some((version, of, shown)) = row
                && version == made.version
            {
                self.ahead.of.insert(piece, of);
                self.ahead.shown.insert(piece, shown);
            }
        }
        Ok(())
    }
}
