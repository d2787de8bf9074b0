//! What one mop or brush may touch, as far as an act tells. Start at [`apart`].

use super::Context;
use crate::{
    cadence::{
        Cadence,
        share::{Apart, Touched, may_share},
    },
    checks::{SafeState, verdict},
    cook::{Cook, Piece, verdict_input::verdict_input},
    error::Refused,
    words::Arg,
};

/// Refuses one going over with a mop or brush that touched poultry and another meat, unless both are shown to be safe.
///
/// A meat counts as raw until its readings show its published minimum, by the same verdict that screens show. Pairs
/// without poultry are not refused: most meats are never read before they are nearly done, and a refusal at each mop
/// would only teach people not to record it; screens say the caution instead. A spray touches nothing, so what is
/// spritzed may be sprayed from one bottle.
pub(super) fn apart(context: &Context<'_>, touched: &[(&Cook, &Piece)]) -> Result<(), Refused> {
    for (i, first) in touched.iter().enumerate() {
        for second in &touched[i + 1..] {
            if first.1.cut.is_poultry() || second.1.cut.is_poultry() {
                may_share(as_touched(context, first), as_touched(context, second))
                    .map_err(|why| refused(context, why, first.1, second.1))?;
            }
        }
    }
    Ok(())
}

/// Those that were gone over with a mop: all but the spritzed.
pub(super) fn mopped<'p>(wetted: &[(&'p Cook, &'p Piece)]) -> Vec<(&'p Cook, &'p Piece)> {
    let by_mop =
        |(_, piece): &&(&Cook, &Piece)| !matches!(piece.cadence.value, Cadence::Spritz { .. });
    wetted.iter().filter(by_mop).copied().collect()
}

fn as_touched(context: &Context<'_>, (cook, piece): &(&Cook, &Piece)) -> Touched {
    let input = verdict_input(&context.known, cook, piece, context.now());
    let safe = verdict(&input).is_ok_and(|verdict| verdict.safety.state == SafeState::Safe);
    Touched {
        poultry: piece.cut.is_poultry(),
        raw: !safe,
    }
}

fn refused(context: &Context<'_>, why: Apart, first: &Piece, second: &Piece) -> Refused {
    let args = [
        ("first", Arg::Text(&first.name.value)),
        ("second", Arg::Text(&second.name.value)),
    ];
    let say = context.say();
    match why {
        Apart::RawPoultry => say.refuse("error-mop-raw-poultry", &args).into(),
        Apart::RawOnCooked => say.refuse("error-mop-raw-on-cooked", &args).into(),
    }
}
