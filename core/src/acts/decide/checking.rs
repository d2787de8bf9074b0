//! A pass over the tests of a meat.

use super::{Context, Decision, ranges};
use crate::{
    checks::{Spot, TestResult, cut_facts},
    cook::Piece,
    error::Refused,
    ids::PieceId,
    log::Checked,
    words::Arg,
};

/// The most results of one pass: every test and every place, with room to read some again. Common practice, no source.
const RESULTS_MAX: usize = 40;

/// Keeps every result of a pass.
pub(super) fn check(
    context: &mut Context<'_>,
    id: PieceId,
    results: &[TestResult],
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let at = context.claimed(at)?;
    let (cook, piece) = context.meat(id)?;
    let say = context.say();
    if results.is_empty() || results.len() > RESULTS_MAX {
        let args = [("limit", Arg::Number(RESULTS_MAX as i64))];
        return Err(say.refuse("error-check-count", &args).into());
    }
    for result in results {
        sound_result(context, piece, result)?;
    }
    let said = say.with("act-checked", &[("name", Arg::Text(&piece.name.value))]);
    let results = results.to_vec();
    Ok(Decision::one(
        Some(cook.id),
        at,
        Checked { piece: id, results },
        said,
    ))
}

/// Whether the cut has that test, and for a temperature that place; a known thermometer; a temperature meat can have.
fn sound_result(context: &Context<'_>, piece: &Piece, result: &TestResult) -> Result<(), Refused> {
    let name = ("name", Arg::Text(&piece.name.value));
    let say = context.say();
    if !cut_facts(piece.cut).tests.contains(&result.test()) {
        return Err(say.refuse("error-test-not-its-own", &[name]).into());
    }
    let TestResult::Heat(heat) = result else {
        return Ok(());
    };
    context.heat(heat.mk, &ranges::MEAT)?;
    context.maybe_thermometer(heat.thermometer)?;
    let places = piece.cut.spots(piece.form.value);
    if heat.spot == Spot::Elsewhere || places.contains(&heat.spot) {
        return Ok(());
    }
    Err(say.refuse("error-spot-not-its-own", &[name]).into())
}
