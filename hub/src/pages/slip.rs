//! Slips of core: short forms that every page shows alike.

use super::{Page, Sheet, parts, parts::Kind};
use maud::{Markup, html};
use slowbend_core::screens::{Slip, SlipField, SlipKind};

/// A slip as a form to `action`.
pub fn form(sheet: &Sheet<'_>, slip: &Slip, action: &str) -> Markup {
    let finds_cut = slip.fields.iter().any(|field| field.field == "find");
    let inside = html! {
        @if !slip.how.is_empty() { p .how { (slip.how) } }
        div data-narrow=[finds_cut.then_some("cut")] {
            @for field in &slip.fields { (filled_in(sheet, &slip.slip, field)) }
            @if finds_cut { p { a href=(Page::Cuts.path()) { (sheet.words.all_cuts) } } }
        }
        button .button aria-label=[parts::named(&slip.submit, &slip.heading)] { (slip.submit) }
    };
    sheet.form(&slip.slip, action, inside)
}

fn filled_in(sheet: &Sheet<'_>, slip: &str, field: &SlipField) -> Markup {
    let (name, label, usual) = (&field.field, &field.label, &field.usual);
    let text = |kind| parts::field(sheet, slip, name, label, usual, kind);
    match field.kind {
        SlipKind::Words => text(Kind::Text),
        SlipKind::Number => text(Kind::Number),
        SlipKind::Time => text(Kind::Moment),
        SlipKind::One => {
            let options = field.options.iter();
            let options = options.map(|one| (one.value.clone(), one.label.as_str()));
            parts::choice(sheet, slip, name, label, options, usual)
        }
        SlipKind::Some => html! {
            @for one in &field.options {
                label .outcome {
                    input type="checkbox" name=(name) value=(one.value) checked[sheet.is_chosen(slip, name, &one.value, false)];
                    span { (one.label) }
                }
            }
        },
    }
}
