//! Names of cooks, meats, pits and thermometers as typed.

use super::{Arg, Refused, Words};

/// The most characters (Unicode scalar values) a name may have: what fits one line of a phone twice over. Common
/// practice, no source.
pub const NAME_CHARS_MAX: usize = 60;

/// Reads a name: trimmed, runs of spaces made one, control and invisible formatting characters taken out, 1 to
/// [`NAME_CHARS_MAX`] characters. Markup in it stays text: screens escape what they show.
pub fn name(say: &Words<'_>, text: &str) -> Result<String, Refused> {
    let spaced: String = text
        .chars()
        .map(|c| if c.is_whitespace() { ' ' } else { c })
        .collect();
    let shown: String = spaced.chars().filter(|&c| !is_hidden(c)).collect();
    let name = shown
        .split(' ')
        .filter(|word| !word.is_empty())
        .collect::<Vec<_>>()
        .join(" ");
    match name.chars().count() {
        0 => Err(say.refuse("error-name-empty", &[])),
        1..=NAME_CHARS_MAX => Ok(name),
        length => {
            let (length, limit) = (length as i64, NAME_CHARS_MAX as i64);
            Err(say.refuse(
                "error-name-long",
                &[
                    ("length", Arg::Number(length)),
                    ("limit", Arg::Number(limit)),
                ],
            ))
        }
    }
}

/// Control characters, and the marks that reorder or hide text around them (Unicode bidirectional controls, zero-width
/// space, byte order mark). Zero-width joiners stay: emoji and some scripts need them.
pub(crate) fn is_hidden(c: char) -> bool {
    c.is_control()
        || matches!(c, '\u{200b}' | '\u{200e}' | '\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}')
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, test_viewer};
    use super::*;

    #[test]
    fn a_name_is_kept_as_it_reads() {
        let viewer = test_viewer(Locale::EnUs);
        let say = Words::of(&viewer);
        let read = |text| name(&say, text).unwrap();
        assert_eq!(read("  The big\tdrum \n"), "The big drum");
        assert_eq!(read("drum\u{0}\u{1b}\u{202e}"), "drum");
        assert_eq!(
            read("<script>alert(1)</script>"),
            "<script>alert(1)</script>"
        );
        assert_eq!(read(&"ñ".repeat(60)), "ñ".repeat(60));
    }

    #[test]
    fn an_empty_or_endless_name_is_told_what_fits() {
        let viewer = test_viewer(Locale::EsUs);
        let say = Words::of(&viewer);
        let reason = |text| name(&say, text).unwrap_err().reason;
        assert_eq!(
            reason(" \u{200b}\u{7} "),
            "El nombre está vacío. Escribe al menos una letra."
        );
        assert_eq!(
            reason(&"x".repeat(61)),
            "El nombre tiene 61 caracteres. Acórtalo a 60 o menos."
        );
    }
}
