//! What raising the pit, wrapping, or mopping no more would change. Start at [`choices`].

use super::{
    Follow, Told,
    ahead::{Ahead, Plan},
    answer::{Effect, WhatIf},
};
use crate::{
    checks::cuts::{WrapKind, cut_facts},
    heat::kernel::LANES,
};

/// Of so many blocks one is asked: differences of the same members need few of them.
const ONE_OF: usize = 8;
/// 25 °F in kelvin.
const HOTTER: f64 = 25.0 / 1.8;

/// Each choice that there is, to be run beside what goes on now.
pub(super) fn choices(follow: &Follow, told: &Told) -> Vec<(WhatIf, Ahead)> {
    let plan = Plan::as_now(follow);
    let wraps = !cut_facts(told.cut).wraps.is_empty() && plan.wrap.is_none();
    let choices = [
        (
            WhatIf::HotterPit,
            Some(Plan {
                pit_c: plan.pit_c + HOTTER,
                ..plan
            }),
        ),
        (
            WhatIf::WrapNow,
            wraps.then_some(Plan {
                wrap: Some(WrapKind::Foil),
                mops: None,
                ..plan
            }),
        ),
        (
            WhatIf::NoMop,
            plan.mops.map(|_| Plan { mops: None, ..plan }),
        ),
    ];
    choices
        .into_iter()
        .filter_map(|(choice, plan)| Some((choice, Ahead::with(plan?, ONE_OF))))
        .collect()
}

/// What each would change: the middle of the same members with it and without.
pub(super) fn effects(now: &Ahead, choices: &[(WhatIf, Ahead)]) -> Vec<Effect> {
    let members = now.to_go.chunks(LANES).step_by(ONE_OF).flatten();
    let as_now = middle(members.copied().collect());
    let of = |(choice, ahead): &(WhatIf, Ahead)| {
        let minutes = libm::roundf(middle(ahead.to_go.clone()) - as_now) as i64;
        Effect {
            choice: *choice,
            minutes,
        }
    };
    choices.iter().map(of).collect()
}

fn middle(mut to_go: Vec<f32>) -> f32 {
    to_go.sort_by(f32::total_cmp);
    to_go.get(to_go.len() / 2).copied().unwrap_or(0.0)
}
