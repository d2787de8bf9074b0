//! What can be said about one meat beside its stage. Folded away, because a cook needs it now and then only.

use super::{Sheet, slip};
use maud::{Markup, html};
use slowbend_core::{
    ids::PieceId,
    screens::{PieceScreen, Slip},
};

/// All slips of one meat.
pub fn forms(sheet: &Sheet<'_>, screen: &PieceScreen) -> Markup {
    let back = sheet.beside.typed.text("form");
    let is_back = screen.slips.iter().any(|slip| slip.slip == back);
    html! {
        details open[is_back] {
            summary { h2 { (sheet.words.more_of_it) } }
            div .two { @for slip in &screen.slips { (card(sheet, screen.piece, slip)) } }
        }
    }
}

fn card(sheet: &Sheet<'_>, piece: PieceId, slip: &Slip) -> Markup {
    let action = format!("/meat/{piece}/{}", slip.slip);
    html! {
        section .card {
            h3 { (slip.heading) }
            div .inline { (slip::form(sheet, slip, &action)) }
        }
    }
}
