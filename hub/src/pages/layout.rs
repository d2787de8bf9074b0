//! What stands around each page: head, bar, what rings, what was just said, and the foot that says what a page can do.

use super::{Page, Sheet, wall};
use crate::{
    assets,
    demo::{Demo, OUT},
    viewer::Reader,
    words::words,
};
use maud::{DOCTYPE, Markup, html};
use slowbend_core::{
    alarms::{Alarm, AlarmList, Urgency},
    ids::CookId,
};

/// What the frame needs to know of a page.
pub struct Head {
    /// Its title.
    pub title: String,
    /// Until when it is true.
    pub until: i64,
    /// The cook it belongs to, for the links in the bar.
    pub cook: Option<CookId>,
}

/// What the bar leads to beside the settings.
pub enum Tabs {
    /// The pages of one cook.
    Of(CookId),
    /// The list of cooks: several are under way.
    Several,
    /// Nothing: no cook is under way.
    None,
}

/// The whole page.
pub fn whole(
    sheet: &Sheet<'_>,
    head: &Head,
    tabs: &Tabs,
    alarms: &AlarmList,
    main: Markup,
) -> Markup {
    let wait = (head.until - sheet.now).max(1_000);
    let zone_asked = !sheet.reader.zone_chosen;
    frame(
        sheet.reader,
        &head.title,
        Needs {
            anew: loads_anew(sheet.page, head),
            paper: is_printed(sheet.page),
        },
        html! {
            (bar(sheet, tabs))
            div #ringing role="alert" hidden {
                p { strong {} " " span {} }
                a .button href="/" { (sheet.words.show) }
            }
            p #away role="alert" hidden { (sheet.words.away) }
            p #speech .unseen role="status" {}
            main #main tabindex="-1" data-path=(sheet.page.path()) data-page=[matches!(sheet.page, Page::Now(_)).then_some("now")] data-wait=(wait) data-stay[sheet.beside.typed.given("card").is_some()] data-zone=[zone_asked.then_some(&sheet.reader.viewer.zone)] {
                (said(sheet))
                (invented(sheet))
                (due(sheet, alarms))
                (main)
            }
            (foot(sheet))
        },
    )
}

/// A page with one sentence, for when there is nothing else to show.
pub fn plain(reader: &Reader, sentence: &str) -> Markup {
    let words = words(reader.viewer.locale);
    alone(reader, words.stopped, sentence, words.to_start)
}

/// A heading, a sentence, and a way to the first page under `link`.
pub fn alone(reader: &Reader, heading: &str, sentence: &str, link: &str) -> Markup {
    frame(
        reader,
        heading,
        Needs::default(),
        html! {
            header .bar { a .brand href="/" { (mark()) "Slowbend" } }
            main #main tabindex="-1" {
                h1 { (heading) }
                p .refused role="alert" { (sentence) }
                p { a .button href="/" { (link) } }
            }
        },
    )
}

/// After how many seconds a page loads itself where scripts are off.
fn loads_anew(page: Page, head: &Head) -> Option<u32> {
    match page {
        Page::Now(_) | Page::Readings(_) => Some(60),
        Page::Taking(..) if head.until < i64::MAX => Some(2),
        _ => None,
    }
}

/// Whether the page is made to be printed, with a style of its own.
const fn is_printed(page: Page) -> bool {
    matches!(
        page,
        Page::TempLog(_)
            | Page::Kitchen(_)
            | Page::KitchenSheet(_)
            | Page::RunSheet(_)
            | Page::HandOut(_)
            | Page::Plan(_)
    )
}

/// What a page needs of its frame.
#[derive(Clone, Copy, Default)]
struct Needs {
    /// After how many seconds it loads itself where scripts are off.
    anew: Option<u32>,
    /// The style of what is printed.
    paper: bool,
}

fn frame(reader: &Reader, title: &str, needs: Needs, body: Markup) -> Markup {
    let words = words(reader.viewer.locale);
    html! {
        (DOCTYPE)
        html lang=(reader.viewer.locale.tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="color-scheme" content="light dark";
                meta name="theme-color" media="(prefers-color-scheme: light)" content="#f4f0e2";
                meta name="theme-color" media="(prefers-color-scheme: dark)" content="#16211f";
                title { (title) " · Slowbend" }
                @if let Some(seconds) = needs.anew { noscript { meta http-equiv="refresh" content=(seconds); } }
                link rel="stylesheet" href=(assets::path("slowbend.css"));
                @if needs.paper { link rel="stylesheet" href=(assets::path("paper.css")); }
                link rel="icon" href=(assets::path("icon.svg")) type="image/svg+xml";
                link rel="apple-touch-icon" href=(assets::path("icon-192.png"));
                link rel="manifest" href=(assets::path("manifest.webmanifest"));
                script src=(assets::path("slowbend.js")) defer {}
            }
            body {
                a .skip href="#main" { (words.skip) }
                (body)
            }
        }
    }
}

