//! A plan to begin with, and better ones near it, for households that are too large to be searched to the end. Start at
//! [`Descent::improve`].
//!
//! Tasks are put in one by one, each at its cheapest beside what is there; where one no longer fits, it goes first the next
//! time. Then some are taken out, again and again, and put back in another order; what costs less is kept.

use super::{Best, Descent, Node};
use crate::plan::choice::Choice;

/// How often the tasks are put in anew before a setting is given up.
const STARTS: usize = 40;

/// Chance that replays: SplitMix64 (Steele, Lea, Flood 2014; from memory).
pub(in crate::plan::search) struct Chance(pub u64);

impl Chance {
    fn next(&mut self, below: usize) -> usize {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) % below.max(1) as u64) as usize
    }
}

impl Descent<'_> {
    /// Puts all tasks in, and takes the plan if it is the best; whether a whole plan came of it.
    pub(in crate::plan::search) fn build(
        &mut self,
        best: &mut Best,
        serves: &[usize],
        until: i64,
    ) -> bool {
        let Some(root) = self.root() else {
            return false;
        };
        self.start = Some(root);
        self.serves = serves.to_vec();
        let mut first = self.order.clone();
        for _ in 0..STARTS {
            self.clear();
            match self.put_in(best, self.node(&root), &first) {
                Ok(node) => {
                    let before = best.cost();
                    self.descend(best, &node);
                    if best.cost() < before {
                        return true;
                    }
                    // Hands are short for lighting or preparing: what is on the longest goes last.
                    first.rotate_left(1);
                }
                Err(task) => {
                    let at = first.iter().position(|other| *other == task).unwrap_or(0);
                    let task = first.remove(at);
                    first.insert(at / 2, task);
                }
            }
            if best.nodes >= until {
                return false;
            }
        }
        false
    }

    /// Looks for better plans near the one just built, for so many nodes.
    pub(in crate::plan::search) fn improve(
        &mut self,
        best: &mut Best,
        chance: &mut Chance,
        most: i64,
    ) {
        let Some(root) = self.start else {
            return;
        };
        let until = (best.nodes + most).min(best.budget);
        while best.nodes < until {
            let out = self.some(chance);
            let old: Vec<(usize, Choice)> = out
                .iter()
                .filter_map(|task| Some((*task, self.chosen[*task]?)))
                .collect();
            out.iter().for_each(|task| self.take_out(*task));
            let before = best.cost();
            if let Ok(node) = self.put_in(best, self.node(&root), &out) {
                self.descend(best, &node);
            }
            if best.cost() >= before {
                out.iter().for_each(|task| self.take_out(*task));
                for (task, choice) in old {
                    self.room.put(&self.model.tasks[task], &choice, false);
                    self.chosen[task] = Some(choice);
                }
            }
        }
    }

    /// Some tasks, in any order; half of the time those that begin near one of them.
    fn some(&self, chance: &mut Chance) -> Vec<usize> {
        let count = self.chosen.len();
        let wanted = (2 + chance.next(6)).min(count);
        let mut all: Vec<usize> = (0..count).collect();
        for at in 0..count {
            all.swap(at, at + chance.next(count - at));
        }
        if chance.next(2) == 0 {
            let cut = |task: usize| self.chosen[task].map_or(0, |choice| choice.cut);
            let middle = cut(all[0]);
            all.sort_by_key(|task| cut(*task).abs_diff(middle));
        }
        all.truncate(wanted);
        for at in 0..wanted {
            all.swap(at, at + chance.next(wanted - at));
        }
        all
    }

    fn clear(&mut self) {
        (0..self.chosen.len()).for_each(|task| self.take_out(task));
    }

    fn take_out(&mut self, task: usize) {
        if let Some(choice) = self.chosen[task].take() {
            self.room.put(&self.model.tasks[task], &choice, true);
        }
    }

    /// The node of what is chosen now.
    fn node(&self, root: &Node) -> Node {
        let mut node = *root;
        for (serving, serve) in self.serves.iter().enumerate() {
            node.alone += self.late(serving, *serve);
        }
        for (task, choice) in self.chosen.iter().enumerate() {
            if let Some(choice) = choice {
                self.count(&mut node, task, choice);
            }
        }
        node.openings = root.openings + self.room.lids_opened();
        node
    }

    /// Puts tasks in, each at its cheapest; the one that does not fit where one does not.
    fn put_in(&mut self, best: &mut Best, mut node: Node, tasks: &[usize]) -> Result<Node, usize> {
        for task in tasks {
            best.nodes += 1;
            let cheapest = self.cheapest(&node, *task).ok_or(*task)?;
            node = self.choose(&node, *task, &cheapest);
        }
        Ok(node)
    }

    fn cheapest(&self, node: &Node, task: usize) -> Option<Choice> {
        let serve = self.serves[self.model.tasks[task].serving];
        let mut cheapest: Option<(u128, Choice)> = None;
        for list in &self.lists[task][serve] {
            for choice in list.all() {
                if cheapest.is_some_and(|(cost, _)| choice.alone >= cost) {
                    break;
                }
                if self.room.takes(&self.model.tasks[task], choice) {
                    let (fires, nights) = self.adds(node, task, choice);
                    let cost = choice.alone + fires + nights;
                    if cheapest.is_none_or(|(least, _)| cost < least) {
                        cheapest = Some((cost, *choice));
                    }
                }
            }
        }
        cheapest.map(|(_, choice)| choice)
    }
}
