//! The card of a cook: what is on it, the code to scan, the file, and the texts to send. Printed, it is the card alone.

use super::{Page, Sheet, layout::Head, parts};
use crate::qr::drawn;
use maud::{Markup, html};
use slowbend_core::{
    card::CardAsk,
    screens::{CardScreen, Line},
};

pub fn page(sheet: &Sheet<'_>, screen: &CardScreen) -> (Head, Markup) {
    let say = |key: &str| sheet.say.text(key);
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: Some(screen.cook),
    };
    let file = format!(
        "/cook/{}/card.json{}",
        screen.cook,
        asked(&sheet.beside.card)
    );
    let main = html! {
        div .two { article .slate {
            p .kind { (say("card-title")) }
            h1 { (screen.title) }
            @for line in &screen.about { p .about { (line) } }
            (part(sheet.words.meats, &screen.meats))
            (part(sheet.words.pits, &screen.pits))
            (part(&say("card-dishes"), &screen.dishes))
            @if !screen.notes.is_empty() {
                h2 { (say("card-notes")) }
                @for note in &screen.notes { p .note { (note) } }
            }
            @if let Some(code) = &screen.qr { (drawn(code, &say("card-code"))) }
            ul .plain { @for least in &screen.minimums { li { (least) } } }
            p .wish { (say("card-wish")) }
            (parts::cautions(&screen.cautions))
        }
        section .hand-over {
            p .how { (screen.how) }
            p .links {
                a .button data-tone="main" href=(file) download=(screen.file_name) { (say("card-file")) }
                a .button href=(Page::Again(screen.cook).path()) { (say("begin-again")) }
            }
            p .how { (say("card-print")) }
            (to_send(&say("card-words"), &screen.words))
            (to_send(&say("card-text"), &screen.text))
            (asking(sheet, screen))
        } }
    };
    (head, main)
}

fn part(heading: &str, found: &[Line]) -> Markup {
    html! { @if !found.is_empty() { h2 { (heading) } div .quiet { (parts::lines(found)) } } }
}

fn to_send(label: &str, text: &str) -> Markup {
    html! {
        details { summary { (label) } textarea readonly rows="8" spellcheck="false" aria-label=(label) { (text) } }
    }
}

/// What goes along is asked for by address, so that a card can be made again by it.
fn asking(sheet: &Sheet<'_>, screen: &CardScreen) -> Markup {
    let (say, ask) = (|key: &str| sheet.say.text(key), &sheet.beside.card);
    html! {
        details open[*ask != CardAsk::default()] {
            summary { (say("card-for")) }
            form method="get" action=(Page::Card(screen.cook).path()) {
                label .field { span { (say("card-by")) } input type="text" name="by" value=(ask.by) maxlength="200" autocomplete="off"; }
                label .outcome { input type="checkbox" name="notes" value="on" checked[ask.notes]; span { (say("card-with-notes")) } }
                button .button { (say("card-make")) }
            }
        }
    }
}

/// The part of an address that asks for the same card.
fn asked(ask: &CardAsk) -> String {
    let by: String = ask
        .by
        .bytes()
        .map(|byte| match byte {
            b'a'..=b'z' | b'A'..=b'Z' | b'0'..=b'9' => char::from(byte).to_string(),
            _ => format!("%{byte:02X}"),
        })
        .collect();
    let notes = if ask.notes { "&notes=on" } else { "" };
    format!("?by={by}{notes}")
}
