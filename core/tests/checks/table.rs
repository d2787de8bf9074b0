//! A table of verdicts: its axes, all their combinations, and rows that say the same joined into one.

use crate::cases::judge;
use slowbend_core::{checks::*, units::Mk};
use std::collections::BTreeMap;

/// One thing that varies: its name and the labels of its values.
pub struct Axis {
    pub name: &'static str,
    pub labels: Vec<String>,
}

pub fn axis(name: &'static str, labels: impl IntoIterator<Item = impl Into<String>>) -> Axis {
    Axis {
        name,
        labels: labels.into_iter().map(Into::into).collect(),
    }
}

/// Axis of a test's results, "not tried" first.
pub fn results(name: &'static str, all: &[TestResult]) -> Axis {
    let labels = all.iter().map(|result| {
        result
            .key()
            .split_once('-')
            .expect("a key has a dash")
            .1
            .to_owned()
    });
    axis(name, std::iter::once("-".to_owned()).chain(labels))
}

pub fn heats(name: &'static str, degrees: &[Mk]) -> Axis {
    let fahrenheit = |mk: Mk| mk.f_tenths() / 10;
    let label = |mk: &Mk| match fahrenheit(*mk) {
        exact if Mk::from_f(exact) == *mk => format!("{exact} F"),
        _ => format!("<{} F", fahrenheit(Mk(mk.0 + 1))),
    };
    axis(
        name,
        std::iter::once("-".to_owned()).chain(degrees.iter().map(label)),
    )
}

/// The input that a choice of one value on each axis makes.
pub type Make = Box<dyn Fn(&[usize]) -> VerdictInput>;

/// A table: its axes, and the input that a choice of one value on each makes.
pub struct Table {
    pub cut: Cut,
    pub axes: Vec<Axis>,
    pub make: Make,
}

/// All choices of one value on each axis.
pub fn choices(axes: &[Axis]) -> Vec<Vec<usize>> {
    axes.iter().fold(vec![vec![]], |all, axis| {
        let extended = |choice: &Vec<usize>| {
            let choice = choice.clone();
            (0..axis.labels.len()).map(move |n| [choice.as_slice(), &[n]].concat())
        };
        all.iter().flat_map(extended).collect()
    })
}

fn cell(verdict: &Verdict) -> String {
    let next = verdict
        .next_check_minutes
        .map_or("no more checks".into(), |minutes| {
            format!("next {minutes} min")
        });
    format!("{:?}, {:?}, {next}", verdict.state, verdict.safety.state)
}

/// Rows as sets of values per axis, one bit for each value.
pub type Rows = BTreeMap<Vec<u32>, String>;

/// Joins rows that differ on one axis only and say the same.
fn fold(mut rows: Rows, axes: usize) -> Rows {
    for axis in (0..axes).rev() {
        let mut joined: BTreeMap<(Vec<u32>, String), u32> = BTreeMap::new();
        for (mut row, cell) in rows {
            let bits = std::mem::take(&mut row[axis]);
            *joined.entry((row, cell)).or_default() |= bits;
        }
        let restore = |((mut row, cell), bits): ((Vec<u32>, String), u32)| {
            row[axis] = bits;
            (row, cell)
        };
        rows = joined.into_iter().map(restore).collect();
    }
    rows
}

fn label(axis: &Axis, bits: u32) -> String {
    if bits == (1 << axis.labels.len()) - 1 {
        return "any".into();
    }
    let chosen = axis
        .labels
        .iter()
        .enumerate()
        .filter(|(n, _)| bits & (1 << n) != 0);
    chosen
        .map(|(_, label)| label.as_str())
        .collect::<Vec<_>>()
        .join("/")
}

pub fn render(table: &Table) -> String {
    let mut rows = Rows::new();
    let mut hasher = blake3::Hasher::new();
    let choices = choices(&table.axes);
    for choice in &choices {
        let verdict = judge(&(table.make)(choice));
        hasher.update(&serde_json::to_vec(&verdict).expect("a verdict is JSON"));
        rows.insert(choice.iter().map(|n| 1 << n).collect(), cell(&verdict));
    }
    let rows = fold(fold(rows, table.axes.len()), table.axes.len());
    let names: Vec<_> = table.axes.iter().map(|axis| axis.name).collect();
    let mut lines = vec![
        format!("# What is said of {:?}, intact, for each of {} combinations, in {} rows.", table.cut, choices.len(), rows.len()),
        "# Written by: cargo test -p slowbend-core --test checks -- --ignored write_tables".into(),
        "# A row stands for every combination of the values it lists; \"-\" = not tried, a slash = or, \"<\" = 1 mK less.".into(),
        format!("# Fingerprint of the whole verdicts, in order (BLAKE3): {}", hasher.finalize()),
        format!("# {} => state, safety, next check", names.join(" | ")),
    ];
    lines.extend(rows.iter().map(|(row, cell)| {
        let labels: Vec<_> = table
            .axes
            .iter()
            .zip(row)
            .map(|(axis, bits)| label(axis, *bits))
            .collect();
        format!("{} => {cell}", labels.join(" | "))
    }));
    lines.join("\n") + "\n"
}
