//! Which texts are taken, and how they are cleaned. Start at [`Context::name`].
//!
//! What is kept is what can be read: control and invisible formatting characters are left out, so that no text can hide
//! or reorder another. Markup stays text: screens escape what they show.

use super::Context;
use crate::{
    error::Refused,
    safety::not_here,
    words::{
        Arg, Words,
        typed::{self, is_hidden},
    },
};

/// The most characters of one line: fuel, a vent, a spot, the pit's state. Common practice, no source.
pub const LINE_CHARS_MAX: usize = 200;
/// The most characters of a note. Common practice, no source.
pub const NOTE_CHARS_MAX: usize = 2_000;
/// The most characters of an instrument's or a channel's own name. Common practice, no source.
pub const LABEL_CHARS_MAX: usize = 120;

impl Context<'_> {
    /// A name: 1 to 60 characters.
    pub(super) fn name(&self, text: &str) -> Result<String, Refused> {
        Ok(typed::name(&self.say(), text)?)
    }

    /// The name of a meat or a dish: the same, and nothing that is not done here.
    pub(super) fn food_name(&self, text: &str) -> Result<String, Refused> {
        let name = self.name(text)?;
        match not_here(&name) {
            None => Ok(name),
            Some(what) => Err(self.say().refuse(what.key(), &[]).into()),
        }
    }

    /// One line, which may be empty.
    pub(super) fn line(&self, text: &str) -> Result<String, Refused> {
        let words: Vec<String> = text.split_whitespace().map(shown).collect();
        let line = words.join(" ").trim().to_owned();
        self.no_longer_than(line, LINE_CHARS_MAX)
    }

    /// A note of one or more lines, not empty.
    pub(super) fn note_text(&self, text: &str) -> Result<String, Refused> {
        note_text(&self.say(), text)
    }

    /// The name that an instrument gives itself or a channel: kept to the letter, because readings come under it.
    pub(super) fn label(&self, text: &str) -> Result<String, Refused> {
        let sound = !text.trim().is_empty() && !text.chars().any(is_hidden) && text.trim() == text;
        if !sound {
            let args = [("label", Arg::Text(&quoted(text)))];
            return Err(self.say().refuse("error-label", &args).into());
        }
        self.no_longer_than(text.to_owned(), LABEL_CHARS_MAX)
    }

    fn no_longer_than(&self, text: String, limit: usize) -> Result<String, Refused> {
        no_longer_than(&self.say(), text, limit)
    }
}

/// A note of one or more lines, not empty, for whoever reads `say`.
pub(crate) fn note_text(say: &Words<'_>, text: &str) -> Result<String, Refused> {
    let lines: Vec<String> = text.lines().map(shown).collect();
    let note = lines.join("\n").trim().to_owned();
    if note.is_empty() {
        return Err(say.refuse("error-note-empty", &[]).into());
    }
    no_longer_than(say, note, NOTE_CHARS_MAX)
}

fn no_longer_than(say: &Words<'_>, text: String, limit: usize) -> Result<String, Refused> {
    let length = text.chars().count();
    if length <= limit {
        return Ok(text);
    }
    let args = [
        ("length", Arg::Number(length as i64)),
        ("limit", Arg::Number(limit as i64)),
    ];
    Err(say.refuse("error-text-long", &args).into())
}

fn shown(text: &str) -> String {
    text.chars()
        .map(|c| if c == '\t' { ' ' } else { c })
        .filter(|c| !is_hidden(*c))
        .collect()
}

/// The beginning of a text that was refused, as it may stand in a sentence.
pub(super) fn quoted(text: &str) -> String {
    shown(text).chars().take(40).collect()
}
