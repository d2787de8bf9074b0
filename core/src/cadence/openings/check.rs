//! What is refused, and what to do instead. Start with [`check`].

use super::{HORIZON_MIN_MAX, LidOpenings, NEEDS_MAX, Need, Refused};
use crate::cadence::{EVERY_MIN_MAX, EVERY_MIN_MIN};
use std::{collections::BTreeSet, ops::RangeInclusive};

/// Every minute, so that no sum of them can overflow.
const MINUTES: RangeInclusive<i64> = -1_000_000_000..=1_000_000_000;

/// Refuses what no plan can be made of.
pub(super) fn check(input: &LidOpenings) -> Result<(), Refused> {
    within("from_min", input.from_min, MINUTES)?;
    within("horizon_min", input.horizon_min, 1..=HORIZON_MIN_MAX)?;
    within(
        "the number of meats",
        input.needs.len() as i64,
        0..=NEEDS_MAX as i64,
    )?;
    input
        .fixed_min
        .iter()
        .try_for_each(|at| within("fixed_min", *at, MINUTES))?;
    input.needs.iter().try_for_each(check_need)?;
    names_differ(&input.needs)
}

fn check_need(need: &Need) -> Result<(), Refused> {
    let field = |field: &str| format!("{field} of \"{}\"", need.name);
    if need.name.trim().is_empty() {
        return Err(Refused::new(
            "A meat has no name: give each meat a name of its own.",
        ));
    }
    within(&field("last_min"), need.last_min, MINUTES)?;
    within(
        &field("every_min"),
        need.every_min,
        EVERY_MIN_MIN..=EVERY_MIN_MAX,
    )?;
    within(&field("early_min"), need.early_min, 0..=need.every_min / 2)?;
    within(&field("late_min"), need.late_min, 0..=need.every_min / 2)?;
    need.until_min
        .map_or(Ok(()), |until| within(&field("until_min"), until, MINUTES))
}

fn names_differ(needs: &[Need]) -> Result<(), Refused> {
    let mut seen = BTreeSet::new();
    match needs.iter().find(|need| !seen.insert(&need.name)) {
        Some(twice) => Err(Refused::new(format!(
            "Two meats are called \"{}\": give each a name of its own.",
            twice.name
        ))),
        None => Ok(()),
    }
}

fn within(what: &str, value: i64, range: RangeInclusive<i64>) -> Result<(), Refused> {
    if range.contains(&value) {
        return Ok(());
    }
    let (least, most) = range.into_inner();
    Err(Refused::new(format!(
        "{what} is {value}: give a whole number from {least} to {most}."
    )))
}
