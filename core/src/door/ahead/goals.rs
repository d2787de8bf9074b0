//! Which meats are to be followed to which facts.

use super::{Forecasting, Slowbend, name_of_run, name_of_shown};
use crate::{
    ahead::{Ahead, print},
    cook::Piece,
    error::Trouble,
    ids::{CookId, PieceId},
    moment::HOUR,
};

/// A meat that has been on for longer than this was forgotten, and so is its forecast: 36 h. Common practice, no source.
const FOLLOWED_MS: i64 = 36 * HOUR;

impl Slowbend {
    /// Sets a goal for each meat on a pit whose forecast is not that of its facts at `now`, and lets go of the others.
    pub(super) fn set_goals(&mut self, now: i64) -> Result<(), Trouble> {
        let meats = self.followed(now);
        self.let_go_of_others(&meats)?;
        for (cook, piece) in meats {
            let Some(facts) = self.facts_of(cook, piece, now)? else {
                continue;
            };
            let ahead = &mut self.ahead;
            let stands =
                ahead.of.get(&piece) == Some(&print(&facts)) && ahead.shown.contains_key(&piece);
            ahead.goals.remove(&piece);
            if !stands {
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

    /// Whether a meat that went on lately is on a pit.
    pub(super) fn follows_any(&self, now: i64) -> bool {
        !self.followed(now).is_empty()
    }

    /// The meats that were on a pit just before `now` and went on lately.
    fn followed(&self, now: i64) -> Vec<(CookId, PieceId)> {
        let (since, before) = (now.saturating_sub(FOLLOWED_MS), now.saturating_sub(1));
        let on = |piece: &Piece| {
            piece.is_on_pit(before) && piece.on_pit_at(before).is_some_and(|at| at > since)
        };
        let all = self.open_meats();
        all.filter(|(_, piece)| on(piece))
            .map(|(cook, piece)| (cook, piece.id))
            .collect()
    }

    fn open_meats(&self) -> impl Iterator<Item = (CookId, &Piece)> {
        let open = self.cooks.values().filter(|cook| cook.is_open());
        open.flat_map(|cook| cook.meats().map(move |piece| (cook.id, piece)))
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
        self.load_lessons(made)?;
        let meats: Vec<PieceId> = self.open_meats().map(|(_, piece)| piece.id).collect();
        for piece in meats {
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
