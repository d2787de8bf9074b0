//! What can be said about one meat beside its stage: a note, its facts, and cutting it in parts or putting it together
//! with others. Folded away, because a cook needs it now and then only.

use super::{Sheet, parts, parts::Kind};
use maud::{Markup, html};
use slowbend_core::{ids::PieceId, screens::PieceScreen};

/// The names of the forms.
const FORMS: [&str; 8] = [
    "note", "weight", "cadence", "prepared", "pull", "name", "split", "join",
];

/// All forms of one meat; `meats` are the ids and names of all meats of its cook.
pub fn forms(sheet: &Sheet<'_>, screen: &PieceScreen, meats: &[(String, &str)]) -> Markup {
    let words = sheet.words;
    let piece = screen.piece;
    let text = |form: &str, name: &str, label: &str| {
        parts::field(sheet, form, name, label, "", Kind::Text)
    };
    let number = |form: &str, name: &str, label: &str| {
        parts::field(sheet, form, name, label, "", Kind::Number)
    };
    let cadences = crate::words::cadences(words).skip(1);
    let others: Vec<_> = meats
        .iter()
        .filter(|(id, _)| *id != piece.to_string())
        .collect();
    let form = sheet.beside.typed.text("form");
    let is_back = FORMS.contains(&form);
    html! {
        details open[is_back] {
            summary { h2 { (words.more_of_it) } }
            div .two {
                (card(sheet, piece, "note", words.note, text("note", "text", words.note_text)))
                (card(sheet, piece, "weight", words.weight, number("weight", "weight", &weight_label(sheet))))
                (card(sheet, piece, "cadence", words.cadence, parts::choice(sheet, "cadence", "cadence", words.cadence, cadences, "")))
                (card(sheet, piece, "prepared", words.form, parts::choice(sheet, "prepared", "prepared", words.form, crate::words::forms(words), "")))
                (card(sheet, piece, "pull", words.pull_at, number("pull", "pull", &sheet.degrees(words.temp))))
                (card(sheet, piece, "name", words.new_name, text("name", "name", words.new_name)))
                (card(sheet, piece, "split", words.split, text("split", "names", words.split_names)))
                @if !others.is_empty() {
                    (card(sheet, piece, "join", words.join, html! {
                        @for (id, name) in others {
                            label .outcome {
                                input type="checkbox" name="with" value=(id) checked[sheet.is_chosen("join", "with", id, false)];
                                span { (name) }
                            }
                        }
                        (text("join", "name", words.join_name))
                    }))
                }
            }
        }
    }
}

fn weight_label(sheet: &Sheet<'_>) -> String {
    use slowbend_core::words::WeightUnit;
    let unit = match sheet.reader.viewer.weight {
        WeightUnit::Pound => "lb",
        WeightUnit::Kilogram => "kg",
    };
    format!("{} ({unit})", sheet.words.weight)
}

fn card(sheet: &Sheet<'_>, piece: PieceId, form: &str, heading: &str, inside: Markup) -> Markup {
    let action = format!("/meat/{piece}/{form}");
    html! {
        section .card {
            h3 { (heading) }
            (sheet.form(form, &action, html! { div .inline { (inside) button .button aria-label=[parts::named(sheet.words.write_down, heading)] { (sheet.words.write_down) } } }))
        }
    }
}
