//! The best-first search over openings. Start with [`best_plan`].

use super::{
    guide::{Dues, Guide},
    meat::{OPENING, Pit},
};
use std::{
    cmp::Reverse,
    collections::{BTreeMap, BinaryHeap},
};

/// How many openings may be weighed for so many meats of different rhythm. Up to three meats the search is to be exact,
/// and the budget only keeps absurd input from running on; for more it keeps the screen from waiting.
pub(super) const fn budget(meats: usize) -> usize {
    if meats <= 3 { 50_000_000 } else { 150_000 }
}

/// After how many expanded states the search goes straight to a plan, so that it always has a good one in hand.
const DIVE_EACH: usize = 32;

/// One opening of a plan: its minute and the meats it is for, one bit each.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Step {
    pub at: i16,
    pub meats: u16,
}

/// What the search came to.
pub(super) struct Found {
    /// What the plan costs.
    pub cost: u64,
    /// What no plan can cost less than.
    pub at_least: u64,
    /// The openings in order of time.
    pub steps: Vec<Step>,
}

/// The state after an opening. Its cost may yet fall while it waits.
struct Node {
    step: Step,
    dues: Dues,
    cost: u64,
    parent: usize,
}

struct Search<'a> {
    pit: &'a Pit,
    guide: Guide<'a>,
    nodes: Vec<Node>,
    /// By minute of the last opening: the node of each state.
    seen: Vec<BTreeMap<Dues, usize>>,
    waiting: BinaryHeap<(Reverse<u64>, i16, Reverse<usize>, u64)>,
    best: Option<(u64, Vec<Step>)>,
}

/// A plan that keeps every window: the best there is, or past `budget` openings weighed the best that was met.
pub(super) fn best_plan(pit: &Pit, budget: usize) -> Found {
    let mut search = Search::of(pit);
    let mut at_least = None;
    let mut expanded = 0;
    let mut weighed = 0;
    while let Some((Reverse(bound), _, Reverse(index), cost)) = search.waiting.pop() {
        if search.worse_than_best(bound) {
            break;
        }
        if search.nodes[index].cost < cost {
            continue;
        }
        if weighed >= budget {
            at_least = Some(bound);
            break;
        }
        if expanded % DIVE_EACH == 0 || search.is_done(&search.nodes[index].dues) {
            search.dive(index);
        }
        expanded += 1;
        weighed += search.expand(index);
    }
    let (cost, steps) = search
        .best
        .expect("a dive from the start ends in a plan: a meat can always be wetted when due");
    Found {
        cost,
        at_least: at_least.unwrap_or(cost),
        steps,
    }
}

impl<'a> Search<'a> {
    fn of(pit: &'a Pit) -> Self {
        let mut dues = Dues::default();
        for (due, meat) in dues.iter_mut().zip(&pit.meats) {
            *due = meat.due as i16;
        }
        let start = Node {
            step: Step { at: -1, meats: 0 },
            dues,
            cost: 0,
            parent: 0,
        };
        let mut guide = Guide::of(pit);
        let bound = guide.at_least(&dues, u64::MAX);
        Self {
            pit,
            guide,
            nodes: vec![start],
            seen: vec![BTreeMap::new(); pit.price.len()],
            waiting: BinaryHeap::from([(Reverse(bound), -1, Reverse(0), 0)]),
            best: None,
        }
    }

    fn worse_than_best(&self, bound: u64) -> bool {
        self.best.as_ref().is_some_and(|(cost, _)| bound >= *cost)
    }

    /// What may still be paid on top of `cost` for a plan better than the best met; nothing where it is used up.
    fn spare(&self, cost: u64) -> u64 {
        self.best
            .as_ref()
            .map_or(u64::MAX - cost, |(best, _)| best.saturating_sub(cost))
    }

    fn is_done(&self, dues: &Dues) -> bool {
        self.pit
            .meats
            .iter()
            .zip(dues)
            .all(|(meat, due)| meat.is_done(i32::from(*due)))
    }

