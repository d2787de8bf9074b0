//! All the salt that comes to a meat.

use super::{AlsoSalt, Kind, Level, RubInput, RubPart, SaltFrom, SaltShare, WeighedPart};
use crate::batch::{
    Grams, Milligrams, NotABatch, SATURATED_PERMILLE,
    amount::up,
    refused::{MEAT_G, within},
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
    within("The number of other salts", input.also.len() as i64, 0..=50)?;
    let of_rub = input.parts.iter().zip(parts);
    let rub = SaltShare {
        from: SaltFrom::Rub,
        mg: of_rub.map(|(part, weighed)| in_part(part, weighed)).sum(),
    };
    let also = input.also.iter().map(|also| share(*also, input.meat_g));
    std::iter::once(Ok(rub)).chain(also).collect()
}

fn in_part(part: &RubPart, weighed: &WeighedPart) -> Milligrams {
    let permille = match part.kind {
        Kind::TableSalt | Kind::OtherSalt => 1000,
        Kind::Salted { salt_permille } => salt_permille,
        Kind::Unsalted => 0,
    };
    Milligrams(up(weighed.mg.0, permille, 1000))
}

fn share(also: AlsoSalt, meat: Grams) -> Result<SaltShare, NotABatch> {
    let (from, mg) = match also {
        AlsoSalt::LabelSolution {
            percent,
            salt_permille,
        } => {
            within("percent of the label's solution", percent, 1..=60)?;
            let solution = Milligrams(meat.0 * percent * 10);
            (SaltFrom::Label, dissolved(solution, salt_permille)?)
        }
        AlsoSalt::LabelSodium { mg_per_100g } => {
            within("mg_per_100g of the label's sodium", mg_per_100g, 0..=10_000)?;
            let salt = up(meat.0 * mg_per_100g, WHOLE, SODIUM_OF_SALT * 100);
            (SaltFrom::Label, Milligrams(salt))
        }
        AlsoSalt::Brine { g, salt_permille } => (SaltFrom::Brine, liquid(g, salt_permille)?),
        AlsoSalt::Injection { g, salt_permille } => {
            (SaltFrom::Injection, liquid(g, salt_permille)?)
        }
        AlsoSalt::Mop { g, salt_permille } => (SaltFrom::Mop, liquid(g, salt_permille)?),
    };
    Ok(SaltShare { from, mg })
}

fn liquid(g: Grams, salt_permille: i64) -> Result<Milligrams, NotABatch> {
    within("g of what is taken up", g.0, 0..=*MEAT_G.end())?;
    dissolved(g.milligrams(), salt_permille)
}

fn dissolved(liquid: Milligrams, permille: i64) -> Result<Milligrams, NotABatch> {
    within(
        "salt_permille of a liquid",
        permille,
        0..=SATURATED_PERMILLE,
    )?;
    Ok(Milligrams(up(liquid.0, permille, 1000)))
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
