//! The table: rows with what they have to reach. Start at [`Row`].

use super::Pair;
use std::time::Duration;

/// What the ratio has to be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reach {
    /// No more than this.
    AtMost(f64),
    /// No less than this.
    AtLeast(f64),
    /// Anything: the row is there to be read.
    Told,
}

/// One line of the table.
#[derive(Clone, Debug)]
pub struct Row {
    /// What was measured.
    pub name: String,
    /// Ours, with its unit.
    pub ours: String,
    /// The peer's, or the limit.
    pub peer: String,
    /// Ours over the peer's.
    pub ratio: Option<f64>,
    /// What the ratio has to be.
    pub reach: Reach,
}

impl Row {
    /// A ratio of two times.
    pub fn of(name: &str, pair: Pair, most: f64) -> Self {
        Self {
            name: name.into(),
            ours: time(pair.ours),
            peer: time(pair.peer),
            ratio: Some(pair.ratio()),
            reach: Reach::AtMost(most),
        }
    }

    /// A time that has a limit of its own.
    pub fn within(name: &str, ours: Duration, limit: Duration) -> Self {
        Self {
            name: name.into(),
            ours: time(ours),
            peer: format!("limit {}", time(limit)),
            ratio: Some(ours.as_secs_f64() / limit.as_secs_f64()),
            reach: Reach::AtMost(1.0),
        }
    }

    /// Something to be read beside the rest.
    pub fn told(name: &str, ours: impl Into<String>, peer: impl Into<String>) -> Self {
        Self {
            name: name.into(),
            ours: ours.into(),
            peer: peer.into(),
            ratio: None,
            reach: Reach::Told,
        }
    }

    /// Whether the ratio is what it has to be.
    pub fn is_ok(&self) -> bool {
        match (self.reach, self.ratio) {
            (Reach::AtMost(most), Some(ratio)) => ratio <= most,
            (Reach::AtLeast(least), Some(ratio)) => ratio >= least,
            (Reach::Told, _) => true,
            (_, None) => false,
        }
    }

    fn cells(&self) -> [String; 6] {
        let (reach, said) = match self.reach {
            Reach::AtMost(most) => (
                format!("≤ {most}"),
                if self.is_ok() { "ok" } else { "short" },
            ),
            Reach::AtLeast(least) => (
                format!("≥ {least}"),
                if self.is_ok() { "ok" } else { "short" },
            ),
            Reach::Told => ("-".into(), "-"),
        };
        let ratio = self.ratio.map_or("-".into(), number);
        [
            self.name.clone(),
            self.ours.clone(),
            self.peer.clone(),
            ratio,
            reach,
            said.into(),
        ]
    }
}

/// Three decimals, or as many digits as a small one needs to be seen.
fn number(ratio: f64) -> String {
    if ratio < 0.01 {
        format!("{ratio:.1e}")
    } else {
        format!("{ratio:.3}")
    }
}

/// The rows under a heading, in columns.
pub fn table(rows: &[Row]) -> String {
    let heading = ["name", "ours", "peer", "ratio", "reach", ""].map(String::from);
    let cells: Vec<[String; 6]> = std::iter::once(heading)
        .chain(rows.iter().map(Row::cells))
        .collect();
    let width = |i: usize| {
        cells
            .iter()
            .map(|row| row[i].chars().count())
            .max()
            .unwrap_or(0)
    };
    let widths: Vec<usize> = (0..6).map(width).collect();
    let line = |row: &[String; 6]| {
        let padded = row
            .iter()
            .zip(&widths)
            .map(|(cell, width)| format!("{cell:<width$}"));
        padded.collect::<Vec<_>>().join("  ").trim_end().to_owned()
    };
    cells.iter().map(line).collect::<Vec<_>>().join("\n")
}

/// A time in the unit that suits it.
pub fn time(time: Duration) -> String {
    let seconds = time.as_secs_f64();
    match seconds {
        s if s >= 1.0 => format!("{s:.2} s"),
        s if s >= 1e-3 => format!("{:.2} ms", s * 1e3),
        s => format!("{:.1} µs", s * 1e6),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_row_is_short_where_its_ratio_is_missing_or_past_its_reach() {
        let row = |ratio, reach| Row {
            ratio,
            reach,
            ..Row::told("", "", "")
        };
        assert!(row(Some(1.25), Reach::AtMost(1.25)).is_ok());
        assert!(!row(Some(1.26), Reach::AtMost(1.25)).is_ok());
        assert!(row(Some(0.5), Reach::AtLeast(0.5)).is_ok());
        assert!(!row(Some(0.49), Reach::AtLeast(0.5)).is_ok());
        assert!(!row(None, Reach::AtMost(1.0)).is_ok());
        assert!(row(None, Reach::Told).is_ok());
    }
}
