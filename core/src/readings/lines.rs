//! Which line of a file the parser is on. CRLF is one line end, and so is a lone CR.

/// Where the parser is.
#[derive(Default)]
pub struct Lines {
    /// The line that it has come to, from 1.
    pub line: u64,
    /// The line that the row at hand begins on.
    pub begun: u64,
    inside: bool,
    after_cr: bool,
    /// True when the row at hand was cut by the end of a block after an odd number of quotes.
    pub odd_quotes: bool,
}

impl Lines {
    /// At the start of a file.
    pub fn first() -> Self {
        Self {
            line: 1,
            ..Self::default()
        }
    }

    /// Passes over what the parser took; `ended` when that ends a row.
    #[inline]
    pub fn pass(&mut self, mut taken: &[u8], ended: bool) {
        if !self.inside {
            taken = self.line_ends(taken);
            (self.begun, self.odd_quotes) = (self.line, false);
            self.inside = !taken.is_empty();
        }
        let (body, end) = match taken {
            [body @ .., end @ (b'\n' | b'\r')] if ended => (body, Some(*end)),
            body => (body, None),
        };
        self.line += count(body, b'\n');
        if !ended {
            self.odd_quotes ^= count(body, b'"') % 2 == 1;
        }
        if ended {
            self.inside = false;
            self.after_cr = end == Some(b'\r');
            self.line += u64::from(end.is_some());
        }
    }

    /// Counts the line ends at the front, and gives what follows them.
    #[inline]
    fn line_ends<'a>(&mut self, mut taken: &'a [u8]) -> &'a [u8] {
        while let [end @ (b'\n' | b'\r'), rest @ ..] = taken {
            self.line += u64::from(!(self.after_cr && *end == b'\n'));
            self.after_cr = *end == b'\r';
            taken = rest;
        }
        taken
    }
}

#[inline]
fn count(bytes: &[u8], wanted: u8) -> u64 {
    bytes.iter().filter(|byte| **byte == wanted).count() as u64
}
