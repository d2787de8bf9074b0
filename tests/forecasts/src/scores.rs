//! Invents cooks, asks everybody, scores all. Start at [`scores`].

use crate::{
    baselines::all::{Baselines, NAMES},
    invent::{cook::invent, family::Family},
    measure::{Scored, bootstrap, mean, score, table::Column},
    moments::{known, moments},
    oracle,
    ours::Ours,
};
use slowbend_core::finish::Habits;

/// Where cooks to score begin; those that teach begin elsewhere.
const SEED: u64 = 2_026;
const TEACHES: u64 = 11;
/// Every so many cooks the oracle is asked: it is dear.
const ORACLE: usize = 10;

/// Ours first, then the baselines, on so many cooks of a family.
pub fn scores(family: Family, cooks: usize, members: usize) -> Vec<Column> {
    let baselines = Baselines::taught(TEACHES, cooks.min(2_000));
    let names = std::iter::once("ours").chain(NAMES);
    let mut columns: Vec<Column> = names.map(|name| Column { name, rows: vec![] }).collect();
    for number in 0..cooks {
        let cook = invent(family, SEED, number as u64);
        let mut ours = Ours::of(&cook, number as u64, Habits::default(), members);
        for (now, tenth) in moments(&cook, number) {
            let said =
                std::iter::once(ours.points(now)).chain(baselines.points(&known(&cook, now)));
            for (column, points) in columns.iter_mut().zip(said) {
                column
                    .rows
                    .push(score(number, tenth, &points, cook.finished - now as f64));
            }
        }
    }
    columns
}

/// Prints how far ours comes from the best baseline towards the oracle.
pub fn print_skill(columns: &[Column], family: Family, cooks: usize, members: usize) {
    let mut rows: Vec<Scored> = vec![];
    for number in (0..cooks).step_by(ORACLE) {
        let cook = invent(family, SEED, number as u64);
        for (now, tenth) in moments(&cook, number) {
            let points = oracle::points(&cook, family, now, number as u64);
            rows.push(score(number, tenth, &points, cook.finished - now as f64));
        }
    }
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
    println!(
        "share of the oracle's skill: {:.0} %",
        100.0 * (best - ours) / (best - oracle)
    );
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
