//! Water inside: what hot meat can hold, and how what it cannot hold seeps out.

use super::{block::Step, lanes::Lanes, member::Params, number::Real, state::State, thomas::Chain};

/// What meat holds at some temperature over what it holds cold.
///
/// Van der Sman's equilibrium (2007; from memory, held to the values computed from it in `docs/heat.md`):
/// y = 0.745 − 0.345 / (1 + 30 exp(−0.25 (T − 52))) kg of water a kg of lean meat, as kg a kg of what is dry.
#[inline(always)]
pub fn holds<F: Real, const L: usize>(celsius: Lanes<F, L>) -> Lanes<F, L> {
    let cold = (Lanes::all(52.0) - celsius).each(|x| x * F::of(0.25)).exp() * 30.0;
    (cold * 0.745 + Lanes::all(0.4)) / (cold * 0.255 + Lanes::all(0.6)) * (0.255 / 0.745)
}

/// The viscosity of water at 70 °C over that at some temperature, 0 to 100 °C, held there: hot juice runs faster.
/// A parabola through 0, 50 and 100 °C (1.792, 0.547 and 0.282 mPa s, from memory).
#[inline(always)]
fn runs<F: Real, const L: usize>(celsius: Lanes<F, L>) -> Lanes<F, L> {
    celsius
        .at_least(0.0)
        .at_most(100.0)
        .polynomial(&[0.225_4, 0.008_456, 3.616e-5])
}

/// The least that a dry surface holds of what it could: it draws as if it had this. Invented.
const BARK_HOLDS: f64 = 0.15;

/// What one step of seeping comes to.
pub(super) struct Seeped<F, const N: usize, const L: usize> {
    /// Water of each cell, kg/m³.
    pub water: [Lanes<F, L>; N],
    /// Outward through the outer face of each cell, the last onto the surface, kg/m².
    pub outward: [Lanes<F, L>; N],
}

/// Darcy's law for juice: what a cell has above what it can hold is its pressure, and juice flows from more to less, in or
/// out. A dry surface draws; it takes nothing back.
#[inline(always)]
pub(super) fn seep<F: Real, const N: usize, const L: usize>(
    params: &Params<F, N, L>,
    state: &State<F, N, L>,
    step: &Step,
    film: Lanes<F, L>,
    leaves: Lanes<F, L>,
) -> Seeped<F, N, L> {
    let holds: [Lanes<F, L>; N] = state.temp.map(|celsius| {
        let kept = Lanes::all(1.0) - holds(celsius);
        params.water * (Lanes::all(1.0) - params.lets_go * kept)
    });
    let excess: [Lanes<F, L>; N] = std::array::from_fn(|i| state.water[i] - holds[i]);
    let last = N - 1;
    let opens = params.seep * step.seconds / params.water;
    let runs: [Lanes<F, L>; N] =
        std::array::from_fn(|i| runs(state.temp[i]) * state.water[i] * opens);
    let given = std::array::from_fn(|i| excess[i] * params.volume[i]);
    let mut chain = Chain::unbound(params.volume, given);
    let mut faces = [Lanes::all(0.0); N];
    for i in 0..last {
        faces[i] = (runs[i] + runs[i + 1]) * params.through[i] * 0.5;
        chain.bind(i, faces[i], faces[i]);
    }
    let surface = draw(params, holds[last], film, leaves);
    let open = runs[last] * params.through[last];
    let open = open / (open * surface.eases + Lanes::all(1.0));
    let draws = surface.draws;
    faces[last] = (excess[last] - draws).positive(open, Lanes::all(0.0));
    chain.own[last] = chain.own[last] + faces[last];
    chain.given[last] = chain.given[last] + faces[last] * draws;
    let after = chain.solve();
    let mut seeped = Seeped {
        water: state.water,
        outward: faces,
    };
    for i in 0..N {
        let beyond = if i < last { after[i + 1] } else { draws };
        seeped.outward[i] = faces[i] * (after[i] - beyond);
        seeped.water[i] = after[i] + holds[i];
    }
    seeped
}

/// What a surface that is not all covered draws, and how what comes eases it within the step.
struct Draw<F, const L: usize> {
    /// Its pressure, kg/m³: 0 where it is covered, less where it is not.
    draws: Lanes<F, L>,
    /// How much nearer to nothing a kg/m² of juice brings it.
    eases: Lanes<F, L>,
}

/// `leaves` is the share of the film that the step leaves: what is drawn out evaporates too, so it is reckoned with the step
/// and not after it, or a thin film would be wet and dry in turns.
#[inline(always)]
fn draw<F: Real, const N: usize, const L: usize>(
    params: &Params<F, N, L>,
    holds: Lanes<F, L>,
    film: Lanes<F, L>,
    leaves: Lanes<F, L>,
) -> Draw<F, L> {
    let most = holds * (1.0 - BARK_HOLDS);
    let share = leaves / params.drips_from;
    let dry = (Lanes::all(1.0) - film * share).at_least(0.0);
    Draw {
        draws: most * (Lanes::all(0.0) - dry),
        eases: dry.positive(most * share, Lanes::all(0.0)),
    }
}
