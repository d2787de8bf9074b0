//! Text from anybody, as it can be read: what hides or reorders other text is taken out, and that is told.

use super::fields::Place;
use crate::{
    acts::decide::{LINE_CHARS_MAX, note_text},
    error::Refused,
    words::{
        Words,
        typed::{self, is_hidden},
    },
};

/// A name of 1 to 60 characters.
pub(super) fn name(say: &Words<'_>, place: &Place, text: &str) -> Result<String, Refused> {
    typed::name(say, text).map_err(|refused| place.refused(say, &refused.reason))
}

/// One line of up to 200 characters; none where nothing can be read in it.
pub(super) fn line(say: &Words<'_>, place: &Place, text: &str) -> Result<Option<String>, Refused> {
    let words = text.split_whitespace().map(shown);
    let line = words.collect::<Vec<_>>().join(" ").trim().to_owned();
    match line.chars().count() {
        0 => Ok(None),
        1..=LINE_CHARS_MAX => Ok(Some(line)),
        _ => Err(place.too_long(say, LINE_CHARS_MAX)),
    }
}

/// A note of up to 2,000 characters.
pub(super) fn note(say: &Words<'_>, place: &Place, text: &str) -> Result<String, Refused> {
    note_text(say, text).map_err(|refused| place.refused(say, &refused.reason))
}

/// Whether there is something in `text` that cannot be seen; line ends and tabs are no tricks.
pub(super) fn hides(text: &str) -> bool {
    text.chars()
        .any(|c| is_hidden(c) && !matches!(c, '\n' | '\r' | '\t'))
}

/// The letters of a text that can be seen.
pub(super) fn shown(text: &str) -> String {
    text.chars().filter(|c| !is_hidden(*c)).collect()
}
