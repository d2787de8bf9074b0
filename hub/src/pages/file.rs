//! The form that takes a file's readings: it is chosen, or its rows are pasted; with scripts or without.

use super::{Sheet, parts, parts::Kind};
use maud::{Markup, html};
use slowbend_core::words::Arg;

const FORM: &str = "file";

/// The form; what most files say themselves is folded away.
pub fn card(sheet: &Sheet<'_>, action: &str) -> Markup {
    let words = sheet.words;
    let text = |name: &str, label: &str| parts::field(sheet, FORM, name, label, "", Kind::Text);
    let units = [
        (String::new(), words.file_says),
        ("f".into(), "°F"),
        ("c".into(), "°C"),
    ];
    let first = [
        (String::new(), words.file_says),
        ("month".into(), words.file_month),
        ("day".into(), words.file_day),
    ];
    let counts = [
        (String::new(), words.file_says),
        ("seconds".into(), words.file_seconds),
        ("minutes".into(), words.file_minutes),
    ];
    let kept = sheet.beside.typed.given("kept");
    let is_back = sheet.beside.typed.text("form") == FORM;
    html! {
        details .card open[is_back] {
            summary { h2 { (words.file) } }
            (sheet.form_with_file(FORM, action, html! {
                p .how { (words.file_hint) }
                @if let Some(kept) = kept { p .notice { (sheet.say.with("taking-still-here", &[("file", Arg::Text(kept))])) } }
                label .field { span { (words.file_choose) } input type="file" name="file" accept=".csv,text/csv,text/plain"; }
                label .field {
                    span { (words.file_rows) }
                    textarea name="rows" rows="4" spellcheck="false" { (sheet.value(FORM, "rows", "")) }
                }
                (text("source", words.probe_source))
                details open[is_back] {
                    summary { (words.file_more) }
                    (parts::choice(sheet, FORM, "unit", words.file_unit, units, ""))
                    (parts::choice(sheet, FORM, "first", words.file_first, first, ""))
                    (text("time-column", words.file_time_column))
                    (text("temp-columns", words.file_temp_columns))
                    (parts::field(sheet, FORM, "start", words.file_start, "", Kind::Moment))
                    (parts::choice(sheet, FORM, "counts", words.file_counts, counts, ""))
                }
                button .button aria-label=[parts::named(words.write_down, words.file)] { (words.write_down) }
            }))
        }
    }
}
