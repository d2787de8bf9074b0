//! What no plan below a node costs less than. Start at [`Sum`].
//!
//! Law: what tasks share never shrinks when one more is chosen. So beside the least of every task by itself, each pit's
//! openings and fuel are no less than those of any one task on it, and the nights no less than any one task's.

use super::{Descent, List, NEVER, NOWHERE, Node, PITS_MAX};
use crate::plan::{
    choice::{Choice, NONE},
    cost::Level,
    model::Model,
};

/// The least of some choices: by themselves, with openings and fuel, and with nights too.
#[derive(Clone, Copy)]
pub(super) struct Least {
    pub own: u128,
    pub fires: u128,
    pub all: u128,
}

impl Least {
    pub const NEVER: Self = Self {
        own: NEVER,
        fires: NEVER,
        all: NEVER,
    };

    /// Each by itself the less.
    pub fn or(&mut self, own: u128, fires: u128, nights: u128) {
        self.own = self.own.min(own);
        self.fires = self.fires.min(own + fires);
        self.all = self.all.min(own + fires + nights);
    }
}

/// What holds for every choice of a task at a site.
#[derive(Clone, Copy)]
pub(super) struct Facts {
    /// The least of them.
    pub with_waits: Least,
    /// The least without what waiting cut costs.
    pub still: Least,
    /// Surely on from here to there, where the first is less.
    pub sure: (i64, i64),
    /// When its pit burns at the soonest.
    pub soonest: i64,
    /// By itself, where its pit burns for it before its temperature changes, and after.
    pub sides: [u128; 2],
}

pub(super) fn facts(
    model: &Model,
    setting: &[usize],
    lists: &[Vec<Vec<List>>],
) -> Vec<Vec<Vec<Facts>>> {
    let changes = |site: usize| match setting.get(site) {
        Some(profile) => model.pits[site].profiles[*profile].at,
        None => i64::MAX,
    };
    let site = |(at, list): (usize, &List)| of_list(model, changes(at), list.all());
    let serve = |sites: &Vec<List>| sites.iter().enumerate().map(site).collect();
    let task = |serves: &Vec<Vec<List>>| serves.iter().map(serve).collect();
    lists.iter().map(task).collect()
}

fn of_list(model: &Model, at: i64, list: &[Choice]) -> Facts {
    let mut facts = Facts {
        with_waits: Least::NEVER,
        still: Least::NEVER,
        sure: (i64::MIN, i64::MAX),
        soonest: i64::MAX,
        sides: [NEVER; 2],
    };
    for choice in list {
        let (fires, nights) = (choice.fires - choice.alone, choice.least - choice.fires);
        facts.with_waits.or(choice.alone, fires, nights);
        facts.still.or(choice.alone - choice.waits, fires, nights);
        facts.sure.0 = facts.sure.0.max(i64::from(choice.on.max(0)));
        facts.sure.1 = facts.sure.1.min(i64::from(choice.late));
        if choice.pit != NONE {
            let (from, until) = choice.burning(model);
            facts.soonest = facts.soonest.min(from);
            for (side, there) in [from < at, at < until].into_iter().enumerate() {
                if there {
                    facts.sides[side] = facts.sides[side].min(choice.alone);
                }
            }
        }
    }
    facts
}

/// The sum of what tasks cost by themselves, and the largest shared parts that single tasks show, site by site.
pub(super) struct Sum {
    own: u128,
    fires: [u128; PITS_MAX + 1],
    all: [u128; PITS_MAX + 1],
}

impl Sum {
    pub const ZERO: Self = Self {
        own: 0,
        fires: [0; PITS_MAX + 1],
        all: [0; PITS_MAX + 1],
    };

    /// One more task, at a site where it has one.
    pub fn add(&mut self, least: &Least, site: usize) {
        self.own = self.own.saturating_add(least.own);
        if site != NOWHERE && least.own < NEVER {
            self.fires[site] = self.fires[site].max(least.fires - least.own);
            self.all[site] = self.all[site].max(least.all - least.own);
        }
    }

