//! The search where each task's site is given. Start at [`Descent::aim`].

use super::{Best, Descent, NOWHERE, Node};
use crate::plan::search::shelf::Shelf;

/// What is given.
pub(in crate::plan::search) struct Aim<'x> {
    /// How each pit runs.
    pub setting: &'x [usize],
    /// The slot of each serving.
    pub serves: &'x [usize],
    /// The site of each task; tasks without one are left out.
    pub sites: &'x [usize],
    /// What all of them have to cost less than, without being late.
    pub limit: u128,
    /// Whether cutting, waiting and places to hold are left out.
    pub loose: bool,
}

impl<'a> Descent<'a> {
    /// Takes aim; `least` says what a task costs at the least, by its slot and site.
    pub fn aim(
        &mut self,
        shelf: &Shelf<'a>,
        aim: &Aim<'_>,
        least: impl Fn(usize, usize, usize) -> u128,
    ) {
        self.setting = aim.setting.to_vec();
        self.serves = aim.serves.to_vec();
        self.sites = aim.sites.to_vec();
        let of = |(task, site): (usize, &usize)| {
            let serve = aim.serves[self.model.tasks[task].serving];
            (*site != NOWHERE).then(|| (serve, least(task, serve, *site)))
        };
        let its: Vec<Option<(usize, u128)>> = aim.sites.iter().enumerate().map(of).collect();
        let all: u128 = its.iter().flatten().map(|(_, least)| least).sum();
        for (task, its) in its.into_iter().enumerate() {
            self.aimed[task] = its.map(|(serve, least)| {
                let spare = aim.limit.saturating_sub(all - least);
                let profile = aim.setting.get(aim.sites[task]).copied().unwrap_or(0);
                shelf.at_site(task, serve, (aim.sites[task], profile), aim.loose, spare)
            });
        }
    }

    /// Searches what was aimed at; whether it was searched to its end.
    pub fn run_aimed(&mut self, best: &mut Best, most: i64) -> bool {
        self.until = (best.nodes + most).min(best.budget);
        best.nodes += 1;
        let Some(mut root) = self.aimed_root() else {
            return true;
        };
        for (serving, serve) in self.serves.iter().enumerate() {
            root.alone += self.late(serving, *serve);
        }
        self.descend(best, &root)
    }

    /// Nothing is chosen of the tasks that have a site; none where they surely do not go together.
    pub(super) fn aimed_root(&mut self) -> Option<Node> {
        let all = self.sites.clone();
        let sites = || all.iter().copied().enumerate();
        let there = |(_, site): &(usize, usize)| *site != NOWHERE;
        let none = |list: &Option<_>| {
            list.as_ref()
                .is_some_and(|list: &super::List| list.all().is_empty())
        };
        if self.aimed.iter().any(none) {
            return None;
        }
        let mut together = true;
        for (task, site) in sites().filter(there) {
            together &= self.surely(task, site, false);
        }
        for (task, site) in sites().filter(there) {
            self.surely(task, site, true);
        }
        if !together {
            return None;
        }
        let mut root = self.root()?;
        root.left = 0;
        for (task, _) in sites().filter(there) {
            root.left |= 1 << task;
        }
        self.room.watch(&self.sites);
        Some(root)
    }
}
