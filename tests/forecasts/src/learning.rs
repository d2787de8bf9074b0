//! Three cooks on one pit whose thermometer is off by something nobody knows: is the third forecast better than the first?
//!
//! Forecasts are scored in the first half of each cook, where what is known beforehand still speaks. Twice: with cooks of any cut, each
//! with habits and without, so that a third cook that is easier than the first by chance is not taken for learning; and with three
//! cooks of one cut, whose weights are drawn alike, so that the third can be held against the first as it is.

use crate::{
    invent::{
        cook::{Invented, a_cut, invent_cut},
        family::Family,
    },
    measure::{bootstrap::ratio, score},
    moments::moments,
    ours::Ours,
    parallel::each,
    rng::Rng,
};
use slowbend_core::{
    checks::cuts::Cut,
    finish::{Habits, habits_after},
};
use std::collections::BTreeMap;

/// Cooks on each pit.
const COOKS: usize = 3;
/// How far thermometers are off, K: half of them this much up, half down, by a quarter more or less.
const OFF_K: f64 = 16.0;
/// Where their cooks begin.
const SEED: u64 = 77_412;

/// CRPS of one cook: told of the ones before, and not.
#[derive(Clone, Copy, Debug)]
struct Pair {
    told: f64,
    untold: f64,
}

/// So much less than the first cook's the third's CRPS is to be.
const LESS: f64 = 0.2;

/// Prints mean CRPS of each cook, told of the ones before and not; what falls short of [`LESS`].
pub fn print(family: Family, pits: usize, members: usize) -> Option<String> {
    let mut short = None;
    for (one_cut, title) in [
        (false, "of any cut"),
        (true, "of one cut, in each of three orders"),
    ] {
        let orders = if one_cut { COOKS } else { 1 };
        let series: Vec<_> = each(pits, |pit| series(family, pit, one_cut, orders, members));
        println!(
            "\nthree cooks {title}, on one pit that is {OFF_K} K off; {pits} pits: CRPS in the first half of the cook, minutes\n"
        );
        println!("| cook | told of those before | not told | less, % (95 %) |\n|---|---|---|---|");
        for nth in 0..COOKS {
            let rows: Vec<_> = series.iter().map(|of| of[nth]).collect();
            let [with, without] = [|row: &Pair| row.told, |row: &Pair| row.untold]
                .map(|of| rows.iter().map(of).sum::<f64>() / rows.len() as f64);
            let less = less(rows.iter().map(|row| (row.told, row.untold)));
            println!("| {} | {with:.1} | {without:.1} | {less} |", nth + 1);
        }
        if one_cut {
            let pairs: Vec<_> = series.iter().map(|of| (of[2].told, of[0].told)).collect();
            println!(
                "\nthe third against the first: less by {} %",
                less(pairs.iter().copied())
            );
            let falls = 1.0 - ratio(&pairs).0;
            short = (falls < LESS)
                .then(|| format!("the third is {:.0} % below the first", falls * 100.0));
        }
    }
    short
}

/// How much less the first of each pair is on the whole, in percent.
fn less(pairs: impl Iterator<Item = (f64, f64)>) -> String {
    let (middle, low, high) = ratio(&pairs.collect::<Vec<_>>());
    let less = |ratio: f64| 100.0 * (1.0 - ratio);
    format!(
        "{:.0} ({:.0} to {:.0})",
        less(middle),
        less(high),
        less(low)
    )
}

/// Mean scores of the first, second and third cook on one pit, over so many orders of the same cooks: where each cook is once first
/// and once third, neither place has the easier ones.
fn series(
    family: Family,
    pit: usize,
    one_cut: bool,
    orders: usize,
    members: usize,
) -> [Pair; COOKS] {
    let mut rng = Rng::new(0x1ea4, pit as u64);
    let off = OFF_K * rng.between(0.75, 1.25) * if rng.chance(0.5) { 1.0 } else { -1.0 };
    let first = a_cut(&mut rng);
    let cooks: [(u64, Invented, f64); COOKS] = std::array::from_fn(|nth| {
        let number = (pit * COOKS + nth) as u64;
        let cut = if one_cut { first } else { a_cut(&mut rng) };
        let cook = invent_cut(family, SEED, number, cut, off);
        let untold = early(&cook, number, Habits::default(), members);
        (number, cook, untold)
    });
    let mut sums = [Pair {
        told: 0.0,
        untold: 0.0,
    }; COOKS];
    for order in 0..orders {
        let mut lessons = Lessons::default();
        for (nth, sum) in sums.iter_mut().enumerate() {
            let (number, cook, untold) = &cooks[(nth + order) % COOKS];
            let habits = lessons.of(cook.meat.cut);
            sum.told += match nth {
                0 => *untold,
                _ => early(cook, *number, habits, members),
            } / orders as f64;
            sum.untold += untold / orders as f64;
            lessons.learn(cook.meat.cut, after(cook, *number, habits, members));
        }
    }
    sums
}

/// As the log keeps them: what is learned of the pit goes with the pit, what is learned of a cut with the cut.
#[derive(Default)]
struct Lessons {
    pit: Habits,
    cuts: BTreeMap<Cut, (i64, i64)>,
}

impl Lessons {
    fn of(&self, cut: Cut) -> Habits {
        let (pace_micro, pace_spread_micro) = self.cuts.get(&cut).copied().unwrap_or_default();
        Habits {
            pace_micro,
            pace_spread_micro,
            ..self.pit
        }
    }

    fn learn(&mut self, cut: Cut, after: Habits) {
        self.cuts
            .insert(cut, (after.pace_micro, after.pace_spread_micro));
        self.pit = after;
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
