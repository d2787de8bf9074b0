//! One list for the whole cook, and what a plate costs. Start at [`shopping`]. This is `slowbend sum shopping`.

mod gather;
mod shapes;

pub use shapes::{AtHome, Extra, Line, Price, ShoppingAnswer, ShoppingInput, Unit};

use super::{Cents, NotABatch, amount::up, refused};
use gather::Needed;

/// What to buy for the meats, the rub, the mop and whatever else, less what is at home; in order of name.
///
/// What a plate costs is what is bought and priced, over all who eat, rounded up. Law: each line is what is needed less
/// what is at home, and never negative.
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
    let plates = input.portions.as_ref().map(|p| p.adults + p.children);
    let unpriced = |line: &&Line| line.buy > 0 && line.cents.is_none();
    Ok(ShoppingAnswer {
        without_price: lines
            .iter()
            .filter(unpriced)
            .map(|line| line.name.clone())
            .collect(),
        cost,
        cost_a_plate: plates.map(|plates| Cents(up(cost.0, 1, plates))),
        plates,
        lines,
    })
}

fn lines(input: &ShoppingInput, needed: &Needed) -> Result<Vec<Line>, NotABatch> {
    let line = |(name, (need, unit)): (&String, &(i64, Unit))| {
        let home = input.at_home.iter().find(|home| home.name == *name);
        let price = input.prices.iter().find(|price| price.name == *name);
        let units = [home.map(|home| home.unit), price.map(|price| price.unit)];
        if units.iter().flatten().any(|other| other != unit) {
            return Err(NotABatch::MixedUnits { name: name.clone() });
        }
        let at_home = home.map_or(0, |home| home.amount);
        let buy = (need - at_home).max(0);
        Ok(Line {
            name: name.clone(),
            unit: *unit,
            need: *need,
            at_home,
            buy,
            cents: price.map(|price| Cents(up(buy, price.cents.0, price.per))),
        })
    };
    needed.iter().map(line).collect()
}

fn check(input: &ShoppingInput) -> Result<(), NotABatch> {
    const MOST: i64 = 10_000_000;
    refused::named("extras", 0, input.extras.iter().map(|e| e.name.as_str()))?;
    refused::named(
        "what is at home",
        0,
        input.at_home.iter().map(|h| h.name.as_str()),
    )?;
    refused::named("prices", 0, input.prices.iter().map(|p| p.name.as_str()))?;
    for extra in &input.extras {
        refused::within(
            format!("amount of \"{}\"", extra.name),
            extra.amount,
            1..=MOST,
        )?;
    }
    for home in &input.at_home {
        refused::within(
            format!("amount at home of \"{}\"", home.name),
            home.amount,
            0..=MOST,
        )?;
    }
    for price in &input.prices {
        refused::within(
            format!("cents of \"{}\"", price.name),
            price.cents.0,
            0..=MOST,
        )?;
        refused::within(format!("per of \"{}\"", price.name), price.per, 1..=MOST)?;
    }
    Ok(())
}