    /// Puts what may follow node `index` in the queue, unless it cannot be better than the best plan met.
    /// Says how many openings that were.
    fn expand(&mut self, index: usize) -> usize {
        let followers = followers(self.pit, self.nodes[index].step.at, &self.nodes[index].dues);
        let weighed = followers.len();
        for (step, dues, price) in followers {
            let cost = self.nodes[index].cost + price;
            let spare = self.spare(cost);
            let bound = cost + self.guide.at_least(&dues, spare);
            if bound < cost + spare {
                self.wait(
                    Node {
                        step,
                        dues,
                        cost,
                        parent: index,
                    },
                    bound,
                );
            }
        }
        weighed
    }

    fn wait(&mut self, node: Node, bound: u64) {
        let (at, cost) = (node.step.at, node.cost);
        let fresh = self.nodes.len();
        let index = *self.seen[at as usize].entry(node.dues).or_insert(fresh);
        if index == fresh {
            self.nodes.push(node);
        } else if cost < self.nodes[index].cost {
            self.nodes[index] = node;
        } else {
            return;
        }
        self.waiting
            .push((Reverse(bound), at, Reverse(index), cost));
    }

    /// From node `index` straight to a plan, each time by the opening that promises most.
    fn dive(&mut self, index: usize) {
        let mut steps = self.steps_to(index);
        let Node {
            step,
            mut dues,
            mut cost,
            ..
        } = self.nodes[index];
        let mut at = step.at;
        while !self.is_done(&dues) {
            let all = followers(self.pit, at, &dues);
            let promising = all
                .into_iter()
                .min_by_key(|(_, dues, price)| price + self.guide.at_least(dues, u64::MAX));
            let (step, next, price) =
                promising.expect("a meat that is not done can be wetted when its window closes");
            steps.push(step);
            (at, dues, cost) = (step.at, next, cost + price);
        }
        if !self.worse_than_best(cost) {
            self.best = Some((cost, steps));
        }
    }

    fn steps_to(&self, mut index: usize) -> Vec<Step> {
        let mut steps = Vec::new();
        while index != 0 {
            steps.push(self.nodes[index].step);
            index = self.nodes[index].parent;
        }
        steps.reverse();
        steps
    }
}

/// Every opening that may follow one at `last`: no later than the first window that closes, for any meats whose window
/// is open, those whose window closes among them. With what is due after it, and what it costs.
fn followers(pit: &Pit, last: i16, dues: &Dues) -> Vec<(Step, Dues, u64)> {
    let owed = || {
        pit.meats
            .iter()
            .zip(dues)
            .enumerate()
            .filter(|(_, (meat, due))| !meat.is_done(i32::from(**due)))
    };
    let closing = owed()
        .map(|(_, (meat, due))| meat.closes(i32::from(*due)))
        .min()
        .unwrap_or(-1);
    let mut all = Vec::new();
    for at in i32::from(last) + 1..=closing {
        let mut open = 0u16;
        let mut must = 0u16;
        for (i, (meat, due)) in owed() {
            open |= u16::from(meat.opens(i32::from(*due)) <= at) << i;
            must |= u16::from(meat.closes(i32::from(*due)) == at) << i;
        }
        all.extend(
            subsets(open & !must)
                .map(|some| some | must)
                .filter(|meats| *meats != 0)
                .map(|meats| {
                    let (next, price) = wetted(pit, at, meats, dues);
                    (
                        Step {
                            at: at as i16,
                            meats,
                        },
                        next,
                        price,
                    )
                }),
        );
    }
    all
}

/// Every subset of `bits`, the whole first, the empty one last.
fn subsets(bits: u16) -> impl Iterator<Item = u16> {
    std::iter::successors(Some(bits), move |some| {
        some.checked_sub(1).map(|less| less & bits)
    })
}

fn wetted(pit: &Pit, at: i32, meats: u16, dues: &Dues) -> (Dues, u64) {
    let mut next = *dues;
    let mut cost = pit.price[at as usize];
    for (i, meat) in pit
        .meats
        .iter()
        .enumerate()
        .filter(|(i, _)| meats >> i & 1 == 1)
    {
        cost += meat.strays(at, i32::from(dues[i]));
        next[i] = meat.after(at) as i16;
    }
    (next, cost)
}

/// How many openings a cost holds, fixed ones not counted.
pub(super) const fn count(cost: u64) -> i64 {
    (cost / OPENING) as i64
}
