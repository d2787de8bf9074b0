//! The search where few tasks are dealt to few pits. Start at [`Deals::of`].
//!
//! A *deal* is a slot for each serving and a site for each task. Beside each other the pits share only hands, nights and
//! places, so a deal costs at least what the tasks of each pit cost by themselves, added up, and that is found once for each
//! set of tasks on a pit and each way it may run. Deals are taken in the order of that bound.

use super::{
    Outcome, Search,
    descend::{Aim, Best, Descent},
    line::Lines,
    table::NEVER,
};
use crate::plan::{cost::Level, household::GRID_MIN, model::Heat};
use std::{cmp::Reverse, collections::BinaryHeap};

/// The most deals.
const DEALS_MAX: usize = 20_000;
/// Deals that are looked into before the search that has to prove, round by round: how many, nodes for each, and for each of its
/// settings.
const LOOKS: [(usize, i64, i64); 2] = [(24, 400, 40), (24, 4_000, 400)];

/// Nodes for each setting of a deal that is to be settled: what takes long is left until a better plan may have been found.
const DEPTHS: [i64; 2] = [2_000, i64::MAX];

/// How much is known of a deal.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Known {
    /// Sums of the table.
    Summed,
    /// The least of each pit by itself.
    Parted,
}

/// The deals that are not settled, the one with the least bound first.
type Open = BinaryHeap<Reverse<(u128, Known, usize)>>;

/// A slot for each serving, and the tasks of each site.
struct Deal {
    serves: usize,
    lines: Vec<usize>,
    sites: Vec<usize>,
}

/// All deals.
pub(super) struct Deals<'a, 's> {
    search: &'s Search<'a>,
    lines: Lines<'s>,
    descent: Descent<'s>,
    serves: Vec<Vec<usize>>,
    /// What each of these costs, with the waiting for hands that there must be.
    base: Vec<u128>,
    all: Vec<Deal>,
    setting: Vec<usize>,
}

impl<'a, 's> Deals<'a, 's> {
    /// None where there are too many.
    pub fn of(search: &'s Search<'a>) -> Option<Self> {
        let model = search.model;
        let mut slots = model.servings.iter().map(Vec::len);
        let serves = slots.try_fold(1, usize::checked_mul)?;
        let each = (model.pits.len() as u32).max(1);
        let sites = (each as usize).checked_pow(model.tasks.len() as u32)?;
        if serves.checked_mul(sites)? > DEALS_MAX {
            return None;
        }
        let mut deals = Self {
            search,
            lines: Lines::new(model, search.table, &search.shelf),
            descent: Descent::bare(model),
            serves: vec![vec![]],
            base: vec![],
            all: vec![],
            setting: vec![],
        };
        for slots in &model.servings {
            let longer = |begun: &Vec<usize>| {
                let begun = begun.clone();
                (0..slots.len()).map(move |slot| [begun.clone(), vec![slot]].concat())
            };
            deals.serves = deals.serves.iter().flat_map(longer).collect();
        }
        for serves in deals.serves.clone() {
            deals.base.push(deals.base(&serves));
            deals.deal(deals.base.len() - 1, &serves, &mut vec![]);
        }
        Some(deals)
    }

    fn base(&self, serves: &[usize]) -> u128 {
        let late = |(slots, serve): (&Vec<i64>, &usize)| {
            let late = (slots[*serve] - slots[0]) * GRID_MIN;
            self.search.model.order.of_level(Level::Late, late)
        };
        let servings = self.search.model.servings.iter();
        let late: u128 = servings.zip(serves).map(late).sum();
        late + self.search.settings.waits()
    }

    /// Gives each task from the next on every site that it may have; of tasks alike the later has no earlier site.
    fn deal(&mut self, serves_nr: usize, serves: &[usize], sites: &mut Vec<usize>) {
        let model = self.search.model;
        let pits = model.pits.len();
        let Some(task) = model.tasks.get(sites.len()) else {
            let mut tasks = vec![0u32; pits + 1];
            for (task, site) in sites.iter().enumerate() {
                tasks[*site] |= 1 << task;
            }
            let tasks = tasks.into_iter().enumerate();
            let lines: Vec<usize> = tasks
                .map(|(site, tasks)| self.lines.of(site, tasks, serves))
                .collect();
            self.all.push(Deal {
                serves: serves_nr,
                lines,
                sites: sites.clone(),
            });
            return;
        };
        let nr = sites.len();
        let twin = model.tasks[..nr].iter().rposition(|other| other == task);
        let first = twin.map_or(0, |twin| sites[twin]);
        let choice = match task.heat {
            Heat::Pit => first..pits,
            Heat::Burner | Heat::None => pits..pits + 1,
        };
        for site in choice {
            let least = self
                .search
                .table
                .anyhow(nr, serves[task.serving], site.min(pits - 1));
            if least.alone < NEVER {
                sites.push(site);
                self.deal(serves_nr, serves, sites);
                sites.pop();
            }
        }
    }

    /// What no plan of a deal costs less than; nights count for the pit where they cost the most.
    fn bound(&self, deal: usize) -> u128 {
        let deal = &self.all[deal];
        let (mut sum, mut nights) = (self.base[deal.serves], 0);
        for line in &deal.lines {
            let (fires, all) = self.lines.all[*line].least();
            sum += fires;
            nights = nights.max(all.saturating_sub(fires));
        }
        (sum + nights).min(NEVER)
    }

