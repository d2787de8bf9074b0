//! Pits, thermometers and habits of the crew, and the choices of the viewer. Each field is a form of its own, so that two
//! people who change two things never overrule each other.

use super::{Sheet, layout::Head, parts, parts::Kind};
use maud::{Markup, html};
use slowbend_core::{
    log::Subject,
    screens::{Editable, FieldLine, Settings, SettingsLabels, ViewerChoice},
};

pub fn page(sheet: &Sheet<'_>, screen: &Settings) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: None,
    };
    let labels = &screen.labels;
    let main = html! {
        h1 { (screen.title) }
        (parts::notices(sheet, &screen.notices))
        section {
            h2 { (labels.viewer) }
            (viewer(sheet, &screen.viewer, labels))
        }
        section {
            h2 { (sheet.words.device) }
            (sheet.form("device", "/settings/device", html! {
                (parts::field(sheet, "device", "name", sheet.words.device_name, &screen.device_name, Kind::Text))
                button .button aria-label=[parts::named(&labels.save, sheet.words.device)] { (labels.save) }
            }))
        }
        p { a .button href="/phones" { (sheet.say.text("phones-title")) } }
        section {
            h2 { (labels.pits) }
            div .two {
                @for (index, pit) in screen.pits.iter().enumerate() { (pit_card(sheet, index, pit, labels)) }
                (add_pit(sheet, labels))
            }
        }
        section {
            h2 { (labels.thermometers) }
            (parts::links(&screen.links))
            div .two {
                @for (index, one) in screen.thermometers.iter().enumerate() { (thermometer(sheet, index, one, labels)) }
                (add_thermometer(sheet, labels))
            }
        }
        section {
            h2 { (labels.habits) }
            div .two { @for (index, habit) in screen.habits.iter().enumerate() { (editable(sheet, &format!("habit-{index}"), habit, labels, html! {})) } }
        }
        @for line in &screen.about { p .detail { (line) } }
    };
    (head, main)
}

/// All choices in one form: they are kept in this browser alone.
fn viewer(sheet: &Sheet<'_>, choices: &[ViewerChoice], labels: &SettingsLabels) -> Markup {
    sheet.form("viewer", "/settings/viewer", html! {
        div .row {
            @for choice in choices {
                label .field {
                    span { (choice.label) }
                    select name=(choice.field) {
                        @for option in &choice.options { option value=(option.value) selected[option.chosen] { (option.label) } }
                    }
                }
            }
            (parts::field(sheet, "viewer", "zone", sheet.words.zone, &sheet.reader.viewer.zone, Kind::Text))
        }
        button .button aria-label=[parts::named(&labels.save, &labels.viewer)] { (labels.save) }
    })
}

fn editable(
    sheet: &Sheet<'_>,
    id: &str,
    thing: &Editable,
    labels: &SettingsLabels,
    more: Markup,
) -> Markup {
    let fields = thing
        .fields
        .iter()
        .filter(|field| !field.field.starts_with("band"));
    let is_back = sheet
        .beside
        .typed
        .text("form")
        .starts_with(&format!("{id}-"));
    html! {
        section .card {
            @if thing.name != labels.habits { h3 { (thing.name) } }
            @if !thing.detail.is_empty() { p .detail { (thing.detail) } }
            details open[is_back] {
                summary { (sheet.words.change) }
                @for field in fields { (one(sheet, &format!("{id}-{}", field.field), thing, field, labels)) }
            }
            (more)
        }
    }
}

fn one(
    sheet: &Sheet<'_>,
    id: &str,
    thing: &Editable,
    field: &FieldLine,
    labels: &SettingsLabels,
) -> Markup {
    let name = &thing.name;
    let label = match field.unit.as_str() {
        "" => field.label.clone(),
        unit => format!("{} ({unit})", field.label),
    };
    let answers = ["answer-yes", "answer-no"].map(|answer| sheet.say.text(answer));
    sheet.form(
        id,
        "/settings/field",
        html! {
            (hidden_subject(thing.of))
            input type="hidden" name="field" value=(field.field);
            @if let Some(saw) = field.saw { input type="hidden" name="saw" value=(saw.0); }
            div .inline {
                @if field.field == "pit_kind" {
                    (parts::choice(sheet, id, "value", &label, kinds(labels), &field.value))
                } @else if field.field == "for_public" {
                    (parts::choice(sheet, id, "value", &label, yes_no(&answers), &field.value))
                } @else {
                    (parts::field(sheet, id, "value", &label, &field.value, Kind::Text))
                }
                button .button aria-label=[parts::named(&labels.save, &format!("{name}, {label}"))] { (labels.save) }
            }
            @if !field.hint.is_empty() { p .how { (field.hint) } }
        },
    )
}

