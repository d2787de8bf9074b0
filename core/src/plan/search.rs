//! Branch and bound. Start at [`solve`]. Few tasks on few pits are dealt to the pits first ([`deal`]); of all others:
//!
//! A *setting* says how the temperature of each pit runs. For each setting a table gives the least that every task can cost at
//! each pit, so that a lower bound of the setting is a sum of table entries; settings are searched in the order of that bound
//! until it reaches the best plan found. Inside a setting, tasks are chosen one by one, the one with the least freedom first;
//! a node is left where what is chosen, plus the least that each remaining task still can cost beside it, reaches the best.
//!
//! What tasks share (nights, openings, fuel) only grows as tasks are added and is never more than the sum of what each would
//! cost alone. So the shared cost of what is chosen and any one remaining task is a lower bound too; the largest is taken.

mod deal;
mod descend;
mod finish;
mod line;
mod room;
mod settings;
mod shelf;
mod table;
mod waits;

use super::{choice::Choice, model::Model};
use deal::Deals;
use descend::{Best, Chance, Descent};
use settings::Settings;
use shelf::Shelf;
use table::Table;

/// A plan in slots.
#[derive(Clone, Debug)]
pub(super) struct Found {
    /// How each pit's temperature runs: its place among the pit's profiles.
    pub setting: Vec<usize>,
    /// Which slot of each serving.
    pub serves: Vec<usize>,
    /// What was chosen for each task.
    pub choices: Vec<Choice>,
    /// When each step of each task's preparation begins.
    pub preps: Vec<Vec<i64>>,
    /// What it costs.
    pub cost: u128,
}

/// What the search came to.
pub(super) struct Outcome {
    /// The best plan found.
    pub found: Option<Found>,
    /// No plan costs less.
    pub at_least: u128,
    /// Whether the search is over: with no plan, there is none.
    pub complete: bool,
    /// Nodes visited.
    pub nodes: i64,
}

/// Nodes that each of the first settings may take, round by round, before the search that has to prove.
const ROUNDS: [(usize, i64); 2] = [(32, 40), (32, 400)];
/// Households with more tasks than this get a plan to begin with.
const SMALL: usize = 8;

/// Searches for the best plan within so many nodes.
pub(super) fn solve(model: &Model, budget: i64) -> Outcome {
    let table = Table::of(model);
    let search = Search {
        model,
        shelf: Shelf::new(model),
        settings: Settings::new(model, &table),
        table: &table,
    };
    let mut best = Best::new(budget);
    if model.tasks.len() > SMALL {
        search.begin(&mut best, budget / 2);
    }
    let deals = match model.tasks.len() <= SMALL {
        true => Deals::of(&search),
        false => None,
    };
    let outcome = match deals {
        Some(mut deals) => deals.prove(&mut best),
        None => search.prove(&mut best),
    };
    if outcome.found.is_none() && !outcome.complete && model.tasks.len() <= SMALL {
        let mut best = Best::new(budget);
        search.begin(&mut best, budget / 2);
        return Outcome {
            found: best.found,
            nodes: outcome.nodes + best.nodes,
            ..outcome
        };
    }
    outcome
}

struct Search<'a> {
    model: &'a Model,
    shelf: Shelf<'a>,
    settings: Settings<'a>,
    table: &'a Table,
}

impl<'a> Search<'a> {
    fn descent<'s>(&'s self, setting: &'s [usize], limit: u128) -> Descent<'s>
    where
        'a: 's,
    {
        let alone = self.settings.alone(setting);
        Descent::new(self.model, &self.shelf, setting, &alone, limit)
    }

    /// Builds plans, one temperature a pit, and looks for better ones near the best.
    fn begin(&self, best: &mut Best, most: i64) {
        let until = best.nodes + most;
        let servings = self.model.servings.iter();
        let last: Vec<usize> = servings.map(|slots| slots.len() - 1).collect();
        let mut setting = vec![0; self.model.pits.len()];
        for serves in [vec![0; last.len()], last] {
            let singles = |pit: usize| {
                let profiles = self.model.pits[pit].profiles.iter();
                profiles.take_while(|profile| !profile.steps()).count()
            };
            let widest = (0..setting.len()).map(singles).max().unwrap_or(1);
            let alike = (0..widest).map(|at| {
                (0..setting.len())
                    .map(|pit| at.min(singles(pit) - 1))
                    .collect()
            });
            for other in alike.collect::<Vec<Vec<usize>>>() {
                self.build(best, &mut setting, other, &serves, until);
            }
            for pit in (0..setting.len()).chain(0..setting.len()) {
                for profile in 0..singles(pit) {
                    let mut other = setting.clone();
                    other[pit] = profile;
                    if best.nodes < until && other != setting {
                        self.build(best, &mut setting, other, &serves, until);
                    }
                }
            }
            if best.found.is_some() {
                let mut descent = self.descent(&setting, table::NEVER);
                let limit = best.cost();
                let kept = best.found.take();
                let built = descent.build(best, &serves, best.budget);
                if best.cost() > limit {
                    best.found = kept;
                }
                if !built {
                    return;
                }
                descent.improve(best, &mut Chance(1), until - best.nodes);
                return;
            }
        }
    }

    /// Builds a plan in a setting, which is kept if it is the best.
    fn build(
        &self,
        best: &mut Best,
        setting: &mut Vec<usize>,
        other: Vec<usize>,
        serves: &[usize],
        until: i64,
    ) {
        if self
            .descent(&other, table::NEVER)
            .build(best, serves, until)
        {
            *setting = other;
        }
    }

    /// Searches setting by setting until nothing better can be left, or the nodes run out.
    fn prove(&self, best: &mut Best) -> Outcome {
        let budget = best.budget;
        let (all, cut_short) = self.settings.below(best.cost(), &mut best.nodes, budget);
        let mut proven = vec![false; all.len()];
        for (first, most) in ROUNDS.into_iter().chain([(all.len(), budget)]) {
            for (at, (bound, setting)) in all.iter().enumerate().take(first) {
                if *bound >= best.cost() || best.nodes >= budget {
                    break;
                }
                if !proven[at] {
                    proven[at] = self.descent(setting, best.cost()).run(best, most);
                }
            }
        }
        let open = all.iter().zip(&proven).filter(|(_, proven)| !**proven);
        let at_least = match cut_short {
            true => self.settings.least(),
            false => open
                .map(|((bound, _), _)| *bound)
                .min()
                .unwrap_or(u128::MAX),
        };
        Outcome {
            complete: at_least >= best.cost(),
            at_least: at_least.min(best.cost()),
            nodes: best.nodes,
            found: best.found.take(),
        }
    }
}
