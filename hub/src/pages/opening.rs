//! One opening of a pit as one form: for each meat what is done to it, large enough for gloves; confirmed once.

use super::{Page, Sheet, check, layout::Head, parts, parts::Kind};
use maud::{Markup, html};
use slowbend_core::screens::{OpeningChoice, OpeningDoes, OpeningMeat, OpeningScreen};

/// The form's name among the forms of the page.
pub const FORM: &str = "opening";

pub fn page(sheet: &Sheet<'_>, screen: &OpeningScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        // What is chosen is not taken out of a cook's hands by a page that loads itself anew.
        until: i64::MAX,
        cook: Some(screen.cook),
    };
    let action = Page::Opening(screen.cook, screen.pit).path();
    let main = html! {
        h1 { (screen.title) }
        (parts::lines(std::slice::from_ref(&screen.state)))
        p .lead { (screen.lead) }
        @if !screen.order.is_empty() {
            details .order open {
                summary { (screen.labels.order) }
                ol { @for step in &screen.order { li { (step) } } }
            }
        }
        @if !screen.meats.is_empty() {
            (sheet.form(FORM, &action, html! {
                @for meat in &screen.meats { (one(sheet, screen, meat)) }
                @if screen.meats.iter().any(has_spots) { (check::thermometer(sheet, FORM, &screen.thermometers)) }
                (parts::ago(sheet))
                button .button.confirm data-tone="main" { (screen.labels.submit) }
            }))
        }
        @if let Some(after) = &screen.after { p .why { (after) } }
        (parts::cautions_once(sheet, "caution", &screen.cautions))
        (parts::links(&screen.links))
    };
    (head, main)
}

fn has_spots(meat: &OpeningMeat) -> bool {
    meat.tests.iter().any(|test| !test.spots.is_empty())
}

fn one(sheet: &Sheet<'_>, screen: &OpeningScreen, meat: &OpeningMeat) -> Markup {
    let (of, labels) = (format!("{}-", meat.piece), &screen.labels);
    let note = format!("{of}note");
    let probe = format!("{of}probe");
    let tried = meat.tests_due || was_tried(sheet, &of);
    html! {
        fieldset .lane data-weight=(parts::weight(meat.weight)) {
            legend { (meat.name) }
            p .state { (meat.state) }
            p .detail { (meat.detail) }
            div .targets { @for choice in &meat.choices { (target(sheet, &of, meat, choice)) } }
            @if !meat.tests.is_empty() {
                details open[tried] {
                    summary { (labels.tests) }
                    @for test in &meat.tests { (check::fieldset(sheet, FORM, &of, test)) }
                    @if has_spots(meat) {
                        label .outcome {
                            input type="checkbox" name=(probe) value="left-in" checked[sheet.is_chosen(FORM, &probe, "left-in", false)];
                            span { (labels.left_in) }
                        }
                    }
                }
            }
            details open[!sheet.value(FORM, &note, "").is_empty()] {
                summary { (labels.note) }
                (parts::field(sheet, FORM, &note, &labels.note, "", Kind::Text))
            }
        }
    }
}

/// Whether something stood in the tests of that meat when the form was not taken.
fn was_tried(sheet: &Sheet<'_>, of: &str) -> bool {
    let beside = &sheet.beside.typed;
    let mut fields = beside.0.iter();
    fields.any(|(name, value)| {
        let rest = name.strip_prefix(of);
        !value.trim().is_empty()
            && rest.is_some_and(|rest| !["does", "rub", "note"].contains(&rest))
    })
}

/// Of the two answers to whether the rub has set one is chosen; all else can be chosen together.
fn target(sheet: &Sheet<'_>, of: &str, meat: &OpeningMeat, choice: &OpeningChoice) -> Markup {
    let value = crate::forms::name_of(&choice.does);
    let (kind, name) = match choice.does {
        OpeningDoes::RubSet | OpeningDoes::RubNotYet => ("radio", format!("{of}rub")),
        _ => ("checkbox", format!("{of}does")),
    };
    let chosen = sheet.is_chosen(FORM, &name, &value, choice.chosen);
    html! {
        label .target {
            input type=(kind) name=(name) value=(value) checked[chosen] aria-label=[parts::named(&choice.label, &meat.name)];
            span { (choice.label) }
        }
    }
}