/// What a field of yes or no may be, as it is shown.
fn yes_no(answers: &[String; 2]) -> impl Iterator<Item = (String, &str)> {
    let each = answers.iter();
    each.map(|answer| (answer.clone(), answer.as_str()))
}

fn hidden_subject(of: Subject) -> Markup {
    let json = serde_json::to_string(&of).expect("a subject is a name and an id");
    html! { input type="hidden" name="of" value=(json); }
}

fn kinds(labels: &SettingsLabels) -> impl Iterator<Item = (String, &str)> {
    labels
        .kinds
        .iter()
        .map(|kind| (crate::forms::name_of(&kind.kind), kind.name.as_str()))
}

fn pit_card(sheet: &Sheet<'_>, index: usize, pit: &Editable, labels: &SettingsLabels) -> Markup {
    let id = format!("band-{index}");
    let usual = |name: &str| {
        let found = pit.fields.iter().find(|field| field.field == name);
        found.map_or(String::new(), |field| field.value.clone())
    };
    let saw = pit
        .fields
        .iter()
        .find(|field| field.field.starts_with("band"))
        .and_then(|field| field.saw);
    let words = sheet.words;
    let hints = pit.fields.iter().map(|field| (&field.field, &field.hint));
    let mut hints = hints.filter(|(name, hint)| name.starts_with("band") && !hint.is_empty());
    let hint = hints.next().map(|(_, hint)| hint);
    let band = sheet.form(&id, "/settings/band", html! {
        (hidden_subject(pit.of))
        @if let Some(saw) = saw { input type="hidden" name="saw" value=(saw.0); }
        fieldset {
            legend { (words.band) }
            @if let Some(hint) = hint { p .how { (hint) } }
            div .row {
                (parts::field(sheet, &id, "low", &sheet.degrees(words.low), &usual("band_low"), Kind::Number))
                (parts::field(sheet, &id, "high", &sheet.degrees(words.high), &usual("band_high"), Kind::Number))
                (parts::field(sheet, &id, "minutes", words.band_minutes, &usual("band_minutes"), Kind::Number))
            }
            button .button aria-label=[parts::named(&labels.save, &format!("{}, {}", pit.name, words.band))] { (labels.save) }
        }
    });
    editable(sheet, &format!("pit-{index}"), pit, labels, band)
}

fn thermometer(sheet: &Sheet<'_>, index: usize, one: &Editable, labels: &SettingsLabels) -> Markup {
    let id = format!("bath-{index}");
    let baths = [
        ("ice".to_owned(), labels.ice.as_str()),
        ("boiling".into(), labels.boiling.as_str()),
    ];
    let bath = sheet.form(
        &id,
        "/settings/bath",
        html! {
            (hidden_subject(one.of))
            fieldset {
                legend { (labels.check) }
                div .row {
                    (parts::choice(sheet, &id, "against", &labels.check, baths, ""))
                    (parts::field(sheet, &id, "read", &sheet.degrees(&labels.read), "", Kind::Number))
                    (parts::field(sheet, &id, "altitude", &labels.altitude, "", Kind::Number))
                }
                button .button aria-label=[parts::named(&labels.save, &format!("{}, {}", one.name, labels.check))] { (labels.save) }
            }
        },
    );
    editable(sheet, &format!("thermometer-{index}"), one, labels, bath)
}

fn add_pit(sheet: &Sheet<'_>, labels: &SettingsLabels) -> Markup {
    let number =
        |name: &str, label: &str| parts::field(sheet, "add-pit", name, label, "", Kind::Number);
    html! {
        section .card {
            h3 { (labels.add_pit) }
            (sheet.form("add-pit", "/settings/pit", html! {
                (parts::field(sheet, "add-pit", "name", &labels.name, "", Kind::Text))
                (parts::choice(sheet, "add-pit", "kind", &labels.kind, kinds(labels), ""))
                (number("grate", &labels.grate))
                (number("alone", &format!("{} (min)", labels.alone)))
                button .button { (labels.add_pit) }
            }))
        }
    }
}

fn add_thermometer(sheet: &Sheet<'_>, labels: &SettingsLabels) -> Markup {
    html! {
        section .card {
            h3 { (labels.add_thermometer) }
            (sheet.form("add-thermometer", "/settings/thermometer", html! {
                (parts::field(sheet, "add-thermometer", "name", &labels.name, "", Kind::Text))
                button .button { (labels.add_thermometer) }
            }))
        }
    }
}
