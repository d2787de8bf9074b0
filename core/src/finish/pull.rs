//! Pulls the members towards one reading. Start at [`pull`].
//!
//! What a reading does to each member's own reading is a line (towards it, and closer together); everything else that a member is
//! follows by how it went with that over all members. No chance is in it.

use super::{crowd::Crowd, knobs::KNOBS};
use crate::heat::kernel::{LANES, NODES};

/// Moves the crowd, whose members would have said `said`, towards a reading in °C with this spread.
pub fn pull(crowd: &mut Crowd, said: &[f32], reading: f32, spread: f32) {
    let n = said.len() as f64;
    let mean = said.iter().map(|one| f64::from(*one)).sum::<f64>() / n;
    let off: Vec<f32> = said
        .iter()
        .map(|one| (f64::from(*one) - mean) as f32)
        .collect();
    let wide = off
        .iter()
        .map(|one| f64::from(*one) * f64::from(*one))
        .sum::<f64>()
        / (n - 1.0);
    if wide < 1e-9 {
        return;
    }
    let noise = f64::from(spread) * f64::from(spread);
    let toward = wide / (wide + noise);
    let closer = libm::sqrt(noise / (wide + noise)) - 1.0;
    let shift = (toward * (f64::from(reading) - mean)) as f32;
    let moves: Vec<f32> = off.iter().map(|one| shift + closer as f32 * one).collect();
    let with = With {
        off: &off,
        moves: &moves,
        wide,
    };
    for row in 0..2 * NODES + 2 {
        with.cells(crowd, row);
    }
    for knob in 0..KNOBS {
        let slope = with.slope(|member| crowd.knobs[member][knob]);
        for (member, knobs) in crowd.knobs.iter_mut().enumerate() {
            knobs[knob] = (knobs[knob] + slope * moves[member]).clamp(-4.0, 4.0);
        }
    }
    let slope = with.slope(|member| crowd.dose[member]);
    for (member, dose) in crowd.dose.iter_mut().enumerate() {
        *dose = (*dose + slope * moves[member]).max(0.0);
    }
}

/// What moves, and by how much.
struct With<'a> {
    off: &'a [f32],
    moves: &'a [f32],
    wide: f64,
}

impl With<'_> {
    /// How something goes with the reading, over all members, in the order of the members.
    fn slope(&self, of: impl Fn(usize) -> f32) -> f32 {
        let sum: f64 = self
            .off
            .iter()
            .enumerate()
            .map(|(member, off)| f64::from(*off * of(member)))
            .sum();
        (sum / (self.off.len() - 1) as f64 / self.wide) as f32
    }

    /// One row of the state: a cell's temperature or water, the film, the skin.
    fn cells(&self, crowd: &mut Crowd, row: usize) {
        let mut sum = 0.0;
        for (index, block) in crowd.blocks.iter_mut().enumerate() {
            let lanes = row_of(&mut block.state, row);
            let off = &self.off[index * LANES..];
            sum += lanes
                .iter()
                .zip(off)
                .map(|(lane, off)| f64::from(off * *lane))
                .sum::<f64>();
        }
        let slope = (sum / (self.off.len() - 1) as f64 / self.wide) as f32;
        let (low, high) = match row {
            0..NODES => (-20.0, 140.0),
            _ if row == 2 * NODES + 1 => (-20.0, 240.0),
            _ => (0.0, 1_200.0),
        };
        for (index, block) in crowd.blocks.iter_mut().enumerate() {
            let lanes = row_of(&mut block.state, row);
            let moves = &self.moves[index * LANES..];
            for (lane, moves) in lanes.iter_mut().zip(moves) {
                *lane = (*lane + slope * moves).clamp(low, high);
            }
        }
    }
}

type State = crate::heat::kernel::State<f32, NODES, LANES>;

fn row_of(state: &mut State, row: usize) -> &mut [f32; LANES] {
    match row {
        0..NODES => &mut state.temp[row].0,
        _ if row < 2 * NODES => &mut state.water[row - NODES].0,
        _ if row == 2 * NODES => &mut state.film.0,
        _ => &mut state.skin.0,
    }
}
