//! Folding what the store holds, and keeping it folded.

use super::{Mark, Slowbend};
use crate::{
    cook::{
        Cook, Crew, Known,
        fold::{self, Order},
    },
    error::Trouble,
    ids::{CookId, DeviceId, PieceId},
    log::{Meaning, Payload},
    screens::{LastTime, last_time},
    store::{CookLine, Group},
};

/// So many past cooks are looked through for a meat that nobody has loaded.
const PAST_SEARCHED: i64 = 400;
/// So many past cooks are looked through for what their kitchens had.
const PAST_KITCHENS: i64 = 24;

impl Slowbend {
    /// All that screens, alarms and decisions may look at.
    pub(super) fn known(&self) -> Known<'_> {
        Known {
            crew: &self.crew,
            cooks: &self.cooks,
            tails: &self.tails,
            ahead: &self.ahead.shown,
            lessons: &self.ahead.learning.lessons,
            device: self
                .store
                .as_ref()
                .map_or(DeviceId(uuid::Uuid::nil()), |store| store.device),
            warnings: &self.warnings,
        }
    }

    /// Loads a group: from its cache and what came after it where that is enough, else from all its entries.
    pub(super) fn load(&mut self, group: Group) -> Result<(), Trouble> {
        self.ahead.stir();
        match group {
            Group::Crew => {
                let cached = self.store()?.cached::<(Crew, Option<Order>)>(group)?;
                let (crew, mark) = self.caught_up(
                    group,
                    cached,
                    |entries| Some(fold::crew(entries)),
                    apply_crew,
                )?;
                self.crew = crew.unwrap_or_default();
                self.marks.insert(group, mark);
            }
            Group::Cook(id) => {
                let cached = self.store()?.cached::<(Cook, Option<Order>)>(group)?;
                let (cook, mark) =
                    self.caught_up(group, cached, |entries| fold::cook(id, entries), apply_cook)?;
                self.marks.insert(group, mark);
                match cook {
                    Some(cook) => self.cooks.insert(id, cook),
                    None => self.cooks.remove(&id),
                };
                self.want_tails()?;
            }
        }
        Ok(())
    }

    fn caught_up<T: Hides>(
        &mut self,
        group: Group,
        cached: Option<((T, Option<Order>), i64)>,
        fold: impl Fn(&mut [fold::Known]) -> Option<T>,
        apply: impl Fn(&mut T, &fold::Known),
    ) -> Result<(Option<T>, Mark), Trouble> {
        let store = self.store()?;
        if let Some(((mut state, last), seq)) = cached {
            let (entries, seq) = store.entries_of(group, seq)?;
            let mut known: Vec<fold::Known> = entries.iter().map(fold::Known::of).collect();
            known.sort_unstable_by_key(fold::Known::order);
            let follows = known.first().is_none_or(|first| Some(first.order()) > last);
            if follows && !known.iter().any(|one| one.is_void() || state.hides(one)) {
                known.iter().for_each(|one| apply(&mut state, one));
                let last = known.last().map(fold::Known::order).or(last);
                return Ok((
                    Some(state),
                    Mark {
                        last,
                        seq,
                        since_cached: known.len() as i64,
                    },
                ));
            }
        }
        let (entries, seq) = store.entries_of(group, 0)?;
        let mut known: Vec<fold::Known> = entries.iter().map(fold::Known::of).collect();
        let state = fold(&mut known);
        let last = known.last().map(fold::Known::order);
        Ok((
            state,
            Mark {
                last,
                seq,
                since_cached: known.len() as i64,
            },
        ))
    }

    /// Folds entries that were just recorded in a group, the last of them with arrival number `seq`.
    pub(super) fn follow(
        &mut self,
        group: Group,
        known: &[fold::Known],
        seq: i64,
    ) -> Result<(), Trouble> {
        self.ahead.stir();
        self.stir_lessons(group, known);
        let mark = self.marks.get(&group).copied().unwrap_or_default();
        let in_order = known.iter().all(|one| Some(one.order()) > mark.last);
        let hidden = |one: &fold::Known| match group {
            Group::Crew => self.crew.hides(one),
            Group::Cook(id) => self.cooks.get(&id).is_some_and(|cook| cook.hides(one)),
        };
        let plain = !known
            .iter()
            .any(|one| one.is_void() || is_erasing(one) || hidden(one));
        if !in_order || !plain || !self.marks.contains_key(&group) {
            return self.load(group);
        }
        for one in known {
            match group {
                Group::Crew => apply_crew(&mut self.crew, one),
                Group::Cook(id) => match self.cooks.get_mut(&id) {
                    Some(cook) => apply_cook(cook, one),
                    None => return self.load(group),
                },
            }
        }
        self.want_tails()?;
        let last = known.last().map(fold::Known::order).or(mark.last);
        let since_cached = mark.since_cached + known.len() as i64;
        self.marks.insert(
            group,
            Mark {
                last,
                seq,
                since_cached,
            },
        );
        Ok(())
    }

    /// What comes in for a cook that is over, or ends one, teaches anew.
    fn stir_lessons(&mut self, group: Group, known: &[fold::Known]) {
        let ends = |one: &fold::Known| {
            matches!(
                one.meaning,
                Meaning::Known(Payload::CookFinished(_) | Payload::Voided(_))
            )
        };
        let open = |id: &CookId| self.cooks.get(id).is_some_and(Cook::is_open);
        if group.cook().is_some_and(|id| !open(&id)) || known.iter().any(ends) {
            self.ahead.learning.want();
        }
    }

    /// Loads the cooks under way; makes the list of cooks anew where another version made it.
    pub(super) fn load_open_cooks(&mut self) -> Result<(), Trouble> {
        if !self.store()?.lines_are_current()? {
            self.rebuild_lines()?;
        }
        for line in self.store()?.open_lines()? {
            self.load(Group::Cook(line.cook))?;
        }
        Ok(())
    }

    fn rebuild_lines(&mut self) -> Result<(), Trouble> {
        let mut lines = Vec::new();
        for id in self.store()?.cooks_named()? {
            self.load(Group::Cook(id))?;
            lines.extend(self.cooks.remove(&id).map(|cook| line_of(&cook)));
            self.marks.remove(&Group::Cook(id));
        }
        Ok(self.store()?.put_all_lines(&lines)?)
    }

    /// Brings the list of cooks in line with cooks that changed.
    pub(super) fn refresh_lines(&mut self, ids: &[CookId]) -> Result<(), Trouble> {
        if ids.is_empty() {
            return Ok(());
        }
        let lines: Vec<CookLine> = ids
            .iter()
            .filter_map(|id| self.cooks.get(id).map(line_of))
            .collect();
        let dropped: Vec<CookId> = ids
            .iter()
            .filter(|id| !self.cooks.contains_key(id))
            .copied()
            .collect();
        Ok(self.store()?.settle_lines(&lines, &dropped)?)
    }

    /// Loads a cook if it is not; answers whether there is one of that id.
    pub(super) fn want_cook(&mut self, id: CookId) -> Result<bool, Trouble> {
        if !self.cooks.contains_key(&id) {
            self.load(Group::Cook(id))?;
        }
        Ok(self.cooks.contains_key(&id))
    }

    /// Loads the cook of a meat, looking through past cooks if need be.
    pub(super) fn want_piece(&mut self, id: PieceId) -> Result<bool, Trouble> {
        if self.known().piece(id).is_some() {
            return Ok(true);
        }
        for line in self.store()?.past_lines(i64::MAX, PAST_SEARCHED)? {
            let loaded = self.cooks.contains_key(&line.cook);
            if self.want_cook(line.cook)? && self.cooks[&line.cook].pieces.contains_key(&id) {
                return Ok(true);
            }
            if !loaded {
                self.let_go(line.cook);
            }
        }
        Ok(false)
    }

    /// What a cook's kitchen could have as last time: from the cooks under way, then from past ones, latest first, until
    /// nothing is lacking.
    pub(super) fn last_kitchens(&mut self, id: CookId) -> Result<LastTime, Trouble> {
        let Some(of) = self.cooks.get(&id).cloned() else {
            return Ok(LastTime::default());
        };
        let mut last = last_time(self.cooks.values().filter(|cook| cook.is_open()), &of);
        for line in self.store()?.past_lines(of.started_at, PAST_KITCHENS)? {
            if last.is_whole(&of, line.started) {
                break;
            }
            let loaded = self.cooks.contains_key(&line.cook);
            if self.want_cook(line.cook)? {
                last.also(&self.cooks[&line.cook], &of);
            }
            if !loaded {
                self.let_go(line.cook);
            }
        }
        Ok(last)
    }

    /// Forgets a cook until somebody asks for it again.
    pub(super) fn let_go(&mut self, id: CookId) {
        self.cooks.remove(&id);
        self.marks.remove(&Group::Cook(id));
    }
}

