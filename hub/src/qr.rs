//! A text as a code that a phone's camera reads (QR, ISO/IEC 18004). Start at [`code`].

use maud::{Markup, html};
use qrcode::{Color, EcLevel, QrCode};
use std::fmt::Write;

/// Empty modules around a code, as the standard asks (from memory).
const QUIET: usize = 4;

/// The code of `text`, drawn dark on light whatever the page's inks; none where the text is too long for any code. `label`
/// says what it is to whoever does not see it.
pub fn code(text: &str, label: &str) -> Option<Markup> {
    let code = QrCode::with_error_correction_level(text, EcLevel::M).ok()?;
    let side = code.width() + 2 * QUIET;
    Some(html! {
        svg .code viewBox=(format!("0 0 {side} {side}")) role="img" aria-label=(label) shape-rendering="crispEdges" {
            rect width=(side) height=(side) fill="#fff" {}
            path d=(dark(&code)) fill="#000" {}
        }
    })
}

/// Every dark module as a square of one.
fn dark(code: &QrCode) -> String {
    let (width, colors) = (code.width(), code.to_colors());
    let mut path = String::new();
    for (index, _) in colors
        .iter()
        .enumerate()
        .filter(|(_, color)| **color == Color::Dark)
    {
        let (x, y) = (index % width + QUIET, index / width + QUIET);
        // Writing to a string never fails.
        let _ = write!(path, "M{x} {y}h1v1h-1z");
    }
    path
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_fits_is_drawn_and_what_does_not_is_none() {
        let drawn = code("https://192.168.1.20:7410/join/0123", "a code")
            .unwrap()
            .into_string();
        assert!(drawn.contains("aria-label=\"a code\"") && drawn.matches('M').count() > 200);
        assert!(code(&"x".repeat(4000), "").is_none());
    }
}
