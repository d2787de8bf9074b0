//! A block of members and its step. Start at [`Block::step`].

use super::{
    WATER_HEAT,
    boundary::Boundary,
    lanes::Lanes,
    member::{Member, Params},
    number::Real,
    state::State,
    surface::Around,
    thomas::Chain,
    water::{Seeped, seep},
};

/// What sits above its measure on the surface runs off in about this time, s. Invented.
const RUNS_OFF: f64 = 600.0;
/// A surface keeps no more than this of what is poured on, kg/m² (a quarter of a millimeter). Invented.
const STAYS: f64 = 0.25;

/// Some members, one a lane, under one pit.
#[derive(Clone, Debug)]
pub struct Block<F, const N: usize, const L: usize> {
    /// What they are.
    pub params: Params<F, N, L>,
    /// How they are now.
    pub state: State<F, N, L>,
}

/// One step: what is around, and how long, in the numbers of f64.
pub(super) struct Step {
    pub boundary: Boundary,
    pub seconds: f64,
}

/// What crossed the surface in a step, a square meter of it: the books that have to balance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Flow<F, const L: usize> {
    /// Heat that went into the meat, J/m²: from around, less what evaporation took, less what a cold mop took.
    pub heat: Lanes<F, L>,
    /// Heat that left inside the juice, J/m² above 0 °C.
    pub carried: Lanes<F, L>,
    /// Juice that came to the surface, kg/m².
    pub seeped: Lanes<F, L>,
    /// Water that was poured on and stayed, kg/m².
    pub mopped: Lanes<F, L>,
    /// Water that evaporated, kg/m²; less than nothing where it condensed.
    pub evaporated: Lanes<F, L>,
    /// Juice and mop that ran off, kg/m².
    pub dripped: Lanes<F, L>,
}

impl<F: Real, const N: usize, const L: usize> Block<F, N, L> {
    /// Members about to go on.
    pub fn raw(members: &[Member; L]) -> Self {
        let params = Params::of(members);
        let state = State::raw(&params);
        Self { params, state }
    }

    /// One implicit step of so many seconds: 10 to 300. Water first, then the surface, then heat; each linear, so nothing
    /// is tried again, and each in the form that loses nothing.
    pub fn step(&mut self, boundary: &Boundary, seconds: f64) -> Flow<F, L> {
        let step = Step {
            boundary: *boundary,
            seconds,
        };
        let (params, state) = (&self.params, &mut self.state);
        let mopped = mop(state.film, &step);
        let around = Around::of(params, &step, state.skin);
        let film = state.film + mopped;
        let seeped = seep(params, state, &step, film, around.leaves(film));
        let juice = seeped.outward[N - 1];
        let wet = film + juice.at_least(0.0);
        let conducts = conductances(params, state, &seeped, &step);
        let inward = conducts[N - 1];
        let before = state.temp[N - 1];
        let (around, surface) = around.balance(params, &step, wet, before, inward);

        let mut chain = heat_chain(params, state, &seeped, &conducts);
        let share = inward / (surface.own + inward);
        let cold = mopped * WATER_HEAT;
        let mop_c = Lanes::all(boundary.mop.celsius);
        chain.own[N - 1] = chain.own[N - 1] + share * surface.own + cold;
        chain.given[N - 1] = chain.given[N - 1]
            + share * (surface.given - surface.own * before)
            + cold * (mop_c - before);
        for (temp, rise) in state.temp.iter_mut().zip(chain.solve()) {
            *temp = *temp + rise;
        }
        let inner = state.temp[N - 1];
        let skin = surface.skin(inner, inward);
        let flux = surface.given - surface.own * skin + cold * (mop_c - inner);
        let asked = surface.evaporated(skin);
        let evaporated = asked.with(wet, F::at_most);
        let heat_back = (asked - evaporated) * around.latent;
        state.temp[N - 1] =
            inner + heat_back / (params.holds(seeped.water[N - 1]) * params.volume[N - 1]);

        let left = wet - evaporated + (juice - juice.at_least(0.0));
        let dripped = (left - params.drips_from).at_least(0.0) * (seconds / (RUNS_OFF + seconds));
        state.water = seeped.water;
        state.film = (left - dripped).each(no_dust);
        state.skin = skin;
        Flow {
            heat: flux + heat_back,
            carried: juice * inner * WATER_HEAT,
            seeped: juice,
            mopped,
            evaporated,
            dripped,
        }
    }
}

/// A film of a picometer is none: what only halves itself would end among numbers so small that processors are slow at them.
#[inline(always)]
fn no_dust<F: Real>(film: F) -> F {
    let dust = film > F::of(-1e-9) && film < F::of(1e-9);
    if dust { F::of(0.0) } else { film }
}

/// What stays of what is poured on.
#[inline(always)]
fn mop<F: Real, const L: usize>(film: Lanes<F, L>, step: &Step) -> Lanes<F, L> {
    let room = (Lanes::all(STAYS) - film).at_least(0.0);
    room.at_most(step.boundary.mop.water)
}

/// What conducts through the outer face of each cell in the step, the last to the surface, J/(m² K).
#[inline(always)]
fn conductances<F: Real, const N: usize, const L: usize>(
    params: &Params<F, N, L>,
    state: &State<F, N, L>,
    seeped: &Seeped<F, N, L>,
    step: &Step,
) -> [Lanes<F, L>; N] {
    let mut conducts: [Lanes<F, L>; N] =
        std::array::from_fn(|i| params.conductivity(state.temp[i], seeped.water[i]) * step.seconds);
    for i in 0..N - 1 {
        conducts[i] = (conducts[i] + conducts[i + 1]) * params.through[i] * 0.5;
    }
    conducts[N - 1] = conducts[N - 1] * params.through[N - 1];
    conducts
}

/// Conduction, and the heat that seeping juice carries from the cell that it leaves, for the rise of each cell: what is left of
/// a small difference in f32 then errs by a share of the rise and not of the temperature.
#[inline(always)]
fn heat_chain<F: Real, const N: usize, const L: usize>(
    params: &Params<F, N, L>,
    state: &State<F, N, L>,
    seeped: &Seeped<F, N, L>,
    conducts: &[Lanes<F, L>; N],
) -> Chain<F, N, L> {
    let holds = std::array::from_fn(|i| params.holds(state.water[i]) * params.volume[i]);
    let mut chain = Chain::unbound(holds, [Lanes::all(0.0); N]);
    for (i, (conducts, juice)) in conducts.iter().zip(&seeped.outward).enumerate().take(N - 1) {
        let out = juice.at_least(0.0) * WATER_HEAT + *conducts;
        let back = (Lanes::all(0.0) - *juice).at_least(0.0) * WATER_HEAT + *conducts;
        let falls = state.temp[i] - state.temp[i + 1];
        chain.bind(i, out, back);
        chain.given[i] = chain.given[i] - back * falls;
        chain.given[i + 1] = chain.given[i + 1] + out * falls;
    }
    chain
}
