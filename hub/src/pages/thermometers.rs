//! Checking thermometers: the two baths step by step, one form, and how each thermometer stands.

use super::{Sheet, layout::Head, parts, parts::Kind};
use maud::{Markup, html};
use slowbend_core::{
    log::Subject,
    screens::{BathGuide, ThermometerLine, ThermometersScreen},
};

const FORM: &str = "bath";

pub fn page(sheet: &Sheet<'_>, screen: &ThermometersScreen) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: None,
    };
    let labels = &screen.labels;
    let main = html! {
        h1 { (screen.title) }
        p .lead { (screen.lead) }
        div .two { @for bath in &screen.baths { (guide(bath, &labels.heights)) } }
        @if let Some(none) = &screen.none { p .notice { (none) } }
        @if !screen.thermometers.is_empty() { (form(sheet, screen)) }
        @if !screen.thermometers.is_empty() {
            section {
                h2 { (labels.standing) }
                ul .lines { @for line in &screen.thermometers { (standing(line)) } }
            }
        }
        (add(sheet, screen))
        section {
            h2 { (labels.rules) }
            ul { @for rule in &screen.rules { li { (rule) } } }
            p { cite { (screen.source) } }
        }
        (parts::links(&screen.links))
    };
    (head, main)
}

fn guide(bath: &BathGuide, heights: &str) -> Markup {
    html! {
        section .card {
            h2 { (bath.name) }
            p .state-line { (bath.expected) }
            ol .steps { @for step in &bath.steps { li { (step) } } }
            @if !bath.heights.is_empty() {
                details {
                    summary { (heights) }
                    table { tbody { @for line in &bath.heights { tr { th scope="row" { (line.name) } td { (line.state) } } } } }
                }
            }
        }
    }
}

fn form(sheet: &Sheet<'_>, screen: &ThermometersScreen) -> Markup {
    let labels = &screen.labels;
    let ours = screen
        .thermometers
        .iter()
        .map(|one| (subject(one), one.name.as_str()));
    let field = |name: &str, label: &str, usual: &str| {
        parts::field(sheet, FORM, name, label, usual, Kind::Number)
    };
    html! {
        section .card {
            h2 { (labels.heading) }
            (sheet.form(FORM, "/settings/bath", html! {
                div .row {
                    (parts::choice(sheet, FORM, "of", &labels.thermometer, ours, ""))
                    (parts::choice(sheet, FORM, "against", &labels.bath, baths(screen), ""))
                    (field("read", &labels.read, ""))
                    (field("altitude", &labels.altitude, &labels.altitude_value))
                }
                button .button data-tone="main" { (labels.record) }
            }))
        }
    }
}

/// The log's name of a thermometer, as the form gives it back.
fn subject(one: &ThermometerLine) -> String {
    serde_json::to_string(&Subject::Thermometer(one.thermometer))
        .expect("a subject is a name and an id")
}

fn baths(screen: &ThermometersScreen) -> impl Iterator<Item = (String, &str)> {
    screen.baths.iter().map(|guide| {
        let name = match guide.bath {
            slowbend_core::log::Bath::Ice => "ice",
            slowbend_core::log::Bath::Boiling { .. } => "boiling",
        };
        (name.to_owned(), guide.name.as_str())
    })
}

fn standing(line: &ThermometerLine) -> Markup {
    html! {
        li .line data-weight=(parts::weight(line.weight)) {
            div {
                span .name { (line.name) }
                " " span .state { (line.state) }
                " " span .detail { (line.means) }
                @for check in &line.checks { " " span .detail { (check) } }
            }
        }
    }
}

fn add(sheet: &Sheet<'_>, screen: &ThermometersScreen) -> Markup {
    let labels = &screen.labels;
    html! {
        section .card {
            h2 { (labels.add) }
            (sheet.form("add-thermometer", "/settings/thermometer", html! {
                div .inline {
                    (parts::field(sheet, "add-thermometer", "name", &labels.name, "", Kind::Text))
                    button .button { (labels.add) }
                }
            }))
        }
    }
}
