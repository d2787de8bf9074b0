//! What can be written down during a cook: the slips of core, and the file of an instrument.

use super::{Sheet, layout::Head, slip};
use maud::{Markup, html};
use slowbend_core::screens::{Slip, WriteScreen};

pub fn page(sheet: &Sheet<'_>, screen: &WriteScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: i64::MAX, // What is typed here is not to be lost to a page that loads itself anew.
        cook: Some(screen.cook),
    };
    let to = |what: &str| format!("/cook/{}/{what}", screen.cook);
    let main = html! {
        h1 { (screen.title) }
        div .two {
            @for slip in &screen.slips { (card(sheet, slip, &to(&slip.slip))) }
            (super::file::card(sheet, &to("file")))
        }
    };
    (head, main)
}

fn card(sheet: &Sheet<'_>, slip: &Slip, action: &str) -> Markup {
    html! {
        details .card open[sheet.beside.typed.text("form") == slip.slip] {
            summary { h2 { (slip.heading) } }
            (slip::form(sheet, slip, action))
        }
    }
}
