//! Planning a cook: what is said for the plan goes into the address, so that it can be asked for again by it; a plan is
//! accepted by its button, and refused by leaving.

use super::{
    Page, Sheet, kitchen_form,
    layout::Head,
    parts,
    sheet_run::{days, fits},
};
use maud::{Markup, html};
use slowbend_core::{
    ids::CookId,
    screens::{PlanProposal, PlanScreen},
};

/// The address of a plan for guests who come so many minutes later.
pub fn later(cook: CookId, minutes: i64) -> String {
    format!("{}?later={minutes}", Page::Plan(cook).path())
}

pub fn page(sheet: &Sheet<'_>, screen: &PlanScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: Some(screen.cook),
    };
    let main = html! {
        div .run {
            h1 { (screen.title) }
            @for line in &screen.about { p .about { (line) } }
            p .lead { (screen.lead) }
            @if let Some(strained) = &screen.fits { (fits(sheet, strained, false)) }
            @if let Some((conflict, ways)) = screen.refused.split_first() {
                p .refused role="alert" { (conflict) }
                @if !ways.is_empty() { ul .plain { @for way in ways { li { (way) } } } }
            }
            @for (nr, proposal) in screen.proposals.iter().enumerate() { (one(sheet, screen, proposal, nr)) }
            (form(screen))
            @if let Some(courses) = &screen.courses { div .kitchen.courses { (kitchen_form::folded(sheet, screen.cook, courses, &courses.heading)) } }
            p .links { a .button href=(later(screen.cook, 60)) { (screen.labels.hour_later) } }
            (parts::links(&screen.links))
            (parts::cautions(&screen.cautions))
        }
    };
    (head, main)
}

fn one(sheet: &Sheet<'_>, screen: &PlanScreen, proposal: &PlanProposal, nr: usize) -> Markup {
    let labels = &screen.labels;
    html! {
        section .lane {
            h2 { (proposal.heading) }
            p .state { (proposal.serve) }
            p .detail { (proposal.chance) }
            @if !proposal.says.is_empty() { ul .plain { @for says in &proposal.says { li { (says) } } } }
            @if !proposal.changes.is_empty() { details open[nr == 0] { summary { h3 { (labels.changes) } } div .quiet { (parts::lines(&proposal.changes)) } } }
            (parts::buttons_of(sheet, &format!("plan-{nr}"), std::slice::from_ref(&proposal.accept), &proposal.heading))
            details open[nr == 0 && proposal.changes.is_empty()] { summary { (labels.jobs) } (days(sheet, &proposal.days, false)) }
        }
        @if nr + 1 == screen.proposals.len() { p .links { a .button href=(Page::RunSheet(screen.cook).path()) { (labels.refuse) } } }
    }
}

fn form(screen: &PlanScreen) -> Markup {
    let (labels, typed) = (&screen.labels, &screen.typed);
    let number = |name: &str, label: &str, value: &str| {
        html! {
            label .field { span { (label) } input type="text" inputmode="numeric" name=(name) value=(value) maxlength="5" autocomplete="off"; }
        }
    };
    let time = |name: &str, label: &str, value: &str| {
        html! {
            label .field { span { (label) } input type="time" name=(name) value=(value); }
        }
    };
    let tick = |name: &str, label: &str, on: bool| {
        html! {
            label .outcome { input type="checkbox" name=(name) value="on" checked[on]; span { (label) } }
        }
    };
    html! {
        details open[screen.proposals.is_empty()] {
            summary { h2 { (labels.go) } }
            form method="get" action=(Page::Plan(screen.cook).path()) {
                input type="hidden" name="go" value="on";
                @if typed.later_min > 0 { input type="hidden" name="later" value=(typed.later_min); }
                (number("hands", &labels.hands, &typed.hands))
                (time("sleep_from", &labels.sleep_from, &typed.sleep_from))
                (time("sleep_to", &labels.sleep_to, &typed.sleep_to))
                (tick("watched", &labels.watched, typed.watched))
                (tick("cooler", &labels.cooler, typed.cooler))
                (tick("oven", &labels.oven, typed.oven))
                (number("late", &labels.late, &typed.late))
                button .button data-tone="main" { (labels.go) }
            }
        }
    }
}
