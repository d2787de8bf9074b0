//! How much mop the hours ahead take, and in how many pots. Start at [`mop`]. This is `slowbend sum mop`.

mod shapes;

pub use shapes::{MopAnswer, MopInput, MopMeat, MopPart, Pot, PotPart, Wetting};

use super::{
    Milliliters, NotABatch,
    amount::up,
    apportion::apportion,
    refused::{List, MEAT_G, What, named, within, within_of},
};
use crate::{
    cadence::{EVERY_MIN_MAX, EVERY_MIN_MIN},
    checks::Cut,
    safety::{CautionKind, Doing, cautions_at},
    units::Mk,
};

/// The furthest ahead, minutes: two days.
pub const AHEAD_MIN_MAX: i64 = 2_880;
/// A pot of mop is held at this or hotter, or boiled before it is used again. USDA on hot holding, as
/// [`Source::UsdaTwoHours`](crate::safety::Source::UsdaTwoHours) says.
pub const HELD_AT_LEAST: Mk = Mk::from_f(140);

/// How much to mix for the hours ahead, and in how many pots: raw poultry never shares one, not even with another bird.
///
/// # Errors
/// [`NotABatch`] for numbers out of range, and names that are missing or double.
pub fn mop(input: &MopInput) -> Result<MopAnswer, NotABatch> {
    check(input)?;
    let wetted = |meat: &&MopMeat| meat.first_in_min <= input.ahead_min;
    let (birds, others): (Vec<&MopMeat>, Vec<&MopMeat>) = input
        .meats
        .iter()
        .filter(wetted)
        .partition(|meat| meat.cut.is_poultry());
    let mut pots = vec![];
    if !others.is_empty() {
        pots.push(pot(input, false, &others));
    }
    pots.extend(birds.into_iter().map(|bird| pot(input, true, &[bird])));
    Ok(MopAnswer {
        ml: pots.iter().map(|pot| pot.ml).sum(),
        cautions: cautions(&pots),
        pots,
        held_at_least: HELD_AT_LEAST,
    })
}

fn pot(input: &MopInput, poultry: bool, meats: &[&MopMeat]) -> Pot {
    let times = |meat: &MopMeat| 1 + (input.ahead_min - meat.first_in_min) / meat.every_min;
    let on = meats.iter().map(|meat| times(meat) * each_ml(meat)).sum();
    let ml = up(on, 100 + input.spare_percent, 100);
    Pot {
        poultry,
        names: meats.iter().map(|meat| meat.name.clone()).collect(),
        wettings: meats.iter().map(|meat| times(meat)).sum(),
        on_ml: Milliliters(on),
        ml: Milliliters(ml),
        parts: mixed(&input.parts, ml),
    }
}

fn mixed(parts: &[MopPart], ml: i64) -> Vec<PotPart> {
    if parts.is_empty() {
        return vec![];
    }
    let weights: Vec<i64> = parts.iter().map(|part| part.parts).collect();
    let shares = apportion(ml, &weights).into_iter().zip(parts);
    shares
        .map(|(ml, part)| PotPart {
            name: part.name.clone(),
            ml: Milliliters(ml),
        })
        .collect()
}

/// Milliliters a wetting: by the kilogram, twice as many where the meat is flat and has more surface. Common practice,
/// no source.
fn each_ml(meat: &MopMeat) -> i64 {
    let per_kg = match (meat.wetting, is_flat(meat.cut)) {
        (Wetting::Mop, true) => 30,
        (Wetting::Mop, false) => 15,
        (Wetting::Spritz, true) => 10,
        (Wetting::Spritz, false) => 5,
    };
    let by_weight = || up(meat.g.0, per_kg, 1000);
    meat.ml.map_or_else(by_weight, |ml| ml.0)
}

const fn is_flat(cut: Cut) -> bool {
    matches!(
        cut,
        Cut::SpareRibs
            | Cut::SpareRibsTrimmed
            | Cut::BabyBackRibs
            | Cut::PorkBelly
            | Cut::PlateRibs
            | Cut::BeefBackRibs
            | Cut::BrisketFlat
            | Cut::ChickenHalf
            | Cut::ChickenThighs
            | Cut::Sausages
            | Cut::PoultrySausages
    )
}

fn cautions(pots: &[Pot]) -> Vec<CautionKind> {
    let doing = match pots.iter().any(|pot| pot.poultry) {
        true => Doing::MoppingPoultry,
        false => Doing::MoppingMeat,
    };
    let mut all = cautions_at(doing);
    all.insert(all.len().saturating_sub(1), CautionKind::HoldHot);
    all
}

fn check(input: &MopInput) -> Result<(), NotABatch> {
    within(What::Ahead, input.ahead_min, 1..=AHEAD_MIN_MAX)?;
    within(What::Spare, input.spare_percent, 0..=100)?;
    named(
        List::Meats,
        1,
        input.meats.iter().map(|meat| meat.name.as_str()),
    )?;
    check_parts(&input.parts)?;
    input.meats.iter().try_for_each(check_meat)
}

/// What it is mixed of, if that is said.
pub(super) fn check_parts(parts: &[MopPart]) -> Result<(), NotABatch> {
    let names = parts.iter().map(|part| part.name.as_str());
    named(List::MopParts, 0, names)?;
    parts
        .iter()
        .try_for_each(|part| within_of(What::Parts, &part.name, part.parts, 1..=10_000))
}

fn check_meat(meat: &MopMeat) -> Result<(), NotABatch> {
    let of = |what, value, range| within_of(what, &meat.name, value, range);
    of(What::Meat, meat.g.0, MEAT_G)?;
    of(What::Every, meat.every_min, EVERY_MIN_MIN..=EVERY_MIN_MAX)?;
    of(What::First, meat.first_in_min, 0..=AHEAD_MIN_MAX)?;
    meat.ml
        .map_or(Ok(()), |ml| of(What::EachMl, ml.0, 1..=5_000))
}
