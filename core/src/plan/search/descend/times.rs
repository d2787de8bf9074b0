//! The times of all tasks, where each has its site. Start at [`Descent::descend`].

use super::{
    Best, COLD, Descent, Node, PITS_MAX,
    bounds::{Least, Sum},
};
use crate::plan::{
    choice::{Choice, NONE, night},
    cost::Level,
    household::GRID_MIN,
    search::{
        Found,
        finish::{finish, night_cost},
        shelf::rank,
    },
};

/// A task that is not chosen yet, and the least of what of it still fits.
pub(super) struct Open {
    pub task: usize,
    pub with_waits: Least,
    pub still: Least,
}

impl Descent<'_> {
    /// Settles what can be settled, and chooses one more task; whether everything below was searched.
    pub(super) fn descend(&mut self, best: &mut Best, node: &Node) -> bool {
        best.nodes += 1;
        self.lit(node, |lit, node| lit.branch(best, node))
    }

    /// Searches below with what must burn by then lit, and gives the hands back; a node that has no hands for it is searched whole.
    pub(super) fn lit(
        &mut self,
        node: &Node,
        below: impl FnOnce(&mut Self, &Node) -> bool,
    ) -> bool {
        let mut node = *node;
        let mut lights = [None; PITS_MAX];
        let fits = self.light(&mut node, &mut lights);
        let whole = !fits || below(self, &node);
        for (slot, minutes) in lights.into_iter().flatten() {
            self.room.hands(slot, minutes, true);
        }
        whole
    }

    /// Lights each pit that nothing left can make burn sooner; false where no hands are free for it.
    fn light(&mut self, node: &mut Node, lights: &mut [Option<(i64, u8)>; PITS_MAX]) -> bool {
        for (at, pit) in self.model.pits.iter().enumerate() {
            let from = node.hulls[at].0;
            if node.lit >> at & 1 == 1 || from == COLD.0 {
                continue;
            }
            let sooner = |task: usize| {
                node.left >> task & 1 == 1
                    && self.sites[task] == at
                    && self.soonest(task, at) < from
            };
            if (0..self.model.tasks.len()).any(sooner) {
                continue;
            }
            node.lit |= 1 << at;
            if pit.light == 0 {
                continue;
            }
            if !self.room.hands_free(from, pit.light) {
                return false;
            }
            self.room.hands(from, pit.light, false);
            lights[at] = Some((from, pit.light));
            node.night |= night(self.model, &[(from as i16, pit.light)]);
        }
        true
    }

    fn branch(&mut self, best: &mut Best, node: &Node) -> bool {
        if node.left == 0 {
            self.leaf(best, node);
            return true;
        }
        let limit = best.cost();
        let Some((task, rest)) = self.open(node, limit) else {
            return true;
        };
        let mut fitting = self.fitting(node, task, rest, limit);
        fitting.sort_by_key(|(added, choice)| (*added, rank(choice)));
        for (added, choice) in fitting {
            if best.nodes >= self.until {
                return false;
            }
            if rest + added >= best.cost() {
                break;
            }
            let next = self.choose(node, task, &choice);
            let whole = self.descend(best, &next);
            self.room.put(&self.model.tasks[task], &choice, true);
            self.chosen[task] = None;
            if !whole {
                return false;
            }
        }
        true
    }

    /// The task to choose next, and the cost of the node without what that task adds; none where the node is not worth it.
    fn open(&self, node: &Node, limit: u128) -> Option<(usize, u128)> {
        let mut picked: Option<((u128, i64), Open)> = None;
        let (mut with_waits, mut still) = (Sum::ZERO, Sum::ZERO);
        for task in (0..self.sites.len()).filter(|task| node.left >> task & 1 == 1) {
            let open = self.least(node, task)?;
            with_waits.add(&open.with_waits, self.sites[task]);
            still.add(&open.still, self.sites[task]);
            let key = (
                open.with_waits.all - open.with_waits.own,
                self.lengths[task],
            );
            if picked.as_ref().is_none_or(|(most, _)| key > *most) {
                picked = Some((key, open));
            }
        }
        let chosen = node.alone + self.shared(node);
        // The light may fall into a night slot that a task left takes too, so it counts beside the tasks alone.
        let light = i64::from(self.lit_at_night(node));
        let light = self.model.order.of_level(Level::Night, light);
        let waits = self.waits(node);
        let least = with_waits.total().max(still.total() + waits);
        let lit = light + with_waits.own().max(still.own() + waits);
        if chosen + least.max(lit) >= limit {
            return None;
        }
        let (_, open) = picked?;
        let rest = chosen + with_waits.own() - open.with_waits.own;
        Some((open.task, rest))
    }

    /// Whether some pit has to be lit in one more night slot, whenever that is: it burns from a night slot on, and nothing left
    /// can make it burn before that night.
    fn lit_at_night(&self, node: &Node) -> bool {
        let night = &self.model.night;
        self.model.pits.iter().enumerate().any(|(at, pit)| {
            let from = node.hulls[at].0;
            if node.lit >> at & 1 == 1 || from == COLD.0 || pit.light == 0 {
                return false;
            }
            let left = (0..self.sites.len())
                .filter(|task| node.left >> task & 1 == 1 && self.sites[*task] == at);
            let soonest = left
                .map(|task| self.soonest(task, at))
                .min()
                .unwrap_or(from)
                .min(from);
            let marks = night.between(soonest, from + 1);
            i64::from(marks.count_ones()) == from + 1 - soonest && marks & node.night == 0
        })
    }

    /// What the chosen tasks cost together.
    pub(super) fn shared(&self, node: &Node) -> u128 {
        let order = &self.model.order;
        let pits = 0..self.model.pits.len();
        let fuel: i64 = pits.map(|pit| self.fuel(pit, node.hulls[pit])).sum();
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

    /// The least of what of a task fits beside what is chosen; none where nothing does.
    pub(super) fn least(&self, node: &Node, task: usize) -> Option<Open> {
        let longest = self.model.tasks[task].cut.1 * GRID_MIN;
        let longest = self.model.order.of_level(Level::Hold, longest);
        let mut open = Open {
            task,
            with_waits: Least::NEVER,
            still: Least::NEVER,
        };
        for choice in self.of(task) {
            if choice.alone >= open.with_waits.all
                && choice.alone.saturating_sub(longest) >= open.still.all
            {
                break;
            }
            if self.fits(task, choice) {
                let (fires, nights) = self.adds(node, task, choice);
                open.with_waits.or(choice.alone, fires, nights);
                open.still.or(choice.alone - choice.waits, fires, nights);
            }
        }
        (open.with_waits.own < super::NEVER).then_some(open)
    }

    /// What of a task fits and may be worth it, with what each adds.
    fn fitting(&self, node: &Node, task: usize, rest: u128, limit: u128) -> Vec<(u128, Choice)> {
        let mut all = vec![];
        for choice in self.of(task) {
            if rest + choice.alone >= limit {
                break;
            }
            if self.fits(task, choice) {
                let (fires, nights) = self.adds(node, task, choice);
                let added = choice.alone + fires + nights;
                if rest + added < limit {
                    all.push((added, *choice));
                }
            }
        }
        all
    }

    /// Whether it fits, and keeps tasks alike in their order.
    pub(super) fn fits(&self, task: usize, choice: &Choice) -> bool {
        let (before, after) = self.twins[task];
        let chosen = |twin: Option<usize>| twin.and_then(|twin| self.chosen[twin]);
        chosen(before).is_none_or(|before| before.rank() <= choice.rank())
            && chosen(after).is_none_or(|after| choice.rank() <= after.rank())
            && self.room.takes(&self.model.tasks[task], choice)
    }

    /// What a choice adds to openings and fuel, and to nights.
    pub(super) fn adds(&self, node: &Node, task: usize, choice: &Choice) -> (u128, u128) {
        let order = &self.model.order;
        let mut night = node.night | choice.night;
        let mut fires = 0;
        if choice.pit != NONE {
            let pit = choice.pit as usize;
            let hull = self.hull(node, choice);
            night |= self.model.pits[pit].feeds & self.model.night.between(hull.0, hull.1);
            let fuel = self.fuel(pit, hull) - self.fuel(pit, node.hulls[pit]);
            let openings = self.room.openings(&self.model.tasks[task], choice);
            fires = order.of_level(Level::Openings, i64::from(openings))
                + order.of_level(Level::Fuel, fuel);
        }
        let nights = night.count_ones() - node.night.count_ones();
        (fires, order.of_level(Level::Night, i64::from(nights)))
    }

    fn hull(&self, node: &Node, choice: &Choice) -> (i64, i64) {
        let (from, until) = choice.burning(self.model);
        let hull = node.hulls[choice.pit as usize];
        (hull.0.min(from), hull.1.max(until))
    }

    pub(super) fn choose(&mut self, node: &Node, task: usize, choice: &Choice) -> Node {
        let mut next = *node;
        next.openings += self.room.openings(&self.model.tasks[task], choice);
        self.count(&mut next, task, choice);
        self.room.put(&self.model.tasks[task], choice, false);
        self.chosen[task] = Some(*choice);
        next
    }

    /// Counts a choice into a node, but for its openings.
    pub(super) fn count(&self, node: &mut Node, task: usize, choice: &Choice) {
        node.alone += choice.alone;
        node.night |= choice.night;
        node.left &= !(1 << task);
        if choice.pit != NONE {
            let pit = choice.pit as usize;
            let hull = self.hull(node, choice);
            node.hulls[pit] = hull;
            node.night |= self.model.pits[pit].feeds & self.model.night.between(hull.0, hull.1);
        }
    }

    /// Whether a pit changes before it burns or after it is out: the same plan without the change costs less.
    pub(super) fn changes_for_nothing(&self, node: &Node, pit: usize) -> bool {
        let profile = self.model.pits[pit].profiles[self.setting[pit]];
        let (from, until) = node.hulls[pit];
        profile.steps() && (profile.at <= from || until <= profile.at)
    }

    /// All tasks are chosen: the rest is placed, and the plan kept if it is the best.
    fn leaf(&mut self, best: &mut Best, node: &Node) {
        let limit = best.cost();
        let model = self.model;
        if (0..model.pits.len()).any(|pit| self.changes_for_nothing(node, pit)) {
            return;
        }
        let without = node.alone + self.shared(node) - night_cost(model, node.night);
        let chosen: Vec<Choice> = self.chosen.iter().copied().flatten().collect();
        let nights = |nights: u32| model.order.of_level(Level::Night, i64::from(nights));
        let allowed = |count: u32| without + nights(count) < limit;
        if let Some(done) = finish(model, &mut self.room, &chosen, node.night, allowed) {
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
