//! The fire went out: each meat with what to do, the rule under it, and one form for what is read now.

use super::{Sheet, layout::Head, parts, slip};
use maud::{Markup, html};
use slowbend_core::screens::{FireOutMeat, FireOutScreen};

pub fn page(sheet: &Sheet<'_>, screen: &FireOutScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: Some(screen.cook),
    };
    let main = html! {
        h1 { (screen.title) }
        (parts::lines(std::slice::from_ref(&screen.state)))
        @for line in &screen.lead { p .lead { (line) } }
        @if !screen.none.is_empty() { p .lead { (screen.none) } }
        @for (index, meat) in screen.meats.iter().enumerate() { (one(sheet, index, meat)) }
        @for form in &screen.slips {
            section .card {
                h2 { (form.heading) }
                (slip::form(sheet, form, &format!("/cook/{}/{}", screen.cook, form.slip)))
            }
        }
        ul { @for line in &screen.rule { li { (line) } } }
        (parts::cautions(&screen.cautions))
        (parts::links(&screen.links))
    };
    (head, main)
}

fn one(sheet: &Sheet<'_>, index: usize, meat: &FireOutMeat) -> Markup {
    html! {
        section .verdict data-weight=(parts::weight(meat.weight)) {
            p .detail { (meat.name) }
            h2 { (meat.answer) }
            @if !meat.then.is_empty() { p .safety { (meat.then) } }
            ul { @for read in &meat.read { li { (read) } } }
            p .detail { (meat.why) }
            (parts::buttons_of(sheet, &format!("fire-out-{index}"), &meat.buttons, &meat.name))
        }
    }
}
