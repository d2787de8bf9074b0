//! Why nothing can be reckoned, and what to give instead.

use std::{collections::BTreeSet, ops::RangeInclusive};

/// The most lines of one list: meats, parts, prices.
pub(super) const LINES_MAX: i64 = 200;
/// What one meat, or one batch of meat for a rub or a brine, may weigh, grams.
pub(super) const MEAT_G: RangeInclusive<i64> = 20..=500_000;

/// What is wrong with the input.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NotABatch {
    /// A number outside its range.
    #[error("{what} is {value}: it has to be {low} to {high}.")]
    Outside {
        /// Which number, with its unit.
        what: String,
        /// What was given.
        value: i64,
        /// The least.
        low: i64,
        /// The most.
        high: i64,
    },
    /// Nobody eats.
    #[error("Nobody is to eat: give the number of adults or of children.")]
    Nobody,
    /// Something without a name.
    #[error("Something on the list of {list} has no name: give each a name of its own.")]
    NoName {
        /// Which list.
        list: &'static str,
    },
    /// Two of one name.
    #[error(
        "\"{name}\" is twice on the list of {list}: give each a name of its own, or add them up."
    )]
    Twice {
        /// Which list.
        list: &'static str,
        /// The name.
        name: String,
    },
    /// A rub by volume with something whose cup nobody weighed.
    #[error(
        "What a cup of \"{name}\" weighs is not known: weigh a level cup of yours and give its grams. No government \
         value tells kosher salt by the size of its crystals."
    )]
    CupNotWeighed {
        /// What it is.
        name: String,
    },
    /// More salt than dissolves.
    #[error(
        "So much salt does not dissolve: brine is full at 26.3 % of its weight. Take less salt or more water."
    )]
    Saturated,
    /// One thing in two units.
    #[error(
        "\"{name}\" is counted in two units: give what is needed, at home and priced in the same one."
    )]
    MixedUnits {
        /// What it is.
        name: String,
    },
    /// A list for nothing.
    #[error("There is nothing to shop for: give portions, a rub, a mop or something else.")]
    Nothing,
}

pub(super) fn within(
    what: impl Into<String>,
    value: i64,
    range: RangeInclusive<i64>,
) -> Result<(), NotABatch> {
    match range.contains(&value) {
        true => Ok(()),
        false => Err(NotABatch::Outside {
            what: what.into(),
            value,
            low: *range.start(),
            high: *range.end(),
        }),
    }
}

/// Each name is there, and there once; there are `least` of them or more.
pub(super) fn named<'a>(
    list: &'static str,
    least: i64,
    names: impl Iterator<Item = &'a str>,
) -> Result<(), NotABatch> {
    let mut seen = BTreeSet::new();
    for name in names {
        if name.trim().is_empty() {
            return Err(NotABatch::NoName { list });
        }
        if !seen.insert(name) {
            let name = name.to_owned();
            return Err(NotABatch::Twice { list, name });
        }
    }
    let count = format!("The number of {list}");
    within(count, seen.len() as i64, least..=LINES_MAX)
}
