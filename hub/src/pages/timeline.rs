//! What happened, latest first, each line with a way to take it back.

use super::{Page, Sheet, layout::Head, parts};
use maud::{Markup, html};
use slowbend_core::screens::{Happened, Timeline};

pub fn page(sheet: &Sheet<'_>, screen: &Timeline) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: Some(screen.cook),
    };
    let main = html! {
        h1 { (screen.title) }
        (parts::links(&screen.links))
        @for day in screen.lines.chunk_by(|a, b| a.day == b.day) {
            section {
                h2 { (day[0].day) }
                ol .timeline { @for line in day { (one(sheet, line)) } }
            }
        }
        @if let Some(before) = screen.next {
            p { a .button href=(format!("{}?before={before}", Page::Timeline(screen.cook).path())) { (sheet.words.earlier) } }
        }
    };
    (head, main)
}

fn one(sheet: &Sheet<'_>, line: &Happened) -> Markup {
    let faint = (!line.standing.is_empty()).then_some("faint");
    html! {
        li data-weight=[faint] {
            time .when datetime=(parts::instant(line.at)) { (line.clock) }
            div .what {
                p { (line.what) }
                @if !line.who.is_empty() { p .detail { (line.who) } }
                @if !line.standing.is_empty() { p .detail { (line.standing) } }
            }
            @if let Some(undo) = &line.undo {
                (parts::buttons_of(sheet, &format!("undo-{}", line.entry), std::slice::from_ref(undo), &format!("{}, {}", line.what, line.when)))
            }
        }
    }
}
