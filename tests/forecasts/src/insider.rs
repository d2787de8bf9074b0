//! What readings could tell at best: the invented world's own simulator and its own ranges, told what we are told. Start at [`points`].
//!
//! Of the same cut and weight many meats are drawn, each is cooked in the pit as it was read less a bias of its own, and each weighs
//! as much as it fits what was read and felt by then. What those that weigh most have left is the answer. It knows everything that
//! no kitchen knows (the equations, the ranges, how pits go on) and nothing that is hidden in the one cook: where it stands, more is not in the
//! readings but for what finitely many drawn meats miss. The oracle, who knows the hidden values too, stands below it.

use crate::{
    invent::{
        cook::{Felt, Invented},
        family::Family,
        meat::meat_of,
        pit::pit,
    },
    measure::POINTS,
    physics::run::{MOST_MIN, Until, Went, run},
    rng::Rng,
};

/// Meats that are drawn.
const DRAWN: u64 = 200;
/// Of them so many count at least, by their weights: else the fit is judged more softly.
const COUNT: f64 = 12.0;
/// Spread of a reading about a meat that fits, K, and after how many minutes the next one is new.
const FITS_K: f64 = 1.0;
const NEW_MIN: f64 = 30.0;
/// No reading is further off than this, K: it was moved, or in the fire.
const MOST_K: f64 = 5.0;

/// One drawn meat: how badly it fits, and what it has left.
struct Drawn {
    misfit: f64,
    to_go: f64,
}

/// Minutes to go, points in order.
pub fn points(cook: &Invented, family: Family, now: usize, number: u64) -> Vec<f64> {
    let mut drawn: Vec<Drawn> = (0..DRAWN)
        .map(|draw| one(cook, family, now, &mut Rng::new(0x1521de + draw, number)))
        .collect();
    drawn.sort_by(|a, b| a.to_go.total_cmp(&b.to_go));
    let weights = weights(&drawn);
    let all: f64 = weights.iter().sum();
    let (mut sum, mut at) = (weights[0], 0);
    (0..POINTS)
        .map(|i| {
            let share = (i as f64 + 0.5) / POINTS as f64 * all;
            while sum < share && at + 1 < drawn.len() {
                at += 1;
                sum += weights[at];
            }
            drawn[at].to_go
        })
        .collect()
}

/// By how well they fit, as sharply as leaves [`COUNT`] that count.
fn weights(drawn: &[Drawn]) -> Vec<f64> {
    let best = drawn
        .iter()
        .map(|one| one.misfit)
        .fold(f64::INFINITY, f64::min);
    let mut sharp = 1.0;
    loop {
        let weights: Vec<f64> = drawn
            .iter()
            .map(|one| (-sharp * (one.misfit - best)).exp())
            .collect();
        let (sum, squares) = weights.iter().fold((0.0, 0.0), |(a, b), weight| {
            (a + weight, b + weight * weight)
        });
        if sum * sum / squares >= COUNT || sharp < 0.02 {
            return weights;
        }
        sharp *= 0.8;
    }
}

fn one(cook: &Invented, family: Family, now: usize, rng: &mut Rng) -> Drawn {
    let meat = meat_of(cook.meat.cut, Some(cook.meat.grams), family, rng);
    let bias = family.ranges().pit_bias * rng.normal();
    let ahead = pit(cook.set, &cook.openings, MOST_MIN, family, 0.0, rng);
    // As it was read, in five minutes' steps, less the bias.
    let read = |minute: usize| cook.pit_said.get(minute / 5).map(|one| one.celsius - bias);
    let air: Vec<f64> = (0..MOST_MIN)
        .map(|minute| match read(minute).filter(|_| minute < now) {
            Some(celsius) => celsius,
            None => ahead.air[minute] - (bias - cook_bias(cook, now)),
        })
        .collect();
    let until = match (cook.target, cook.until) {
        (Some(target), _) => Until::Celsius(target),
        (None, until) => until,
    };
    let went = run(&meat, &air, &cook.done, until);
    let done = went.done_min.unwrap_or(MOST_MIN as f64);
    let early = if done < now as f64 { 8.0 } else { 0.0 };
    Drawn {
        misfit: misfit(cook, &went, now) + felt(cook, &went, now) + early,
        to_go: (done - now as f64).max(0.0),
    }
}

/// What the pit's readings of the last hour say above what it is held at, K: nothing else is known of its thermometer.
fn cook_bias(cook: &Invented, now: usize) -> f64 {
    let lately: Vec<f64> = cook
        .pit_said
        .iter()
        .filter(|one| one.minute <= now && one.minute + 60 > now)
        .map(|one| one.celsius - cook.set)
        .collect();
    lately.iter().sum::<f64>() / lately.len().max(1) as f64
}

/// Half the squares of what readings are off, at the place of the probe that fits best.
fn misfit(cook: &Invented, went: &Went, now: usize) -> f64 {
    let read: Vec<_> = cook
        .core_said
        .iter()
        .filter(|one| one.minute <= now && one.minute < went.places.len())
        .collect();
    if read.is_empty() {
        return 0.0;
    }
    let new = read.len() as f64 * (5.0 / NEW_MIN);
    (0..6)
        .map(|place| {
            let off = read.iter().map(|one| {
                ((one.celsius - went.places[one.minute][place])
                    .abs()
                    .min(MOST_K)
                    / FITS_K)
                    .powi(2)
            });
            off.sum::<f64>() / read.len() as f64 * new / 2.0
        })
        .fold(f64::INFINITY, f64::min)
}

/// A hand is wrong once in twelve, else within about a twentieth.
fn felt(cook: &Invented, went: &Went, now: usize) -> f64 {
    let checks = cook.checks.iter().filter(|check| check.0 <= now);
    checks
        .map(|(at, felt)| {
            let tender = went.tender.get(*at).copied().unwrap_or(1.2);
            let close = 1.0 / (1.0 + ((0.82 - tender) / 0.03).exp());
            let likely = if *felt == Felt::Close {
                close
            } else {
                1.0 - close
            };
            -(1.0 / 24.0 + 11.0 / 12.0 * likely).ln()
        })
        .sum()
}
