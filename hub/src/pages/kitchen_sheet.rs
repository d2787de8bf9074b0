//! The kitchen on one sheet of paper: on the screen as it will be printed, printed without anything around it.

use super::{Sheet, kitchen, layout::Head, parts};
use maud::{Markup, html};
use slowbend_core::screens::KitchenSheet;

pub fn page(sheet: &Sheet<'_>, screen: &KitchenSheet) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: Some(screen.cook),
    };
    let cautions: Vec<_> = screen
        .parts
        .iter()
        .flat_map(|part| part.cautions.iter().cloned())
        .collect();
    let main = html! {
        section .hand-over {
            p .how { (screen.how) }
            p .links { button .button data-tone="main" data-print type="button" { (sheet.say.text("kitchen-print")) } }
            (parts::links(&screen.links))
        }
        article .paper {
            header {
                h1 { (screen.title) }
                @for line in &screen.about { p { (line) } }
            }
            div .columns {
                @if !screen.jobs.lines.is_empty() { section .jobs { h2 { (screen.jobs.heading) } (kitchen::weights(&no_heading(&screen.jobs))) } }
                @for part in &screen.parts { section .kitchen data-part=(part.part) { (kitchen::told(part)) } }
            }
            (parts::cautions(&cautions))
        }
    };
    (head, main)
}

fn no_heading(jobs: &slowbend_core::screens::KitchenGroup) -> slowbend_core::screens::KitchenGroup {
    slowbend_core::screens::KitchenGroup {
        heading: String::new(),
        ..jobs.clone()
    }
}
