//! When to check next, where an opening has its price and overshooting has another. Start at [`next_check`].
//!
//! Checks are planned backwards: after a check that says "not yet" the best plan from there on is known, so each instant has its
//! expected cost, and the cheapest is taken. A check can say "not yet" of what is done: then it costs another wait.

use super::{GRID_MS, NotAForecast, told::within};
use crate::moment::{HOUR, MINUTE};
use serde::{Deserialize, Serialize};

/// So often a hand says "not yet" of what is done. Common practice, no source.
const WRONG: f64 = 1.0 / 12.0;
/// And then it is tried again after so many minutes. Common practice, no source.
const AGAIN_MIN: f64 = 20.0;
/// A check in an opening that is due anyway costs this share of one of its own.
const SHARED: f64 = 0.2;
/// Openings within this of each other are one.
const ONE_OPENING_MS: i64 = 10 * MINUTE;
/// Plans look so far ahead.
const HORIZON_MS: i64 = 24 * HOUR;

/// What is asked.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct NextCheck {
    /// When it is, milliseconds since 1970.
    pub now: i64,
    /// Instants in order, each as likely as any other to be when it is done, milliseconds since 1970: [`Forecast::points`](super::Forecast::points).
    pub points: Vec<i64>,
    /// When the pit is opened anyway, milliseconds since 1970.
    #[serde(default)]
    pub due: Vec<i64>,
    /// What things cost.
    #[serde(default)]
    pub prices: Prices,
    /// Not before this, milliseconds since 1970.
    #[serde(default)]
    pub soonest: Option<i64>,
}

/// What things cost, in minutes of overshooting.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Prices {
    /// An opening is as bad as so many minutes too long: 1 to 120. Common practice, no source.
    pub opening_min: i64,
}

impl Default for Prices {
    fn default() -> Self {
        Self { opening_min: 10 }
    }
}

/// When to check, and what that means.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct CheckAt {
    /// When, milliseconds since 1970.
    pub at: i64,
    /// How likely it is done by then, thousandths.
    pub done_permille: i64,
    /// Whether the pit is opened then anyway.
    pub shared: bool,
}

/// The check that costs least.
///
/// # Errors
/// Without points in order, or with a price that is none.
pub fn next_check(asked: &NextCheck) -> Result<CheckAt, NotAForecast> {
    within(
        "What an opening costs in minutes",
        asked.prices.opening_min,
        1,
        120,
    )?;
    within("The number of points", asked.points.len() as i64, 2, 1_000)?;
    if !asked.points.is_sorted() {
        return Err(NotAForecast::NotInOrder);
    }
    let instants = instants(asked);
    let mut after = vec![0.0; instants.len()];
    let mut best = 0;
    for from in (0..instants.len()).rev() {
        let (cost, at) = cheapest(asked, &instants, &after, from);
        after[from] = cost;
        best = at;
    }
    let at = instants[best];
    Ok(CheckAt {
        at,
        done_permille: (1_000.0 * done_by(asked, at)) as i64,
        shared: is_due(asked, at),
    })
}

/// Now, and each instant at which it may be checked.
fn instants(asked: &NextCheck) -> Vec<i64> {
    let first = asked.soonest.unwrap_or(asked.now).max(asked.now);
    let last = asked
        .points
        .last()
        .copied()
        .unwrap_or(first)
        .min(asked.now + HORIZON_MS)
        .max(first)
        + 4 * GRID_MS;
    let grid = (0..)
        .map(|step| (first.div_euclid(GRID_MS) + step) * GRID_MS)
        .take_while(|at| *at <= last);
    let due = asked
        .due
        .iter()
        .copied()
        .filter(|at| (first..=last).contains(at));
    let mut instants: Vec<i64> = std::iter::once(asked.now - 1)
        .chain(grid.filter(|at| *at >= first))
        .chain(due)
        .collect();
    instants.sort_unstable();
    instants.dedup();
    instants
}

/// The cheapest instant after one at which it was not done, and its cost from there on.
fn cheapest(asked: &NextCheck, instants: &[i64], after: &[f64], from: usize) -> (f64, usize) {
    let left = asked
        .points
        .iter()
        .filter(|point| **point > instants[from])
        .count() as f64;
    if left == 0.0 {
        return (0.0, (from + 1).min(instants.len() - 1));
    }
    let opening = asked.prices.opening_min as f64;
    let mut best = (f64::INFINITY, from);
    for to in from + 1..instants.len() {
        let at = instants[to];
        let (mut over, mut done) = (0.0, 0.0);
        for point in asked
            .points
            .iter()
            .filter(|point| (instants[from] + 1..=at).contains(*point))
        {
            over += (at - point) as f64 / MINUTE as f64 / left;
            done += 1.0 / left;
        }
        let opens = if is_due(asked, at) {
            SHARED * opening
        } else {
            opening
        };
        let again = WRONG * done * (opening + AGAIN_MIN);
        let cost = opens + over + again + (1.0 - done) * after[to];
        if cost < best.0 {
            best = (cost, to);
        }
    }
    match best.0.is_finite() {
        true => best,
        // Nothing lies beyond the last instant: what is not done there is checked there.
        false => (opening, from),
    }
}

fn is_due(asked: &NextCheck, at: i64) -> bool {
    asked
        .due
        .iter()
        .any(|due| (due - at).abs() * 2 <= ONE_OPENING_MS)
}

fn done_by(asked: &NextCheck, at: i64) -> f64 {
    asked.points.partition_point(|point| *point <= at) as f64 / asked.points.len() as f64
}

#[cfg(test)]
mod tests {
    use super::*;

    const NOW: i64 = 1_795_000_200_000;

    fn even(from_min: i64, to_min: i64) -> Vec<i64> {
        (0..40)
            .map(|i| NOW + (from_min * 40 + (to_min - from_min) * i) * MINUTE / 40)
            .collect()
    }

    fn ask(points: Vec<i64>, due: Vec<i64>, opening_min: i64) -> CheckAt {
        let asked = NextCheck {
            now: NOW,
            points,
            due,
            prices: Prices { opening_min },
            soonest: None,
        };
        next_check(&asked).unwrap()
    }

    #[test]
    fn what_is_sure_is_checked_when_it_is_done() {
        let at = ask(vec![NOW + 60 * MINUTE; 40], vec![], 10).at;
        assert!((NOW + 60 * MINUTE..=NOW + 65 * MINUTE).contains(&at));
    }

    #[test]
    fn a_dear_opening_comes_later_and_never_before_it_can_be_done() {
        let [cheap, dear] = [3, 60].map(|price| ask(even(60, 180), vec![], price));
        assert!(cheap.at < dear.at, "{cheap:?} {dear:?}");
        assert!(cheap.at >= NOW + 60 * MINUTE);
    }

    #[test]
    fn an_opening_that_is_due_is_taken() {
        let due = NOW + 93 * MINUTE;
        let check = ask(even(60, 180), vec![due], 15);
        assert!(
            check.shared && (check.at - due).abs() <= 5 * MINUTE,
            "{check:?}"
        );
    }

    #[test]
    fn what_is_late_already_is_checked_now() {
        assert_eq!(ask(vec![NOW - HOUR; 40], vec![], 10).at, NOW);
    }
}
