//! What pages are made of: lines, buttons, notices, cautions and verdicts.

use super::{Page, Sheet};
use maud::{Markup, html};
use slowbend_core::{
    acts::Act,
    forms::AGO_MINUTES,
    moment::MINUTE,
    screens::{Button, Caution, Line, Link, Notice, Tone, VerdictText, Weight},
    words::Arg,
};

/// The name of a weight in the style sheet. The words of the line say it too, so nobody needs to see color.
pub const fn weight(weight: Weight) -> &'static str {
    match weight {
        Weight::Wake => "wake",
        Weight::Call => "call",
        Weight::Soon => "soon",
        Weight::Calm => "calm",
        Weight::Faint => "faint",
    }
}

/// Lines, each with its state in words.
pub fn lines(lines: &[Line]) -> Markup {
    html! {
        @if !lines.is_empty() {
            ul .lines { @for line in lines { li .line data-weight=(weight(line.weight)) { (inside(line)) } } }
        }
    }
}

/// Lines that are numbered like the lanes of a course. Those that `keeps` names stay where room runs out.
pub fn lanes(lines: &[Line], keeps: impl Fn(&Line) -> bool) -> Markup {
    html! { ol .lines.lanes { @for line in lines { li .line data-weight=(weight(line.weight)) data-keep[keeps(line)] { (inside(line)) } } } }
}

/// What a line says, as a link where it leads somewhere.
pub fn inside(line: &Line) -> Markup {
    let text = html! {
        span .name { (line.name) }
        @if !line.state.is_empty() { " " span .state { (line.state) } }
        @if !line.detail.is_empty() { " " span .detail { (line.detail) } }
        (bow(line.weight))
    };
    html! {
        @match &line.link {
            Some(place) => a href=(Page::from(*place).path()) { (text) },
            None => div { (text) },
        }
    }
}

/// The bow of a boat on its way to the post of the finish: far off, near, across it, across it with a flag up; beached where
/// it is over. The state beside it says the same in words.
fn bow(weight: Weight) -> Markup {
    let from = match weight {
        Weight::Calm | Weight::Faint => 0,
        Weight::Soon => 15,
        Weight::Call | Weight::Wake => 28,
    };
    let hull = format!("M{from} 15q14-8 27 0q-13 8-27 0z");
    html! {
        svg .bow viewBox="0 0 56 28" aria-hidden="true" focusable="false" {
            @if weight == Weight::Faint { path d="M0 15h27" {} } @else {
                path d="M45 2v24" {}
                path .hull d=(hull) {}
            }
            @if weight == Weight::Wake { path .hull d="M45 0l-17 5 17 5z" {} }
        }
    }
}

/// A heading with lines under it, left out where there are none.
pub fn section(heading: &str, found: &[Line]) -> Markup {
    html! { @if !found.is_empty() { section { h2 { (heading) } (lines(found)) } } }
}

/// Buttons in one form; one that is asked about opens the question first. Where an act can have been done a while ago,
/// that can be said.
pub fn buttons(sheet: &Sheet<'_>, id: &str, buttons: &[Button]) -> Markup {
    buttons_of(sheet, id, buttons, "")
}

/// The same, each named with what it is about, for whoever hears only the name.
pub fn buttons_of(sheet: &Sheet<'_>, id: &str, buttons: &[Button], of: &str) -> Markup {
    let plain = || {
        buttons
            .iter()
            .enumerate()
            .filter(|(_, button)| button.confirm.is_none() && !is_said_by_choice(button, buttons))
    };
    let grave = buttons
        .iter()
        .enumerate()
        .filter_map(|(index, button)| Some((index, button, button.confirm.as_ref()?)));
    let alone = the_dated(plain());
    html! {
        @if plain().next().is_some() {
            (sheet.form(id, "/act", html! {
                div .buttons {
                    @for (index, button) in plain() {
                        (submit(index, button, of))
                        @if alone == Some(index) { (ago(sheet)) }
                    }
                }
                @if alone.is_none() && plain().any(|(_, button)| takes_ago(button)) { (ago(sheet)) }
            }))
        }
        @for (index, button, question) in grave {
            details .grave {
                summary .button aria-label=[named(&button.label, of)] { (button.label) }
                p { (question) }
                (sheet.form(&format!("{id}-{index}"), "/act", html! { div .buttons { (submit(index, button, of)) } }))
            }
        }
    }
}

