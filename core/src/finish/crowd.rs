//! The members side by side. Start at [`Crowd::step`].

use super::{
    dice::Dice,
    knobs::{self, KNOBS, Knob},
    prior::{Prior, go_on, mean_c, pace},
};
use crate::heat::kernel::{Boundary, LANES, Lanes, Members};

/// How much each lasting knob wanders in a step: over a long cook by about a third of its spread.
const WANDER: f32 = 0.2;

/// All members.
#[derive(Clone, Debug)]
pub struct Crowd {
    /// Their heat.
    pub blocks: Vec<Members>,
    /// Their knobs, member by member.
    pub knobs: Vec<[f32; KNOBS]>,
    /// Share of becoming tender that is over, by member.
    pub dose: Vec<f32>,
}

impl Crowd {
    /// Drawn from the prior, so many, rounded up to whole blocks.
    pub fn drawn(prior: &Prior, key: u64, members: usize) -> Self {
        let blocks = members.div_ceil(LANES).max(1);
        let knobs: Vec<[f32; KNOBS]> = (0..blocks * LANES)
            .map(|member| std::array::from_fn(|knob| Dice::of(key, 0, knob as u64).normal(member)))
            .collect();
        let starts = Dice::of(key, 0, KNOBS as u64);
        let blocks = (0..blocks)
            .map(|block| {
                let members = std::array::from_fn(|lane| {
                    let member = block * LANES + lane;
                    let mut drawn = prior.member(&knobs[member], 0.0);
                    drawn.start_c += 3.0 * f64::from(starts.normal(member));
                    drawn
                });
                Members::raw(&members)
            })
            .collect();
        Self {
            dose: vec![0.0; knobs.len()],
            knobs,
            blocks,
        }
    }

    /// How many.
    pub fn len(&self) -> usize {
        self.knobs.len()
    }

    /// All go on by a step of `minutes` under what is around.
    pub fn step(&mut self, prior: &Prior, around: &Boundary, minutes: f32) {
        for (index, block) in self.blocks.iter_mut().enumerate() {
            go_on(block, around, f64::from(minutes));
            let mean = mean_c(block);
            for lane in 0..LANES {
                let member = index * LANES + lane;
                let tender = prior.tender_min(&self.knobs[member]);
                if tender > 0.0 {
                    let z = knobs::z_kelvin(self.knobs[member][Knob::Z as usize]);
                    self.dose[member] += minutes * pace(mean.0[lane], z) / tender;
                }
            }
        }
    }

    /// Knobs wander a little, and the slip forgets.
    pub fn wander(&mut self, key: u64, step: u64) {
        let keeps = 1.0 - WANDER * WANDER / 2.0;
        let slips = knobs::exp(-5.0 / knobs::SLIP_MINUTES);
        let fresh = knobs_sqrt(1.0 - slips * slips);
        for knob in [
            Knob::Draft,
            Knob::Wet,
            Knob::Seep,
            Knob::LetsGo,
            Knob::PitBias,
            Knob::Bark,
        ] {
            let dice = Dice::of(key, step, 32 + knob as u64);
            for (member, knobs) in self.knobs.iter_mut().enumerate() {
                knobs[knob as usize] = knobs[knob as usize] * keeps + WANDER * dice.normal(member);
            }
        }
        let dice = Dice::of(key, step, 32 + Knob::Slip as u64);
        for (member, knobs) in self.knobs.iter_mut().enumerate() {
            knobs[Knob::Slip as usize] =
                knobs[Knob::Slip as usize] * slips + fresh * dice.normal(member);
        }
    }

    /// Makes the members what their knobs say after so many hours on the pit.
    pub fn apply(&mut self, prior: &Prior, hours: f32) {
        for (member, knobs) in self.knobs.iter().enumerate() {
            self.blocks[member / LANES]
                .params
                .set(member % LANES, &prior.member(knobs, hours));
        }
    }

    /// What each member's own probe would say: at its place, with its slip; by hand at the coldest place, with none.
    pub fn said(&self, by_hand: bool) -> Vec<f32> {
        let mut said = Vec::with_capacity(self.len());
        for (index, block) in self.blocks.iter().enumerate() {
            let knobs = &self.knobs[index * LANES..(index + 1) * LANES];
            match by_hand {
                true => said.extend(block.state.core().0),
                false => {
                    let place = Lanes(std::array::from_fn(|lane| {
                        knobs::place(knobs[lane][Knob::Place as usize])
                    }));
                    let here = block.state.at(place);
                    said.extend(
                        (0..LANES).map(|lane| {
                            here.0[lane] + knobs::SLIP * knobs[lane][Knob::Slip as usize]
                        }),
                    );
                }
            }
        }
        said
    }

    /// The core of each member, °C.
    pub fn cores(&self) -> Vec<f32> {
        self.blocks
            .iter()
            .flat_map(|block| block.state.core().0)
            .collect()
    }
}

/// The root, which IEEE 754 rounds the same everywhere.
fn knobs_sqrt(x: f32) -> f32 {
    libm::sqrtf(x)
}
