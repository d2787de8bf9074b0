//! The fire of a pit: taps first, then what they taught, then smoke and weather. What is tapped seldom is folded away.

use super::{Page, Sheet, layout::Head, parts, slip};
use maud::{Markup, html};
use slowbend_core::screens::{FireGroup, FireScreen, FireStep};

pub fn page(sheet: &Sheet<'_>, screen: &FireScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: Some(screen.cook),
    };
    let main = html! {
        h1 { (screen.title) }
        (parts::lines(std::slice::from_ref(&screen.state)))
        section .fire {
            (group(sheet, "feed", &screen.feed))
            @if let Some(undo) = &screen.undo { (parts::undo(sheet, undo)) }
            (parts::short_cautions(sheet, &screen.cautions))
        }
        section {
            (parts::lines(&screen.next))
            @if let Some(accept) = &screen.accept { (parts::buttons(sheet, "accept", std::slice::from_ref(accept))) }
            p .detail { (screen.rings) }
        }
        section {
            h2 { (screen.jobs_title) }
            @for (index, step) in screen.jobs.iter().enumerate() { (job(sheet, index, step)) }
        }
        (smoke(sheet, screen))
        @if !screen.vents.is_empty() { (folded(sheet, "vent", &screen.vents_title, "", &screen.vents)) }
        (folded(sheet, "weather", &screen.weather_title, &screen.weather_lead, &screen.weather))
        @if let Some(weigh) = &screen.weigh {
            details .card open[sheet.beside.typed.text("form") == weigh.slip] {
                summary { h2 { (weigh.heading) } }
                (slip::form(sheet, weigh, &format!("{}/weigh", Page::Now(screen.cook).path())))
            }
        }
        p .detail { (screen.source) }
        (parts::links(&screen.links))
    };
    (head, main)
}

/// Taps under their heading, with what was tapped last.
fn group(sheet: &Sheet<'_>, id: &str, group: &FireGroup) -> Markup {
    html! {
        div .taps {
            h3 { (group.heading) }
            p .state { (group.state) }
            (parts::buttons_of(sheet, id, &group.buttons, &group.heading))
        }
    }
}

/// Groups folded away under one heading; what was said of each stands beside it.
fn folded(sheet: &Sheet<'_>, id: &str, title: &str, lead: &str, groups: &[FireGroup]) -> Markup {
    let said: Vec<&str> = groups.iter().map(|group| group.state.as_str()).collect();
    html! {
        details .card.fire {
            summary { h2 { (title) } }
            @if !lead.is_empty() { p .how { (lead) } }
            @for (index, one) in groups.iter().enumerate() { (group(sheet, &format!("{id}-{index}"), one)) }
        }
        p .detail { (said.join(" · ")) }
    }
}

fn job(sheet: &Sheet<'_>, index: usize, step: &FireStep) -> Markup {
    html! {
        details .card.job open[step.is_next] data-now[step.is_next] {
            summary { h3 { (step.name) } span .state { (step.state) } }
            p .how { (step.how) }
            (parts::buttons_of(sheet, &format!("job-{index}"), &step.buttons, &step.name))
            (parts::cautions(&step.cautions))
        }
    }
}

fn smoke(sheet: &Sheet<'_>, screen: &FireScreen) -> Markup {
    html! {
        section {
            h2 { (screen.smoke_title) }
            div .quiet { (parts::lines(&screen.smoke)) }
            @if !screen.smoke_advice.is_empty() { ul .plain { @for advice in &screen.smoke_advice { li { (advice) } } } }
            (folded(sheet, "smoke", &screen.smoke_taps[0].heading, &screen.smoke_tell, &screen.smoke_taps))
        }
    }
}
