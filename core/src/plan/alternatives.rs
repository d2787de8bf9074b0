//! Other plans, and what each gains and costs. Start at [`all`].
//!
//! Each is the best plan where another thing comes first, so it is honest: nothing was made worse to make the plan shine.

use super::{
    answer::{Alternative, Cost, First, Plan, Said, SaidValue},
    household::{GRID_MIN, Household},
    said::name,
    solve::solve,
};
use crate::words::key;

/// What may come first, in the order in which it is tried.
const FIRSTS: [First; 5] = [
    First::Temperature,
    First::Sleep,
    First::Hold,
    First::Fuel,
    First::Openings,
];

/// As many alternatives as are wanted and there are, and the nodes they took.
pub(super) fn all(
    household: &Household,
    at: &[(i64, i64)],
    plan: &Plan,
) -> (Vec<Alternative>, i64) {
    let (mut found, mut nodes): (Vec<Alternative>, i64) = (vec![], 0);
    for first in FIRSTS {
        if found.len() as i64 >= household.alternatives {
            break;
        }
        if level(&plan.cost, first) == 0 {
            continue;
        }
        let (other, outcome) = solve(household, at, first, household.budget_nodes / 4);
        nodes += outcome.nodes;
        let Some(other) =
            other.filter(|other| level(&other.cost, first) < level(&plan.cost, first))
        else {
            continue;
        };
        if found
            .iter()
            .all(|alternative| alternative.plan.cost != other.cost)
        {
            found.push(Alternative {
                first,
                says: says(household, plan, &other),
                plan: other,
            });
        }
    }
    (found, nodes)
}

/// How much of what comes first a plan costs.
const fn level(cost: &Cost, first: First) -> i64 {
    match first {
        First::Ready => cost.not_ready_permille,
        First::Temperature => cost.temperature_k,
        First::Sleep => cost.night_quarters,
        First::Hold => cost.hold_min,
        First::Openings => cost.openings,
        First::Fuel => cost.fuel_quarter_g,
    }
}

/// What the other plan gains first, then what it costs.
fn says(household: &Household, plan: &Plan, other: &Plan) -> Vec<Said> {
    let mut gains = vec![];
    let mut costs = vec![];
    let mut put = |less: i64, gain: Said, cost: Said| match less {
        0 => {}
        1.. => gains.push(gain),
        _ => costs.push(cost),
    };
    let both =
        |gain, cost, args: &[(&str, SaidValue)]| (Said::new(gain, args), Said::new(cost, args));
    let chances = [
        ("permille", SaidValue::Count(other.chance_permille)),
        ("before", SaidValue::Count(plan.chance_permille)),
    ];
    let (gain, cost) = both(key("plan-gain-ready"), key("plan-cost-ready"), &chances);
    put(other.chance_permille - plan.chance_permille, gain, cost);
    let minutes = |less: i64| [("by", SaidValue::Minutes(less.abs()))];
    let late = plan.cost.late_min - other.cost.late_min;
    let (gain, cost) = both(key("plan-gain-late"), key("plan-cost-late"), &minutes(late));
    put(late, gain, cost);
    let night = (plan.cost.night_quarters - other.cost.night_quarters) * GRID_MIN;
    let (gain, cost) = both(
        key("plan-gain-night"),
        key("plan-cost-night"),
        &minutes(night),
    );
    put(night, gain, cost);
    let hold = plan.cost.hold_min - other.cost.hold_min;
    let (gain, cost) = both(key("plan-gain-hold"), key("plan-cost-hold"), &minutes(hold));
    put(hold, gain, cost);
    let openings = plan.cost.openings - other.cost.openings;
    let count = [("count", SaidValue::Count(openings.abs()))];
    let (gain, cost) = both(key("plan-gain-openings"), key("plan-cost-openings"), &count);
    put(openings, gain, cost);
    let fuel = (plan.cost.fuel_quarter_g - other.cost.fuel_quarter_g) / 4;
    let weight = [("weight", SaidValue::Grams(fuel.abs()))];
    let (gain, cost) = both(key("plan-gain-fuel"), key("plan-cost-fuel"), &weight);
    put(fuel, gain, cost);
    let (better, worse) = temperatures(household, plan, other);
    better
        .into_iter()
        .chain(gains)
        .chain(worse)
        .chain(costs)
        .collect()
}

/// The meats that the other plan cooks in their happy range and this one does not, and the other way round.
fn temperatures(household: &Household, plan: &Plan, other: &Plan) -> (Vec<Said>, Vec<Said>) {
    let (mut better, mut worse) = (vec![], vec![]);
    for (nr, meat) in household.meats.iter().enumerate() {
        let says = |said: &'static str, wrong: &str| {
            Said::new(
                said,
                &[
                    ("meat", name(&meat.name)),
                    ("wrong", SaidValue::Message(wrong.to_owned())),
                ],
            )
        };
        match (wrong(household, plan, nr), wrong(household, other, nr)) {
            (Some(wrong), None) => better.push(says(key("plan-gain-temperature"), wrong)),
            (None, Some(wrong)) => worse.push(says(key("plan-cost-temperature"), wrong)),
            _ => {}
        }
    }
    (better, worse)
}

/// What goes wrong with a meat at a temperature that its pit has while it is on.
fn wrong<'a>(household: &'a Household, plan: &Plan, nr: usize) -> Option<&'a str> {
    let (happy, meat) = (&household.meats[nr].happy, &plan.meats[nr]);
    let pit = &plan.pits[meat.pit?];
    let before = pit
        .step
        .is_none_or(|step| meat.on_min < step.at_min)
        .then_some(pit.temp);
    let after = pit
        .step
        .filter(|step| step.at_min < meat.off_late_min)
        .map(|step| step.temp);
    let temps = || before.into_iter().chain(after);
    if temps().any(|temp| temp < happy.low_mk) {
        return happy.below.as_deref().or(Some(key("plan-below-slow")));
    }
    let above = temps().any(|temp| temp > happy.high_mk);
    above.then(|| happy.above.as_deref().unwrap_or(key("plan-above-dry")))
}
