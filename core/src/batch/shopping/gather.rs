//! What a cook needs, gathered by name.

use super::{ShoppingInput, Unit};
use crate::batch::{NotABatch, mop, portions, rub};
use std::collections::BTreeMap;

/// Each thing by its name: how much, and in which unit.
pub(super) type Needed = BTreeMap<String, (i64, Unit)>;

pub(super) fn all(input: &ShoppingInput) -> Result<Needed, NotABatch> {
    let mut needed = Needed::new();
    if let Some(asked) = &input.portions {
        for meat in portions(asked)?.meats {
            // What is there is at home already.
            put(&mut needed, &meat.name, meat.buy_g.0, Unit::G)?;
        }
    }
    if let Some(asked) = &input.rub {
        for part in rub(asked)?.parts {
            put(&mut needed, &part.name, (part.mg.0 + 999) / 1000, Unit::G)?;
        }
    }
    if let Some(asked) = &input.mop {
        let mixed = mop(asked)?.pots.into_iter().flat_map(|pot| pot.parts);
        for part in mixed {
            put(&mut needed, &part.name, part.ml.0, Unit::Ml)?;
        }
    }
    for extra in &input.extras {
        put(&mut needed, &extra.name, extra.amount, extra.unit)?;
    }
    Ok(needed)
}

fn put(needed: &mut Needed, name: &str, amount: i64, unit: Unit) -> Result<(), NotABatch> {
    let entry = needed.entry(name.to_owned()).or_insert((0, unit));
    if entry.1 != unit {
        let name = name.to_owned();
        return Err(NotABatch::MixedUnits { name });
    }
    entry.0 += amount;
    Ok(())
}
