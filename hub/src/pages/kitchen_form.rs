//! A slip of the kitchen as a form: rows side by side, and what is wrong beside the field that it is wrong in.

use super::{Sheet, parts, parts::Kind};
use maud::{Markup, html};
use slowbend_core::{
    ids::CookId,
    screens::{Slip, SlipField, SlipKind},
};

/// The salts beside a rub's own, which few need: they stay folded.
const SALTS: [&str; 10] = [
    "solution",
    "solution-salt",
    "sodium",
    "serving",
    "brine",
    "brine-salt",
    "injection",
    "injection-salt",
    "mop",
    "mop-salt",
];

/// A slip behind `said`, open where it was not taken.
pub fn folded(sheet: &Sheet<'_>, cook: CookId, slip: &Slip, said: &str) -> Markup {
    let is_back = sheet.beside.typed.text("form") == slip.slip;
    let is_salt = |field: &&SlipField| slip.slip == "rub" && SALTS.contains(&&*field.field);
    let (salts, fields): (Vec<&SlipField>, Vec<&SlipField>) = slip.fields.iter().partition(is_salt);
    let filled = |field: &&&SlipField| {
        !sheet
            .value(&slip.slip, &field.field, &field.usual)
            .is_empty()
    };
    let inside = html! {
        @if !slip.how.is_empty() { p .how { (slip.how) } }
        @for row in rows(&fields) {
            @if row.len() == 1 { (cell(sheet, &slip.slip, row[0])) }
            @else { div .row { @for field in row { (cell(sheet, &slip.slip, field)) } } }
        }
        @if !salts.is_empty() {
            details open[salts.iter().any(|field| filled(&field))] {
                summary { (sheet.say.text("kitchen-also")) }
                @for pair in salts.chunks(2) { div .row { @for field in pair { (cell(sheet, &slip.slip, field)) } } }
            }
        }
        button .button aria-label=[parts::named(&slip.submit, &slip.heading)] { (slip.submit) }
    };
    let action = format!("/cook/{cook}/{}", slip.slip);
    html! {
        details .card open[is_back] {
            summary aria-label=[parts::named(said, &slip.heading).filter(|_| said != slip.heading)] { (said) }
            (sheet.form(&slip.slip, &action, inside))
        }
    }
}

/// The row of a field, as its name says: "part-0" of "part-0-name", an id's of "share-…" and "trim-…".
fn row_of(field: &SlipField) -> Option<String> {
    let (first, rest) = field.field.split_once('-')?;
    match first {
        "part" | "have" | "item" | "course" => rest
            .split_once('-')
            .map(|(row, _)| format!("{first}-{row}")),
        "share" | "trim" => Some(rest.to_owned()),
        _ => None,
    }
}

fn rows<'f>(fields: &[&'f SlipField]) -> Vec<Vec<&'f SlipField>> {
    let mut rows: Vec<Vec<&SlipField>> = vec![];
    for field in fields {
        let row = row_of(field);
        match rows.last_mut() {
            Some(last) if row.is_some() && row_of(last[0]) == row => last.push(field),
            _ => rows.push(vec![field]),
        }
    }
    rows
}

fn cell(sheet: &Sheet<'_>, slip: &str, field: &SlipField) -> Markup {
    let wrong = sheet.is_blamed(slip, &field.field, &field.label);
    html! {
        (filled_in(sheet, slip, field))
        @if let Some(reason) = sheet.beside.refused.as_ref().filter(|_| wrong) { p .wrong { (reason) } }
    }
}

fn filled_in(sheet: &Sheet<'_>, slip: &str, field: &SlipField) -> Markup {
    let (name, label, usual) = (&field.field, &field.label, &field.usual);
    match (field.kind, &field.options[..]) {
        // Nothing to choose: it is what the row is about.
        (SlipKind::One, [only]) => html! {
            p .thing { (only.label) }
            input type="hidden" name=(name) value=(only.value);
        },
        (SlipKind::One, options) => {
            let options = options.iter();
            let options = options.map(|one| (one.value.clone(), one.label.as_str()));
            parts::choice(sheet, slip, name, label, options, usual)
        }
        (SlipKind::Some, options) => html! {
            fieldset {
                legend { (label) }
                @for one in options {
                    @let chosen = usual.split(',').any(|id| id == one.value);
                    label .outcome {
                        input type="checkbox" name=(name) value=(one.value) checked[sheet.is_chosen(slip, name, &one.value, chosen)];
                        span { (one.label) }
                    }
                }
            }
        },
        // Amounts have units, which a keypad of digits lacks.
        (SlipKind::Number | SlipKind::Words, _) => {
            parts::field(sheet, slip, name, label, usual, Kind::Text)
        }
        (SlipKind::Time, _) => parts::field(sheet, slip, name, label, usual, Kind::Moment),
    }
}
