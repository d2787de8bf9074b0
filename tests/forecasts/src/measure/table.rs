//! The tables that are printed.

use super::{Scored, bootstrap, mean, median};

/// All scores of one forecast.
#[derive(Clone, Debug)]
pub struct Column {
    /// Its name.
    pub name: &'static str,
    /// Its scores, in the order of the cooks and moments, the same for each column.
    pub rows: Vec<Scored>,
}

type Value = fn(&Scored) -> f64;

/// Prints all tables.
pub fn print(columns: &[Column]) {
    by_tenth(
        "CRPS, minutes, by tenth of the cook that is left (1 = the last)",
        columns,
        |row| row.crps,
    );
    by_hours(
        "mean absolute error of the middle, minutes, by hours to go",
        columns,
        |row| row.to_go,
        |row| row.error,
    );
    by_hours(
        "mean of middle less truth, minutes, by hours to go",
        columns,
        |row| row.to_go,
        |row| row.late,
    );
    by_hours(
        "the same, by hours that each said were to go",
        columns,
        |row| row.to_go + row.late,
        |row| row.late,
    );
    two_hours(columns);
    whole(columns);
    coverage(columns);
    against(columns);
}

fn head(title: &str, first: &str, columns: &[Column]) {
    println!(
        "\n{title}\n\n| {first} | n |{}",
        columns
            .iter()
            .map(|column| format!(" {} |", column.name))
            .collect::<String>()
    );
    println!("|---|---|{}", "---|".repeat(columns.len()));
}

fn line(first: &str, columns: &[Column], within: impl Fn(&Scored) -> bool, value: Value) {
    let of = |column: &Column| {
        column
            .rows
            .iter()
            .filter(|row| within(row))
            .map(value)
            .collect::<Vec<_>>()
    };
    let n = columns.first().map_or(0, |column| of(column).len());
    if n > 0 {
        let cells: String = columns
            .iter()
            .map(|column| format!(" {:.1} |", mean(of(column).into_iter())))
            .collect();
        println!("| {first} | {n} |{cells}");
    }
}

fn by_tenth(title: &str, columns: &[Column], value: Value) {
    head(title, "tenth", columns);
    for tenth in 0..10 {
        line(
            &(tenth + 1).to_string(),
            columns,
            |row| row.tenth == tenth,
            value,
        );
    }
    line("all", columns, |_| true, value);
}

fn by_hours(title: &str, columns: &[Column], of: Value, value: Value) {
    head(title, "hours", columns);
    for (low, high) in [
        (0.0, 0.5),
        (0.5, 1.0),
        (1.0, 2.0),
        (2.0, 3.0),
        (3.0, 5.0),
        (5.0, 8.0),
        (8.0, 30.0),
    ] {
        let within = |row: &Scored| (low..high).contains(&(of(row) / 60.0));
        line(&format!("{low} to {high}"), columns, within, value);
    }
}

fn two_hours(columns: &[Column]) {
    head(
        "median absolute error two hours before it was done (110 to 130 min), minutes",
        "",
        columns,
    );
    let of = |column: &Column| {
        let near = column
            .rows
            .iter()
            .filter(|row| (110.0..130.0).contains(&row.to_go));
        near.map(|row| row.error).collect::<Vec<_>>()
    };
    let n = columns.first().map_or(0, |column| of(column).len());
    let cells: String = columns
        .iter()
        .map(|column| format!(" {:.1} |", median(of(column))))
        .collect();
    println!("| median | {n} |{cells}");
}

fn whole(columns: &[Column]) {
    head("pinball loss, minutes, over all", "at", columns);
    let at: [(&str, Value); 3] = [
        ("10 %", |row| row.pinball[0]),
        ("50 %", |row| row.pinball[1]),
        ("90 %", |row| row.pinball[2]),
    ];
    for (name, value) in at {
        line(name, columns, |_| true, value);
    }
}

fn coverage(columns: &[Column]) {
    println!(
        "\nhow often the truth lay inside, % (standard error over cooks)\n\n| forecast | 50 % | 80 % |\n|---|---|---|"
    );
    for column in columns {
        let said = [
            bootstrap::share(&column.rows, |row| row.in_50),
            bootstrap::share(&column.rows, |row| row.in_80),
        ];
        let cells =
            said.map(|(share, error)| format!("{:.1} ({:.1})", share * 100.0, error * 100.0));
        println!("| {} | {} | {} |", column.name, cells[0], cells[1]);
    }
    if let Some(ours) = columns.first() {
        println!("\nours by tenth\n\n| tenth | 50 % | 80 % |\n|---|---|---|");
        for tenth in 0..10 {
            let rows: Vec<_> = ours
                .rows
                .iter()
                .filter(|row| row.tenth == tenth)
                .copied()
                .collect();
            let of = |inside: fn(&Scored) -> bool| {
                100.0 * mean(rows.iter().map(|row| f64::from(u8::from(inside(row)))))
            };
            println!(
                "| {} | {:.1} | {:.1} |",
                tenth + 1,
                of(|row| row.in_50),
                of(|row| row.in_80)
            );
        }
    }
}

fn against(columns: &[Column]) {
    let [ours, others @ ..] = columns else { return };
    println!(
        "\nCRPS of ours less theirs, minutes (95 % of 1,000 draws of whole cooks)\n\n| against | mean | from | to |\n|---|---|---|---|"
    );
    for other in others {
        let pairs: Vec<_> = ours
            .rows
            .iter()
            .zip(&other.rows)
            .map(|(a, b)| (a.cook, a.crps - b.crps))
            .collect();
        let (middle, low, high) = bootstrap::interval(&pairs);
        println!("| {} | {middle:.2} | {low:.2} | {high:.2} |", other.name);
    }
}