/// A name that begins with what is written, so that it can be said aloud too.
pub fn named(label: &str, of: &str) -> Option<String> {
    (!of.is_empty()).then(|| format!("{label}: {of}"))
}

/// Whether a button says only when: another does the same at a time that is chosen beside it.
fn is_said_by_choice(button: &Button, all: &[Button]) -> bool {
    let timeless = |button: &Button| {
        let mut act = button.act.clone();
        let at = act.at_mut().and_then(Option::take);
        (act, at)
    };
    let (act, at) = timeless(button);
    at.is_some()
        && all
            .iter()
            .any(|other| timeless(other) == (act.clone(), None))
}

fn submit(index: usize, button: &Button, of: &str) -> Markup {
    let tone = match button.tone {
        Tone::Main => "main",
        Tone::Plain => "plain",
        Tone::Grave => "grave",
    };
    let act =
        serde_json::to_string(&button.act).expect("acts are plain records of integers and text");
    html! { button .button data-tone=(tone) name="act" value=(format!("{index}|{act}")) aria-label=[named(&button.label, of)] { (button.label) } }
}

/// Whether the act has a time of its own that is still open.
fn takes_ago(button: &Button) -> bool {
    button.act.clone().at_mut().is_some_and(|at| at.is_none())
}

/// The one button that the choice of when stands right after: it alone is meant first of all.
fn the_dated<'b>(plain: impl Iterator<Item = (usize, &'b Button)>) -> Option<usize> {
    let mut meant = plain.filter(|(_, button)| button.tone == Tone::Main && takes_ago(button));
    match (meant.next(), meant.next()) {
        (Some((index, _)), None) => Some(index),
        _ => None,
    }
}

/// A choice of how long ago it was.
pub fn ago(sheet: &Sheet<'_>) -> Markup {
    html! {
        label .ago {
            span { (sheet.words.when_done) }
            select name="ago" {
                @for minutes in AGO_MINUTES { option value=(minutes) { (sheet.say.ago(minutes * MINUTE)) } }
            }
        }
    }
}

/// Warnings and merges to be told.
pub fn notices(sheet: &Sheet<'_>, notices: &[Notice]) -> Markup {
    html! {
        @for (index, notice) in notices.iter().enumerate() {
            div .notice {
                p { (notice.text) }
                @let keeps = match notice.dismiss.as_ref().map(|dismiss| &dismiss.act) {
                    Some(Act::KeepSheet { cook, .. }) => Some(*cook),
                    _ => None,
                };
                @if let Some(cook) = keeps {
                    p .links { a .button data-tone="main" href=(Page::Plan(cook).path()) { (sheet.say.text("fits-see")) } }
                }
                @if let Some(dismiss) = &notice.dismiss {
                    @let id = keeps.map_or_else(|| format!("notice-{index}"), |_| "keep-sheet".to_owned());
                    (buttons(sheet, &id, std::slice::from_ref(dismiss)))
                }
            }
        }
    }
}

/// Each caution once, though two meats bring the same.
fn distinct(cautions: &[Caution]) -> Vec<&Caution> {
    let mut kept: Vec<&Caution> = vec![];
    for caution in cautions {
        if !kept.iter().any(|known| known.text == caution.text) {
            kept.push(caution);
        }
    }
    kept
}

/// Cautions of the act that is due: one line that counts them and begins with the first, and opens to all of them and to who
/// says so. A line each would push the meats out of sight.
pub fn short_cautions(sheet: &Sheet<'_>, found: &[Caution]) -> Markup {
    let all = distinct(found);
    let count = i64::try_from(all.len()).unwrap_or(i64::MAX);
    html! {
        @if let Some(first) = all.first() {
            details .caution {
                summary {
                    span { strong { (sheet.say.with("wall-cautions", &[("count", Arg::Number(count))])) ":" } " " (first.text) }
                }
                (cautions(found))
            }
        }
    }
}

/// Cautions folded away under their name.
pub fn folded_cautions(sheet: &Sheet<'_>, found: &[Caution]) -> Markup {
    html! { @if !found.is_empty() { details { summary { (sheet.words.cautions) } (cautions(found)) } } }
}

