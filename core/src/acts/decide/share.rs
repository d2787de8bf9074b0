//! What one mop or brush may touch, as far as an act tells. Start at [`apart`].

use super::Context;
use crate::{
    cadence::{
        Cadence,
        share::{Apart, Touched, may_share},
    },
    cook::Piece,
    error::Refused,
    words::Arg,
};

/// Refuses one going over with a mop or brush that touched poultry and another meat.
///
/// Poultry counts as raw here whatever it was read at, and other meat as raw too: nobody proves a meat cooked between two
/// strokes of a mop, and a meat that is shown to be done comes off. A spray touches nothing, so what is spritzed may be
/// sprayed from one bottle.
pub(super) fn apart(context: &Context<'_>, touched: &[&Piece]) -> Result<(), Refused> {
    for (i, first) in touched.iter().enumerate() {
        for second in &touched[i + 1..] {
            may_share(as_touched(first), as_touched(second))
                .map_err(|why| refused(context, why, first, second))?;
        }
    }
    Ok(())
}

/// Those that were gone over with a mop: all but the spritzed.
pub(super) fn mopped<'p>(wetted: &[&'p Piece]) -> Vec<&'p Piece> {
    let by_mop = |piece: &&&Piece| !matches!(piece.cadence.value, Cadence::Spritz { .. });
    wetted.iter().filter(by_mop).copied().collect()
}

fn as_touched(piece: &Piece) -> Touched {
    Touched {
        poultry: piece.cut.is_poultry(),
        raw: true,
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