    /// Takes deal by deal until nothing better can be left, or the nodes run out.
    pub fn prove(&mut self, best: &mut Best) -> Outcome {
        let bounds = (0..self.all.len()).map(|deal| (self.bound(deal), Known::Summed, deal));
        let mut open: Open = bounds.map(Reverse).collect();
        self.look(best, &mut open);
        let mut at_least = u128::MAX;
        while let Some(Reverse((bound, known, deal))) = open.pop() {
            if bound >= best.cost() {
                break;
            }
            let most = best.budget - best.nodes;
            if known == Known::Summed && most > 0 {
                self.part(best, deal);
                open.push(Reverse((self.bound(deal).max(bound), Known::Parted, deal)));
            } else if !DEPTHS
                .into_iter()
                .any(|each| self.search(best, deal, most, each))
            {
                at_least = bound;
                break;
            }
        }
        Outcome {
            complete: at_least >= best.cost(),
            at_least: at_least.min(best.cost()),
            nodes: best.nodes,
            found: best.found.take(),
        }
    }

    /// Looks for plans in the nearest deals, round by round; those that are not settled stay open.
    fn look(&mut self, best: &mut Best, open: &mut Open) {
        let mut near: Vec<(u128, usize, bool)> = vec![];
        let (first, ..) = LOOKS[0];
        while near.len() < first && best.nodes < best.budget / 2 {
            let Some(Reverse((bound, known, deal))) = open.pop() else {
                break;
            };
            if bound >= best.cost() {
                open.push(Reverse((bound, known, deal)));
                break;
            }
            if known == Known::Summed {
                self.part(best, deal);
                open.push(Reverse((self.bound(deal).max(bound), Known::Parted, deal)));
                continue;
            }
            let (_, most, each) = LOOKS[0];
            near.push((bound, deal, self.search(best, deal, most, each)));
        }
        for (first, most, each) in LOOKS.into_iter().skip(1) {
            for (bound, deal, settled) in near.iter_mut().take(first) {
                if !*settled && *bound < best.cost() && best.nodes < best.budget / 2 {
                    *settled = self.search(best, *deal, most, each);
                }
            }
        }
        for (bound, deal, settled) in near {
            if !settled {
                open.push(Reverse((bound, Known::Parted, deal)));
            }
        }
    }

    /// Finds the least of each pit by itself.
    fn part(&mut self, best: &mut Best, deal: usize) {
        let lines = self.all[deal].lines.clone();
        best.nodes += 1;
        for line in lines {
            for nights in [false, true] {
                let bound = self.bound(deal);
                if bound >= best.cost() {
                    return;
                }
                let (fires, all) = self.lines.all[line].least();
                let others = self.others(deal) - fires;
                let limit = best.cost().saturating_sub(others);
                let known = if nights { all } else { fires };
                if known < limit {
                    self.lines.refine(line, nights, limit, &mut best.nodes);
                }
            }
        }
    }

    /// The sum of all without nights.
    fn others(&self, deal: usize) -> u128 {
        let deal = &self.all[deal];
        let lines = deal.lines.iter();
        let sum: u128 = lines.map(|line| self.lines.all[*line].least().0).sum();
        self.base[deal.serves] + sum
    }

    /// Searches the settings of a deal within so many nodes, and so many for each; whether all were searched.
    fn search(&mut self, best: &mut Best, deal: usize, most: i64, each: i64) -> bool {
        let until = (best.nodes + most).min(best.budget);
        let base = self.base[self.all[deal].serves];
        self.setting.clear();
        self.settle(best, deal, (base, 0), (until, each))
    }

    /// Chooses how the next pit runs; `sum` is what those before cost without nights, and the most nights of one of them.
    fn settle(
        &mut self,
        best: &mut Best,
        deal: usize,
        (sum, nights): (u128, u128),
        (until, each): (i64, i64),
    ) -> bool {
        let site = self.setting.len();
        let of = &self.all[deal];
        if site == of.lines.len() {
            let pits = self.search.model.pits.len();
            let (serves, shelf) = (&self.serves[of.serves], &self.search.shelf);
            let setting = &self.setting[..pits];
            let (table, base) = (self.search.table, self.base[of.serves]);
            let aim = Aim {
                setting,
                serves,
                sites: &of.sites,
                limit: best
                    .cost()
                    .saturating_sub(base - self.search.settings.waits()),
                loose: false,
            };
            let least = |task: usize, serve: usize, site: usize| {
                let profile = setting.get(site).copied().unwrap_or(0);
                table.at(task, serve, site, profile).alone
            };
            self.descent.aim(shelf, &aim, least);
            let most = each.min(until - best.nodes);
            return self.descent.run_aimed(best, most);
        }
        let line = of.lines[site];
        let (mut rest, mut after) = (0, nights);
        for line in &of.lines[site + 1..] {
            let (fires, all) = self.lines.all[*line].least();
            rest += fires;
            after = after.max(all.saturating_sub(fires));
        }
        let mut whole = true;
        for nr in 0..self.lines.all[line].ways.len() {
            if best.nodes >= until {
                return false;
            }
            let others = sum + rest;
            let bound = |lines: &Lines<'_>| {
                let way = lines.all[line].ways[nr];
                others + way.fires + after.max(way.all - way.fires)
            };
            if others + self.lines.all[line].ways[nr].fires + after >= best.cost() {
                continue;
            }
            for searched in [false, true] {
                let limit = best.cost().saturating_sub(others);
                if bound(&self.lines) < best.cost() {
                    self.lines.solve(line, nr, searched, limit, &mut best.nodes);
                }
            }
            if bound(&self.lines) >= best.cost() {
                continue;
            }
            let way = self.lines.all[line].ways[nr];
            self.setting.push(way.profile);
            let next = (sum + way.fires, nights.max(way.all - way.fires));
            whole &= self.settle(best, deal, next, (until, each));
            self.setting.pop();
        }
        whole
    }
}
