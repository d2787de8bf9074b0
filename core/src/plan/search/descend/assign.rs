//! A site for each task. Start at [`Descent::assign`].

use super::{Best, Descent, NOWHERE, Node};

impl Descent<'_> {
    /// Gives the `nth` task in order each site that it may have; whether everything below was searched.
    pub(super) fn assign(&mut self, best: &mut Best, node: &Node, nth: usize) -> bool {
        best.nodes += 1;
        if self.least_assigned(node) >= best.cost() {
            return true;
        }
        let Some(task) = self.order.get(nth).copied() else {
            self.room.watch(&self.sites);
            return self.descend(best, node);
        };
        let serve = self.serves[self.model.tasks[task].serving];
        let facts = self.facts[task][serve].iter().enumerate();
        let mut sites: Vec<(u128, usize)> = facts
            .filter(|(site, facts)| {
                facts.with_waits.own < super::NEVER && self.in_turn(task, *site)
            })
            .map(|(site, facts)| (facts.with_waits.all, site))
            .collect();
        sites.sort_unstable();
        for (_, site) in sites {
            if best.nodes >= self.until {
                return false;
            }
            if !self.surely(task, site, false) {
                self.surely(task, site, true);
                continue;
            }
            self.sites[task] = site;
            let whole = self.assign(best, node, nth + 1);
            self.sites[task] = NOWHERE;
            self.surely(task, site, true);
            if !whole {
                return false;
            }
        }
        true
    }

    /// Tasks alike have sites that do not fall.
    fn in_turn(&self, task: usize, site: usize) -> bool {
        let (before, after) = self.twins[task];
        let at = |twin: Option<usize>| {
            twin.map(|twin| self.sites[twin])
                .filter(|site| *site != NOWHERE)
        };
        at(before).is_none_or(|before| before <= site)
            && at(after).is_none_or(|after| site <= after)
    }

    /// Marks, or frees, when a task is surely on a pit; false where that is too much for the pit.
    pub(super) fn surely(&mut self, task: usize, site: usize, free: bool) -> bool {
        let Some(pit) = self.model.pits.get(site) else {
            return true;
        };
        let of = &self.model.tasks[task];
        let (from, until) = match &self.aimed[task] {
            Some(list) => list.sure(),
            None => self.fact(task, site).sure,
        };
        let mut fits = true;
        for slot in from.max(0)..until {
            let (area, poultry, other) = &mut self.sure[site][slot as usize];
            let count = if of.poultry { poultry } else { other };
            match free {
                true => (*area, *count) = (*area - of.area, *count - 1),
                false => (*area, *count) = (*area + of.area, *count + 1),
            }
            let (area, poultry, other) = self.sure[site][slot as usize];
            fits &= area <= pit.area && !(pit.parted && poultry > 0 && other > 0);
        }
        fits
    }
}
