//! The slots in which somebody is up who would rather not be. Start at [`Night::of`].

use crate::plan::{
    household::{Household, Window},
    times::{down, up},
};

/// The most night slots: 32 hours of them, four nights.
pub(in crate::plan) const NIGHT_SLOTS_MAX: usize = 128;

/// The night slots, numbered from the first on.
pub(in crate::plan) struct Night {
    /// The number of each slot; none by day.
    index: Vec<Option<u8>>,
    /// For each slot, the numbers of all night slots before it.
    before: Vec<u128>,
    /// Whether there were more than can be counted.
    too_many: bool,
    /// Each sleep without anybody's watch: from, until.
    pub asleep: Vec<(i64, i64)>,
}

impl Night {
    /// Sleep that nobody watches over, and the quiet hours.
    pub fn of(household: &Household, slots: i64) -> Self {
        let inside =
            |at: i64, window: &Window| down(window.from_min) <= at && at < up(window.until_min);
        let watched = |at: i64| {
            let watches = household.watches.iter();
            watches
                .map(|watch| (up(watch.from_min), down(watch.until_min)))
                .any(|(from, until)| from <= at && at < until)
        };
        let sleeps =
            |at: i64| household.sleep.iter().any(|window| inside(at, window)) && !watched(at);
        let quiet = |at: i64| household.quiet.iter().any(|window| inside(at, window));
        let (mut index, mut before, mut seen) = (vec![], vec![], 0u8);
        let (mut mask, mut too_many) = (0u128, false);
        for at in 0..slots {
            before.push(mask);
            let night = sleeps(at) || quiet(at);
            let is_night = night && usize::from(seen) < NIGHT_SLOTS_MAX;
            too_many |= night && !is_night;
            index.push(is_night.then_some(seen));
            if is_night {
                mask |= 1 << seen;
                seen += 1;
            }
        }
        before.push(mask);
        Self {
            index,
            before,
            too_many,
            asleep: runs(slots, sleeps),
        }
    }

    /// Whether all night slots could be numbered.
    pub const fn all_counted(&self) -> bool {
        !self.too_many
    }

    /// The mark of one slot; nothing by day.
    pub fn mark(&self, slot: i64) -> u128 {
        let number = usize::try_from(slot)
            .ok()
            .and_then(|slot| self.index.get(slot));
        number.copied().flatten().map_or(0, |number| 1 << number)
    }

    /// The marks of all night slots from `from` up to before `until`.
    pub fn between(&self, from: i64, until: i64) -> u128 {
        let at = |slot: i64| self.before[slot.clamp(0, self.before.len() as i64 - 1) as usize];
        at(until) & !at(from)
    }

    /// The marks at which a pit that may be left alone for so many slots has to be seen to, if it burns all night: every
    /// `alone` slots of each sleep, from where it begins.
    pub fn feeds(&self, alone: i64) -> u128 {
        let each = self.asleep.iter().flat_map(|(from, until)| {
            let step = alone.max(1) as usize;
            (*from..*until).step_by(step).skip(usize::from(alone > 0))
        });
        each.fold(0, |all, slot| all | self.mark(slot))
    }
}

/// Where `is` holds on end: from, until.
fn runs(slots: i64, is: impl Fn(i64) -> bool) -> Vec<(i64, i64)> {
    let mut found: Vec<(i64, i64)> = vec![];
    for at in (0..slots).filter(|at| is(*at)) {
        match found.last_mut() {
            Some((_, until)) if *until == at => *until = at + 1,
            _ => found.push((at, at + 1)),
        }
    }
    found
}
