//! `slowbend card`: cook cards from a terminal or a script.

use super::{Opened, end::End, import::into, open, out::print};
use clap::Subcommand;
use slowbend_core::{
    card::{self, BYTES_MAX, CardAsk, CardRead},
    ids::DeviceId,
    screens::card_words,
    words::{Viewer, Words},
};
use std::{
    fs::File,
    io::{self, Read, Write},
    path::{Path, PathBuf},
};

/// What is asked.
#[derive(Subcommand)]
pub enum Asked {
    /// Write the card of a cook, to a file or to standard output.
    Make {
        /// The cook: its id or its name.
        #[arg(value_name = "COOK")]
        cook: String,
        /// The file to write, which must not be there yet; - or nothing is standard output.
        #[arg(value_name = "FILE")]
        to: Option<PathBuf>,
        /// Who wrote it.
        #[arg(long, value_name = "WHO", default_value = "")]
        by: String,
        /// Let the notes of the cook go along.
        #[arg(long)]
        notes: bool,
    },
    /// Read a card, and say in plain words what is on it; nothing is recorded.
    Show {
        /// The file; - or nothing is standard input.
        #[arg(value_name = "FILE")]
        from: Option<PathBuf>,
    },
    /// Print the JSON Schema of a card.
    Schema,
}

/// Does what is asked.
///
/// # Errors
/// Where the cook is not there, the card cannot be read, or a file cannot be written.
pub fn run(data: Option<PathBuf>, asked: &Asked) -> Result<(), End> {
    match asked {
        Asked::Make {
            cook,
            to,
            by,
            notes,
        } => {
            let ask = CardAsk {
                by: by.clone(),
                notes: *notes,
            };
            let card = make(&mut open::open(data)?, cook, &ask)?;
            match to.as_deref().filter(|to| to.as_os_str() != "-") {
                Some(to) => keep(to, &card),
                None => Ok(print(&format!("{card}\n"))?),
            }
        }
        Asked::Show { from } => Ok(print(&show(&text(from.as_deref())?)?)?),
        Asked::Schema => Ok(print(&schema())?),
    }
}

fn make(opened: &mut Opened, cook: &str, ask: &CardAsk) -> Result<String, End> {
    let viewer = opened.viewer()?;
    let cook = into::cook(opened, &viewer, Some(cook))?;
    let moment = opened.moment();
    Ok(opened.door.card(&viewer, cook, ask, &moment)?.file)
}

fn keep(to: &Path, card: &str) -> Result<(), End> {
    let made = File::create_new(to).and_then(|mut file| {
        writeln!(file, "{card}")?;
        file.sync_all()
    });
    made.map_err(|error| {
        let place = to.display();
        End::refused(format!(
            "{place} could not be made ({error}). Choose another name, or make room."
        ))
    })
}

/// No more is read than a card can be.
pub fn text(from: Option<&Path>) -> Result<String, End> {
    let from = from.filter(|from| from.as_os_str() != "-");
    let most = BYTES_MAX as u64 + 1;
    let mut text = String::new();
    let read = match from {
        Some(from) => File::open(from).and_then(|file| file.take(most).read_to_string(&mut text)),
        None => io::stdin().take(most).read_to_string(&mut text),
    };
    read.map_err(|error| {
        End::refused(format!(
            "The card cannot be read ({error}). Give a file, or its text on standard input."
        ))
    })?;
    Ok(text)
}

/// What is on the card, and what was left out of it.
fn show(text: &str) -> Result<String, End> {
    let clock = crate::clock::Clock::machine();
    let zone = crate::zone::of_machine();
    let viewer = Viewer {
        locale: open::locale(),
        zone: zone.clone(),
        ..Viewer::default_for(DeviceId(uuid::Uuid::nil()))
    };
    let CardRead { card, told } = card::read(&Words::of(&viewer), text)?;
    let told: String = told.iter().map(|told| format!("{told}\n")).collect();
    let words = card_words(&viewer, &card, &clock.moment(&zone));
    Ok(format!("{words}\n{told}"))
}

/// The schema, as `docs/cook-card.schema.json` has it.
fn schema() -> String {
    format!(
        "{:#}\n",
        serde_json::json!(schemars::schema_for!(card::Card))
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    const KEPT: &str = include_str!("../../../docs/cook-card.schema.json");
    const EXAMPLE: &str = include_str!("../../../docs/cook-card.example.json");

    /// Written anew by `cargo test -p slowbend -- --ignored write_the_schema`.
    #[test]
    #[ignore = "writes a document"]
    fn write_the_schema() {
        let place = concat!(env!("CARGO_MANIFEST_DIR"), "/../docs/cook-card.schema.json");
        std::fs::write(place, schema()).unwrap();
    }

    #[test]
    fn the_schema_in_the_documents_is_that_of_the_code() {
        assert!(
            KEPT == schema(),
            "write it anew: cargo test -p slowbend -- --ignored write_the_schema"
        );
    }

    #[test]
    fn the_example_in_the_documents_is_shown_and_uses_every_field() {
        let shown = show(EXAMPLE).unwrap_or_else(|end| panic!("{}", end.reason()));
        assert!(
            shown.contains("Regatta lunch") && !shown.contains('⟨'),
            "{shown}"
        );
        let schema: serde_json::Value = serde_json::from_str(KEPT).unwrap();
        let all = schema["$defs"]
            .as_object()
            .unwrap()
            .values()
            .chain([&schema]);
        let fields = all.filter_map(|shape| shape["properties"].as_object());
        for field in fields.flat_map(|fields| fields.keys()) {
            assert!(
                EXAMPLE.contains(&format!("\"{field}\"")) || field == "after_min",
                "{field}"
            );
        }
    }

    #[test]
    fn what_is_no_card_ends_with_what_to_do() {
        assert!(show("{}").unwrap_err().reason().contains("slowbend_card"));
    }
}
