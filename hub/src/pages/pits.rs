//! What sits where on each pit, and how each pit stands.

use super::{Page, Sheet, layout::Head, parts};
use maud::{Markup, html};
use slowbend_core::screens::{PitCard, PitsScreen, PlacedMeat};

/// The name of a pit's form among the forms of the page: the pit's place in the list follows.
const FORM: &str = "where";

pub fn page(sheet: &Sheet<'_>, screen: &PitsScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: Some(screen.cook),
    };
    let main = html! {
        h1 { (screen.title) }
        @if screen.pits.is_empty() { p .lead { (screen.none) } }
        @for (index, pit) in screen.pits.iter().enumerate() { (one(sheet, screen, index, pit)) }
        (parts::cautions_once(sheet, "caution", &screen.cautions))
        (parts::links(&screen.links))
    };
    (head, main)
}

fn one(sheet: &Sheet<'_>, screen: &PitsScreen, index: usize, pit: &PitCard) -> Markup {
    let form = format!("{FORM}-{index}");
    let name = &pit.line.name;
    let labels = &screen.labels;
    html! {
        section .pit {
            (parts::lines(std::slice::from_ref(&pit.line)))
            (parts::links(&pit.links))
            @if !pit.meats.is_empty() {
                ul .places { @for meat in &pit.meats { li { strong { (meat.name) } " " span { (meat.state) } } } }
                (parts::buttons_of(sheet, &format!("pit-{index}"), &pit.buttons, name))
                details .card open[sheet.beside.typed.text("form") == form] {
                    summary { h2 { (labels.heading) } }
                    p .how { (labels.lead) }
                    datalist id=(format!("spots-{index}")) { @for spot in &pit.spots { option value=(spot) {} } }
                    (sheet.form(&form, &Page::Pits(screen.cook).path(), html! {
                        @for meat in &pit.meats { (row(sheet, screen, (&form, index), pit, meat)) }
                        (parts::ago(sheet))
                        button .button aria-label=[parts::named(&labels.submit, name)] { (labels.submit) }
                    }))
                }
            } @else {
                (parts::buttons_of(sheet, &format!("pit-{index}"), &pit.buttons, name))
            }
            div .quiet { (parts::lines(&pit.facts)) }
        }
    }
}

fn row(
    sheet: &Sheet<'_>,
    screen: &PitsScreen,
    (form, index): (&str, usize),
    pit: &PitCard,
    meat: &PlacedMeat,
) -> Markup {
    let (spot, to) = (
        format!("spot-{}", meat.piece),
        format!("pit-{}", meat.piece),
    );
    let pits = screen.choices.iter();
    let pits = pits.map(|choice| (choice.pit.to_string(), choice.name.as_str()));
    html! {
        fieldset {
            legend { (meat.name) }
            div .row {
                label .field {
                    span { (screen.labels.spot) }
                    input type="text" name=(spot) value=(sheet.value(form, &spot, &meat.spot)) list=(format!("spots-{index}")) autocomplete="off" maxlength="200";
                }
                (parts::choice(sheet, form, &to, &screen.labels.pit, pits, &pit.pit.to_string()))
            }
        }
    }
}