/// Whether a void was taken for that of an entry before the entry came: it counts only if it comes after it, which the
/// whole fold finds out.
trait Hides {
    fn hides(&self, one: &fold::Known) -> bool;
}

impl Hides for Crew {
    fn hides(&self, one: &fold::Known) -> bool {
        self.hidden.contains(&one.key)
    }
}

impl Hides for Cook {
    fn hides(&self, one: &fold::Known) -> bool {
        self.hidden.contains(&one.key)
    }
}

fn is_erasing(known: &fold::Known) -> bool {
    matches!(known.meaning, Meaning::Known(Payload::ErasedFor(_)))
}

fn apply_crew(crew: &mut Crew, one: &fold::Known) {
    let hidden = std::mem::take(&mut crew.hidden);
    fold::apply_crew(crew, one, &hidden);
    crew.hidden = hidden;
    crew.entries += 1;
}

fn apply_cook(cook: &mut Cook, one: &fold::Known) {
    let hidden = std::mem::take(&mut cook.hidden);
    fold::apply_to(cook, one, &hidden);
    cook.hidden = hidden;
    cook.entries += 1;
}

/// A cook's line in the list of cooks.
pub(super) fn line_of(cook: &Cook) -> CookLine {
    CookLine {
        cook: cook.id,
        name: cook.name.value.clone(),
        started: cook.started_at,
        finished: cook.finished.map(|when| when.at),
        demo: cook.demo,
    }
}
