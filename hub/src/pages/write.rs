//! What can be written down during a cook: notes, temperatures, the fire, another meat or dish, and the plan's facts.

use super::{Page, Sheet, layout::Head, parts, parts::Kind};
use maud::{Markup, html};
use slowbend_core::{
    log::Subject,
    screens::{Pitside, Place, Settings, StartScreen},
};

pub fn page(
    sheet: &Sheet<'_>,
    now: &Pitside,
    start: &StartScreen,
    settings: &Settings,
) -> (Head, Markup) {
    let words = sheet.words;
    let head = Head {
        title: words.write.into(),
        until: i64::MAX,
        cook: Some(now.cook),
    };
    let to = |what: &str| format!("/cook/{}/{what}", now.cook);
    let meats = meats(now);
    let pits = || {
        start
            .pits
            .iter()
            .map(|pit| (pit.pit.to_string(), pit.name.as_str()))
    };
    let places: Vec<(String, &str)> = meats
        .iter()
        .map(|(id, name)| (format!("meat:{id}"), *name))
        .chain(pits().map(|(id, name)| (format!("pit:{id}"), name)))
        .collect();
    let has_pits = !start.pits.is_empty();
    let text = |form: &str, name: &str, label: &str| {
        parts::field(sheet, form, name, label, "", Kind::Text)
    };
    let number = |form: &str, name: &str, label: &str| {
        parts::field(sheet, form, name, label, "", Kind::Number)
    };
    let choice = |form: &str, name: &str, label: &str, options: Vec<(String, &str)>| {
        parts::choice(sheet, form, name, label, options, "")
    };
    let thermometer = |form: &str| {
        let known = thermometers(settings);
        let none = (String::new(), words.other_thermometer);
        let first = known.first().map_or(String::new(), |(id, _)| id.clone());
        let options = known
            .iter()
            .map(|(id, name)| (id.clone(), *name))
            .chain(std::iter::once(none));
        parts::choice(sheet, form, "thermometer", words.read_with, options, &first)
    };
    let did = [
        (String::new(), words.did_nothing),
        ("wet".into(), words.did_wet),
        ("turn".into(), words.did_turn),
        ("glaze".into(), words.did_glaze),
    ];
    let main = html! {
        h1 { (words.write) }
        div .two {
            (card(sheet, "note", words.note, &to("note"), html! { (text("note", "text", words.note_text)) }))
            @if !places.is_empty() {
                (card(sheet, "reading", words.reading, &to("reading"), html! {
                    (choice("reading", "place", words.place, places.clone()))
                    (number("reading", "temp", &sheet.degrees(words.temp)))
                    (text("reading", "spot", words.spot))
                    (thermometer("reading"))
                    (parts::ago(sheet))
                }))
            }
            @if !meats.is_empty() {
                (card(sheet, "opening", words.opening, &to("opening"), html! {
                    p .how { (words.opening_hint) }
                    @for (id, name) in &meats { (choice("opening", &format!("did-{id}"), name, did.to_vec())) }
                    (parts::ago(sheet))
                }))
            }
            @if has_pits {
                (card(sheet, "feed", words.feed, &to("feed"), html! {
                    (choice("feed", "pit", words.pit, pits().collect()))
                    (text("feed", "what", words.feed_what))
                    (parts::ago(sheet))
                }))
                (card(sheet, "vent", words.vent, &to("vent"), html! {
                    (choice("vent", "pit", words.pit, pits().collect()))
                    (text("vent", "how", words.vent_how))
                    (parts::ago(sheet))
                }))
            }
            @if has_pits && !meats.is_empty() {
                (card(sheet, "move", words.move_meat, &to("move"), html! {
                    (choice("move", "piece", words.meat, meats.iter().map(|(id, name)| (id.clone(), *name)).collect()))
                    (choice("move", "pit", words.pit, pits().collect()))
                    (text("move", "spot", words.spot_in_pit))
                    (parts::ago(sheet))
                }))
            }
            (card(sheet, "meat", words.add_meat, &to("meat"), html! {
                div data-narrow="cut" {
                    (text("meat", "find", words.find_cut))
                    (choice("meat", "cut", words.cut, std::iter::once((String::new(), words.cut_as_typed)).chain(start.cuts.iter().map(|cut| (crate::forms::name_of(&cut.cut), cut.name.as_str()))).collect()))
                    p { a href=(Page::Cuts.path()) { (words.all_cuts) } }
                }
                (text("meat", "name", words.meat_name))
                (number("meat", "weight", &start.form.weight))
                (choice("meat", "prepared", words.form, crate::words::forms(words).collect()))
                (choice("meat", "cadence", words.cadence, crate::words::cadences(words).collect()))
                (choice("meat", "pit", words.pit, std::iter::once((String::new(), words.no_pit)).chain(pits()).collect()))
            }))
            (card(sheet, "dish", words.add_dish, &to("dish"), html! {
                (text("dish", "name", words.dish_name))
                (choice("dish", "hot", words.dish_held, vec![("hot".into(), words.dish_hot), ("cold".into(), words.dish_cold)]))
            }))
            (card(sheet, "serve", words.serve, &to("serve"), html! {
                (parts::field(sheet, "serve", "serve", words.serve_at, "", Kind::Moment))
            }))
            (card(sheet, "name", words.new_name, &to("name"), html! { (parts::field(sheet, "name", "name", words.new_name, &now.title, Kind::Text)) }))
            (card(sheet, "people", words.people, &to("people"), html! { (number("people", "people", words.people_count)) }))
            (card(sheet, "sleep", words.sleep, &to("sleep"), html! { (text("sleep", "until", words.sleep_until)) }))
            (card(sheet, "watch", words.take_watch, &to("watch"), html! { (text("watch", "note", words.watch_note)) }))
            @if !places.is_empty() {
                (card(sheet, "probe", words.probe, &to("probe"), html! {
                    (text("probe", "source", words.probe_source))
                    (text("probe", "sensor", words.probe_sensor))
                    (choice("probe", "place", words.place, places.clone()))
                    (text("probe", "spot", words.spot))
                    (thermometer("probe"))
                }))
            }
            (super::file::card(sheet, &to("file")))
        }
    };
    (head, main)
}

fn card(sheet: &Sheet<'_>, id: &str, heading: &str, action: &str, inside: Markup) -> Markup {
    html! {
        details .card open[sheet.beside.typed.text("form") == id] {
            summary { h2 { (heading) } }
            (sheet.form(id, action, html! { (inside) button .button aria-label=[parts::named(sheet.words.write_down, heading)] { (sheet.words.write_down) } }))
        }
    }
}

/// The thermometers that are known.
fn thermometers(settings: &Settings) -> Vec<(String, &str)> {
    let known = settings.thermometers.iter();
    let named = known.filter_map(|one| match one.of {
        Subject::Thermometer(id) => Some((id.to_string(), one.name.as_str())),
        _ => None,
    });
    named.collect()
}

/// The meats that have a page of their own.
pub fn meats(now: &Pitside) -> Vec<(String, &str)> {
    let linked = now.meats.iter().filter_map(|line| match &line.link {
        Some(Place::Piece { piece } | Place::Check { piece }) => {
            Some((piece.to_string(), line.name.as_str()))
        }
        _ => None,
    });
    linked.collect()
}
