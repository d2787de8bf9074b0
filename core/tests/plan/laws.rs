//! What holds for every plan.

use super::{checker, invent::household};
use slowbend_core::plan::*;

/// Small and large, easy and short of hands: whatever is planned keeps every rule, and costs what it says.
#[test]
fn every_plan_keeps_every_rule() {
    let (mut planned, mut none) = (0, 0);
    for seed in 0..60 {
        let (meats, pits) = [(2, 1), (4, 2), (6, 2), (9, 3)][seed as usize % 4];
        let household = household(seed, meats, pits);
        match plan(&household) {
            Ok(answer) => {
                planned += 1;
                checker::check(&household, &answer.plan);
            }
            Err(refused) => {
                none += 1;
                assert!(refused.conflict.key.starts_with("plan-none"), "{refused}");
            }
        }
    }
    assert!(planned >= 40, "{planned} planned, {none} not");
}

#[test]
fn the_same_household_has_the_same_answer() {
    for seed in [3, 14, 15] {
        let household = household(seed, 4, 2);
        assert_eq!(plan(&household), plan(&household), "{seed}");
    }
}

/// More nodes never make a plan worse, and what was proven stays.
#[test]
fn more_nodes_are_no_worse() {
    for seed in 0..12 {
        let few = Household {
            budget_nodes: 2_000,
            ..household(seed, 4, 2)
        };
        let many = Household {
            budget_nodes: 40_000,
            ..few.clone()
        };
        let (Ok(few), Ok(many)) = (plan(&few), plan(&many)) else {
            continue;
        };
        assert!(many.plan.cost <= few.plan.cost, "{seed}");
        match few.proof {
            Proof::Optimal => assert_eq!(few.plan.cost, many.plan.cost, "{seed}"),
            Proof::Gap { at_least } => assert!(at_least <= many.plan.cost, "{seed}"),
        }
    }
}

/// Each alternative keeps the rules too, is better in what came first, and says what it costs.
#[test]
fn alternatives_are_plans_with_a_price() {
    let mut seen = 0;
    for seed in 0..16 {
        let household = Household {
            alternatives: 3,
            ..household(seed, 4, 2)
        };
        let Ok(answer) = plan(&household) else {
            continue;
        };
        for other in &answer.alternatives {
            seen += 1;
            checker::check(&household, &other.plan);
            assert_ne!(other.plan.cost, answer.plan.cost, "{seed}");
            assert!(
                other.says.len() >= 2,
                "{seed}: a gain and a cost: {:?}",
                other.says
            );
            if answer.proof == Proof::Optimal {
                assert!(answer.plan.cost < other.plan.cost, "{seed}");
            }
        }
    }
    assert!(seen >= 10, "{seen}");
}
