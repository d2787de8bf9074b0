//! Trying one meat: each test with how it is done and what can come of it.

use super::{Page, Sheet, layout::Head, parts, parts::Kind};
use maud::{Markup, html};
use slowbend_core::screens::{CheckScreen, TestForm, ThermometerChoice};

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
        (parts::cautions_once(sheet, "caution", &screen.cautions))
        (sheet.form(FORM, &action, html! {
            @for test in &screen.tests { (one(sheet, screen, test)) }
            (parts::ago(sheet))
            button .button data-tone="main" { (screen.submit) }
        }))
        (parts::verdict(sheet, &screen.verdict))
        p .links {
            a .button href=(Page::Meat(screen.piece).path()) { (sheet.words.back_to_meat) }
        }
        (parts::links(&screen.links))
    };
    (head, main)
}

fn one(sheet: &Sheet<'_>, screen: &CheckScreen, test: &TestForm) -> Markup {
    html! {
        (fieldset(sheet, FORM, "", test))
        @if !test.spots.is_empty() {
            (thermometer(sheet, FORM, &screen.thermometers))
            label .outcome {
                input type="checkbox" name="probe" value="left-in" checked[sheet.is_chosen(FORM, "probe", "left-in", false)];
                span { (sheet.words.left_in) }
            }
        }
    }
}

/// One test of a meat in form `form`; the names of its fields begin with `of`.
pub fn fieldset(sheet: &Sheet<'_>, form: &str, of: &str, test: &TestForm) -> Markup {
    let field = format!("{of}{}", test.field);
    html! {
        fieldset .test {
            legend { (test.name) }
            p .how { (test.how) }
            @for outcome in &test.outcomes {
                label .outcome {
                    input type="radio" name=(field) value=(outcome.value) checked[sheet.is_chosen(form, &field, &outcome.value, false)];
                    span { strong { (outcome.label) } " " span .means { (outcome.means) } }
                }
            }
            @if !test.outcomes.is_empty() {
                label .outcome.none { input type="radio" name=(field) value=""; span { (sheet.words.not_tried) } }
            }
            @for spot in &test.spots {
                (parts::field(sheet, form, &format!("{of}{}", spot.field), &format!("{} ({})", spot.name, spot.unit), "", Kind::Number))
            }
        }
    }
}

/// The thermometer that was read, the last checked one first.
pub fn thermometer(sheet: &Sheet<'_>, form: &str, all: &[ThermometerChoice]) -> Markup {
    let none = (String::new(), sheet.words.other_thermometer);
    let known: Vec<(String, String)> = all
        .iter()
        .map(|one| (one.id.clone(), format!("{}, {}", one.name, one.detail)))
        .collect();
    let first = known.first().map_or("", |(id, _)| id.as_str());
    let known = known.iter().map(|(id, name)| (id.clone(), name.as_str()));
    parts::choice(
        sheet,
        form,
        "thermometer",
        sheet.words.thermometer,
        known.chain(std::iter::once(none)),
        first,
    )
}
