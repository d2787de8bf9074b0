//! Branch and bound. Start at [`solve`].
//!
//! A *setting* says how the temperature of each pit runs. For each setting a table gives the least that every task can cost at
//! each pit, so that a lower bound of the setting is a sum of table entries; settings are searched in the order of that bound
//! until it reaches the best plan found. Inside a setting, tasks are chosen one by one, the one with the least freedom first;
//! a node is left where what is chosen, plus the least that each remaining task still can cost beside it, reaches the best.
//!
//! What tasks share (nights, openings, fuel) only grows as tasks are added and is never more than the sum of what each would
//! cost alone. So the shared cost of what is chosen and any one remaining task is a lower bound too; the largest is taken.

mod descend;
mod finish;
mod room;
mod settings;
mod table;
mod waits;

pub(super) use descend::Best;

use super::{choice::Choice, model::Model};
use descend::Descent;
use settings::Settings;
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

/// Searches for the best plan within so many nodes.
pub(super) fn solve(model: &Model, budget: i64) -> Outcome {
    let table = Table::of(model);
    let mut best = Best::new(budget);
    let settings = Settings::new(model, &table);
    let at_least_all = settings.least();
    for setting in settings.promising() {
        Descent::new(model, &table, &setting).run(&mut best, budget / 8);
    }
    let (rest, cut_short) = settings.below(best.cost(), &mut best.nodes, budget);
    let mut complete = !cut_short;
    let mut at_least = best.cost();
    for (bound, setting) in rest {
        if bound >= best.cost() {
            break;
        }
        if !Descent::new(model, &table, &setting).run(&mut best, budget) {
            complete = false;
            at_least = at_least.min(bound);
        }
        if best.nodes >= budget {
            complete = false;
            at_least = at_least.min(bound);
            break;
        }
    }
    let at_least = match (complete, cut_short) {
        (true, _) => best.cost(),
        (false, true) => at_least_all,
        (false, false) => at_least.min(best.cost()),
    };
    Outcome {
        at_least,
        complete,
        nodes: best.nodes,
        found: best.found,
    }
}