/// Cautions with who says so, each that is told once with a way to put it away.
pub fn cautions_once(sheet: &Sheet<'_>, id: &str, found: &[Caution]) -> Markup {
    html! {
        @if !found.is_empty() {
            ul .cautions {
                @for (index, caution) in distinct(found).into_iter().enumerate() {
                    li {
                        (caution.text) " " cite { (caution.source) }
                        @if let Some(dismiss) = &caution.dismiss {
                            (buttons_of(sheet, &format!("{id}-{index}"), std::slice::from_ref(dismiss), &caution.text))
                        }
                    }
                }
            }
        }
    }
}

/// Cautions with who says so.
pub fn cautions(cautions: &[Caution]) -> Markup {
    html! {
        @if !cautions.is_empty() {
            ul .cautions { @for caution in distinct(cautions) { li { (caution.text) " " cite { (caution.source) } } } }
        }
    }
}

/// An instant as machines read it: "2026-06-13T16:05:00Z" (HTML, "valid global date and time string").
pub fn instant(at: i64) -> String {
    let zero = slowbend_core::words::zone::local(chrono_tz::Tz::UTC, at);
    zero.format("%Y-%m-%dT%H:%M:%SZ").to_string()
}

/// Links as a row.
pub fn links(links: &[Link]) -> Markup {
    html! {
        @if !links.is_empty() {
            p .links { @for link in links { a .button href=(Page::from(link.place).path()) { (link.label) } } }
        }
    }
}

/// A verdict in words.
pub fn verdict(sheet: &Sheet<'_>, verdict: &VerdictText) -> Markup {
    html! {
        section .verdict data-weight=(weight(verdict.weight)) {
            h2 { (verdict.headline) }
            p .safety { (verdict.safety) }
            @if !verdict.reasons.is_empty() { ul { @for reason in &verdict.reasons { li { (reason) } } } }
            @if !verdict.doubts.is_empty() { ul .doubts { @for doubt in &verdict.doubts { li { (doubt) } } } }
            @if let Some(next) = &verdict.next { p .next { strong { (sheet.words.check_next) } " " (next) } }
        }
    }
}

/// A labeled field of form `id`.
pub fn field(
    sheet: &Sheet<'_>,
    id: &str,
    name: &str,
    label: &str,
    usual: &str,
    kind: Kind,
) -> Markup {
    let value = sheet.value(id, name, usual);
    let (kind, mode) = match kind {
        Kind::Text => ("text", None),
        Kind::Number => ("text", Some("decimal")),
        Kind::Moment => ("datetime-local", None),
    };
    let blamed = sheet.is_blamed(id, name, label);
    html! {
        label .field {
            span { (label) }
            input aria-invalid=[blamed.then_some("true")] aria-describedby=[blamed.then_some("refused")] type=(kind) name=(name) value=(value) inputmode=[mode] autocomplete="off" maxlength="2000";
        }
    }
}

/// What is typed in a field.
#[derive(Clone, Copy)]
pub enum Kind {
    /// Words.
    Text,
    /// A number, maybe with a unit.
    Number,
    /// A date and a time.
    Moment,
}

/// A labeled choice of form `id`; the first option is the usual one unless `usual` names another.
pub fn choice<'o>(
    sheet: &Sheet<'_>,
    id: &str,
    name: &str,
    label: &str,
    options: impl IntoIterator<Item = (String, &'o str)>,
    usual: &str,
) -> Markup {
    let blamed = sheet.is_blamed(id, name, label);
    html! {
        label .field {
            span { (label) }
            select name=(name) aria-invalid=[blamed.then_some("true")] aria-describedby=[blamed.then_some("refused")] {
                @for (value, shown) in options {
                    option value=(value) selected[sheet.is_chosen(id, name, &value, value == usual)] { (shown) }
                }
            }
        }
    }
}

/// The last act, to be taken back: huge for a while, then a line.
pub fn undo(sheet: &Sheet<'_>, undo: &slowbend_core::acts::Undo) -> Markup {
    let size = if sheet.now < undo.until {
        "huge"
    } else {
        "small"
    };
    let act =
        serde_json::to_string(&undo.act).expect("acts are plain records of integers and text");
    let button = html! { button .button name="act" value=(format!("0|{act}")) { (undo.label) } };
    html! { div .undo data-size=(size) { (sheet.form("undo", "/act", button)) } }
}
