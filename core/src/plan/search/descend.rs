//! The search inside one setting: slots of the servings first, then a pit for each task, then the times. Start at
//! [`Descent::run`].

mod aim;
mod assign;
mod bounds;
mod build;
mod part;
mod times;

use super::{
    Found,
    room::Room,
    shelf::{List, Shelf},
    table::NEVER,
    waits,
};
use crate::plan::{
    choice::Choice,
    cost::Level,
    household::GRID_MIN,
    model::{Model, Task},
};
pub(super) use aim::Aim;
use bounds::Facts;
pub(super) use build::Chance;

/// The best plan so far, and what it took.
pub(super) struct Best {
    /// The plan.
    pub found: Option<Found>,
    /// Nodes visited.
    pub nodes: i64,
    /// Nodes that may be visited.
    pub budget: i64,
}

impl Best {
    pub fn new(budget: i64) -> Self {
        Self {
            found: None,
            nodes: 0,
            budget,
        }
    }

    /// What has to be undercut.
    pub fn cost(&self) -> u128 {
        self.found.as_ref().map_or(NEVER, |found| found.cost)
    }
}

/// What is chosen so far.
#[derive(Clone, Copy)]
struct Node {
    /// What all chosen tasks cost by themselves, and being late.
    alone: u128,
    /// Night slots taken.
    night: u128,
    /// Openings, changes of temperature among them.
    openings: u32,
    /// When each pit burns.
    hulls: [(i64, i64); PITS_MAX],
    /// Tasks not chosen yet.
    left: u128,
    /// Pits whose lighting is settled and counted, a bit each.
    lit: u8,
}

/// The most pits.
const PITS_MAX: usize = 6;
/// A pit that does not burn.
const COLD: (i64, i64) = (i64::MAX, i64::MIN);
/// No site yet.
pub(super) const NOWHERE: usize = usize::MAX;

/// Hands on while a pit's temperature is changed, minutes: common practice, no source.
const STEP_HANDS: u8 = 5;

/// One setting being searched. A *site* is a pit, or the number after the last pit for the kitchen.
pub(super) struct Descent<'a> {
    model: &'a Model,
    setting: Vec<usize>,
    /// Of each task whose site was given, what can be chosen there.
    aimed: Vec<Option<List>>,
    /// For each task, slot of its serving and site, what can be chosen, the cheapest first.
    lists: Vec<Vec<Vec<List>>>,
    /// What holds for all of a list.
    facts: Vec<Vec<Vec<Facts>>>,
    /// Of tasks alike, the one before and the next.
    twins: Vec<(Option<usize>, Option<usize>)>,
    /// How long each task takes at most, as expected.
    lengths: Vec<i64>,
    /// The tasks in the order in which they get their sites: those that fill a grate the longest first.
    order: Vec<usize>,
    /// The slot of each serving.
    serves: Vec<usize>,
    /// The site of each task.
    sites: Vec<usize>,
    /// What is chosen for each task.
    chosen: Vec<Option<Choice>>,
    room: Room<'a>,
    /// What is surely on each pit in each slot: grate, poultry, other.
    sure: Vec<Vec<(i64, u8, u8)>>,
    /// Nodes at which this setting is given up.
    until: i64,
    /// Where nothing is chosen.
    start: Option<Node>,
}

impl<'a> Descent<'a> {
    /// Lays out what can be chosen; `bound` is the setting's, `limit` what has to be undercut.
    pub fn new(
        model: &'a Model,
        shelf: &Shelf<'a>,
        setting: &[usize],
        alone: &[u128],
        limit: u128,
    ) -> Self {
        let all: u128 = alone.iter().copied().fold(0, u128::saturating_add);
        let lists = |(nr, task): (usize, &Task)| -> Vec<Vec<List>> {
            let spare = limit.saturating_sub(all.saturating_sub(alone[nr]));
            let serves = 0..model.servings[task.serving].len();
            serves
                .map(|serve| shelf.of(nr, serve, setting, spare))
                .collect()
        };
        let lists: Vec<_> = model.tasks.iter().enumerate().map(lists).collect();
        Self {
            setting: setting.to_vec(),
            facts: bounds::facts(model, setting, &lists),
            lists,
            ..Self::bare(model)
        }
    }

