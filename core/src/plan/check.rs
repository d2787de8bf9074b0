//! What is refused before anything is planned, each with the conflict and the way out. Start at [`check`].

mod kitchen;
mod meats;
mod times;

use super::{household::Household, no_plan::NoPlan, said::name};
use crate::{plan::answer::SaidValue, words::key};
use std::{collections::BTreeSet, ops::RangeInclusive};

/// The longest time ahead that is planned, minutes: a week.
pub(super) const HORIZON_MIN: i64 = 7 * 24 * 60;

/// Refuses what no plan can be made of; gives the preferred and the latest minute of each serving.
pub(super) fn check(household: &Household) -> Result<Vec<(i64, i64)>, NoPlan> {
    if household.hands == 0 {
        return Err(NoPlan::new(key("plan-no-hands"), &[]));
    }
    within("hands", household.hands, 0..=3)?;
    within(
        "confidence_permille",
        household.confidence_permille,
        500..=900,
    )?;
    within("shared_permille", household.shared_permille, 0..=950)?;
    within("alternatives", household.alternatives, 0..=3)?;
    within("budget_nodes", household.budget_nodes, 100..=10_000_000)?;
    within("burners", household.burners, 0..=12)?;
    within("from_ms", household.from_ms, 0..=4_102_444_800_000)?;
    if household.from_ms % (15 * 60_000) != 0 {
        return Err(NoPlan::new(key("plan-off-grid"), &[]));
    }
    within("meats", household.meats.len() as i64, 0..=60)?;
    within("dishes", household.dishes.len() as i64, 0..=40)?;
    within("pits", household.pits.len() as i64, 1..=6)?;
    within("places", household.places.len() as i64, 0..=6)?;
    within("servings", household.servings.len() as i64, 1..=60)?;
    if household.meats.is_empty() && household.dishes.is_empty() {
        return Err(NoPlan::new(key("plan-nothing"), &[]));
    }
    names(household)?;
    kitchen::check(household)?;
    meats::check(household)?;
    times::check(household)
}

fn names(household: &Household) -> Result<(), NoPlan> {
    let meats = household.meats.iter().map(|meat| &meat.name);
    each_once(meats.chain(household.dishes.iter().map(|dish| &dish.name)))?;
    each_once(household.pits.iter().map(|pit| &pit.name))?;
    each_once(household.places.iter().map(|place| &place.name))?;
    each_once(household.servings.iter().map(|serving| &serving.name))
}

fn each_once<'a>(names: impl Iterator<Item = &'a String>) -> Result<(), NoPlan> {
    let mut seen = BTreeSet::new();
    for called in names {
        if called.trim().is_empty() {
            return Err(NoPlan::new(key("plan-no-name"), &[]));
        }
        if !seen.insert(called) {
            return Err(NoPlan::new(
                key("plan-name-twice"),
                &[("name", name(called))],
            ));
        }
    }
    Ok(())
}

/// A number in its range.
pub(super) fn within(what: &str, value: i64, range: RangeInclusive<i64>) -> Result<(), NoPlan> {
    if range.contains(&value) {
        return Ok(());
    }
    let args = [
        ("what", name(what)),
        ("value", name(&value.to_string())),
        ("low", name(&range.start().to_string())),
        ("high", name(&range.end().to_string())),
    ];
    Err(NoPlan::new(key("plan-number"), &args))
}

/// A number of something with a name.
fn of(called: &str, what: &str, value: i64, range: RangeInclusive<i64>) -> Result<(), NoPlan> {
    within(&format!("{what} ({called})"), value, range)
}

/// A span whose least is not above its most.
fn span(called: &str, least: i64, most: i64) -> Result<(), NoPlan> {
    if least <= most {
        return Ok(());
    }
    let args = [
        ("name", name(called)),
        ("least", SaidValue::Minutes(least)),
        ("most", SaidValue::Minutes(most)),
    ];
    Err(NoPlan::new(key("plan-least-above-most"), &args))
}
