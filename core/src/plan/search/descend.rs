//! The search inside one setting. Start at [`Descent::run`].

use super::{
    Found,
    finish::{finish, night_cost},
    room::Room,
    table::{NEVER, Table},
};
use crate::plan::{
    choice::{Choice, NONE, Site, choices},
    cost::Level,
    household::GRID_MIN,
    model::{Heat, Model},
};

/// The best plan so far, and what it took.
pub(in crate::plan) struct Best {
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

/// A task that is not chosen yet: the least it can cost here, and its choices that fit.
struct Open {
    task: usize,
    /// The least of what it costs whatever else is chosen.
    alone: u128,
    /// The least that it adds to what is shared too.
    added: u128,
}

/// What is chosen so far.
#[derive(Clone, Copy)]
struct Node {
    /// What all chosen tasks cost by themselves.
    alone: u128,
    /// Night slots taken.
    night: u128,
    /// Openings, changes of temperature among them.
    openings: u32,
    /// When each pit burns.
    hulls: [(i64, i64); PITS_MAX],
    /// Tasks not chosen yet.
    left: u128,
}

/// The most pits.
pub(in crate::plan) const PITS_MAX: usize = 6;
/// A pit that does not burn.
const COLD: (i64, i64) = (i64::MAX, i64::MIN);

/// One setting being searched.
pub(super) struct Descent<'a> {
    model: &'a Model,
    setting: &'a [usize],
    /// For each task and slot of its serving, what can be chosen, the cheapest first.
    choices: Vec<Vec<Vec<Choice>>>,
    /// The slot of each serving.
    serves: Vec<usize>,
    /// What is chosen for each task.
    chosen: Vec<Option<Choice>>,
    /// The next and the one before of tasks alike.
    twins: Vec<Option<usize>>,
    room: Room<'a>,
    /// Nodes at which this setting is given up.
    until: i64,
}

