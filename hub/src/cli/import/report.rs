//! What is said of an import: its plan, its progress, and what was taken and what was not.

use slowbend_core::{
    readings::{ImportPlan, Report, Told},
    words::Words,
};
use std::{
    fs::File,
    io::{self, IsTerminal, Read},
};

/// The plan in a line, so that a wrong guess is seen.
pub fn planned(plan: &ImportPlan) -> String {
    let temps = plan
        .temp_columns
        .iter()
        .map(|temp| format!("{} {} ({})", temp.column + 1, temp.sensor, temp.unit.sign()));
    let temps: Vec<_> = temps.collect();
    format!(
        "Reading {}: times in column {}, zone {}; temperatures in {}.",
        plan.source,
        plan.time_column + 1,
        plan.zone,
        temps.join(", ")
    )
}

/// Each count, and the first reasons.
pub fn reported(report: &Report, say: &Words<'_>, now: i64) -> String {
    let mut lines = vec![format!(
        "Rows {}. Readings taken {}, doubled {}, refused {}, empty {}.",
        report.rows, report.taken, report.doubled, report.refused, report.blank
    )];
    if let (Some(from), Some(to)) = (report.from, report.to) {
        lines.push(format!(
            "They run from {} to {}.",
            say.clock_day(from, now),
            say.clock_day(to, now)
        ));
    }
    if report.out_of_order > 0 {
        lines.push(format!(
            "{} were out of order and were put in order.",
            report.out_of_order
        ));
    }
    lines.extend(
        report
            .first_refusals
            .iter()
            .map(|refused| refused.said(say)),
    );
    for jump in &report.first_jumps {
        let (before, after) = (
            say.temperature(jump.before.temp),
            say.temperature(jump.reading.temp),
        );
        lines.push(format!(
            "Line {}, {}: jumps from {before} to {after}; kept. Was the probe moved?",
            jump.line, jump.sensor
        ));
    }
    lines.join("\n") + "\n"
}

/// Says on a terminal how far the file has come, each tenth of it.
pub struct Progress {
    file: File,
    bytes: u64,
    read: u64,
    told: u64,
}

impl Progress {
    /// Over a file that is open.
    pub fn over(file: File) -> Self {
        let bytes = file.metadata().map_or(0, |known| known.len());
        Self {
            file,
            bytes,
            read: 0,
            told: 0,
        }
    }
}

impl Read for Progress {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        let count = self.file.read(into)?;
        self.read += count as u64;
        let tenths = (self.read * 10).checked_div(self.bytes).unwrap_or(0);
        if tenths > self.told && io::stderr().is_terminal() {
            self.told = tenths;
            eprint!("\r{} %", tenths * 10);
            if tenths == 10 {
                eprintln!();
            }
        }
        Ok(count)
    }
}
