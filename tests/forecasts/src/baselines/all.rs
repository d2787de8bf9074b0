//! The three of them, taught and asked together.

use super::{Known, line, newton, spread::Spread, weight};
use crate::{
    invent::{cook::invent, family::Family},
    moments::{known, moments},
};

/// Their names.
pub const NAMES: [&str; 3] = ["line", "newton", "by weight"];

/// Each with the spread of its own errors on the tuning family.
#[derive(Clone, Debug, Default)]
pub struct Baselines {
    spreads: [Spread; 3],
}

impl Baselines {
    /// Taught by so many cooks.
    pub fn taught(seed: u64, cooks: usize) -> Self {
        let mut all = Self::default();
        for number in 0..cooks {
            let cook = invent(Family::Tuning, seed, number as u64);
            for (now, _) in moments(&cook, number) {
                for (i, said) in say(&known(&cook, now)) {
                    all.spreads[i].learn(said, cook.finished - now as f64);
                }
            }
        }
        all.spreads.iter_mut().for_each(Spread::sort);
        all
    }

    /// What each says: points in order, minutes to go. What cannot say goes by weight.
    pub fn points(&self, known: &Known) -> [Vec<f64>; 3] {
        let mut points =
            [(); 3].map(|()| self.spreads[2].points(weight::to_go(known).unwrap_or(0.0)));
        for (i, said) in say(known) {
            points[i] = self.spreads[i].points(said);
        }
        points
    }
}

fn say(known: &Known) -> impl Iterator<Item = (usize, f64)> {
    let said = [
        line::to_go(known),
        newton::to_go(known),
        weight::to_go(known),
    ];
    said.into_iter()
        .enumerate()
        .filter_map(|(i, said)| Some((i, said?)))
}
