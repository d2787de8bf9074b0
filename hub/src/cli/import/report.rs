//! What is said of an import: its plan, its progress, and what was taken and what was not.

use slowbend_core::{
    readings::{ImportPlan, Report, Told},
    words::{Locale, Words},
};
use std::{
    fs::File,
    io::{self, IsTerminal, Read},
};

/// The plan in a line, so that a wrong guess is seen.
pub fn planned(plan: &ImportPlan, locale: Locale) -> String {
    let temps = plan
        .temp_columns
        .iter()
        .map(|temp| format!("{} {} ({})", temp.column + 1, temp.sensor, temp.unit.sign()));
    let temps: Vec<_> = temps.collect();
    let (source, column, zone) = (&plan.source, plan.time_column + 1, &plan.zone);
    let temps = temps.join(", ");
    match locale {
        Locale::EnUs => format!(
            "Reading {source}: times in column {column}, zone {zone}; temperatures in {temps}."
        ),
        Locale::EsUs => format!(
            "Leyendo {source}: horas en la columna {column}, zona {zone}; temperaturas en {temps}."
        ),
    }
}

/// Each count, and the first reasons.
pub fn reported(report: &Report, say: &Words<'_>, now: i64) -> String {
    let locale = say.viewer().locale;
    let either = |english: String, spanish: String| match locale {
        Locale::EnUs => english,
        Locale::EsUs => spanish,
    };
    let (rows, taken, doubled) = (report.rows, report.taken, report.doubled);
    let (refused, blank, late) = (report.refused, report.blank, report.out_of_order);
    let mut lines = vec![either(
        format!(
            "Rows {rows}. Readings taken {taken}, doubled {doubled}, refused {refused}, empty {blank}."
        ),
        format!(
            "Filas {rows}. Lecturas guardadas {taken}, repetidas {doubled}, rechazadas {refused}, vacías {blank}."
        ),
    )];
    if let (Some(from), Some(to)) = (report.from, report.to) {
        let (from, to) = (say.clock_day(from, now), say.clock_day(to, now));
        lines.push(either(
            format!("They run from {from} to {to}."),
            format!("Van de {from} a {to}."),
        ));
    }
    if late > 0 {
        lines.push(either(
            format!("{late} were out of order and were put in order."),
            format!("{late} estaban fuera de orden y se ordenaron."),
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
        let (line, sensor) = (jump.line, &jump.sensor);
        lines.push(either(
            format!(
                "Line {line}, {sensor}: jumps from {before} to {after}; kept. Was the probe moved?"
            ),
            format!(
                "Línea {line}, {sensor}: salta de {before} a {after}; se guardó. ¿Se movió la sonda?"
            ),
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
