//! A file on its way: how far it is, and a way to stop it. With scripts off the page asks anew by itself.

use super::{Page, Sheet, layout::Head};
use crate::{
    taking::{State, Taking},
    words::HubWords,
};
use maud::{Markup, html};
use slowbend_core::{
    ids::CookId,
    moment::SECOND,
    readings::{Report, Told as _},
    screens::ReadingsOf,
    words::{Arg, Words},
};

/// How often an open page asks how far it is, milliseconds.
const ASKED_EACH: i64 = SECOND;

pub fn page(sheet: &Sheet<'_>, cook: CookId, taking: Option<&Taking>) -> (Head, Markup) {
    let state = taking.map(|taking| (taking, taking.state()));
    let goes_on = matches!(state, Some((_, State::Reading | State::Keeping)));
    let head = Head {
        title: sheet.say.text("taking-title"),
        until: if goes_on {
            sheet.now + ASKED_EACH
        } else {
            i64::MAX
        },
        cook: Some(cook),
    };
    let main = html! {
        h1 { (head.title) }
        @match state {
            Some((taking, State::Reading | State::Keeping)) => (on_its_way(sheet, taking)),
            Some((_, State::Taken(report))) => (told(&taken(&report, &sheet.say, sheet.words))),
            Some((_, State::Refused(reason))) => (refused(&format!("{reason} {}", sheet.say.text("taking-nothing")))),
            Some((_, State::Stopped)) => (refused(&sheet.say.text("taking-stopped"))),
            None => (refused(&sheet.say.text("taking-unknown"))),
        }
        p .links {
            a .button href=(Page::Readings(ReadingsOf::Cook { cook }).path()) { (sheet.say.text("link-readings")) }
            a .button href=(Page::Now(cook).path()) { (sheet.words.now) }
        }
    };
    (head, main)
}

fn on_its_way(sheet: &Sheet<'_>, taking: &Taking) -> Markup {
    let percent = taking.percent();
    let shown = percent.to_string();
    let said = sheet
        .say
        .with("taking-read", &[("percent", Arg::Text(&shown))]);
    let stop = format!("{}/stop", Page::Taking(taking.cook, taking.number).path());
    html! {
        p .state-line role="status" aria-live="polite" data-speech=(sheet.say.text(quarter(percent))) { (said) }
        progress max="100" value=(percent) aria-label=(sheet.say.text("taking-title")) {}
        p .how { (sheet.say.text("taking-meanwhile")) }
        (sheet.form("stop", &stop, html! { button .button { (sheet.say.text("taking-stop")) } }))
    }
}

/// What is said aloud: only each quarter, or it would talk without end.
const fn quarter(percent: u64) -> &'static str {
    match percent {
        ..25 => "taking-begun",
        25..50 => "taking-quarter",
        50..75 => "taking-half",
        _ => "taking-most",
    }
}

fn told(said: &str) -> Markup {
    html! { p .state-line role="status" aria-live="polite" data-speech=(said) { (said) } }
}

fn refused(said: &str) -> Markup {
    html! { p .refused role="alert" data-speech=(said) { (said) } }
}

/// What was taken and what was not, with the first reasons.
pub fn taken(report: &Report, say: &Words<'_>, words: &HubWords) -> String {
    let mut said = format!(
        "{}: {} · {}: {} · {}: {}",
        words.file_taken,
        report.taken,
        words.file_doubled,
        report.doubled,
        words.file_refused,
        report.refused
    );
    for refused in &report.first_refusals {
        said.push_str(" · ");
        said.push_str(&refused.said(say));
    }
    said
}
