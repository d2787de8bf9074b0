//! All the salt that comes to a meat.

use super::{AlsoSalt, Level, RubInput, RubPart, SaltFrom, SaltKind, SaltShare, WeighedPart};
use crate::batch::{
    Grams, Milligrams, NotABatch, SATURATED_PERMILLE,
    amount::up,
    refused::{List, MEAT_G, What, counted, within},
};
use std::ops::RangeInclusive;

/// How much of salt is sodium, in hundred-thousandths: 22.98977 ÷ 58.443, by the atomic masses of sodium and chlorine.
/// USDA SR26 gives 38,758 mg in 100 g of table salt, which is 1.5 % less: it is no pure salt.
pub const SODIUM_OF_SALT: i64 = 39_337;
const WHOLE: i64 = 100_000;
/// What is common, milligrams of salt a kilogram of raw meat: 0.5 to 1.5 %. Common practice, no source.
pub const COMMON_MG_PER_KG: RangeInclusive<i64> = 5_000..=15_000;

/// Each origin with what comes from it, the rub first.
pub(super) fn all(input: &RubInput, parts: &[WeighedPart]) -> Result<Vec<SaltShare>, NotABatch> {
    check_also(&input.also)?;
    let of_rub = input.parts.iter().zip(parts);
    let rub = SaltShare {
        from: SaltFrom::Rub,
        mg: of_rub.map(|(part, weighed)| in_part(part, weighed)).sum(),
    };
    let also = input.also.iter().map(|also| share(*also, input.meat_g));
    Ok(std::iter::once(rub).chain(also).collect())
}

fn in_part(part: &RubPart, weighed: &WeighedPart) -> Milligrams {
    let permille = match part.kind {
        SaltKind::TableSalt | SaltKind::OtherSalt => 1000,
        SaltKind::Salted { salt_permille } => salt_permille,
        SaltKind::Unsalted => 0,
    };
    Milligrams(up(weighed.mg.0, permille, 1000))
}

fn share(also: AlsoSalt, meat: Grams) -> SaltShare {
    let (from, mg) = match also {
        AlsoSalt::LabelSolution {
            percent,
            salt_permille,
        } => {
            let solution = Milligrams(meat.0 * percent * 10);
            (SaltFrom::Label, dissolved(solution, salt_permille))
        }
        AlsoSalt::LabelSodium { mg_per_100g } => {
            let salt = up(meat.0 * mg_per_100g, WHOLE, SODIUM_OF_SALT * 100);
            (SaltFrom::Label, Milligrams(salt))
        }
        AlsoSalt::Brine { g, salt_permille } => (SaltFrom::Brine, liquid(g, salt_permille)),
        AlsoSalt::Injection { g, salt_permille } => (SaltFrom::Injection, liquid(g, salt_permille)),
        AlsoSalt::Mop { g, salt_permille } => (SaltFrom::Mop, liquid(g, salt_permille)),
    };
    SaltShare { from, mg }
}

fn liquid(g: Grams, salt_permille: i64) -> Milligrams {
    dissolved(g.milligrams(), salt_permille)
}

fn dissolved(liquid: Milligrams, permille: i64) -> Milligrams {
    Milligrams(up(liquid.0, permille, 1000))
}

/// What else brings salt, before there is any meat.
pub(in crate::batch) fn check_also(all: &[AlsoSalt]) -> Result<(), NotABatch> {
    counted(List::Salts, all.len(), 0..=50)?;
    let salty = |permille| within(What::SaltOfLiquid, permille, 0..=SATURATED_PERMILLE);
    all.iter().try_for_each(|also| match *also {
        AlsoSalt::LabelSolution {
            percent,
            salt_permille,
        } => {
            within(What::LabelSolution, percent, 1..=60)?;
            salty(salt_permille)
        }
        AlsoSalt::LabelSodium { mg_per_100g } => within(What::LabelSodium, mg_per_100g, 0..=10_000),
        AlsoSalt::Brine { g, salt_permille }
        | AlsoSalt::Injection { g, salt_permille }
        | AlsoSalt::Mop { g, salt_permille } => {
            within(What::TakenUp, g.0, 0..=*MEAT_G.end())?;
            salty(salt_permille)
        }
    })
}

/// The sodium of so much salt, milligrams, rounded up.
pub(super) fn sodium(salt: Milligrams) -> i64 {
    up(salt.0, SODIUM_OF_SALT, WHOLE)
}

pub(super) fn level(per_kg: Milligrams) -> Level {
    match per_kg.0 {
        mg if mg < *COMMON_MG_PER_KG.start() => Level::Below,
        mg if mg > *COMMON_MG_PER_KG.end() => Level::Above,
        _ => Level::Common,
    }
}
