//! Learning from past cooks, a meat a step.

use super::Slowbend;
use crate::{
    ahead::{Lessons, Made, Taught, taught_by},
    error::Trouble,
    ids::{CookId, PieceId},
};

/// So many cooks are learned from, the latest: pits and cooks change. Common practice, no source.
const COOKS: i64 = 20;
/// What was learned is kept under this name.
const NAME: &[u8] = b"lessons";

/// Past cooks, each with the arrival number of its last entry.
type PastCooks = Vec<(CookId, i64)>;

/// What is being learned.
#[derive(Default)]
pub(in crate::door) struct Learning {
    /// What was learned, once it is up to date.
    pub(in crate::door) lessons: Lessons,
    /// The meats still to be learned from, the last first, and what was learned of those before; none = not begun.
    under_way: Option<(Vec<(CookId, PieceId)>, Lessons)>,
    /// Past cooks by how far their entries go, as of which the lessons are; none = something came in.
    as_of: Option<PastCooks>,
    /// Whether a cook ended or one that is over changed: that is learned from even while no meat is on.
    wanted: bool,
}

impl Learning {
    /// Something came in for a past cook.
    pub(in crate::door) fn stir(&mut self) {
        self.as_of = None;
        self.under_way = None;
    }

    /// A cook ended, or one that is over changed.
    pub(in crate::door) fn want(&mut self) {
        self.stir();
        self.wanted = true;
    }
}

impl Slowbend {
    /// One step of learning; answers whether there was one to do. Forecasts wait until all is learned; while no meat is on and
    /// no cook ended, nothing is.
    pub(super) fn learn_one(&mut self, made: Made, now: i64) -> Result<bool, Trouble> {
        let learning = &self.ahead.learning;
        if learning.as_of.is_some() || !(learning.wanted || self.follows_any(now)) {
            return Ok(false);
        }
        let Some((mut meats, mut lessons)) = self.ahead.learning.under_way.take() else {
            return self.begin_to_learn(made);
        };
        match meats.pop() {
            Some((cook, piece)) => {
                self.learn_of(made, &mut lessons, cook, piece)?;
                self.ahead.learning.under_way = Some((meats, lessons));
            }
            None => {
                let past = self.past_cooks()?;
                let row = (made.version, &past, &lessons);
                self.store()?.keep(NAME, &row)?;
                self.learned(past, lessons);
            }
        }
        Ok(true)
    }

    /// What was kept is shown until it is up to date.
    pub(super) fn load_lessons(&mut self, made: Made) -> Result<(), Trouble> {
        self.ahead.learning.stir();
        if let Some((_, lessons)) = self.kept_lessons(made)? {
            self.ahead.learning.lessons = lessons;
        }
        Ok(())
    }

    fn kept_lessons(&mut self, made: Made) -> Result<Option<(PastCooks, Lessons)>, Trouble> {
        let kept = self.store()?.kept::<(i64, PastCooks, Lessons)>(NAME)?;
        let ours = kept.filter(|(version, ..)| *version == made.version);
        Ok(ours.map(|(_, past, lessons)| (past, lessons)))
    }

    fn begin_to_learn(&mut self, made: Made) -> Result<bool, Trouble> {
        let past = self.past_cooks()?;
        if let Some((of, lessons)) = self.kept_lessons(made)?
            && of == past
        {
            self.learned(past, lessons);
            return Ok(false);
        }
        let mut meats = vec![];
        for (cook, _) in past {
            meats.extend(self.meats_of(cook)?);
        }
        meats.reverse();
        self.ahead.learning.under_way = Some((meats, Lessons::default()));
        Ok(true)
    }

    fn learned(&mut self, past: PastCooks, lessons: Lessons) {
        self.ahead.learning.as_of = Some(past);
        self.ahead.learning.lessons = lessons;
        self.ahead.learning.wanted = false;
        self.ahead.stir();
    }

    /// The latest past cooks that are no invention, in the order in which they ended, each with how far its entries go.
    fn past_cooks(&mut self) -> Result<PastCooks, Trouble> {
        let store = self.store()?;
        let mut lines = store.past_lines(i64::MAX, COOKS)?;
        lines.retain(|line| !line.demo);
        lines.sort_by_key(|line| (line.finished, line.cook));
        let mut past = vec![];
        for line in lines {
            past.push((line.cook, store.last_of(line.cook)?));
        }
        Ok(past)
    }

    fn meats_of(&mut self, cook: CookId) -> Result<Vec<(CookId, PieceId)>, Trouble> {
        self.with_cook(cook, |door| {
            let pieces = door.cooks.get(&cook).map(|cook| cook.pieces.keys());
            let meats = pieces.into_iter().flatten().map(|piece| (cook, *piece));
            Ok(meats.collect())
        })
    }

    fn learn_of(
        &mut self,
        made: Made,
        lessons: &mut Lessons,
        cook: CookId,
        piece: PieceId,
    ) -> Result<(), Trouble> {
        let found = self.with_cook(cook, |door| {
            let known = door.known();
            let taught = known.piece(piece).and_then(|(_, piece)| taught_by(piece));
            let Some(Taught { pit, done_at }) = taught else {
                return Ok(None);
            };
            let facts = door.facts_of(cook, piece, done_at)?;
            Ok(facts.map(|facts| (pit, done_at, facts)))
        })?;
        let Some((pit, done_at, mut facts)) = found else {
            return Ok(());
        };
        facts.habits = lessons.habits(Some(pit), facts.cut);
        if let Some(after) = (made.taught)(&facts, done_at) {
            lessons.learn(pit, &facts, &after);
        }
        Ok(())
    }

    /// Does something with a cook loaded, and lets it go again where it was not.
    fn with_cook<T>(
        &mut self,
        cook: CookId,
        then: impl FnOnce(&mut Self) -> Result<T, Trouble>,
    ) -> Result<T, Trouble> {
        let loaded = self.cooks.contains_key(&cook);
        let stands = self.ahead.learning.under_way.take();
        self.want_cook(cook)?;
        self.ahead.learning.under_way = stands;
        let came = then(self);
        if !loaded {
            self.let_go(cook);
        }
        came
    }
}
