//! One meat: how it stands, what comes next for it, and the stages it can go to.

use super::{Page, Sheet, ahead, layout::Head, meat_forms, parts};
use maud::{Markup, html};
use slowbend_core::screens::{Chart, PieceScreen, Weight};

/// `chart`: what was read of it and is forecast, where it is.
pub fn page(sheet: &Sheet<'_>, screen: &PieceScreen, chart: Option<&Chart>) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: Some(screen.cook),
    };
    let words = sheet.words;
    // What asks for something stands above the buttons; what is only to be read, below them.
    let asks = screen.safety.iter().any(|line| line.weight <= Weight::Call);
    let main = html! {
        h1 { (screen.title) }
        p .lead { (screen.about) }
        p .state-line { (screen.state) }
        (parts::verdict(sheet, &screen.verdict))
        @if asks { (parts::section(&screen.safety_heading, &screen.safety)) }
        p { a .button data-tone="main" href=(Page::Check(screen.piece).path()) { (words.check) } }
        (parts::section(words.next, &screen.next))
        @if let Some(card) = &screen.ahead { (ahead::section(sheet, card, chart)) }
        section .more { h2 { (words.did) } (parts::buttons(sheet, "stage", &screen.buttons)) }
        @if !asks { (parts::section(&screen.safety_heading, &screen.safety)) }
        (parts::cautions_once(sheet, "caution", &screen.cautions))
        div .quiet {
            (parts::section(words.facts, &screen.facts))
            (parts::section(words.checks, &screen.checks))
        }
        @if !screen.slips.is_empty() { (meat_forms::forms(sheet, screen)) }
        (parts::links(&screen.links))
    };
    (head, main)
}