impl<'a> Descent<'a> {
    pub fn new(model: &'a Model, _table: &Table, setting: &'a [usize]) -> Self {
        let sites = |heat| -> Vec<Site<'a>> {
            match heat {
                Heat::Pit => (model.pits.iter().zip(setting).enumerate())
                    .map(|(at, (pit, profile))| Site::Pit(at, &pit.profiles[*profile]))
                    .collect(),
                Heat::Burner | Heat::None => vec![Site::Kitchen],
            }
        };
        let of = |task: &crate::plan::model::Task| {
            let at = |serve| {
                let sites = sites(task.heat).into_iter();
                let mut all: Vec<Choice> = sites
                    .flat_map(|site| choices(model, task, site, serve))
                    .collect();
                all.sort_by_key(|choice| {
                    (
                        choice.alone,
                        choice.least,
                        std::cmp::Reverse(choice.on),
                        choice.pit,
                        choice.cut,
                        choice.place,
                    )
                });
                all
            };
            (0..model.servings[task.serving].len()).map(at).collect()
        };
        let twin = |at: usize| {
            model.tasks[..at]
                .iter()
                .rposition(|other| *other == model.tasks[at])
        };
        Self {
            model,
            setting,
            choices: model.tasks.iter().map(of).collect(),
            serves: vec![],
            chosen: vec![None; model.tasks.len()],
            twins: (0..model.tasks.len()).map(twin).collect(),
            room: Room::new(model),
            until: 0,
        }
    }

    /// Searches the setting; whether it was searched to its end.
    pub fn run(&mut self, best: &mut Best, most: i64) -> bool {
        self.until = (best.nodes + most).min(best.budget);
        let mut root = Node {
            alone: 0,
            night: 0,
            openings: 0,
            hulls: [COLD; PITS_MAX],
            left: (1u128 << self.model.tasks.len()) - 1,
        };
        for (at, pit) in self.model.pits.iter().enumerate() {
            if pit.hot {
                root.hulls[at] = (0, 0);
            }
            let profile = pit.profiles[self.setting[at]];
            if profile.steps() {
                if !self.room.hands_free(profile.at, STEP_HANDS) {
                    return true;
                }
                self.room.hands(profile.at, STEP_HANDS, false);
                root.night |= self.model.night.mark(profile.at);
                root.openings += 1;
            }
        }
        self.serve(best, root)
    }

    /// Chooses the slots of all servings, then the tasks.
    fn serve(&mut self, best: &mut Best, node: Node) -> bool {
        let serving = self.serves.len();
        let Some(slots) = self.model.servings.get(serving) else {
            return self.descend(best, &node);
        };
        let mut whole = true;
        for (serve, slot) in slots.iter().enumerate() {
            let late = (slot - slots[0]) * GRID_MIN;
            let mut next = node;
            next.alone += self.model.order.of_level(Level::Late, late);
            self.serves.push(serve);
            if next.alone + self.least_of_chosen_servings() < best.cost() {
                whole &= self.serve(best, next);
            }
            self.serves.pop();
        }
        whole
    }

    /// The least of all tasks whose serving has its slot.
    fn least_of_chosen_servings(&self) -> u128 {
        let tasks = self.model.tasks.iter().enumerate();
        let chosen = tasks.filter_map(|(at, task)| {
            let serve = self.serves.get(task.serving)?;
            Some(
                self.choices[at][*serve]
                    .first()
                    .map_or(NEVER, |choice| choice.alone),
            )
        });
        chosen.fold(0, u128::saturating_add)
    }

    /// Chooses one more task; whether everything below was searched.
    fn descend(&mut self, best: &mut Best, node: &Node) -> bool {
        best.nodes += 1;
        if node.left == 0 {
            self.leaf(best, node);
            return true;
        }
        let shared = self.shared(node);
        let limit = best.cost();
        let Some((open, rest)) = self.open(node, shared, limit) else {
            return true;
        };
        let mut fitting = self.fitting(node, shared, open.task, rest, limit);
        fitting.sort_by_key(|(added, choice)| {
            (
                *added,
                std::cmp::Reverse(choice.on),
                choice.pit,
                choice.cut,
                choice.place,
            )
        });
        for (added, choice) in fitting {
            if best.nodes >= self.until {
                return false;
            }
            if rest + added >= best.cost() {
                break;
            }
            let next = self.choose(node, open.task, &choice);
            let whole = self.descend(best, &next);
            self.room.put(&self.model.tasks[open.task], &choice, true);
            self.chosen[open.task] = None;
            if !whole {
                return false;
            }
        }
        true
    }

    /// What the chosen tasks cost together.
    fn shared(&self, node: &Node) -> u128 {
        let order = &self.model.order;
        let fuel: i64 = (0..self.model.pits.len())
            .map(|pit| self.fuel(pit, node.hulls[pit]))
            .sum();
        night_cost(self.model, node.night)
            + order.of_level(Level::Openings, i64::from(node.openings))
            + order.of_level(Level::Fuel, fuel)
    }

    fn fuel(&self, pit: usize, hull: (i64, i64)) -> i64 {
        if hull.0 >= hull.1 {
            return 0;
        }
        let model = &self.model.pits[pit];
        model.burns(&model.profiles[self.setting[pit]], hull.0, hull.1)
    }

    /// The task to choose next, and the cost of the node without what that task adds; none where the node is not worth it.
    fn open(&self, node: &Node, shared: u128, limit: u128) -> Option<(Open, u128)> {
        let mut picked: Option<(u128, usize, Open)> = None;
        let (mut alone, mut most) = (0u128, 0u128);
        for task in (0..self.model.tasks.len()).filter(|task| node.left >> task & 1 == 1) {
            let open = self.least(node, task, limit)?;
            alone += open.alone;
            let over = open.added - open.alone;
            most = most.max(over);
            let length = self.model.tasks[task]
                .times
                .iter()
                .flatten()
                .flatten()
                .map(|four| four[1])
                .max();
            let key = (over, length.unwrap_or(0) as usize);
            if picked
                .as_ref()
                .is_none_or(|(over, length, _)| (key.0, key.1) > (*over, *length))
            {
                picked = Some((key.0, key.1, open));
            }
        }
        let base = node.alone + shared + alone;
        if base + most >= limit {
            return None;
        }
        let (_, _, open) = picked?;
        let rest = base - open.alone;
        Some((open, rest))
    }

    /// The least that a task costs beside what is chosen; none where nothing of it fits.
    fn least(&self, node: &Node, task: usize, _limit: u128) -> Option<Open> {
        let mut least: Option<Open> = None;
        for choice in self.of(task) {
            if least
                .as_ref()
                .is_some_and(|open| choice.alone >= open.added)
            {
                break;
            }
            if !self.fits(task, choice) {
                continue;
            }
            let added = choice.alone + self.adds(node, task, choice);
            match &mut least {
                Some(open) => open.added = open.added.min(added),
                None => {
                    least = Some(Open {
                        task,
                        alone: choice.alone,
                        added,
                    })
                }
            }
        }
        least
    }

    fn fitting(
        &self,
        node: &Node,
        _shared: u128,
        task: usize,
        rest: u128,
        limit: u128,
    ) -> Vec<(u128, Choice)> {
        let mut all = vec![];
        for choice in self.of(task) {
            if rest + choice.alone >= limit {
                break;
            }
            if self.fits(task, choice) {
                let added = choice.alone + self.adds(node, task, choice);
                if rest + added < limit {
                    all.push((added, *choice));
                }
            }
        }
        all
    }

    fn of(&self, task: usize) -> &[Choice] {
        &self.choices[task][self.serves[self.model.tasks[task].serving]]
    }

    /// Whether it fits, and keeps tasks alike in their order.
    fn fits(&self, task: usize, choice: &Choice) -> bool {
        let before = self.twins[task].and_then(|twin| self.chosen[twin]);
        let after = self
            .twins
            .iter()
            .position(|twin| *twin == Some(task))
            .and_then(|twin| self.chosen[twin]);
        before.is_none_or(|before| before.rank() <= choice.rank())
            && after.is_none_or(|after| choice.rank() <= after.rank())
            && self.room.takes(&self.model.tasks[task], choice)
    }

    /// What a choice adds to what is shared.
    fn adds(&self, node: &Node, task: usize, choice: &Choice) -> u128 {
        let order = &self.model.order;
        let mut night = node.night | choice.night;
        let mut fuel = 0;
        if choice.pit != NONE {
            let pit = choice.pit as usize;
            let hull = self.hull(node, choice);
            night |= self.model.pits[pit].feeds & self.model.night.between(hull.0, hull.1);
            fuel = self.fuel(pit, hull) - self.fuel(pit, node.hulls[pit]);
        }
        let night = night.count_ones() - node.night.count_ones();
        order.of_level(Level::Night, i64::from(night))
            + order.of_level(
                Level::Openings,
                i64::from(self.room.openings(&self.model.tasks[task], choice)),
            )
            + order.of_level(Level::Fuel, fuel)
    }

    fn hull(&self, node: &Node, choice: &Choice) -> (i64, i64) {
        let (from, until) = choice.burning(self.model);
        let hull = node.hulls[choice.pit as usize];
        (hull.0.min(from), hull.1.max(until))
    }

    fn choose(&mut self, node: &Node, task: usize, choice: &Choice) -> Node {
        let mut next = *node;
        next.alone += choice.alone;
        next.night |= choice.night;
        next.openings += self.room.openings(&self.model.tasks[task], choice);
        next.left &= !(1 << task);
        if choice.pit != NONE {
            let pit = choice.pit as usize;
            let hull = self.hull(node, choice);
            next.hulls[pit] = hull;
            next.night |= self.model.pits[pit].feeds & self.model.night.between(hull.0, hull.1);
        }
        self.room.put(&self.model.tasks[task], choice, false);
        self.chosen[task] = Some(*choice);
        next
    }

    /// All tasks are chosen: the rest is placed, and the plan kept if it is the best.
    fn leaf(&mut self, best: &mut Best, node: &Node) {
        let limit = best.cost();
        let without = node.alone + self.shared(node) - night_cost(self.model, node.night);
        let model = self.model;
        let chosen: Vec<Choice> = self.chosen.iter().copied().flatten().collect();
        let hulls = &node.hulls[..model.pits.len()];
        let allowed =
            |nights: u32| without + model.order.of_level(Level::Night, i64::from(nights)) < limit;
        if let Some(done) = finish(model, &mut self.room, &chosen, hulls, node.night, allowed) {
            best.found = Some(Found {
                setting: self.setting.to_vec(),
                serves: self.serves.clone(),
                choices: chosen,
                preps: done.preps,
                cost: without + night_cost(model, done.night),
            });
        }
    }
}

/// Hands on while a pit's temperature is changed, minutes: common practice, no source.
pub(in crate::plan) const STEP_HANDS: u8 = 5;
