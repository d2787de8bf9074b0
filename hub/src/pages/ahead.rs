//! The hours ahead of one meat: when it will likely be ready, what would change that, and its chart with the fan.

use super::{Sheet, chart, parts, readings};
use maud::{Markup, html};
use slowbend_core::{
    door::Slowbend,
    error::Trouble,
    moment::Moment,
    screens::{AheadCard, AheadChoice, Chart, PieceScreen, ReadingsOf},
    words::Viewer,
};

/// The chart that goes with what is forecast; none where nothing is.
pub fn chart_of(
    door: &mut Slowbend,
    viewer: &Viewer,
    screen: &PieceScreen,
    moment: &Moment,
) -> Result<Option<Chart>, Trouble> {
    if screen.ahead.is_none() {
        return Ok(None);
    }
    let of = ReadingsOf::Piece {
        piece: screen.piece,
    };
    Ok(door.readings_of(viewer, of, None, None, moment)?.chart)
}

/// The section of a meat's page.
pub fn section(sheet: &Sheet<'_>, card: &AheadCard, drawn: Option<&Chart>) -> Markup {
    html! {
        section .ahead {
            h2 { (card.heading) }
            p .ready { (card.ready) }
            @if let Some(check) = &card.check { p .check { (check) } }
            @if let Some(accept) = &card.accept { (parts::buttons(sheet, "ahead", std::slice::from_ref(accept))) }
            @if let Some(stall) = &card.stall { p { (stall) } }
            @if !card.choices.is_empty() {
                h3 { (card.choices_heading) }
                div .choices { @for choice in &card.choices { (what_if(choice)) } }
            }
            @if let Some(drawn) = drawn {
                (chart::figure(drawn))
                (readings::legend(drawn))
            }
            ul .how { @for note in &card.notes { li { (note) } } }
        }
    }
}

/// Touched, it shows what would come of it; nothing is done.
fn what_if(choice: &AheadChoice) -> Markup {
    html! {
        details .what-if {
            summary .button { (choice.label) }
            p { (choice.ready) " " strong { (choice.shift) } }
        }
    }
}
