//! What is not meat: ready or not, how it is held, what was written down about it.

use super::{Sheet, layout::Head, parts, parts::Kind};
use maud::{Markup, html};
use slowbend_core::screens::{DishCard, DishesScreen};

pub fn page(sheet: &Sheet<'_>, screen: &DishesScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: Some(screen.cook),
    };
    let labels = &screen.labels;
    let main = html! {
        h1 { (screen.title) }
        p .lead { (screen.serve) }
        @if screen.dishes.is_empty() { p .lead { (screen.none) } }
        @for (index, dish) in screen.dishes.iter().enumerate() { (one(sheet, screen, index, dish)) }
        (parts::cautions_once(sheet, "caution", &screen.cautions))
        details .card open[screen.dishes.is_empty() || sheet.beside.typed.text("form") == "dish"] {
            summary { h2 { (labels.add) } }
            (sheet.form("dish", &format!("/cook/{}/dish", screen.cook), html! {
                (parts::field(sheet, "dish", "name", &labels.name, "", Kind::Text))
                (parts::choice(sheet, "dish", "hot", &labels.held, [("hot".to_owned(), labels.hot.as_str()), ("cold".to_owned(), labels.cold.as_str())], ""))
                button .button { (labels.add) }
            }))
        }
        (parts::links(&screen.links))
    };
    (head, main)
}

fn one(sheet: &Sheet<'_>, screen: &DishesScreen, index: usize, dish: &DishCard) -> Markup {
    let form = format!("note-{index}");
    let labels = &screen.labels;
    html! {
        section .dish.lane data-weight=(parts::weight(dish.weight)) {
            h2 { (dish.name) }
            p .state { (dish.state) }
            p .detail { (dish.detail) }
            (parts::buttons_of(sheet, &format!("dish-{index}"), &dish.buttons, &dish.name))
            div .quiet { (parts::lines(&dish.notes)) }
            (rename(sheet, screen, index, dish))
            details open[sheet.beside.typed.text("form") == form] {
                summary aria-label=[parts::named(&labels.note, &dish.name)] { (labels.note) }
                (sheet.form(&form, &format!("/cook/{}/dish-note", screen.cook), html! {
                    input type="hidden" name="dish" value=(dish.dish);
                    (parts::field(sheet, &form, "text", &labels.note, "", Kind::Text))
                    button .button aria-label=[parts::named(&labels.write, &dish.name)] { (labels.write) }
                }))
            }
        }
    }
}

fn rename(sheet: &Sheet<'_>, screen: &DishesScreen, index: usize, dish: &DishCard) -> Markup {
    let form = format!("dish-name-{index}");
    let label = &screen.labels.name;
    html! {
        details open[sheet.beside.typed.text("form") == form] {
            summary aria-label=[parts::named(label, &dish.name)] { (label) }
            (sheet.form(&form, &format!("/cook/{}/dish-name", screen.cook), html! {
                input type="hidden" name="dish" value=(dish.dish);
                (parts::field(sheet, &form, "name", label, &dish.name, Kind::Text))
                button .button aria-label=[parts::named(&screen.labels.write, label)] { (screen.labels.write) }
            }))
        }
    }
}
