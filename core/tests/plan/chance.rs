//! The stated chance against cooks that are lived: one error of each pit, shared by what is on it, and one of each meat.
//!
//! A household's times are made of the same two errors that its cooks are drawn with; the plan sees only four rounded
//! quantiles of each meat. Every household is lived 400 times, a cook is ready where all meats have rested when they are cut.

use super::invent::{Dice, household};
use slowbend_core::plan::*;

const HOUSEHOLDS: u64 = 2_000;
const COOKS: usize = 400;

/// A normal error by the sum of twelve dice would have no tails: Box and Muller 1958 (from memory).
fn normal(dice: &mut Dice) -> f64 {
    let even = |dice: &mut Dice| ((dice.bits() >> 11) as f64 + 0.5) / (1u64 << 53) as f64;
    let (a, b) = (even(dice), even(dice));
    (-2.0 * libm::log(a)).sqrt() * libm::cos(2.0 * std::f64::consts::PI * b)
}

/// Spread of the logarithm of time, in all.
fn spread(dice: &mut Dice) -> f64 {
    0.08 + 0.12 * dice.below(1_000) as f64 / 1_000.0
}

/// Simple households: the plan is cheap, the chance is what is asked about.
fn lived(seed: u64) -> Option<(i64, i64)> {
    let mut dice = Dice(seed ^ 0xC0FF_EE00);
    let meats = 1 + dice.below(4) as usize;
    let mut household = household(seed, meats, 1 + dice.below(2) as usize);
    household.shared_permille = 100 * dice.below(10);
    household.hands = 3;
    household.budget_nodes = 300;
    household
        .pits
        .iter_mut()
        .for_each(|pit| (pit.may_step, pit.poultry_apart, pit.area_cm2) = (false, true, 9_000));
    household.confidence_permille = dice.of(&[500, 700, 900]);
    let spreads: Vec<f64> = household.meats.iter().map(|_| spread(&mut dice)).collect();
    for (meat, spread) in household.meats.iter_mut().zip(&spreads) {
        for times in &mut meat.times {
            let half = times.minutes.p50 as f64;
            let at = |score: f64| (half * libm::exp(spread * score)).round() as i64;
            let [p10, p80, p90] = [-1.281_552, 0.841_621, 1.281_552].map(at);
            times.minutes = Quantiles {
                p10,
                p50: times.minutes.p50,
                p80,
                p90,
            };
        }
        meat.hold.most_min = 1_000;
    }
    let plan = plan(&household).ok()?.plan;
    let shared = (household.shared_permille as f64 / 1_000.0).sqrt();
    let own = (1.0 - household.shared_permille as f64 / 1_000.0).sqrt();
    let ready = (0..COOKS).filter(|_| {
        let pits: Vec<f64> = household.pits.iter().map(|_| normal(&mut dice)).collect();
        plan.meats.iter().enumerate().all(|(nr, its)| {
            let meat = &household.meats[nr];
            let pit = its.pit.expect("nothing is off yet");
            let temp = plan.pits[pit].temp;
            let half = meat
                .times
                .iter()
                .find(|times| times.pit == temp)
                .expect("a known temperature")
                .minutes
                .p50;
            let error = shared * pits[pit] + own * normal(&mut dice);
            let took = half as f64 * libm::exp(spreads[nr] * error);
            its.on_min as f64 + took + meat.rest.least_min as f64 <= its.cut_min as f64
        })
    });
    Some((plan.chance_permille, (ready.count() * 1_000 / COOKS) as i64))
}

/// Grouped by what was stated, in steps of a tenth: what happened is within 5 points.
#[test]
fn the_stated_chance_is_right_within_five_points() {
    let mut groups = [(0i64, 0i64, 0i64); 10];
    for seed in 0..HOUSEHOLDS {
        if let Some((stated, happened)) = lived(seed) {
            let group = &mut groups[(stated / 100).min(9) as usize];
            *group = (group.0 + 1, group.1 + stated, group.2 + happened);
        }
    }
    let count: i64 = groups.iter().map(|group| group.0).sum();
    assert!(count >= 1_900, "only {count} were planned");
    for (count, stated, happened) in groups.into_iter().filter(|group| group.0 >= 20) {
        let (stated, happened) = (stated / count, happened / count);
        println!("{count} households: stated {stated}, happened {happened}");
        assert!(
            (stated - happened).abs() <= 50,
            "{count} households: stated {stated}, happened {happened}"
        );
    }
}
