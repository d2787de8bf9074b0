//! The first page: cooks under way, a form that starts one, the demo, and the past.

use super::{Page, Sheet, layout::Head, parts, parts::Kind};
use crate::demo::{Demo, PREFIX};
use maud::{Markup, html};
use slowbend_core::{
    ids::CookId,
    moment::HOUR,
    screens::{Line, Place, StartScreen},
    words::typed::{Seek, time_field},
};

/// The form's name among the forms of the page.
pub const FORM: &str = "start";
/// How many meats can be put down at once; more are added later.
pub const ROWS: usize = 4;
/// So many of them are shown at once.
const SHOWN: usize = 2;
/// How far off the serving time that is offered lies at least: a day's slow cook. Common practice, no source.
const AHEAD: i64 = 5 * HOUR;

pub fn page(sheet: &Sheet<'_>, screen: &StartScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: None,
    };
    let is_real = sheet.demo != Demo::Here;
    let first_time = screen.open.is_empty() && screen.past.is_empty();
    let main = html! {
        h1 { (screen.title) }
        @if first_time { p .lead { (screen.lead) } }
        (parts::notices(sheet, &screen.notices))
        @if !screen.open.is_empty() { section .open { (parts::lanes(&screen.open, |_| false)) } }
        div .two {
            @if first_time && is_real { (demo(sheet, screen, sheet.words.new_here)) }
            (begin(sheet, screen))
            @if !first_time && is_real { (demo(sheet, screen, sheet.words.demo)) }
        }
        (past(sheet, screen))
    };
    (head, main)
}

fn begin(sheet: &Sheet<'_>, screen: &StartScreen) -> Markup {
    let labels = &screen.form;
    let two = time_field(&sheet.say, "14:00", sheet.now + AHEAD, Seek::Next);
    let serve = two.map_or(String::new(), |at| sheet.say.clock_day(at, sheet.now));
    html! {
        section .card {
            h2 { (labels.heading) }
            (ways(sheet, screen))
            (sheet.form(FORM, "/cook", html! {
                (parts::field(sheet, FORM, "name", &labels.name, "", Kind::Text))
                (parts::field(sheet, FORM, "serve", &labels.serve, &serve, Kind::Text))
                p .how { (sheet.say.text("begin-serve-how")) }
                (parts::field(sheet, FORM, "people", &labels.people, "", Kind::Number))
                (new_pit(sheet, screen.pits.is_empty()))
                fieldset {
                    legend { (labels.meats) }
                    p .how { (sheet.words.rows_hint) " " a href=(Page::Cuts.path()) { (sheet.words.all_cuts) } }
                    @for row in 0..SHOWN { (meat(sheet, screen, row)) }
                    details open[(SHOWN..ROWS).any(|row| is_typed(sheet, row))] {
                        summary { (sheet.words.more_meats) }
                        @for row in SHOWN..ROWS { (meat(sheet, screen, row)) }
                    }
                }
                button .button data-tone="main" { (labels.start) }
            }))
        }
    }
}

/// The shorter ways to begin: as the last cook, or from a card.
fn ways(sheet: &Sheet<'_>, screen: &StartScreen) -> Markup {
    let last = screen.past.first().or(screen.open.first());
    let last = last.filter(|_| sheet.beside.before.is_none());
    html! {
        p .links.ways {
            @if let Some((line, cook)) = last.and_then(|line| Some((line, cook_of(line)?))) {
                a .button href=(Page::Again(cook).path()) { (sheet.say.text("begin-last")) small { (line.name) } }
            }
            a .button href=(Page::Cards.path()) { (sheet.say.text("begin-from-card")) }
        }
    }
}

/// The cook that a line leads to.
fn cook_of(line: &Line) -> Option<CookId> {
    match line.link? {
        Place::Now { cook } | Place::Timeline { cook } => Some(cook),
        _ => None,
    }
}

