//! How much to buy for so many people, and how many what is there will feed. Start at [`portions`]. This is
//! `slowbend sum portions`.

mod meat;
mod shapes;

pub use shapes::{Appetite, Feeds, MeatAnswer, PortionMeat, PortionsAnswer, PortionsInput, Range};

use super::{
    Grams, NotABatch,
    amount::up,
    refused::{List, MEAT_G, What, named, within, within_of},
};
use crate::safety::{Doing, cautions_at};

/// The most people.
const PEOPLE_MAX: i64 = 10_000;

/// What to buy, what comes of it, and how many it feeds.
///
/// Laws: what is to be bought is enough even at the low end of its yield; one more person never needs less of any meat;
/// what was weighed is trimmed off, cooked away, left as bone or eaten, and nothing else.
///
/// # Errors
/// [`NotABatch`] where nobody eats, and for numbers out of range and names that are missing or double.
pub fn portions(input: &PortionsInput) -> Result<PortionsAnswer, NotABatch> {
    check(input)?;
    let (adult, child) = input.appetite.grams();
    let wanted = Grams(input.adults * adult + input.children * child);
    let shares = input.meats.iter().map(|meat| meat.share).sum();
    // Rounded up one by one, not apportioned: sharing a rest out can take from one meat when the whole grows.
    let of_wanted = |meat: &PortionMeat| Grams(up(wanted.0, meat.share, shares));
    let meats: Vec<MeatAnswer> = input
        .meats
        .iter()
        .map(|meat| meat::answer(meat, of_wanted(meat)))
        .collect();
    let eaten = meats.iter().map(|meat| meat.eaten_g).sum::<Range>();
    Ok(PortionsAnswer {
        wanted_g: wanted,
        adult_g: Grams(adult),
        child_g: Grams(child),
        feeds: Feeds {
            low: eaten.low.0 / adult,
            expected: eaten.expected.0 / adult,
            high: eaten.high.0 / adult,
        },
        enough: eaten.low >= wanted,
        eaten_g: eaten,
        trimmings_g: meats.iter().map(|meat| meat.trimmed_g).sum(),
        meats,
        cautions: cautions_at(Doing::Serving),
    })
}

fn check(input: &PortionsInput) -> Result<(), NotABatch> {
    check_people(input.adults, input.children)?;
    named(
        List::Meats,
        1,
        input.meats.iter().map(|meat| meat.name.as_str()),
    )?;
    input.meats.iter().try_for_each(check_meat)
}

fn check_meat(meat: &PortionMeat) -> Result<(), NotABatch> {
    check_share(&meat.name, meat.share, meat.trim_percent)?;
    match meat.there_g {
        Some(there) => within_of(What::Meat, &meat.name, there.0, MEAT_G),
        None => Ok(()),
    }
}

/// Somebody eats, and no more than can be reckoned for.
pub(super) fn check_people(adults: i64, children: i64) -> Result<(), NotABatch> {
    within(What::Adults, adults, 0..=PEOPLE_MAX)?;
    within(What::Children, children, 0..=PEOPLE_MAX)?;
    match adults + children {
        0 => Err(NotABatch::Nobody),
        _ => Ok(()),
    }
}

/// What one meat takes of what is eaten, and what is trimmed off it.
pub(super) fn check_share(name: &str, share: i64, trim: Option<i64>) -> Result<(), NotABatch> {
    within_of(What::Share, name, share, 1..=1_000)?;
    trim.map_or(Ok(()), |percent| {
        within_of(What::Trim, name, percent, 0..=70)
    })
}
