//! A CSV file of `core/tests/published`, read by its own columns.

/// One row: its cells, quotes taken off.
pub type Row = Vec<String>;

/// The rows without the head.
pub fn rows(text: &str) -> Vec<Row> {
    text.lines().skip(1).map(cells).collect()
}

fn cells(line: &str) -> Row {
    let mut cells = vec![String::new()];
    let mut quoted = false;
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            ',' if !quoted => cells.push(String::new()),
            c => cells.last_mut().expect("one cell").push(c),
        }
    }
    cells
}

/// A number with at most three decimals, in thousandths: "69.0" is 69,000.
pub fn milli(text: &str) -> i64 {
    let (whole, part) = text.split_once('.').unwrap_or((text, ""));
    format!("{whole}{part:0<3}").parse().expect("a number")
}
