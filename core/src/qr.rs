//! A short text as a QR code (ISO/IEC 18004): what a phone's own camera reads. Start at [`qr()`].

use qrcode::{Color, EcLevel, QrCode};
use serde::{Deserialize, Serialize};

/// The longest text that is drawn, bytes: above it the squares of a code on a phone's screen are too small for another
/// phone. Common practice, no source.
pub const QR_BYTES_MAX: usize = 1_000;

/// A QR code, without the bright edge of four squares that belongs around it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Qr {
    /// How many squares it is wide and high.
    pub side: i64,
    /// Its rows from the top, a letter for each square: `1` is dark, `0` is bright.
    pub rows: Vec<String>,
}

/// The code of `text`, which mends itself where up to 15 of 100 parts are dirty; none where it is longer than
/// [`QR_BYTES_MAX`].
pub fn qr(text: &str) -> Option<Qr> {
    if text.len() > QR_BYTES_MAX {
        return None;
    }
    let code = QrCode::with_error_correction_level(text, EcLevel::M).ok()?;
    let letter = |color: &Color| if *color == Color::Dark { '1' } else { '0' };
    let rows = code.to_colors();
    let rows = rows.chunks(code.width());
    Some(Qr {
        side: i64::try_from(code.width()).ok()?,
        rows: rows.map(|row| row.iter().map(letter).collect()).collect(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What an independent reader sees in the code, drawn with four pixels a square and its bright edge.
    fn seen(code: &Qr) -> String {
        let (edge, scale) = (4, 4);
        let side = code.side as usize;
        let rows: Vec<&[u8]> = code.rows.iter().map(String::as_bytes).collect();
        let is_dark = |x: usize, y: usize| {
            let at = |n: usize| (n / scale).checked_sub(edge).filter(|n| *n < side);
            matches!((at(x), at(y)), (Some(x), Some(y)) if rows[y][x] == b'1')
        };
        let pixels = (side + 2 * edge) * scale;
        let mut image = rqrr::PreparedImage::prepare_from_greyscale(pixels, pixels, |x, y| {
            if is_dark(x, y) { 0 } else { 255 }
        });
        let grids = image.detect_grids();
        assert_eq!(grids.len(), 1, "one code is seen");
        grids[0].decode().unwrap().1
    }

    #[test]
    fn an_independent_reader_sees_the_text_that_was_drawn() {
        let plain = r#"{"slowbend_card":1,"name":"Comida de la regata, año 2","meats":[{"cut":"spare_ribs"}]}"#;
        for text in [plain.to_owned(), "x".repeat(QR_BYTES_MAX)] {
            assert_eq!(seen(&qr(&text).unwrap()), text);
        }
    }

    #[test]
    fn what_is_too_long_is_not_drawn() {
        assert_eq!(qr(&"x".repeat(QR_BYTES_MAX + 1)), None);
        assert_eq!(qr(&"ñ".repeat(QR_BYTES_MAX / 2 + 1)), None);
    }
}
