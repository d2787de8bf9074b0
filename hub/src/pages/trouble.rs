//! When the fire is not as it should be: what to try first, in order; what the readings show stands open.

use super::{Sheet, layout::Head, parts};
use maud::{Markup, html};
use slowbend_core::screens::{TroubleCard, TroubleScreen};

pub fn page(sheet: &Sheet<'_>, screen: &TroubleScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: Some(screen.cook),
    };
    let main = html! {
        h1 { (screen.title) }
        (parts::lines(std::slice::from_ref(&screen.state)))
        p .lead { (screen.lead) }
        @for card in &screen.troubles { (one(sheet, screen, card)) }
        p .detail { (screen.source) }
        @if !screen.buttons.is_empty() {
            section .more { h2 { (screen.did) } (parts::buttons(sheet, "trouble", &screen.buttons)) }
        }
        (parts::links(&screen.links))
    };
    (head, main)
}

fn one(sheet: &Sheet<'_>, screen: &TroubleScreen, card: &TroubleCard) -> Markup {
    html! {
        details .card.trouble open[card.is_now] data-now[card.is_now] {
            summary { h2 { (card.name) } }
            ol .steps { @for step in &card.steps { li { (step) } } }
            (parts::cautions_once(sheet, &format!("caution-{:?}", card.trouble), &card.cautions))
            h3 { (screen.food) }
            (parts::cautions(&card.food))
        }
    }
}
