//! What a check by feel says of the members: an interval, softly, for a hand can be wrong. Start at [`weigh`].

use super::{
    crowd::Crowd,
    dice::Dice,
    knobs::{self, Knob},
    told::Felt,
};
use crate::heat::kernel::LANES;

/// One check in twelve says anything at all. Common practice, no source.
const WRONG: f32 = 1.0 / 12.0;
/// Below this share of becoming tender it is felt to be far from it.
const NEAR: f32 = 0.82;
/// From here on it is felt to be tender.
const TENDER: f32 = 1.0;
/// How soft these ends are.
const SOFT: f32 = 0.06;
/// Members drawn twice are set apart by so much of the spread of their time to become tender.
const APART: f32 = 0.15;

/// How likely that is felt at a share of becoming tender.
pub fn likely(felt: Felt, share: f32) -> f32 {
    let above = |end: f32| 1.0 / (1.0 + knobs::exp((end - share) / SOFT));
    let right = match felt {
        Felt::NotYet => 1.0 - above(NEAR),
        Felt::Close => above(NEAR) * (1.0 - above(TENDER)),
        Felt::Tender => above(TENDER),
    };
    WRONG / 3.0 + (1.0 - WRONG) * right
}

/// Draws the members anew, each as often as the check makes it likely: one lot for all (systematic), in the order of the members.
pub fn weigh(crowd: &mut Crowd, felt: Felt, key: u64, step: u64) {
    let weights: Vec<f64> = crowd
        .dose
        .iter()
        .map(|dose| f64::from(likely(felt, *dose)))
        .collect();
    let all: f64 = weights.iter().sum();
    let n = crowd.len();
    let lot = Dice::of(key, step, 64).unit(0);
    let before = crowd.clone();
    let dice = Dice::of(key, step, 65);
    let (mut from, mut sum) = (0, weights[0]);
    for to in 0..n {
        while sum < (to as f64 + lot) / n as f64 * all && from + 1 < n {
            from += 1;
            sum += weights[from];
        }
        take(crowd, to, &before, from);
        let tender = &mut crowd.knobs[to][Knob::Tender as usize];
        let apart = APART * dice.normal(to);
        *tender = (*tender + apart).clamp(-4.0, 4.0);
        // A longer way makes what is behind a smaller share of it.
        crowd.dose[to] *= knobs::exp(-knobs::TENDER * apart);
    }
}

fn take(crowd: &mut Crowd, to: usize, before: &Crowd, from: usize) {
    let (block, lane) = (&mut crowd.blocks[to / LANES], to % LANES);
    block
        .state
        .copy_lane(lane, &before.blocks[from / LANES].state, from % LANES);
    crowd.knobs[to] = before.knobs[from];
    crowd.dose[to] = before.dose[from];
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_check_is_likely_where_it_is_right_and_never_impossible() {
        assert!(likely(Felt::NotYet, 0.4) > 0.9 && likely(Felt::NotYet, 1.1) > 0.02);
        assert!(likely(Felt::NotYet, 1.1) < 0.05 && likely(Felt::Tender, 1.2) > 0.9);
        assert!(likely(Felt::Close, 0.92) > likely(Felt::Close, 0.6));
    }
}
