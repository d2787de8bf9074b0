//! What the tasks of one site cost, at the least, in each way that it may run. Start at [`Lines`].
//!
//! First told by sums of the table, then, where that is asked, by a search of these tasks alone.

use super::{
    descend::{Aim, Descent, NOWHERE},
    shelf::Shelf,
    table::{NEVER, Table},
};
use crate::plan::{
    cost::Level,
    model::{Model, Profile},
};
use std::collections::BTreeMap;

/// Nodes after which a bound is left as it is.
const NODES: i64 = 3_000;

/// A way that a site may run.
#[derive(Clone, Copy)]
pub(super) struct Way {
    pub profile: usize,
    /// At least, without nights and waiting.
    pub fires: u128,
    /// At least, with nights.
    pub all: u128,
    /// Whether they were searched for: the first without nights, the second with them.
    solved: [bool; 2],
}

/// Some tasks at one site.
pub(super) struct Line {
    site: usize,
    tasks: u32,
    /// The slot of each serving; the first where no task is for it.
    serves: Vec<usize>,
    /// By what they cost at the least.
    pub ways: Vec<Way>,
}

impl Line {
    /// The least over all ways, without nights and with them.
    pub fn least(&self) -> (u128, u128) {
        let of = |of: fn(&Way) -> u128| self.ways.iter().map(of).min().unwrap_or(NEVER);
        (of(|way| way.fires), of(|way| way.all))
    }

    fn sort(&mut self) {
        self.ways
            .sort_by_key(|way| (way.fires, way.all, way.profile));
    }
}

/// All lines that were asked for.
pub(super) struct Lines<'a> {
    model: &'a Model,
    table: &'a Table,
    shelf: &'a Shelf<'a>,
    descent: Descent<'a>,
    numbers: BTreeMap<(usize, u32, Vec<usize>), usize>,
    pub all: Vec<Line>,
}

impl<'a> Lines<'a> {
    pub fn new(model: &'a Model, table: &'a Table, shelf: &'a Shelf<'a>) -> Self {
        Self {
            model,
            table,
            shelf,
            descent: Descent::bare(model),
            numbers: BTreeMap::new(),
            all: vec![],
        }
    }

    /// The line of some tasks, a bit each, at a site.
    pub fn of(&mut self, site: usize, tasks: u32, serves: &[usize]) -> usize {
        let mut its = vec![0; serves.len()];
        for task in bits(tasks) {
            let serving = self.model.tasks[task].serving;
            its[serving] = serves[serving];
        }
        let key = (site, tasks, its);
        if let Some(number) = self.numbers.get(&key) {
            return *number;
        }
        let serves = key.2.clone();
        let mut line = Line {
            site,
            tasks,
            ways: self.ways(site, tasks, &serves),
            serves,
        };
        line.sort();
        self.all.push(line);
        self.numbers.insert(key, self.all.len() - 1);
        self.all.len() - 1
    }

    fn ways(&self, site: usize, tasks: u32, serves: &[usize]) -> Vec<Way> {
        let Some(pit) = self.model.pits.get(site) else {
            return self.way(site, tasks, serves, 0, None).into_iter().collect();
        };
        let used = if tasks == 0 { 1 } else { pit.profiles.len() };
        let profiles = pit.profiles[..used].iter().enumerate();
        profiles
            .filter_map(|(nr, profile)| self.way(site, tasks, serves, nr, Some(profile)))
            .collect()
    }

    fn way(
        &self,
        site: usize,
        tasks: u32,
        serves: &[usize],
        profile: usize,
        runs: Option<&Profile>,
    ) -> Option<Way> {
        let (mut own, mut fires, mut all) = (0u128, 0, 0);
        let (mut early, mut late) = (NEVER, NEVER);
        for task in bits(tasks) {
            let serve = serves[self.model.tasks[task].serving];
            let least = self.table.at(task, serve, site, profile);
            if least.alone >= NEVER {
                return None;
            }
            own += least.alone;
            fires = least.fires.saturating_sub(least.alone).max(fires);
            all = least.least.saturating_sub(least.alone).max(all);
            early = early.min(least.early - least.alone);
            late = late.min(least.late - least.alone);
        }
        let mut steps = 0;
        if runs.is_some_and(Profile::steps) {
            fires = fires.max(early).max(late);
            steps = self.model.order.of_level(Level::Openings, 1);
        }
        let fires = own + steps + fires;
        (fires < NEVER / 2).then(|| Way {
            profile,
            fires,
            all: fires.max(own + steps + all),
            solved: [tasks == 0 || runs.is_none(); 2],
        })
    }

    /// Searches for the least of one way; `limit` is what matters.
    pub fn solve(&mut self, line: usize, nr: usize, nights: bool, limit: u128, nodes: &mut i64) {
        let of = &self.all[line];
        let way = of.ways[nr];
        let known = if nights { way.all } else { way.fires };
        if way.solved[usize::from(nights)] || known >= limit {
            return;
        }
        let mut setting = vec![0; self.model.pits.len()];
        setting[of.site] = way.profile;
        let site = |task| match of.tasks >> task & 1 {
            1 => of.site,
            _ => NOWHERE,
        };
        let sites: Vec<usize> = (0..self.model.tasks.len()).map(site).collect();
        let least = |task: usize, serve, site| self.table.at(task, serve, site, way.profile).alone;
        let aim = Aim {
            setting: &setting,
            serves: &of.serves,
            sites: &sites,
            limit,
            loose: true,
        };
        self.descent.aim(self.shelf, &aim, least);
        let parted = self.descent.part(nights, limit, nodes, NODES);
        let way = &mut self.all[line].ways[nr];
        let Some(parted) = parted else {
            way.solved = [true; 2];
            return;
        };
        if nights {
            way.all = way.all.max(parted.least);
        } else {
            way.fires = way.fires.max(parted.least);
            way.all = way.all.max(way.fires);
            // What costs the least without nights and has none costs the least with them.
            way.solved[1] |= parted.by_day;
        }
        way.solved[usize::from(nights)] |= parted.exact;
    }

    /// Searches for the least over all ways; `limit` is what matters.
    pub fn refine(&mut self, line: usize, nights: bool, limit: u128, nodes: &mut i64) {
        let of = |way: &Way| if nights { way.all } else { way.fires };
        let mut order: Vec<usize> = (0..self.all[line].ways.len()).collect();
        order.sort_by_key(|nr| (of(&self.all[line].ways[*nr]), *nr));
        let mut least = limit;
        for nr in order {
            if of(&self.all[line].ways[nr]) >= least {
                break;
            }
            self.solve(line, nr, nights, least, nodes);
            least = least.min(of(&self.all[line].ways[nr]));
        }
        self.all[line].sort();
    }
}

/// The numbers of the bits that are set.
pub(super) fn bits(of: u32) -> impl Iterator<Item = usize> {
    (0..u32::BITS as usize).filter(move |at| of >> at & 1 == 1)
}
