//! Who has the watch, and the line with which it is handed over.

use super::{Sheet, layout::Head, parts, parts::Kind};
use maud::{Markup, html};
use slowbend_core::screens::WatchScreen;

/// The form's name among the forms of the page.
const FORM: &str = "watch";

pub fn page(sheet: &Sheet<'_>, screen: &WatchScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        // The line that somebody is changing is not taken from under their hands.
        until: i64::MAX,
        cook: Some(screen.cook),
    };
    let form = if screen.is_mine {
        "watch-line"
    } else {
        "watch"
    };
    let main = html! {
        h1 { (screen.title) }
        ul .plain.held { @for line in &screen.held { li { (line) } } }
        p .lead { (screen.lead) }
        (sheet.form(FORM, &format!("/cook/{}/{form}", screen.cook), html! {
            (parts::field(sheet, FORM, "note", &screen.label, &screen.note, Kind::Text))
            button .button data-tone="main" { (screen.submit) }
        }))
        (parts::lines(&screen.pits))
        (parts::buttons(sheet, "sleep", &screen.buttons))
        div .quiet { (parts::section(&screen.past_heading, &screen.past)) }
        (parts::links(&screen.links))
    };
    (head, main)
}
