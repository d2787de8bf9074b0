//! Content lines: ended by CRLF, folded after 75 octets, text escaped (RFC 5545, 3.1 and 3.3.11).

/// The longest line without its end, in octets.
const OCTETS: usize = 75;

/// The lines of a file.
#[derive(Debug, Default)]
pub(super) struct Lines(String);

impl Lines {
    /// A line as it is.
    pub(super) fn plain(&mut self, line: &str) {
        let mut width = 0;
        for c in line.chars() {
            if width + c.len_utf8() > OCTETS {
                self.0.push_str("\r\n ");
                width = 1;
            }
            self.0.push(c);
            width += c.len_utf8();
        }
        self.0.push_str("\r\n");
    }

    /// A property whose value is text.
    pub(super) fn value(&mut self, name: &str, text: &str) {
        self.plain(&format!("{name}:{}", escaped(text)));
    }

    /// All of them.
    pub(super) fn done(self) -> String {
        self.0
    }
}

/// Backslash, semicolon, comma and line breaks are written so that they are text; other control characters go.
fn escaped(text: &str) -> String {
    let mut out = String::new();
    for c in text.replace("\r\n", "\n").chars() {
        match c {
            '\\' | ';' | ',' => out.extend(['\\', c]),
            '\n' => out.push_str("\\n"),
            c if c.is_control() => {}
            c => out.push(c),
        }
    }
    out
}
