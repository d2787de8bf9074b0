//! Three cooks on one pit whose thermometer is off by something nobody knows: is the third forecast better than the first?
//!
//! Forecasts are scored in the first half of each cook, where what is known beforehand still speaks, with habits and without, so that a
//! third cook that is easier than the first by chance is not taken for learning.

use crate::{
    invent::{
        cook::{Invented, invent_with},
        family::Family,
    },
    measure::{bootstrap::interval, score},
    moments::moments,
    ours::Ours,
    rng::Rng,
};
use slowbend_core::finish::{Habits, habits_after};

/// Cooks on each pit.
const COOKS: usize = 3;
/// How far thermometers are off, K: half of them this much up, half down, by a quarter more or less.
const OFF_K: f64 = 16.0;

/// Prints mean CRPS of each cook, told of the ones before and not.
pub fn print(family: Family, pits: usize, members: usize) {
    let mut rows: Vec<Vec<(usize, f64, f64)>> = vec![vec![]; COOKS];
    for pit in 0..pits {
        let mut rng = Rng::new(0x1ea4, pit as u64);
        let off = OFF_K * rng.between(0.75, 1.25) * if rng.chance(0.5) { 1.0 } else { -1.0 };
        let mut habits = Habits::default();
        for (nth, rows) in rows.iter_mut().enumerate() {
            let number = (pit * COOKS + nth) as u64;
            let cook = invent_with(family, 0x9175, number, Some(off));
            let [with, without] =
                [habits, Habits::default()].map(|habits| early(&cook, number, habits, members));
            rows.push((pit, with, without));
            habits = after(&cook, number, habits, members);
        }
    }
    println!(
        "\nthree cooks on one pit that is {OFF_K} K off: CRPS in the first half of the cook, minutes\n"
    );
    println!("| cook | told of those before | not told | less, % (95 %) |\n|---|---|---|---|");
    for (nth, rows) in rows.iter().enumerate() {
        let mean = |of: fn(&(usize, f64, f64)) -> f64| {
            rows.iter().map(of).sum::<f64>() / rows.len() as f64
        };
        let (with, without) = (mean(|row| row.1), mean(|row| row.2));
        let share: Vec<_> = rows
            .iter()
            .map(|row| (row.0, (row.2 - row.1) / without * 100.0))
            .collect();
        let (less, low, high) = interval(&share);
        println!(
            "| {} | {with:.1} | {without:.1} | {less:.0} ({low:.0} to {high:.0}) |",
            nth + 1
        );
    }
}

fn early(cook: &Invented, number: u64, habits: Habits, members: usize) -> f64 {
    let mut ours = Ours::of(cook, number, habits, members);
    let moments = moments(cook, number as usize)
        .into_iter()
        .filter(|(_, tenth)| *tenth >= 5);
    let scores: Vec<f64> = moments
        .map(|(now, tenth)| score(0, tenth, &ours.points(now), cook.finished - now as f64).crps)
        .collect();
    scores.iter().sum::<f64>() / scores.len().max(1) as f64
}

fn after(cook: &Invented, number: u64, habits: Habits, members: usize) -> Habits {
    let ours = Ours::of(cook, number, habits, members);
    let told = ours.told(cook.finished as usize);
    habits_after(&told, told.on_at + (cook.finished * 60_000.0) as i64).unwrap_or(habits)
}
