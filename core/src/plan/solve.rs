//! From a household to its answer. Start at [`plan`].

use super::{
    answer::{Answer, First, Proof},
    check::check,
    cost::Order,
    household::Household,
    model::Model,
    no_plan::NoPlan,
    search, sheet,
};
use crate::{
    safety::{Doing, cautions_at},
    words::key,
};

/// The best run sheet, its chance and its proof, and up to three honest alternatives.
///
/// # Errors
/// [`NoPlan`] names what is wrong with the household, or what stands against every plan of it.
pub fn plan(household: &Household) -> Result<Answer, NoPlan> {
    let at = check(household)?;
    let model = Model::of(household, &at, Order::of(First::Ready));
    let outcome = search::solve(&model, household.budget_nodes);
    let Some(found) = &outcome.found else {
        return Err(NoPlan::new(
            if outcome.complete {
                key("plan-none")
            } else {
                key("plan-none-found")
            },
            &[],
        ));
    };
    let proof = match outcome.complete {
        true => Proof::Optimal,
        false => Proof::Gap {
            at_least: model.order.unpack(outcome.at_least),
        },
    };
    Ok(Answer {
        plan: sheet::plan(household, &at, &model, found),
        proof,
        nodes: outcome.nodes,
        alternatives: vec![],
        cautions: cautions(household),
    })
}

/// What to heed where meat is put on, held and served.
fn cautions(household: &Household) -> Vec<crate::safety::CautionKind> {
    let poultry = household.meats.iter().any(|meat| meat.cut.is_poultry());
    let mut all = vec![];
    for doing in [
        Some(Doing::Preparing),
        poultry.then_some(Doing::CheckingPoultry),
        Some(Doing::LightingCharcoal),
        Some(Doing::Serving),
    ] {
        for caution in doing.map(cautions_at).unwrap_or_default() {
            if !all.contains(&caution) {
                all.push(caution);
            }
        }
    }
    // Local rules go last.
    all.sort_by_key(|caution| *caution == crate::safety::CautionKind::LocalRulesFirst);
    all
}