    /// All by themselves, of each site the fires, and of one of them the nights too.
    pub fn total(&self) -> u128 {
        let fires: u128 = self.fires.iter().sum();
        let nights = self
            .all
            .iter()
            .zip(&self.fires)
            .map(|(all, fires)| all.saturating_sub(*fires));
        self.own.saturating_add(fires + nights.max().unwrap_or(0))
    }

    /// All by themselves, and of each site the fires.
    pub fn fires(&self) -> u128 {
        self.own.saturating_add(self.fires.iter().sum())
    }

    /// All by themselves.
    pub const fn own(&self) -> u128 {
        self.own
    }
}

impl Descent<'_> {
    pub(super) fn fact(&self, task: usize, site: usize) -> &Facts {
        &self.here(task)[site]
    }

    /// When the pit of a task burns for it at the soonest.
    pub(super) fn soonest(&self, task: usize, site: usize) -> i64 {
        match &self.aimed[task] {
            Some(list) => list.soonest(),
            None => self.fact(task, site).soonest,
        }
    }

    /// The facts of a task at each site.
    fn here(&self, task: usize) -> &[Facts] {
        &self.facts[task][self.serves[self.model.tasks[task].serving]]
    }

    /// The least of all tasks whose serving has its slot.
    pub(super) fn least_served(&self) -> u128 {
        let tasks = self.model.tasks.iter().enumerate();
        let least = tasks.filter_map(|(at, task)| {
            let serve = self.serves.get(task.serving)?;
            self.facts[at][*serve]
                .iter()
                .map(|facts| facts.with_waits.own)
                .min()
        });
        least.fold(0, u128::saturating_add)
    }

    /// What no plan costs less than where tasks have the sites they have.
    pub(super) fn least_assigned(&self, node: &Node) -> u128 {
        let (mut with_waits, mut still) = (Sum::ZERO, Sum::ZERO);
        for (task, site) in self.sites.iter().enumerate() {
            if *site == NOWHERE {
                let (mut of, mut of_still) = (Least::NEVER, Least::NEVER);
                for facts in self.here(task) {
                    of.own = of.own.min(facts.with_waits.own);
                    of_still.own = of_still.own.min(facts.still.own);
                }
                with_waits.add(&of, NOWHERE);
                still.add(&of_still, NOWHERE);
            } else {
                let facts = self.fact(task, *site);
                with_waits.add(&facts.with_waits, *site);
                still.add(&facts.still, *site);
            }
        }
        let steps = self
            .model
            .order
            .of_level(Level::Openings, i64::from(node.openings));
        let tasks = with_waits
            .total()
            .max(still.total().saturating_add(self.waits(node)));
        let tasks = tasks.max(with_waits.own().saturating_add(self.idle()));
        tasks.saturating_add(node.alone + steps)
    }

    /// What it costs more, at the least, that no pit changes its temperature for nothing; only told once all have their sites.
    fn idle(&self) -> u128 {
        if self.sites.contains(&NOWHERE) {
            return 0;
        }
        let steps = |pit: &usize| self.model.pits[*pit].profiles[self.setting[*pit]].steps();
        let more = |pit: usize| {
            let there = (0..self.sites.len()).filter(|task| self.sites[*task] == pit);
            let least = there.fold([NEVER; 2], |least, task| {
                let facts = self.fact(task, pit);
                let more = |side: usize| {
                    least[side].min(facts.sides[side].saturating_sub(facts.with_waits.own))
                };
                [more(0), more(1)]
            });
            least[0].max(least[1])
        };
        (0..self.setting.len())
            .filter(steps)
            .map(more)
            .max()
            .unwrap_or(0)
    }

    /// What is left to be cut has to wait so long, at the least, beside what hands already do.
    pub(super) fn waits(&self, node: &Node) -> u128 {
        let waits = |(serving, serve): (usize, &usize)| {
            let mut jobs = vec![];
            for (at, task) in self.model.tasks.iter().enumerate() {
                if node.left >> at & 1 == 1 && task.serving == serving && task.cut.0 > 0 {
                    jobs.push(super::waits::last_slot(task.cut.0));
                }
            }
            if jobs.len() < 2 {
                return 0;
            }
            let served = self.model.servings[serving][*serve];
            super::waits::cost(self.model, jobs, self.room.free_back_from(served))
        };
        self.serves.iter().enumerate().map(waits).sum()
    }
}
