//! The run sheet: times and jobs, crossed off as they are done. Printed, it is the sheet alone, on one page.

use super::{Page, Sheet, layout::Head, parts, plan::later};
use maud::{Markup, html};
use slowbend_core::screens::{
    HandOutScreen, OtherPlan, RunSheetScreen, SheetDay, SheetLine, StudentSheet,
};

/// From so many jobs on a printed sheet has two columns.
const LONG: usize = 24;

pub fn page(sheet: &Sheet<'_>, screen: &RunSheetScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: Some(screen.cook),
    };
    let main = html! {
        div .run {
            h1 { (screen.title) }
            @for line in &screen.about { p .about { (line) } }
            @if let Some(none) = &screen.none { p .lead { (none) } }
            @if screen.none.is_none() { p .links.do { a .button href=(later(screen.cook, 60)) { (screen.labels.hour_later) } } }
            (days(sheet, &screen.days, true))
            @if let Some(other) = &screen.other { (other_plan(sheet, screen, other)) }
            @if !screen.calendar.is_empty() { (hand_over(screen)) }
            @if let Some(drop) = &screen.drop { (parts::buttons(sheet, "drop", std::slice::from_ref(drop))) }
            (parts::links(&screen.links))
            (parts::cautions(&screen.cautions))
        }
    };
    (head, main)
}

/// The jobs day by day; with what can be done about them where `acts`.
pub fn days(sheet: &Sheet<'_>, days: &[SheetDay], acts: bool) -> Markup {
    let jobs: usize = days.iter().map(|day| day.lines.len()).sum();
    html! {
        div .days data-long[jobs > LONG] {
            @for (of_day, day) in days.iter().enumerate() {
                section {
                    h2 { (day.heading) }
                    ol .jobs { @for (index, line) in day.lines.iter().enumerate() { (job(sheet, line, &format!("job-{of_day}-{index}"), acts)) } }
                }
            }
        }
    }
}

fn job(sheet: &Sheet<'_>, line: &SheetLine, form: &str, acts: bool) -> Markup {
    html! {
        li data-weight=(parts::weight(line.weight)) data-ticked[line.ticked] {
            time datetime=(parts::instant(line.at)) { (line.time) }
            div {
                @match &line.link {
                    Some(place) => a .job href=(Page::from(*place).path()) { (line.job) },
                    None => span .job { (line.job) },
                }
                @if !line.state.is_empty() { p .state { (line.state) } }
                @if !line.why.is_empty() { p .why { (line.why) } }
            }
            @if acts && !line.buttons.is_empty() { div .do { (parts::buttons_of(sheet, form, &line.buttons, &line.job)) } }
        }
    }
}

fn other_plan(sheet: &Sheet<'_>, screen: &RunSheetScreen, other: &OtherPlan) -> Markup {
    html! {
        details {
            summary { (screen.labels.other) }
            p .lead { (other.about) }
            (parts::lines(&other.changes))
            (parts::buttons(sheet, "other", std::slice::from_ref(&other.take)))
        }
    }
}

fn hand_over(screen: &RunSheetScreen) -> Markup {
    let labels = &screen.labels;
    let file = format!("/cook/{}/sheet.ics", screen.cook);
    html! {
        section .hand-over {
            p .links {
                a .button href=(file) download=(screen.calendar_name) { (labels.calendar) }
                a .button href=(Page::HandOut(screen.cook).path()) { (labels.hand_out) }
                a .button href=(Page::Card(screen.cook).path()) { (labels.card) }
            }
            p .how { (labels.calendar_how) " " (labels.print) }
            details { summary { (labels.text) } textarea readonly rows="12" spellcheck="false" aria-label=(labels.text) { (screen.text) } }
        }
    }
}

/// A sheet for each student; what is typed goes into the address, so that the hand-out can be made again by it.
pub fn hand_out(sheet: &Sheet<'_>, screen: &HandOutScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: i64::MAX,
        cook: Some(screen.cook),
    };
    let main = html! {
        div .run {
            section .hand-over {
                h1 { (screen.title) }
                p .lead { (screen.lead) }
                @if let Some(refused) = &screen.refused { p .refused role="alert" { (refused) } }
                form method="get" action=(Page::HandOut(screen.cook).path()) {
                    label .field { span { (screen.label) } textarea name="students" rows="6" maxlength="6000" spellcheck="false" { (screen.typed) } }
                    p .how { (screen.how) }
                    button .button data-tone="main" { (screen.make) }
                }
            }
            @for student in &screen.sheets { (one(sheet, screen, student)) }
            (parts::links(&screen.links))
        }
    };
    (head, main)
}

fn one(sheet: &Sheet<'_>, screen: &HandOutScreen, student: &StudentSheet) -> Markup {
    html! {
        article .student {
            h1 { (student.name) }
            p .about { (screen.title) }
            p .about { (student.serve) }
            (days(sheet, &student.days, false))
            ul .plain { @for least in &screen.minimums { li { (least) } } }
            (parts::cautions(&screen.cautions))
        }
    }
}
