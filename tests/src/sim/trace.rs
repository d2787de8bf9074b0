//! What happened in a run, line by line, and the one hash of it (law 7).

use std::fmt;

/// The lines of a run.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Trace {
    lines: Vec<String>,
}

impl Trace {
    /// Adds a line.
    pub fn say(&mut self, line: String) {
        self.lines.push(line);
    }

    /// BLAKE3 of all lines.
    pub fn hash(&self) -> String {
        let mut hasher = blake3::Hasher::new();
        for line in &self.lines {
            hasher
                .update(&(line.len() as u64).to_le_bytes())
                .update(line.as_bytes());
        }
        hasher.finalize().to_hex().to_string()
    }

    /// The lines.
    pub fn lines(&self) -> &[String] {
        &self.lines
    }
}

impl fmt::Display for Trace {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.lines.iter().try_for_each(|line| writeln!(f, "{line}"))
    }
}
