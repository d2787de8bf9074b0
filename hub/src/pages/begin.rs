//! Beginning a cook from a card, or as an earlier one: all of it on one page, filled in.

use super::{Page, Sheet, layout::Head, parts, parts::Kind};
use maud::{Markup, html};
use slowbend_core::{
    screens::{BeginMeat, BeginScreen},
    words::{Arg, WeightUnit},
};

/// The form's name among the forms of the page.
pub const FORM: &str = "begin";
/// The name of the form that takes a card.
pub const TAKE: &str = "take";

/// The form that takes a card: pasted, or as a file.
pub fn take(sheet: &Sheet<'_>) -> (Head, Markup) {
    let say = |key: &str| sheet.say.text(key);
    let title = say("begin-take-title");
    let main = html! {
        h1 { (title) }
        p .lead { (say("begin-take-lead")) }
        section .card {
            (sheet.form_with_file(TAKE, "/card", html! {
                label .field { span { (say("begin-take-text")) } textarea name="card" rows="6" spellcheck="false" { (sheet.value(TAKE, "card", "")) } }
                label .field { span { (say("begin-take-file")) } input type="file" name="file" accept=".json,application/json,text/plain"; }
                button .button data-tone="main" { (say("begin-take")) }
            }))
            p .how { (say("card-wish")) }
        }
    };
    let head = Head {
        title,
        until: i64::MAX,
        cook: None,
    };
    (head, main)
}

/// The form that begins it.
pub fn page(sheet: &Sheet<'_>, screen: &BeginScreen) -> (Head, Markup) {
    let say = |key: &str| sheet.say.text(key);
    let cook = match sheet.page {
        Page::Again(cook) => Some(cook),
        _ => None,
    };
    let main = html! {
        h1 { (screen.title) }
        p { (screen.lead) }
        @for told in &screen.told { p .notice { (told) } }
        @if let Some(by) = &screen.by { p .about { (by) } }
        (sheet.form(FORM, "/card/start", html! {
            input type="hidden" name="card" value=(screen.card);
            (parts::field(sheet, FORM, "name", &say("start-name"), &screen.name, Kind::Text))
            (parts::field(sheet, FORM, "serve", &say("start-serve"), &screen.serve, Kind::Text))
            p .how { (say("begin-serve-how")) }
            (parts::field(sheet, FORM, "people", &say("start-people"), &screen.people, Kind::Number))
            fieldset {
                legend { (sheet.words.meats) }
                @for (row, meat) in screen.meats.iter().enumerate() { (self::meat(sheet, screen, row, meat)) }
            }
            @if !screen.dishes.is_empty() { h2 { (say("card-dishes")) } div .quiet { (parts::lines(&screen.dishes)) } }
            @if !screen.notes.is_empty() {
                h2 { (say("card-notes")) }
                @for note in &screen.notes { p .note { (note) } }
            }
            button .button data-tone="main" { (say("begin-start")) }
        }))
        (parts::cautions(&screen.cautions))
    };
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook,
    };
    (head, main)
}

fn meat(sheet: &Sheet<'_>, screen: &BeginScreen, row: usize, meat: &BeginMeat) -> Markup {
    let weight = match sheet.reader.viewer.weight {
        WeightUnit::Pound => sheet.say.text("start-weight-pounds"),
        WeightUnit::Kilogram => sheet.say.text("start-weight-kilograms"),
    };
    let known = screen
        .pits
        .iter()
        .map(|pit| (pit.pit.to_string(), pit.name.clone()));
    let new = screen.new_pits.iter().map(|pit| {
        let args = [
            ("name", Arg::Text(&pit.name)),
            ("kind", Arg::Text(&pit.detail)),
        ];
        (new_pit(pit.place), sheet.say.with("begin-add-pit", &args))
    });
    let none = (String::new(), sheet.words.no_pit.to_owned());
    let pits: Vec<(String, String)> = known.chain(new).chain([none]).collect();
    let usual = match (meat.pit, meat.new_pit) {
        (Some(pit), _) => pit.to_string(),
        (None, Some(place)) => new_pit(place),
        (None, None) => String::new(),
    };
    let pits = pits
        .iter()
        .map(|(value, shown)| (value.clone(), shown.as_str()));
    let out = format!("out-{row}");
    html! {
        div .row.begin-row role="group" aria-label=(meat.name) {
            p .meat { strong { (meat.name) } " " span .detail { (meat.detail) } }
            (parts::field(sheet, FORM, &format!("weight-{row}"), &weight, &meat.weight, Kind::Number))
            (parts::choice(sheet, FORM, &format!("pit-{row}"), sheet.words.pit, pits, &usual))
            label .outcome { input type="checkbox" name=(out) value="on" checked[sheet.is_chosen(FORM, &out, "on", false)]; span { (sheet.say.text("begin-left-out")) } }
        }
    }
}

/// The choice of a pit that is on the card and not known here.
pub fn new_pit(place: u32) -> String {
    format!("new-{place}")
}
