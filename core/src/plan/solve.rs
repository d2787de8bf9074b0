//! From a household to its answer. Start at [`plan`].

use super::{
    alternatives,
    answer::{Answer, First, Plan, Proof},
    check::check,
    cost::Order,
    household::Household,
    model::Model,
    no_plan::NoPlan,
    search::{self, Outcome},
    sheet, ways,
};
use crate::{
    safety::{CautionKind, Doing, cautions_at},
    words::key,
};

/// The best run sheet, its chance and its proof, and up to three honest alternatives.
///
/// # Errors
/// [`NoPlan`] names what is wrong with the household, or what stands against every plan of it and each single change that
/// would make one.
pub fn plan(household: &Household) -> Result<Answer, NoPlan> {
    let at = check(household)?;
    if !Model::of(household, &at, Order::of(First::Ready))
        .night
        .all_counted()
    {
        return Err(NoPlan::new(key("plan-night-too-long"), &[]));
    }
    let (made, outcome) = solve(household, &at, First::Ready, household.budget_nodes);
    let Some(made) = made else {
        let conflict = match outcome.complete {
            true => key("plan-none"),
            false => key("plan-none-found"),
        };
        return Err(NoPlan {
            ways: ways::all(household, &at),
            ..NoPlan::new(conflict, &[])
        });
    };
    let proof = match outcome.complete {
        true => Proof::Optimal,
        false => Proof::Gap {
            at_least: Order::of(First::Ready).unpack(outcome.at_least),
        },
    };
    let (alternatives, more) = alternatives::all(household, &at, &made);
    Ok(Answer {
        plan: made,
        proof,
        nodes: outcome.nodes + more,
        alternatives,
        cautions: cautions(household),
    })
}

/// The best plan where `first` comes first, within so many nodes.
pub(super) fn solve(
    household: &Household,
    at: &[(i64, i64)],
    first: First,
    budget: i64,
) -> (Option<Plan>, Outcome) {
    let model = Model::of(household, at, Order::of(first));
    let outcome = search::solve(&model, budget);
    let made = outcome
        .found
        .as_ref()
        .map(|found| sheet::plan(household, at, &model, found));
    (made, outcome)
}

/// What to heed where meat is made ready, put on, held and served; local rules last.
fn cautions(household: &Household) -> Vec<CautionKind> {
    let poultry = household.meats.iter().any(|meat| meat.cut.is_poultry());
    let doings = [
        Some(Doing::Preparing),
        Some(Doing::LightingCharcoal),
        poultry.then_some(Doing::CheckingPoultry),
        Some(Doing::Serving),
    ];
    let mut all = vec![];
    for caution in doings.into_iter().flatten().flat_map(cautions_at) {
        if !all.contains(&caution) {
            all.push(caution);
        }
    }
    all.sort_by_key(|caution| *caution == CautionKind::LocalRulesFirst);
    all
}
