//! The temperature log: a table that is read on the screen and printed on paper, and the link to its file.

use super::{Page, Sheet, layout::Head, parts};
use maud::{Markup, html};
use slowbend_core::screens::{TempLogRow, TempLogScreen};

pub fn page(_: &Sheet<'_>, screen: &TempLogScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        // A sheet that is being printed or copied from does not change under the eyes.
        until: i64::MAX,
        cook: Some(screen.cook),
    };
    let main = html! {
        h1 { (screen.title) }
        ul .log-about { @for line in &screen.about { li { (line) } } }
        p .links {
            a .button href=(format!("{}.csv", Page::TempLog(screen.cook).path())) download { (screen.download) }
        }
        p .how .glass { (screen.print) }
        @if !screen.none.is_empty() { p .lead { (screen.none) } } @else { (table(screen)) }
        div .log-sign { @for line in &screen.sign { p { (line) } } }
        (parts::links(&screen.links))
    };
    (head, main)
}

fn table(screen: &TempLogScreen) -> Markup {
    html! {
        table .log {
            thead { tr { @for column in &screen.columns { th scope="col" { (column) } } } }
            tbody { @for row in &screen.rows { (one(screen, row)) } }
        }
    }
}

/// Each cell bears the name of its column, for where there is no room for columns.
fn one(screen: &TempLogScreen, row: &TempLogRow) -> Markup {
    html! {
        tr {
            @for (column, cell) in screen.columns.iter().zip(row.cells()) {
                td data-column=(column) data-empty[cell.is_empty()] { (cell) }
            }
        }
    }
}
