//! What could be known at best: the same simulator with all that is hidden known to it, but for the hours ahead of the pit, which
//! are drawn a few times from the same kind. No forecast can be as good; how far ours comes towards it is its share of skill.

use crate::{
    invent::{cook::Invented, family::Family, pit::pit},
    measure::{POINTS, quantile},
    physics::run::{MOST_MIN, run},
    rng::Rng,
};

/// How often the hours ahead are drawn.
const DRAWS: u64 = 8;

/// Minutes to go, points in order.
pub fn points(cook: &Invented, family: Family, now: usize, number: u64) -> Vec<f64> {
    let draw = |draw: u64| {
        let mut rng = Rng::new(0x0ac1e + draw, number);
        let other = pit(cook.set, &cook.openings, MOST_MIN, family, 0.0, &mut rng);
        let mut air = cook.pit.air[..now].to_vec();
        air.extend(&other.air[now..]);
        let went = run(&cook.meat, &air, &cook.done, cook.until);
        went.done_min.map_or(MOST_MIN as f64, |done| done) - now as f64
    };
    let mut drawn: Vec<f64> = (0..DRAWS).map(draw).map(|to_go| to_go.max(0.0)).collect();
    drawn.sort_by(f64::total_cmp);
    (0..POINTS)
        .map(|i| quantile(&drawn, (i as f64 + 0.5) / POINTS as f64))
        .collect()
}
