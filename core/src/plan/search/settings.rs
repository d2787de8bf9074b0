//! How the temperatures of all pits may run together. Start at [`Settings`].

use super::{
    table::{Least, NEVER, Table},
    waits,
};
use crate::plan::{
    cost::Level,
    household::GRID_MIN,
    model::{Model, Task},
};

/// The most settings that are kept to be searched.
const KEPT_MAX: usize = 200_000;
/// So many tasks of bounds of settings count as one node.
const TASKS_A_NODE: i64 = 96;

/// A setting and its bound.
pub(super) type Bounded = (u128, Vec<usize>);

/// All settings, by their bounds.
pub(super) struct Settings<'a> {
    model: &'a Model,
    table: &'a Table,
    /// For each pit, the least of each task and slot at it and all after it, however they run.
    after: Vec<Vec<Vec<Least>>>,
    /// The least waiting at each serving.
    waits: Vec<u128>,
}

impl<'a> Settings<'a> {
    pub fn new(model: &'a Model, table: &'a Table) -> Self {
        let none = || -> Vec<Vec<Least>> {
            let tasks = model.tasks.iter();
            let slots = |task: &Task| model.servings[task.serving].len();
            tasks.map(|task| vec![Least::NONE; slots(task)]).collect()
        };
        let mut after = vec![none()];
        for pit in (0..model.pits.len()).rev() {
            let mut here = after[after.len() - 1].clone();
            for (task, slots) in here.iter_mut().enumerate() {
                for (serve, least) in slots.iter_mut().enumerate() {
                    *least = least.or(table.anyhow(task, serve, pit));
                }
            }
            after.push(here);
        }
        after.reverse();
        Self {
            waits: (0..model.servings.len())
                .map(|serving| waits::at_least(model, serving))
                .collect(),
            model,
            table,
            after,
        }
    }

    /// The least waiting of all that is cut.
    pub fn waits(&self) -> u128 {
        self.waits.iter().sum()
    }

    /// No plan costs less.
    pub fn least(&self) -> u128 {
        self.bound(&[], true)
    }

    /// The bound of all settings that begin so.
    fn bound(&self, begun: &[usize], whole: bool) -> u128 {
        let of = |task: usize, serve: usize| {
            let rest = self.after[begun.len()][task][serve];
            let pits = begun.iter().enumerate();
            pits.fold(rest, |least, (pit, profile)| {
                least.or(self.table.at(task, serve, pit, *profile))
            })
        };
        let changed = |pit: &usize| self.model.pits[*pit].profiles[begun[*pit]].steps();
        let changed = || (0..begun.len()).filter(changed);
        let steps = self
            .model
            .order
            .of_level(Level::Openings, changed().count() as i64);
        let idle = changed().map(|pit| self.used(pit, begun[pit], &of)).max();
        bound(self.model, &self.waits, (whole, idle.unwrap_or(0)), of).saturating_add(steps)
    }

    /// What it costs more, at the least, that a pit burns for some task before its temperature changes, and for some task
    /// after: where it does not, the change is for nothing, and the setting without it is better.
    fn used(&self, pit: usize, profile: usize, of: &impl Fn(usize, usize) -> Least) -> u128 {
        let (mut early, mut late) = (NEVER, NEVER);
        for (nr, task) in self.model.tasks.iter().enumerate() {
            for serve in 0..self.model.servings[task.serving].len() {
                let (here, any) = (self.table.at(nr, serve, pit, profile), of(nr, serve).alone);
                early = early.min(here.early.saturating_sub(any));
                late = late.min(here.late.saturating_sub(any));
            }
        }
        early.max(late)
    }

    /// The least of each task by itself in a setting.
    pub fn alone(&self, setting: &[usize]) -> Vec<u128> {
        let least = |task: usize, serve: usize| {
            let pits = setting.iter().enumerate();
            pits.map(|(pit, profile)| self.table.at(task, serve, pit, *profile).alone)
                .min()
        };
        let of = |(nr, task): (usize, &Task)| {
            let serves = 0..self.model.servings[task.serving].len();
            serves
                .filter_map(|serve| least(nr, serve))
                .min()
                .unwrap_or(NEVER)
        };
        self.model.tasks.iter().enumerate().map(of).collect()
    }

    /// All settings with a bound below `limit`, the least first; and whether there were too many to tell.
    pub fn below(&self, limit: u128, nodes: &mut i64, budget: i64) -> (Vec<Bounded>, bool) {
        let mut kept = vec![];
        let mut bounds = 0;
        let a_node = (TASKS_A_NODE / self.model.tasks.len().max(1) as i64).max(1);
        let most = (budget - *nodes).max(0) / 4 * a_node;
        let cut_short = !self.extend(&mut vec![], limit, &mut kept, &mut bounds, most);
        *nodes += bounds / a_node;
        kept.sort();
        (kept, cut_short)
    }

    fn extend(
        &self,
        begun: &mut Vec<usize>,
        limit: u128,
        kept: &mut Vec<Bounded>,
        bounds: &mut i64,
        most: i64,
    ) -> bool {
        let whole = begun.len() == self.model.pits.len();
        let bound = self.bound(begun, whole);
        *bounds += 1;
        if bound >= limit {
            return true;
        }
        if kept.len() >= KEPT_MAX || *bounds > most {
            return false;
        }
        if whole {
            kept.push((bound, begun.clone()));
            return true;
        }
        (0..self.model.pits[begun.len()].profiles.len()).all(|profile| {
            begun.push(profile);
            let went_on = self.extend(begun, limit, kept, bounds, most);
            begun.pop();
            went_on
        })
    }
}

/// The least of a plan where each task costs no less than `of` says: the sum of what each costs whatever else is chosen, and
/// beside it, where the setting is `whole`, the largest part of any one that is shared; or what it costs that no change of
/// temperature is for nothing.
fn bound(
    model: &Model,
    waits: &[u128],
    (whole, idle): (bool, u128),
    of: impl Fn(usize, usize) -> Least,
) -> u128 {
    let (mut sum, mut shared) = (0u128, 0u128);
    for (serving, slots) in model.servings.iter().enumerate() {
        let (mut alone, mut with_shared) = (NEVER, NEVER);
        for (serve, slot) in slots.iter().enumerate() {
            let late = (slot - slots[0]) * GRID_MIN;
            let mut here = model.order.of_level(Level::Late, late);
            let mut most = 0;
            for (task, _) in served_at(model, serving) {
                let its = of(task, serve);
                here = here.saturating_add(its.alone);
                most = most.max(its.least.saturating_sub(its.alone));
            }
            alone = alone.min(here);
            with_shared = with_shared.min(here.saturating_add(most));
        }
        sum = sum.saturating_add(alone.saturating_add(waits[serving]));
        shared = shared.max(with_shared - alone);
    }
    match whole {
        _ if sum >= NEVER || idle >= NEVER / 2 => NEVER,
        true => sum + shared.max(idle),
        false => sum + idle,
    }
}

fn served_at(model: &Model, serving: usize) -> impl Iterator<Item = (usize, &Task)> {
    let tasks = model.tasks.iter().enumerate();
    tasks.filter(move |(_, task)| task.serving == serving)
}