    /// Nothing can be chosen yet.
    pub fn bare(model: &'a Model) -> Self {
        let count = model.tasks.len();
        let alike = |at: usize, other: usize| model.tasks[at] == model.tasks[other];
        let twins = |at: usize| {
            let before = (0..at).rev().find(|other| alike(at, *other));
            (before, (at + 1..count).find(|other| alike(at, *other)))
        };
        let length = |task: &Task| {
            task.times
                .iter()
                .flatten()
                .flatten()
                .map(|four| four[1])
                .max()
        };
        let lengths: Vec<i64> = model
            .tasks
            .iter()
            .map(|task| length(task).unwrap_or(0))
            .collect();
        let mut order: Vec<usize> = (0..count).collect();
        order.sort_by_key(|at| (-(model.tasks[*at].area * lengths[*at]), *at));
        Self {
            model,
            setting: vec![0; model.pits.len()],
            aimed: (0..count).map(|_| None).collect(),
            facts: vec![],
            lists: vec![],
            twins: (0..count).map(twins).collect(),
            lengths,
            order,
            serves: vec![],
            sites: vec![NOWHERE; count],
            chosen: vec![None; count],
            room: Room::new(model),
            sure: vec![vec![(0, 0, 0); model.slots as usize + 1]; model.pits.len()],
            until: 0,
            start: None,
        }
    }

    /// Searches the setting; whether it was searched to its end.
    pub fn run(&mut self, best: &mut Best, most: i64) -> bool {
        self.until = (best.nodes + most).min(best.budget);
        match self.root() {
            Some(root) => self.serve(best, root),
            None => true,
        }
    }

    /// Nothing is chosen but how the temperatures run; none where no hands are free to change them.
    fn root(&mut self) -> Option<Node> {
        let mut root = Node {
            alone: 0,
            night: 0,
            openings: 0,
            hulls: [COLD; PITS_MAX],
            left: (1u128 << self.model.tasks.len()) - 1,
            lit: 0,
        };
        self.room = Room::new(self.model);
        self.chosen.fill(None);
        for (at, pit) in self.model.pits.iter().enumerate() {
            if pit.hot {
                root.hulls[at] = (0, 0);
            }
            let profile = pit.profiles[self.setting[at]];
            if profile.steps() {
                if !self.room.hands_free(profile.at, STEP_HANDS) {
                    return None;
                }
                self.room.hands(profile.at, STEP_HANDS, false);
                root.night |= self.model.night.mark(profile.at);
                root.openings += 1;
            }
        }
        Some(root)
    }

    /// The cost of a serving at one of its slots.
    fn late(&self, serving: usize, serve: usize) -> u128 {
        let slots = &self.model.servings[serving];
        let late = (slots[serve] - slots[0]) * GRID_MIN;
        self.model.order.of_level(Level::Late, late)
    }

    /// Chooses the slots of all servings.
    fn serve(&mut self, best: &mut Best, node: Node) -> bool {
        let serving = self.serves.len();
        let Some(slots) = self.model.servings.get(serving) else {
            return self.assign(best, &node, 0);
        };
        let mut whole = true;
        for serve in 0..slots.len() {
            let mut next = node;
            next.alone += self.late(serving, serve);
            self.serves.push(serve);
            whole &= next.alone.saturating_add(self.least_served()) >= best.cost()
                || self.serve(best, next);
            self.serves.pop();
        }
        whole
    }

    fn of(&self, task: usize) -> &[Choice] {
        if let Some(list) = &self.aimed[task] {
            return list.all();
        }
        self.lists[task][self.serves[self.model.tasks[task].serving]][self.sites[task]].all()
    }
}
