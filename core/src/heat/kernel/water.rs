//! Water inside: what hot meat can hold, and how what it cannot hold seeps out.

use super::{block::Step, lanes::Lanes, member::Params, number::Real, state::State, thomas::Chain};

/// What meat holds at some temperature over what it holds cold.
///
/// Van der Sman's equilibrium (2007; from memory, held to values computed from it):
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

/// What is left of the ways of juice where part of it is gone: the cube of how full they are. After Kozeny and Carman, the
/// exponent from memory: as meat dries its pores close.
#[inline(always)]
fn opens<F: Real, const L: usize>(filled: Lanes<F, L>) -> Lanes<F, L> {
    filled * filled * filled
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
    let seep = params.seep * step.seconds;
    let half = Lanes::all(0.5) / params.water;
    let runs: [Lanes<F, L>; N] = std::array::from_fn(|i| {
        let next = if i < last { i + 1 } else { i };
        let filled = (state.water[i] + state.water[next]) * half;
        runs((state.temp[i] + state.temp[next]) * 0.5) * opens(filled) * seep * params.through[i]
    });
    let given = std::array::from_fn(|i| excess[i] * params.volume[i]);
    let mut chain = Chain::unbound(params.volume, given);
    let mut faces = [Lanes::all(0.0); N];
    for i in 0..last {
        faces[i] = runs[i];
        chain.bind(i, faces[i], faces[i]);
    }
    let open = runs[last];
    let surface = draw(params, [holds[last], excess[last], open], film, leaves);
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
/// and not after it, or a thin film would be wet and dry in turns. `cell` is what the outermost cell can hold, has above that,
/// and lets through.
#[inline(always)]
fn draw<F: Real, const N: usize, const L: usize>(
    params: &Params<F, N, L>,
    cell: [Lanes<F, L>; 3],
    film: Lanes<F, L>,
    leaves: Lanes<F, L>,
) -> Draw<F, L> {
    let [holds, excess, open] = cell;
    let (one, none) = (Lanes::all(1.0), Lanes::all(0.0));
    let most = holds * (1.0 - BARK_HOLDS);
    let share = leaves / params.drips_from;
    let dry = one - film * share;
    let (draws, eases) = (none - most * dry, most * share);
    let volume = params.volume[N - 1];
    let comes = (excess - draws) * open * volume / (volume + open * (one + eases * volume));
    let stays_dry = dry - comes.at_least(0.0) * share;
    Draw {
        draws: stays_dry.positive(draws, none),
        eases: stays_dry.positive(eases, none),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Computed from the function apart from this code: °C, and kg of water a kg of lean meat.
    const EQUILIBRIUM: [(f64, f64); 8] = [
        (20.0, 0.7450),
        (40.0, 0.7444),
        (52.0, 0.7339),
        (60.0, 0.6768),
        (65.0, 0.5855),
        (70.0, 0.4862),
        (80.0, 0.4092),
        (95.0, 0.4002),
    ];

    #[test]
    fn hot_meat_holds_what_the_published_function_says() {
        for (celsius, y) in EQUILIBRIUM {
            let exact = y / (1.0 - y) * (0.255 / 0.745);
            let (fine, fast) = (
                holds(Lanes::<f64, 1>::all(celsius)),
                holds(Lanes::<f32, 1>::all(celsius)),
            );
            assert!((fine.0[0] / exact - 1.0).abs() < 3e-4, "{celsius}");
            assert!((fast.0[0].f64() - fine.0[0]).abs() < 1e-6, "{celsius}");
        }
    }

    /// Water's viscosity at 20 and 80 °C is 1.002 and 0.355 mPa s (from memory), 0.404 at 70 °C.
    #[test]
    fn hot_juice_runs_as_much_faster_as_water() {
        for (celsius, viscosity) in [(20.0, 1.002), (70.0, 0.404), (80.0, 0.355)] {
            let ours = runs(Lanes::<f64, 1>::all(celsius)).0[0];
            assert!(
                (ours * viscosity / 0.404 - 1.0).abs() < 0.03,
                "{celsius}: {ours}"
            );
        }
    }
}
