//! Invents cooks, asks everybody, scores all. Start at [`scores`].

use crate::{
    baselines::all::{Baselines, NAMES},
    invent::{cook::invent, family::Family},
    measure::{Scored, bootstrap, mean, median, score, table::Column},
    moments::{known, moments},
    oracle,
    ours::Ours,
    parallel::each,
};
use slowbend_core::finish::Habits;

/// Where cooks to score begin; those that teach begin elsewhere.
const SEED: u64 = 77_411;
const TEACHES: u64 = 11;
/// Every so many cooks the oracle is asked: it is dear.
const ORACLE: usize = 10;

/// Ours first, then the baselines, on so many cooks of a family.
pub fn scores(family: Family, cooks: usize, members: usize) -> Vec<Column> {
    let baselines = Baselines::taught(TEACHES, cooks.min(2_000));
    let names = std::iter::once("ours").chain(NAMES);
    let mut columns: Vec<Column> = names.map(|name| Column { name, rows: vec![] }).collect();
    let said = each(cooks, |number| {
        let cook = invent(family, SEED, number as u64);
        let mut ours = Ours::of(&cook, number as u64, Habits::default(), members);
        let at = |(now, tenth)| {
            let said =
                std::iter::once(ours.points(now)).chain(baselines.points(&known(&cook, now)));
            said.map(|points| score(number, tenth, &points, cook.finished - now as f64))
                .collect()
        };
        moments(&cook, number).into_iter().map(at).collect()
    });
    for scores in said.into_iter().flat_map(|of: Vec<Vec<Scored>>| of) {
        for (column, row) in columns.iter_mut().zip(scores) {
            column.rows.push(row);
        }
    }
    columns
}

/// Prints how far ours comes from the best baseline towards the oracle.
pub fn print_skill(columns: &[Column], family: Family, cooks: usize, members: usize) {
    let rows: Vec<Scored> = each(cooks.div_ceil(ORACLE), |nth| asked(family, nth * ORACLE))
        .into_iter()
        .flatten()
        .collect();
    let of = |column: &Column| {
        mean(
            column
                .rows
                .iter()
                .filter(|row| row.cook % ORACLE == 0)
                .map(|row| row.crps),
        )
    };
    let best = columns[1..].iter().map(of).fold(f64::INFINITY, f64::min);
    let (ours, oracle) = (of(&columns[0]), mean(rows.iter().map(|row| row.crps)));
    println!(
        "\non every {ORACLE}th cook, with {members} members: CRPS of the best baseline {best:.1}, ours {ours:.1}, the oracle {oracle:.1} minutes"
    );
    print_two_hours(columns, &rows);
    println!(
        "share of the oracle's skill: {:.0} %",
        100.0 * (best - ours) / (best - oracle)
    );
}

/// Prints the median errors two hours before the end of the cooks that the oracle is asked of.
fn print_two_hours(columns: &[Column], oracle: &[Scored]) {
    let two = |rows: &[Scored]| {
        let near =
            |row: &&Scored| row.cook.is_multiple_of(ORACLE) && (110.0..130.0).contains(&row.to_go);
        let errors: Vec<f64> = rows.iter().filter(near).map(|row| row.error).collect();
        (errors.len(), median(errors))
    };
    println!(
        "\nmedian absolute error two hours before it was done, minutes, of every {ORACLE}th cook\n\n| forecast | n | minutes |\n|---|---|---|"
    );
    let of = columns
        .iter()
        .map(|column| (column.name, two(&column.rows)));
    for (name, (n, error)) in of.chain([("oracle", two(oracle))]) {
        println!("| {name} | {n} | {error:.1} |");
    }
}

/// What the oracle says of one cook.
fn asked(family: Family, number: usize) -> Vec<Scored> {
    let cook = invent(family, SEED, number as u64);
    let at = |(now, tenth)| {
        let points = oracle::points(&cook, family, now, number as u64);
        score(number, tenth, &points, cook.finished - now as f64)
    };
    moments(&cook, number).into_iter().map(at).collect()
}

/// What may not be: a baseline that is better over all, or intervals that are off by more than four points and chance.
pub fn faults(columns: &[Column]) -> Vec<String> {
    let crps = |column: &Column| mean(column.rows.iter().map(|row| row.crps));
    let ours = crps(&columns[0]);
    let mut faults: Vec<String> = columns[1..]
        .iter()
        .filter(|other| crps(other) <= ours)
        .map(|other| {
            format!(
                "CRPS of {} is {:.1}, ours {ours:.1} minutes",
                other.name,
                crps(other)
            )
        })
        .collect();
    let rows = &columns[0].rows;
    for (share, nominal) in [
        (bootstrap::share(rows, |row| row.in_50), 0.5),
        (bootstrap::share(rows, |row| row.in_80), 0.8),
    ] {
        if (share.0 - nominal).abs() > 0.04 + 2.0 * share.1 {
            faults.push(format!(
                "{:.1} % lay in the interval of {:.0} %",
                share.0 * 100.0,
                nominal * 100.0
            ));
        }
    }
    faults
}
