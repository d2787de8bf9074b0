//! What a cook needs, gathered by name.

use super::{CountedIn, ShoppingInput};
use crate::batch::{NotABatch, mop, portions, rub};
use std::collections::BTreeMap;

/// How much of a thing is needed beside what is there of it.
pub(super) struct Need {
    pub amount: i64,
    pub there: i64,
    pub unit: CountedIn,
}

/// Each thing by its name.
pub(super) type Needed = BTreeMap<String, Need>;

pub(super) fn all(input: &ShoppingInput) -> Result<Needed, NotABatch> {
    let mut needed = Needed::new();
    if let Some(asked) = &input.portions {
        for meat in portions(asked)?.meats {
            let need = of(meat.buy_g.0, CountedIn::G);
            let there = meat.there_g.0;
            put(&mut needed, &meat.name, Need { there, ..need })?;
        }
    }
    if let Some(asked) = &input.rub {
        for part in rub(asked)?.parts {
            let need = of((part.mg.0 + 999) / 1000, CountedIn::G);
            put(&mut needed, &part.name, need)?;
        }
    }
    if let Some(asked) = &input.mop {
        let mixed = mop(asked)?.pots.into_iter().flat_map(|pot| pot.parts);
        for part in mixed {
            put(&mut needed, &part.name, of(part.ml.0, CountedIn::Ml))?;
        }
    }
    for extra in &input.extras {
        put(&mut needed, &extra.name, of(extra.amount, extra.unit))?;
    }
    Ok(needed)
}

const fn of(amount: i64, unit: CountedIn) -> Need {
    let there = 0;
    Need {
        amount,
        there,
        unit,
    }
}

fn put(needed: &mut Needed, name: &str, more: Need) -> Result<(), NotABatch> {
    let unit = more.unit;
    let entry = needed.entry(name.to_owned()).or_insert(of(0, unit));
    if entry.unit != unit {
        let name = name.to_owned();
        return Err(NotABatch::MixedUnits { name });
    }
    entry.amount += more.amount;
    entry.there += more.there;
    Ok(())
}
