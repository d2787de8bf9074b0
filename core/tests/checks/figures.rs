//! The figures of the cuts against published ones: what they are made of, and government roasting times.

use slowbend_core::checks::{Cut, cut_facts, cuts::Composition};

/// Cells of a CSV line in which only the second is quoted.
fn cells(line: &str) -> Vec<String> {
    let (first, rest) = line.split_once(",\"").expect("the second cell is quoted");
    let (second, rest) = rest.split_once("\",").expect("its quote closes");
    let mut cells = vec![first.to_owned(), second.to_owned()];
    cells.extend(rest.split(',').map(str::to_owned));
    cells
}

/// Hundredths, from "59.75".
fn hundredths(text: &str) -> i64 {
    let (whole, part) = text.split_once('.').expect("two decimals");
    assert_eq!(part.len(), 2, "{text}");
    format!("{whole}{part}").parse().expect("digits")
}

#[test]
fn each_cut_is_made_of_what_its_row_says() {
    let rows: Vec<Composition> = include_str!("../published/composition.csv")
        .lines()
        .skip(1)
        .map(|line| {
            let cells = cells(line);
            Composition {
                ndb: cells[0].parse().expect("a number"),
                water: hundredths(&cells[2]),
                protein: hundredths(&cells[3]),
                fat: hundredths(&cells[4]),
                ash: hundredths(&cells[5]),
            }
        })
        .collect();
    for row in &rows {
        let sum = row.water + row.protein + row.fat + row.ash;
        assert!((9_700..=10_100).contains(&sum), "{row:?}");
        let used = |cut: &Cut| cut_facts(*cut).composition.ndb == row.ndb;
        assert!(Cut::ALL.iter().any(used), "no cut uses {row:?}");
    }
    for cut in Cut::ALL {
        let of = cut_facts(*cut).composition;
        assert!(rows.contains(&of), "{cut:?} {of:?}");
    }
}

/// A pit that is no hotter than the oven of the chart is never expected to be faster than the chart's shortest time for a
/// meat of the middle of its weights.
#[test]
fn no_pit_is_faster_than_the_hotter_oven_of_the_government_charts() {
    let text = include_str!("../published/roasting_times.csv");
    let mut seen = 0;
    for line in text.lines().skip(1) {
        let cells: Vec<&str> = line.split(',').collect();
        let cut: Cut = serde_json::from_value(cells[0].into()).expect("a cut");
        let number = |n: usize| cells[n].parse::<f64>().expect("a number");
        let pounds = (number(2) + number(3)) / 2.0;
        let shortest = match cells[6] {
            "min/lb" => number(5) * pounds,
            _ => number(5),
        };
        let facts = cut_facts(cut);
        let ours = facts
            .cook_time
            .for_grams((pounds * 453.592_37).ceil() as i64);
        assert!(
            facts.time_at.high.f_tenths() / 10 <= number(4) as i64,
            "{line}"
        );
        assert!(
            ours.least as f64 >= shortest,
            "{line}: {ours:?} against {shortest}"
        );
        seen += 1;
    }
    assert_eq!(seen, 9);
}
