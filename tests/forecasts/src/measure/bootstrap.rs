//! How sure a difference is: whole cooks are drawn again with replacement, for forecasts of one cook are wrong together.

use super::Scored;
use crate::rng::Rng;
use std::collections::BTreeMap;

/// How often it is drawn.
const TURNS: usize = 1_000;

/// The mean of something and its 2.5 and 97.5 % ends over cooks drawn again.
pub fn interval(rows: &[(usize, f64)]) -> (f64, f64, f64) {
    let mut cooks: BTreeMap<usize, (f64, f64)> = BTreeMap::new();
    for (cook, value) in rows {
        let of = cooks.entry(*cook).or_default();
        *of = (of.0 + value, of.1 + 1.0);
    }
    let cooks: Vec<_> = cooks.into_values().collect();
    let of = |drawn: &mut dyn Iterator<Item = (f64, f64)>| {
        let (all, n) = drawn.fold((0.0, 0.0), |sum, one| (sum.0 + one.0, sum.1 + one.1));
        if n > 0.0 { all / n } else { f64::NAN }
    };
    let mut rng = Rng::new(1, 1);
    let mut turns: Vec<f64> = (0..TURNS)
        .map(|_| of(&mut (0..cooks.len()).map(|_| cooks[rng.below(cooks.len())])))
        .collect();
    turns.sort_by(f64::total_cmp);
    (
        of(&mut cooks.iter().copied()),
        turns[TURNS / 40],
        turns[TURNS - 1 - TURNS / 40],
    )
}

/// The mean of the first over the mean of the second, and its 2.5 and 97.5 % ends over pairs drawn again.
pub fn ratio(pairs: &[(f64, f64)]) -> (f64, f64, f64) {
    let of = |drawn: &mut dyn Iterator<Item = (f64, f64)>| {
        let (a, b) = drawn.fold((0.0, 0.0), |sum, one| (sum.0 + one.0, sum.1 + one.1));
        a / b
    };
    let mut rng = Rng::new(1, 1);
    let mut turns: Vec<f64> = (0..TURNS)
        .map(|_| of(&mut (0..pairs.len()).map(|_| pairs[rng.below(pairs.len())])))
        .collect();
    turns.sort_by(f64::total_cmp);
    (
        of(&mut pairs.iter().copied()),
        turns[TURNS / 40],
        turns[TURNS - 1 - TURNS / 40],
    )
}

/// The standard error of a share, cooks drawn again.
pub fn share(rows: &[Scored], of: impl Fn(&Scored) -> bool) -> (f64, f64) {
    let rows: Vec<_> = rows
        .iter()
        .map(|row| (row.cook, f64::from(u8::from(of(row)))))
        .collect();
    let (share, low, high) = interval(&rows);
    (share, (high - low) / 3.92)
}
