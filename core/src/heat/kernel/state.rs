//! How the members of a block are now. Plain numbers, so that they can be kept as bytes and come back to the bit.

use super::{grid, lanes::Lanes, member::Params, number::Real};

/// Temperature and water of every cell, and the surface.
#[derive(Clone, Debug, PartialEq)]
pub struct State<F, const N: usize, const L: usize> {
    /// °C, from the center out.
    pub temp: [Lanes<F, L>; N],
    /// kg/m³ of raw meat, from the center out.
    pub water: [Lanes<F, L>; N],
    /// Water on the surface, kg/m².
    pub film: Lanes<F, L>,
    /// The surface, °C.
    pub skin: Lanes<F, L>,
}

impl<F: Real, const N: usize, const L: usize> State<F, N, L> {
    /// Raw meat that is about to go on, its surface moist.
    pub fn raw(params: &Params<F, N, L>) -> Self {
        Self {
            temp: [params.start_c; N],
            water: [params.water; N],
            film: params.drips_from,
            skin: params.start_c,
        }
    }

    /// Its bytes: cells of temperature, cells of water, film, skin; lanes beside each other, little end first.
    pub fn to_bytes(&self) -> Vec<u8> {
        let mut bytes = Vec::with_capacity((2 * N + 2) * L * F::BYTES);
        let all = self.temp.iter().chain(&self.water);
        for lanes in all.chain([&self.film, &self.skin]) {
            lanes.0.iter().for_each(|number| number.put(&mut bytes));
        }
        bytes
    }

    /// From bytes that [`to_bytes`](Self::to_bytes) gave; none where their number is another.
    pub fn from_bytes(bytes: &[u8]) -> Option<Self> {
        if bytes.len() != (2 * N + 2) * L * F::BYTES {
            return None;
        }
        let mut numbers = bytes.chunks_exact(F::BYTES).map(F::take);
        let mut lanes = || {
            Lanes(std::array::from_fn(|_| {
                numbers.next().expect("counted above")
            }))
        };
        Some(Self {
            temp: std::array::from_fn(|_| lanes()),
            water: std::array::from_fn(|_| lanes()),
            film: lanes(),
            skin: lanes(),
        })
    }

    /// One lane taken over from another block or lane, as when members are drawn anew.
    pub fn copy_lane(&mut self, to: usize, other: &Self, from: usize) {
        for i in 0..N {
            self.temp[i].0[to] = other.temp[i].0[from];
            self.water[i].0[to] = other.water[i].0[from];
        }
        self.film.0[to] = other.film.0[from];
        self.skin.0[to] = other.skin.0[from];
    }

    /// The very center, °C: a parabola through the two innermost cells.
    pub fn core(&self) -> Lanes<F, L> {
        if N < 2 {
            return self.temp[0];
        }
        let (near, far) = (grid::middle(0, N), grid::middle(1, N));
        let share = near * near / (far * far - near * near);
        self.temp[0] - (self.temp[1] - self.temp[0]) * share
    }

    /// Where the tip of a probe lies: 0 the center, 1 the surface; °C. Straight in the square of the place.
    pub fn at(&self, place: Lanes<F, L>) -> Lanes<F, L> {
        let square = place * place;
        let (mut celsius, mut from, mut before) = (self.core(), 0.0, self.core());
        for i in 0..=N {
            let (x, here) = match i < N {
                true => (grid::middle(i, N), self.temp[i]),
                false => (1.0, self.skin),
            };
            let share = ((square - from) / (x * x - from))
                .at_least(0.0)
                .at_most(1.0);
            celsius = celsius + (here - before) * share;
            (from, before) = (x * x, here);
        }
        celsius
    }

    /// Water that is left inside, kg/m² of surface.
    pub fn inside(&self, params: &Params<F, N, L>) -> Lanes<F, L> {
        let cells = self.water.iter().zip(&params.volume);
        cells.fold(Lanes::all(0.0), |sum, (water, volume)| {
            sum + *water * *volume
        })
    }

    /// Heat inside above 0 °C, J/m² of surface.
    pub fn heat(&self, params: &Params<F, N, L>) -> Lanes<F, L> {
        (0..N).fold(Lanes::all(0.0), |sum, i| {
            sum + params.holds(self.water[i]) * params.volume[i] * self.temp[i]
        })
    }
}
