//! The log as a file: comma-separated values by RFC 4180, lines ended by CR and LF.

use super::TempLogRow;

/// The file, its first row the columns.
pub(super) fn text(columns: &[String], rows: &[TempLogRow]) -> String {
    let mut out = line(columns.iter().map(String::as_str));
    for row in rows {
        out.push_str(&line(row.cells().into_iter()));
    }
    out
}

/// "temperature-log-regatta-lunch.csv": letters and digits of the name, the rest as hyphens.
pub(super) fn file_name(cook: &str) -> String {
    let letters = cook.chars().map(|c| match c.is_ascii_alphanumeric() {
        true => c.to_ascii_lowercase(),
        false => '-',
    });
    let name: String = letters.take(60).collect();
    let name: Vec<&str> = name.split('-').filter(|part| !part.is_empty()).collect();
    match name.is_empty() {
        true => "temperature-log.csv".into(),
        false => format!("temperature-log-{}.csv", name.join("-")),
    }
}

fn line<'f>(fields: impl Iterator<Item = &'f str>) -> String {
    let fields: Vec<String> = fields.map(field).collect();
    format!("{}\r\n", fields.join(","))
}

/// In quotes, so that no name breaks a row; what a spreadsheet would take for a formula gets an apostrophe before it, as a
/// person typing it there would do.
fn field(text: &str) -> String {
    let formula = text.starts_with(['=', '+', '-', '@', '\t', '\r']);
    let guard = if formula { "'" } else { "" };
    format!("\"{guard}{}\"", text.replace('"', "\"\""))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_name_breaks_a_row_or_becomes_a_formula() {
        let row = TempLogRow {
            at: 0,
            when: "2:00 PM".into(),
            item: "Ana's \"best\", slab".into(),
            temperature: "165 °F".into(),
            thermometer: "=1+1".into(),
            who: "Ben\nand Ana".into(),
            action: String::new(),
        };
        assert_eq!(
            text(&["Time".into()], &[row]),
            "\"Time\"\r\n\"2:00 PM\",\"Ana's \"\"best\"\", slab\",\"165 °F\",\"'=1+1\",\"Ben\nand Ana\",\"\"\r\n"
        );
    }

    #[test]
    fn a_file_name_is_plain_whatever_the_cook_is_called() {
        assert_eq!(
            file_name("Regatta lunch"),
            "temperature-log-regatta-lunch.csv"
        );
        assert_eq!(file_name("../../ñ"), "temperature-log.csv");
    }
}
