//! The run sheet: times and jobs, crossed off as they are done. Printed, it is the sheet alone, on one page.

use super::{Page, Sheet, layout::Head, parts, plan::later};
use maud::{Markup, html};
use slowbend_core::{
    screens::{
        HandOutScreen, OtherPlan, RunSheetScreen, SheetDay, SheetFits, SheetLine, StudentSheet,
        Weight,
    },
    words::Arg,
};

/// From so many jobs on a printed sheet has two columns.
const LONG: usize = 24;
/// From so many jobs on it says no reasons, so that it stays one page.
const DENSE: usize = 44;

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
            @if let Some(strained) = &screen.fits { (fits(sheet, strained, true)) }
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

/// That the sheet no longer fits, why, and what to do; with the way to a new one where `see`.
pub fn fits(sheet: &Sheet<'_>, fits: &SheetFits, see: bool) -> Markup {
    html! {
        section .fits.do {
            h2 { (fits.heading) }
            ul .plain { @for says in &fits.says { li { (says) } } }
            @if see { p .links { a .button data-tone="main" href=(Page::from(fits.see.place).path()) { (fits.see.label) } } }
            (parts::buttons(sheet, "keep-sheet", std::slice::from_ref(&fits.keep)))
        }
    }
}

/// The jobs day by day; with what can be done about them where `acts`.
pub fn days(sheet: &Sheet<'_>, days: &[SheetDay], acts: bool) -> Markup {
    let left = days.iter().flat_map(|day| &day.lines);
    let left = left.filter(|line| !line.ticked || !acts).count();
    let first = days.iter().flat_map(|day| &day.lines);
    let first = first.filter(|line| !line.ticked).map(|line| line.at).next();
    let one = |of_day: usize, index: usize, line: &SheetLine| {
        let at_hand = Some(line.at) == first;
        job(
            sheet,
            line,
            &format!("job-{of_day}-{index}"),
            acts.then_some(at_hand),
        )
    };
    html! {
        div .days data-long[left > LONG] data-dense[left > DENSE] {
            @for (of_day, day) in days.iter().enumerate() {
                @let over = if acts { day.lines.iter().take_while(|line| line.ticked).count() } else { 0 };
                section data-over[over == day.lines.len()] {
                    h2 { (day.heading) }
                    @if over > 0 {
                        details .over {
                            summary { (sheet.say.with("sheet-over", &[("count", Arg::Number(over as i64))])) }
                            ol .jobs { @for (index, line) in day.lines.iter().take(over).enumerate() { (one(of_day, index, line)) } }
                        }
                    }
                    ol .jobs { @for (index, line) in day.lines.iter().enumerate().skip(over) { (one(of_day, index, line)) } }
                }
            }
        }
    }
}

/// One job; with what can be done about it where that is said: for the job at hand in sight, for others behind a fold, so that
/// the sheet stays one that can be read.
fn job(sheet: &Sheet<'_>, line: &SheetLine, form: &str, acts: Option<bool>) -> Markup {
    let due = matches!(line.weight, Weight::Call | Weight::Wake);
    let buttons = || parts::buttons_of(sheet, form, &line.buttons, &line.job);
    html! {
        li data-weight=(parts::weight(line.weight)) data-ticked[line.ticked] {
            time datetime=(parts::instant(line.at)) { (line.time) }
            div .what {
                @match &line.link {
                    Some(place) => a .job href=(Page::from(*place).path()) { (line.job) },
                    None => span .job { (line.job) },
                }
                @if !line.state.is_empty() { p .state { (line.state) } }
                @if !line.why.is_empty() && !line.ticked { p .why { (line.why) } }
            }
            @if !line.buttons.is_empty() {
                @match acts {
                    Some(at_hand) if at_hand || due => div .do { (buttons()) },
                    Some(_) => details .do { summary { (sheet.say.text("sheet-do")) } (buttons()) },
                    None => {},
                }
            }
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