fn meat(sheet: &Sheet<'_>, screen: &StartScreen, row: usize) -> Markup {
    let words = sheet.words;
    let labels = &screen.form;
    let none = (String::new(), words.no_meat);
    let cuts = screen
        .cuts
        .iter()
        .map(|cut| (crate::forms::name_of(&cut.cut), cut.name.as_str()));
    let pits = screen
        .pits
        .iter()
        .map(|pit| (pit.pit.to_string(), pit.name.as_str()));
    let new = [
        ("new".into(), words.pit_above),
        (String::new(), words.no_pit),
    ];
    let usual = screen
        .pits
        .first()
        .map_or("new".into(), |pit| pit.pit.to_string());
    html! {
        div .row.meat-row data-narrow="cut" {
            (parts::field(sheet, FORM, &format!("find-{row}"), words.find_cut, "", Kind::Text))
            (parts::choice(sheet, FORM, &format!("cut-{row}"), words.cut, std::iter::once(none).chain(cuts), ""))
            (parts::field(sheet, FORM, &format!("weight-{row}"), &labels.weight, "", Kind::Number))
            (parts::choice(sheet, FORM, &format!("pit-{row}"), &labels.pit, pits.chain(new), &usual))
        }
    }
}

/// Whether a row came back with something in it.
fn is_typed(sheet: &Sheet<'_>, row: usize) -> bool {
    let typed = &sheet.beside.typed;
    ["cut", "find"]
        .iter()
        .any(|field| typed.given(&format!("{field}-{row}")).is_some())
}

/// A pit that is not known yet; whoever has none meets it at once, before the meats that go on it.
fn new_pit(sheet: &Sheet<'_>, first: bool) -> Markup {
    let words = sheet.words;
    let fields = html! {
        div .row {
            (parts::field(sheet, FORM, "pit-name", words.pit_name, "", Kind::Text))
            (parts::choice(sheet, FORM, "pit-kind", words.pit_kind, crate::words::pit_kinds(words), ""))
        }
    };
    html! {
        @if first {
            fieldset {
                legend { (words.first_pit) }
                p .how { (words.first_pit_hint) }
                (fields)
            }
        } @else {
            details open[sheet.beside.typed.given("pit-name").is_some()] {
                summary { (words.new_pit) }
                (fields)
            }
        }
    }
}

/// The demo; its own pages do not offer it again.
fn demo(sheet: &Sheet<'_>, screen: &StartScreen, heading: &str) -> Markup {
    html! {
        section .card.demo {
            h2 { (heading) }
            p { (screen.form.demo_lead) }
            @match sheet.demo {
                Demo::UnderWay(cook) => {
                    p { a .button href=(format!("{PREFIX}{}", Page::Now(cook).path())) { (sheet.words.demo_under_way) } }
                    (sheet.form("demo", "/demo", html! { button .button { (sheet.words.demo_anew) } }))
                }
                _ => (sheet.form("demo", "/demo", html! { button .button { (screen.form.demo) } })),
            }
        }
    }
}

fn past(sheet: &Sheet<'_>, screen: &StartScreen) -> Markup {
    html! {
        @if !screen.past.is_empty() {
            section {
                h2 { (sheet.words.past) }
                ul .lines { @for line in &screen.past { (past_line(sheet, line)) } }
            }
        }
        (parts::section(&sheet.say.text("lesson-heading"), &screen.learned))
        @if let Some(before) = screen.past_next {
            p { a .button href=(format!("{}?before={before}", Page::Start.path())) { (sheet.words.earlier) } }
        }
    }
}

/// A past cook, with the way to begin it once more.
fn past_line(sheet: &Sheet<'_>, line: &Line) -> Markup {
    let again = sheet.say.text("begin-again");
    html! {
        li .line.past data-weight=(parts::weight(line.weight)) {
            (parts::inside(line))
            @if let Some(cook) = cook_of(line) {
                p { a .button href=(Page::Again(cook).path()) aria-label=[parts::named(&again, &line.name)] { (again) } }
            }
        }
    }
}