/// Our mark: a slab that bends, hanging from the tongs.
fn mark() -> Markup {
    html! {
        svg .mark viewBox="0 0 32 32" aria-hidden="true" {
            path d="M4 9h11c7 0 11 5 11 14" fill="none" stroke="currentColor" stroke-width="5" stroke-linecap="round" {}
            path d="M4 17h6" fill="none" stroke="currentColor" stroke-width="3" stroke-linecap="round" {}
        }
    }
}

fn bar(sheet: &Sheet<'_>, tabs: &Tabs) -> Markup {
    let words = sheet.words;
    let pages = match *tabs {
        Tabs::Of(cook) => vec![
            (Page::Now(cook), words.now),
            (Page::Write(cook), words.write),
            (Page::Timeline(cook), words.timeline),
        ],
        Tabs::Several => vec![(Page::Start, words.now)],
        Tabs::None => vec![],
    };
    html! {
        header .bar {
            a .brand href="/" aria-label="Slowbend" { (mark()) span { "Slowbend" } }
            button #prop type="button" hidden data-prop=(sheet.say.text("wall-prop")) data-leave=(sheet.say.text("wall-leave")) {}
            button #sound type="button" hidden data-off=(words.sound) data-on=(words.sound_on) { (words.sound) }
            nav aria-label=(words.pages) {
                @for (page, label) in pages { (nav_link(sheet, page, label)) }
                (nav_link(sheet, Page::Settings, words.settings))
            }
        }
    }
}

fn nav_link(sheet: &Sheet<'_>, page: Page, label: &str) -> Markup {
    let here = (page == sheet.page).then_some("page");
    html! { a href=(page.path()) aria-current=[here] { (label) } }
}

fn said(sheet: &Sheet<'_>) -> Markup {
    html! {
        @if let Some(refused) = &sheet.beside.refused {
            p .refused role="alert" #refused tabindex="-1" autofocus { strong { (sheet.words.not_recorded) } " " @if let Some(label) = sheet.blamed() { (label) ": " } (refused) }
        }
        p .told role="status" aria-live="polite" { @if let Some(told) = &sheet.beside.told { (told) } }
        @if let Some(note) = sheet.say.zone_note() { p .notice { (note) } }
    }
}

fn invented(sheet: &Sheet<'_>) -> Markup {
    html! {
        @if sheet.demo == Demo::Here {
            p .invented { (sheet.words.invented) " " a href=(OUT) { (sheet.words.leave_demo) } }
        }
    }
}

/// What is due and rings, wherever the cook is looking; the page of the cook itself shows it larger anyway.
fn due(sheet: &Sheet<'_>, alarms: &AlarmList) -> Markup {
    let elsewhere = |alarm: &&Alarm| {
        let here = alarm.place.map(Page::from) == Some(sheet.page);
        let of_cook = alarm.cook.is_some() && alarm.cook == sheet.page.cook();
        alarm.at <= sheet.now && !here && !of_cook
    };
    let to = |alarm: &Alarm| alarm.place.map_or(Page::Start, Page::from).path();
    html! {
        @for alarm in alarms.alarms.iter().filter(elsewhere) {
            section .alarm data-urgency=(urgency(alarm.urgency)) {
                p .title { a href=(to(alarm)) { (alarm.title) } }
                @for line in alarm.body.lines() { p { (line) } }
            }
        }
    }
}

const fn urgency(urgency: Urgency) -> &'static str {
    match urgency {
        Urgency::Wake => "wake",
        Urgency::Call => "call",
        Urgency::Quiet => "quiet",
    }
}

fn foot(sheet: &Sheet<'_>) -> Markup {
    let words = sheet.words;
    html! {
        footer .foot {
            p { (words.rings_while_open) }
            noscript { p { (words.no_script) } }
            (wall::link(sheet))
        }
    }
}
