//! A rub by weight, and all the salt that comes to the meat. Start at [`rub`]. This is `slowbend sum rub`.
//!
//! A ratio says nothing until its basis is known: half salt and half pepper by volume is about two thirds salt by weight
//! or more. By volume each part needs the weight of its cup; only table salt has a published one.

mod salt;
mod shapes;

pub(super) use salt::check_also;
pub use salt::{COMMON_MG_PER_KG, SODIUM_OF_SALT};
pub use shapes::{
    AlsoSalt, Basis, Level, RubAnswer, RubInput, RubPart, SaltFrom, SaltKind, SaltShare,
    WeighedPart,
};

use std::ops::RangeInclusive;

use super::{
    Grams, Milligrams, NotABatch,
    amount::up,
    apportion::apportion,
    refused::{List, MEAT_G, What, named, within, within_of},
};

/// A level cup of table salt: 292 g, USDA SR26, row 2047.
pub const TABLE_SALT_A_CUP: Grams = Grams(292);
/// What a cup of anything may weigh, grams. Common practice, no source.
pub const CUP_G: RangeInclusive<i64> = 1..=1_000;

/// Weighs out a rub, and adds up the salt: the rub's own and what came otherwise.
///
/// Law: the parts add up to the rub, the shares of salt to the salt. All that is put on counts as eaten; what drips off
/// is not taken away.
///
/// # Errors
/// [`NotABatch`] for numbers out of range, names that are missing or double, and a cup that nobody weighed.
pub fn rub(input: &RubInput) -> Result<RubAnswer, NotABatch> {
    check(input)?;
    let rub_mg = Milligrams(input.meat_g.0 * input.rub_g_per_kg);
    let parts = weighed(input, rub_mg)?;
    let salt = salt::all(input, &parts)?;
    let salt_mg: Milligrams = salt.iter().map(|share| share.mg).sum();
    let per_kg = Milligrams(up(salt_mg.0, 1000, input.meat_g.0));
    let sodium_mg = Milligrams(salt::sodium(salt_mg));
    Ok(RubAnswer {
        rub_mg,
        parts,
        salt,
        salt_mg,
        salt_mg_per_kg: per_kg,
        level: salt::level(per_kg),
        sodium_mg,
        sodium_mg_a_portion: Milligrams(up(sodium_mg.0, 1, input.portions)),
    })
}

fn check(input: &RubInput) -> Result<(), NotABatch> {
    within(What::Meat, input.meat_g.0, MEAT_G)?;
    within(What::Portions, input.portions, 1..=10_000)?;
    check_recipe(input.rub_g_per_kg, &input.parts)
}

/// How much goes on, and of what: what can be said before there is any meat.
pub(super) fn check_recipe(rub_g_per_kg: i64, parts: &[RubPart]) -> Result<(), NotABatch> {
    within(What::RubPerKg, rub_g_per_kg, 1..=200)?;
    let names = parts.iter().map(|part| part.name.as_str());
    named(List::RubParts, 1, names)?;
    parts.iter().try_for_each(check_part)
}

fn check_part(part: &RubPart) -> Result<(), NotABatch> {
    let of = |what, value, range| within_of(what, &part.name, value, range);
    of(What::Parts, part.parts, 1..=10_000)?;
    if let Some(cup) = part.cup_g {
        of(What::Cup, cup.0, CUP_G)?;
    }
    match part.kind {
        SaltKind::Salted { salt_permille } => of(What::SaltOfPart, salt_permille, 1..=1000),
        _ => Ok(()),
    }
}

fn weighed(input: &RubInput, rub: Milligrams) -> Result<Vec<WeighedPart>, NotABatch> {
    let weights: Result<Vec<i64>, NotABatch> = input
        .parts
        .iter()
        .map(|part| match input.basis {
            Basis::Weight => Ok(part.parts),
            Basis::Volume => Ok(part.parts * cup(part)?.0),
        })
        .collect();
    let masses = apportion(rub.0, &weights?);
    let with_mass = input.parts.iter().zip(masses);
    Ok(with_mass
        .map(|(part, mg)| WeighedPart {
            name: part.name.clone(),
            mg: Milligrams(mg),
        })
        .collect())
}

fn cup(part: &RubPart) -> Result<Grams, NotABatch> {
    match (part.cup_g, part.kind) {
        (Some(cup), _) => Ok(cup),
        (None, SaltKind::TableSalt) => Ok(TABLE_SALT_A_CUP),
        (None, _) => Err(NotABatch::CupNotWeighed {
            name: part.name.clone(),
        }),
    }
}
