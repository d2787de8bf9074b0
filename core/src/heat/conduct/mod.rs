//! Heat in a solid with no water to lose: the textbook's case, slow and exact. Start at [`Solid::warm`]; the sum is
//! [`conduction`].
//!
//! ρ c ∂T/∂t = x⁻ⁿ ∂/∂x (xⁿ k ∂T/∂x) with n from 0 (slab) over 1 (cylinder) to 2 (sphere) and whatever lies between, the surface
//! giving and taking h (T∞ − T). A hundred cells, finest at the surface, and the two-stage implicit method of Alexander (1977;
//! second order, damps all that is fast): within 0.1 K of the exact series for a difference of 100 K, from 2 % of the
//! characteristic time on.

mod sum;
#[cfg(test)]
mod tests;

pub use sum::{ConductionAnswer, ConductionAt, ConductionInput, NotASolid, conduction};

use super::kernel::{Chain, Lanes, grid};

const CELLS: usize = 100;
/// 1 − √½: makes both stages of Alexander's method the same matrix.
const STAGE: f64 = 1.0 - core::f64::consts::FRAC_1_SQRT_2;

/// A solid and what it lies in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Solid {
    /// From the center to the surface, m.
    pub half_thickness: f64,
    /// 0 a slab, 1 a cylinder, 2 a sphere.
    pub shape: f64,
    /// W/(m K).
    pub conducts: f64,
    /// Density times heat, J/(m³ K).
    pub holds: f64,
    /// At the surface, W/(m² K).
    pub surface: f64,
}

/// How warm it is, as the share of the first difference to what is around that is left: 1 at first, 0 at last.
#[derive(Clone, Debug, PartialEq)]
pub struct Left {
    cells: [Lanes<f64, 1>; CELLS],
}

impl Solid {
    /// The share that is left after each of these times, s, which have to rise. `steps` for each: 200 and more.
    pub fn warm(&self, times: &[f64], steps: u32) -> Vec<Left> {
        let mut left = Left {
            cells: [Lanes([1.0]); CELLS],
        };
        let mut before = 0.0;
        times
            .iter()
            .map(|time| {
                let step = (time - before) / f64::from(steps);
                (0..steps).for_each(|_| left = self.step(&left, step));
                before = *time;
                left.clone()
            })
            .collect()
    }

    /// One step, s.
    pub fn step(&self, left: &Left, seconds: f64) -> Left {
        let holds = self.holds();
        let given = |cells: &[Lanes<f64, 1>; CELLS]| std::array::from_fn(|i| holds[i] * cells[i]);
        let mut chain = self.chain(seconds * STAGE, given(&left.cells));
        let first = chain.solve();
        let onward = (1.0 - STAGE) / STAGE;
        chain.given = std::array::from_fn(|i| {
            holds[i] * (left.cells[i] + (first[i] - left.cells[i]) * onward)
        });
        Left {
            cells: chain.solve(),
        }
    }

    fn holds(&self) -> [Lanes<f64, 1>; CELLS] {
        std::array::from_fn(|i| {
            Lanes([grid::volume(i, CELLS, self.shape) * self.half_thickness * self.holds])
        })
    }

    fn chain(&self, seconds: f64, given: [Lanes<f64, 1>; CELLS]) -> Chain<f64, CELLS, 1> {
        let mut chain = Chain::unbound(self.holds(), given);
        for i in 0..CELLS - 1 {
            let distance =
                (grid::middle(i + 1, CELLS) - grid::middle(i, CELLS)) * self.half_thickness;
            let face = grid::area(grid::edge(i + 1, CELLS), self.shape);
            let conducts = Lanes([face * self.conducts / distance * seconds]);
            chain.bind(i, conducts, conducts);
        }
        let inward = self.inward();
        let out = inward * self.surface / (inward + self.surface) * seconds;
        chain.own[CELLS - 1] = chain.own[CELLS - 1] + out;
        chain
    }

    /// From the outermost cell to the surface, W/(m² K).
    fn inward(&self) -> f64 {
        self.conducts / ((1.0 - grid::middle(CELLS - 1, CELLS)) * self.half_thickness)
    }
}

impl Left {
    /// At the center.
    pub fn core(&self) -> f64 {
        let (near, far) = (grid::middle(0, CELLS), grid::middle(1, CELLS));
        let share = near * near / (far * far - near * near);
        self.cells[0].0[0] - (self.cells[1].0[0] - self.cells[0].0[0]) * share
    }

    /// At the surface.
    pub fn surface(&self, solid: &Solid) -> f64 {
        let inward = solid.inward();
        self.cells[CELLS - 1].0[0] * inward / (inward + solid.surface)
    }

    /// On the average: 1 less this is the share of the heat that went in.
    pub fn mean(&self, solid: &Solid) -> f64 {
        let volume = |i| grid::volume(i, CELLS, solid.shape);
        let all: f64 = (0..CELLS).map(volume).sum();
        let held: f64 = (0..CELLS).map(|i| volume(i) * self.cells[i].0[0]).sum();
        held / all
    }
}
