//! One list for the whole cook, and what a plate costs. Start at [`shopping`]. This is `slowbend sum shopping`.

mod gather;
mod shapes;

pub use shapes::{AtHome, CountedIn, Extra, Line, Price, ShoppingAnswer, ShoppingInput};

use super::{
    Cents, NotABatch,
    amount::up,
    refused::{List, What, named, within_of},
};
use gather::{Need, Needed};

/// The most of anything: of an amount, of cents.
const MOST: i64 = 10_000_000;

/// What to buy for the meats, the rub, the mop and whatever else, less what is at home; in order of name.
///
/// What a plate costs is told twice, over all who eat, rounded up: what is bought and priced, and all that is used and
/// priced, meats that are there already and what is at home among it. Law: each line is what is needed less what is at
/// home, and never negative; what is used never costs less than what is bought.
///
/// # Errors
/// [`NotABatch`], from the sums it asks too; and where one thing is counted in two units, or there is nothing to buy for.
pub fn shopping(input: &ShoppingInput) -> Result<ShoppingAnswer, NotABatch> {
    check(input)?;
    let needed = gather::all(input)?;
    if needed.is_empty() {
        return Err(NotABatch::Nothing);
    }
    let lines = lines(input, &needed)?;
    let cost: Cents = lines.iter().filter_map(|line| line.cents).sum();
    let worth: Cents = lines.iter().filter_map(|line| line.all_cents).sum();
    let plates = input.portions.as_ref().map(|p| p.adults + p.children);
    let a_plate = |all: Cents| plates.map(|plates| Cents(up(all.0, 1, plates)));
    let unpriced = |line: &&Line| line.buy > 0 && line.cents.is_none();
    Ok(ShoppingAnswer {
        without_price: lines
            .iter()
            .filter(unpriced)
            .map(|line| line.name.clone())
            .collect(),
        cost,
        cost_a_plate: a_plate(cost),
        worth,
        worth_a_plate: a_plate(worth),
        plates,
        lines,
    })
}

fn lines(input: &ShoppingInput, needed: &Needed) -> Result<Vec<Line>, NotABatch> {
    let line = |(name, need): (&String, &Need)| {
        let home = input.at_home.iter().find(|home| home.name == *name);
        let price = input.prices.iter().find(|price| price.name == *name);
        let units = [home.map(|home| home.unit), price.map(|price| price.unit)];
        if units.iter().flatten().any(|other| *other != need.unit) {
            return Err(NotABatch::MixedUnits { name: name.clone() });
        }
        let at_home = home.map_or(0, |home| home.amount);
        let buy = (need.amount - at_home).max(0);
        let costs = |amount| price.map(|price| Cents(up(amount, price.cents.0, price.per)));
        Ok(Line {
            name: name.clone(),
            unit: need.unit,
            need: need.amount,
            there: need.there,
            at_home,
            buy,
            cents: costs(buy),
            all_cents: costs(need.amount + need.there),
        })
    };
    needed.iter().map(line).collect()
}

fn check(input: &ShoppingInput) -> Result<(), NotABatch> {
    check_lists(&input.extras, &input.at_home, &input.prices)
}

/// What is said beside the sums.
pub(super) fn check_lists(
    extras: &[Extra],
    at_home: &[AtHome],
    prices: &[Price],
) -> Result<(), NotABatch> {
    named(List::Extras, 0, extras.iter().map(|one| one.name.as_str()))?;
    named(List::AtHome, 0, at_home.iter().map(|one| one.name.as_str()))?;
    named(List::Prices, 0, prices.iter().map(|one| one.name.as_str()))?;
    for extra in extras {
        within_of(What::Amount, &extra.name, extra.amount, 1..=MOST)?;
    }
    for home in at_home {
        within_of(What::AtHome, &home.name, home.amount, 0..=MOST)?;
    }
    for price in prices {
        within_of(What::Cents, &price.name, price.cents.0, 0..=MOST)?;
        within_of(What::Per, &price.name, price.per, 1..=MOST)?;
    }
    Ok(())
}
