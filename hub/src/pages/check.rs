//! Trying one meat: each test with how it is done and what can come of it.

use super::{Page, Sheet, layout::Head, parts, parts::Kind};
use maud::{Markup, html};
use slowbend_core::screens::{CheckScreen, TestForm};

/// The form's name among the forms of the page.
pub const FORM: &str = "check";

pub fn page(sheet: &Sheet<'_>, screen: &CheckScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: Some(screen.cook),
    };
    let action = Page::Check(screen.piece).path();
    let main = html! {
        h1 { (screen.title) }
        (parts::cautions(&screen.cautions))
        (sheet.form(FORM, &action, html! {
            @for test in &screen.tests { (one(sheet, screen, test)) }
            (parts::ago(sheet))
            button .button data-tone="main" { (screen.submit) }
        }))
        (parts::verdict(sheet, &screen.verdict))
        p .links {
            a .button href=(Page::Meat(screen.piece).path()) { (sheet.words.back_to_meat) }
            a .button href=(Page::Cut(screen.cut).path()) { (sheet.words.about_cut) }
        }
        (parts::links(&screen.links))
    };
    (head, main)
}

fn one(sheet: &Sheet<'_>, screen: &CheckScreen, test: &TestForm) -> Markup {
    html! {
        fieldset .test {
            legend { (test.name) }
            p .how { (test.how) }
            @for outcome in &test.outcomes {
                label .outcome {
                    input type="radio" name=(test.field) value=(outcome.value) checked[sheet.is_chosen(FORM, &test.field, &outcome.value, false)];
                    span { strong { (outcome.label) } " " span .means { (outcome.means) } }
                }
            }
            @if !test.spots.is_empty() { (spots(sheet, screen, test)) }
        }
    }
}

fn spots(sheet: &Sheet<'_>, screen: &CheckScreen, test: &TestForm) -> Markup {
    let none = (String::new(), sheet.words.other_thermometer);
    let known: Vec<(String, String)> = screen
        .thermometers
        .iter()
        .map(|one| (one.id.clone(), format!("{}, {}", one.name, one.detail)))
        .collect();
    let first = known.first().map_or("", |(id, _)| id.as_str());
    let known = known.iter().map(|(id, name)| (id.clone(), name.as_str()));
    html! {
        @for spot in &test.spots {
            (parts::field(sheet, FORM, &spot.field, &format!("{} ({})", spot.name, spot.unit), "", Kind::Number))
        }
        (parts::choice(sheet, FORM, "thermometer", sheet.words.thermometer, known.chain(std::iter::once(none)), first))
        label .outcome {
            input type="checkbox" name="probe" value="left-in" checked[sheet.is_chosen(FORM, "probe", "left-in", false)];
            span { (sheet.words.left_in) }
        }
    }
}
