//! The kitchen of a cook: what is mixed, shared out and bought, each section with what is written down of it.

use super::{Page, Sheet, kitchen_form, layout::Head, parts};
use maud::{Markup, html};
use slowbend_core::screens::{KitchenGroup, KitchenPart, KitchenScreen};

pub fn page(sheet: &Sheet<'_>, screen: &KitchenScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: Some(screen.cook),
    };
    let to_sheet = Page::KitchenSheet(screen.cook).path();
    let main = html! {
        h1 { (screen.title) }
        p .lead { (screen.lead) }
        p .links { a .button data-tone="main" href=(to_sheet) { (screen.to_sheet) } }
        @for part in &screen.parts {
            section .kitchen id=(part.part) {
                (told(part))
                @if !part.by.is_empty() { p .how { (part.by) } }
                (parts::cautions(&part.cautions))
                (parts::buttons(sheet, &format!("last-{}", part.part), &part.buttons))
                @for (index, slip) in part.slips.iter().enumerate() {
                    @let said = match (index, part.by.is_empty()) {
                        (0, true) => sheet.words.write_down,
                        (0, false) => sheet.words.change,
                        _ => &slip.heading,
                    };
                    (kitchen_form::folded(sheet, screen.cook, slip, said))
                }
            }
        }
        (parts::links(&screen.links))
    };
    (head, main)
}

/// What a section says: what is reckoned, what follows, what asks for an eye.
pub fn told(part: &KitchenPart) -> Markup {
    html! {
        h2 { (part.heading) }
        @if !part.lead.is_empty() { p .for { (part.lead) } }
        @for flag in &part.flags { p .flag { (flag) } }
        @for group in &part.groups { (weights(group)) }
        @if !part.notes.is_empty() { ul .plain { @for note in &part.notes { li { (note) } } } }
    }
}

/// What is weighed, one line each.
pub fn weights(group: &KitchenGroup) -> Markup {
    html! {
        @if !group.heading.is_empty() { h3 { (group.heading) } }
        ul .weights {
            @for line in &group.lines {
                li {
                    span .thing { (line.name) }
                    " " span .amount { (line.amount) }
                    @if !line.detail.is_empty() { " " span .detail { (line.detail) } }
                }
            }
        }
    }
}
