//! A code that a phone's camera reads (QR, ISO/IEC 18004), drawn. Start at [`code`].

use maud::{Markup, html};
use slowbend_core::qr::{Qr, qr};

/// Bright squares around a code, as the standard asks (from memory).
const QUIET: i64 = 4;

/// The code of `text`; none where the text is too long for one. `label` says what it is to whoever does not see it.
pub fn code(text: &str, label: &str) -> Option<Markup> {
    qr(text).map(|code| drawn(&code, label))
}

/// A code, dark on bright whatever the page's inks: a camera needs it so.
pub fn drawn(code: &Qr, label: &str) -> Markup {
    let side = code.side + 2 * QUIET;
    let path: String = (QUIET..)
        .zip(&code.rows)
        .map(|(y, row)| dark(y, row))
        .collect();
    html! {
        svg .code viewBox=(format!("0 0 {side} {side}")) role="img" aria-label=(label) shape-rendering="crispEdges" {
            rect width=(side) height=(side) fill="#fff" {}
            path d=(path) fill="#000" {}
        }
    }
}

/// The dark squares of one row, those that touch as one.
fn dark(y: i64, row: &str) -> String {
    let (mut path, mut x) = (String::new(), QUIET);
    for run in row.as_bytes().chunk_by(|a, b| a == b) {
        let width = run.len() as i64;
        if run[0] == b'1' {
            path.push_str(&format!("M{x} {y}h{width}v1h-{width}z"));
        }
        x += width;
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
        assert!(drawn.contains("aria-label=\"a code\"") && drawn.matches('M').count() > 100);
        assert!(code(&"x".repeat(4000), "").is_none());
    }

    #[test]
    fn every_dark_square_lies_in_one_run() {
        assert_eq!(dark(4, "1101"), "M4 4h2v1h-2zM7 4h1v1h-1z");
        assert_eq!(dark(4, "000"), "");
    }
}
