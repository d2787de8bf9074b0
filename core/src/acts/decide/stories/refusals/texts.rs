//! Texts that cannot be shown.

use super::*;

#[test]
fn no_text_is_taken_that_cannot_be_shown() {
    let (mut night, r) = Night::on_the_pits();
    let (cook, about) = (r.cook, Subject::Crew);
    let note = |text: String| Act::Note { cook, about, text };
    let bind = |source: &str, sensor: &str| Act::BindProbe {
        cook,
        source: source.into(),
        sensor: sensor.into(),
        place: Where::Pit { pit: r.drum },
        thermometer: None,
    };
    let pit = |name: String| Act::AddPit {
        name,
        kind: PitKind::Drum,
        grate_cm2: None,
        alone_minutes: None,
    };
    let (empty, es_empty) = ("The name is empty.", "El nombre está vacío.");
    let rows = vec![
        (pit("\u{200b} \u{7}".into()), empty, es_empty),
        (
            Act::AddThermometer {
                name: String::new(),
            },
            empty,
            es_empty,
        ),
        (Act::NameDevice { name: " ".into() }, empty, es_empty),
        (start("", vec![]), empty, es_empty),
        (
            set(Subject::Piece(r.butt), Field::Name(" ".into())),
            empty,
            es_empty,
        ),
        (
            pit("x".repeat(61)),
            "The name has 61 characters.",
            "El nombre tiene 61 caracteres.",
        ),
        (
            note(" \n\t\u{202e}".into()),
            "The note is empty.",
            "La nota está vacía.",
        ),
        (note("x".repeat(2_001)), "That has 2", "Eso tiene 2"),
        (
            Act::TakeWatch {
                note: "x".repeat(201),
            },
            "That has 201 characters. Shorten it to 200",
            "Eso tiene 201 caracteres. Acórtalo a 200",
        ),
        (
            bind("", "P1"),
            "“” cannot name a probe.",
            "“” no puede ser el nombre de una sonda.",
        ),
        (
            bind("box", " P1"),
            "“ P1” cannot name a probe.",
            "“ P1” no puede ser el nombre",
        ),
        (
            bind("box", "P\u{0}1"),
            "“P1” cannot name a probe.",
            "“P1” no puede ser el nombre",
        ),
        (
            bind(&"x".repeat(121), "P1"),
            "That has 121 characters.",
            "Eso tiene 121 caracteres.",
        ),
        (
            start("Lunch", vec![meat(Cut::PorkButt, "", None); 61]),
            "At most 60 meats can be added at once.",
            "Se pueden agregar a lo más 60 carnes",
        ),
    ];
    refuse_all(&mut night, rows);
}
