//! The least that the tasks of one pit cost beside each other, whatever is done on the others. Start at [`Descent::part`].
//!
//! Law: leaving out tasks, preparation, cutting and places to hold never makes a plan cost more. So what this finds, added up over
//! the pits, is a bound; nights may fall together, so they count for one pit only.

use super::{
    Descent, Node,
    bounds::{Least, Sum},
    times::Open,
};
use crate::plan::{
    choice::Choice,
    search::{finish::night_cost, shelf::rank},
};

/// What is looked for.
struct Part {
    /// Whether nights count.
    nights: bool,
    /// What has to be undercut.
    limit: u128,
    /// The night slots of the best.
    taken: u32,
    nodes: i64,
    most: i64,
}

/// What was found.
pub(in crate::plan::search) struct Parted {
    /// Nothing costs less; where that is the limit, everything costs as much or more.
    pub least: u128,
    /// Whether it takes no night slot.
    pub by_day: bool,
    /// Whether that is the least that there is.
    pub exact: bool,
}

impl Descent<'_> {
    /// The least that what was aimed at costs without waiting, if it is below `limit`; none where so many nodes do not tell.
    pub fn part(
        &mut self,
        nights: bool,
        limit: u128,
        nodes: &mut i64,
        most: i64,
    ) -> Option<Parted> {
        let mut part = Part {
            nights,
            limit,
            taken: 0,
            nodes: 0,
            most,
        };
        let whole = match self.aimed_root() {
            Some(root) => self.part_lit(&mut part, &root),
            None => true,
        };
        *nodes += part.nodes;
        whole.then_some(Parted {
            least: part.limit,
            by_day: part.limit < limit && part.taken == 0,
            exact: part.limit < limit,
        })
    }

    fn part_lit(&mut self, part: &mut Part, node: &Node) -> bool {
        part.nodes += 1;
        self.lit(node, |lit, node| lit.part_branch(part, node))
    }

    fn part_branch(&mut self, part: &mut Part, node: &Node) -> bool {
        let mut chosen = node.alone + self.shared(node);
        if !part.nights {
            chosen -= night_cost(self.model, node.night);
        }
        if node.left == 0 {
            let idle = |pit: usize| self.changes_for_nothing(node, pit);
            if chosen < part.limit && !(0..self.setting.len()).any(idle) {
                (part.limit, part.taken) = (chosen, node.night.count_ones());
            }
            return true;
        }
        let Some((open, rest)) = self.part_open(part, node, chosen) else {
            return true;
        };
        for (added, choice) in self.part_fitting(part, node, open.task, rest) {
            if part.nodes >= part.most {
                return false;
            }
            if rest + added >= part.limit {
                break;
            }
            let next = self.choose(node, open.task, &choice);
            let whole = self.part_lit(part, &next);
            self.room.put(&self.model.tasks[open.task], &choice, true);
            self.chosen[open.task] = None;
            if !whole {
                return false;
            }
        }
        true
    }

    /// The task to choose next, and what the node costs without what that adds.
    fn part_open(&self, part: &Part, node: &Node, chosen: u128) -> Option<(Open, u128)> {
        let mut sum = Sum::ZERO;
        let mut picked: Option<((u128, i64), Open)> = None;
        let spread = |least: &Least| match part.nights {
            true => least.all - least.own,
            false => least.fires - least.own,
        };
        for task in (0..self.sites.len()).filter(|task| node.left >> task & 1 == 1) {
            let open = self.least(node, task)?;
            sum.add(&open.with_waits, self.sites[task]);
            let key = (spread(&open.with_waits), self.lengths[task]);
            if picked.as_ref().is_none_or(|(most, _)| key > *most) {
                picked = Some((key, open));
            }
        }
        let least = if part.nights {
            sum.total()
        } else {
            sum.fires()
        };
        let (_, open) = picked?;
        let rest = chosen + sum.own() - open.with_waits.own;
        (chosen + least < part.limit).then_some((open, rest))
    }

    fn part_fitting(
        &self,
        part: &Part,
        node: &Node,
        task: usize,
        rest: u128,
    ) -> Vec<(u128, Choice)> {
        let mut all = vec![];
        for choice in self.of(task) {
            if rest + choice.alone >= part.limit {
                break;
            }
            if self.fits(task, choice) {
                let (fires, nights) = self.adds(node, task, choice);
                let added = choice.alone + fires + if part.nights { nights } else { 0 };
                if rest + added < part.limit {
                    all.push((added, *choice));
                }
            }
        }
        all.sort_by_key(|(added, choice)| (*added, rank(choice)));
        all
    }
}
