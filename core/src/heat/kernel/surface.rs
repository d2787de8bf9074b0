//! The surface: heat comes by air and by radiation, water leaves by evaporation as far as the surface is wet.

use super::{
    block::Step,
    lanes::Lanes,
    member::{HALF_COVERED, Params},
    number::Real,
    vapor::{AIR_LEFT, saturated},
};

/// Stefan and Boltzmann's, W/(m² K⁴) (CODATA, from memory).
const SIGMA: f64 = 5.670_374e-8;
/// Heat of dry air and of vapor, J/(kg K), and the heat to make vapor of water of 0 °C, J/kg, and its fall a kelvin: the
/// figures of the ASHRAE balance in [`crate::air`].
const AIR_HEAT: f64 = 1006.0;
const VAPOR_HEAT: f64 = 1860.0;
const LATENT: f64 = 2.501e6;
const LATENT_FALL: f64 = 2326.0;
/// Vapor over dry air where water boils, as [`saturated`] gives it: all but the air that it leaves.
const BOILS: f64 = 0.621_945 / AIR_LEFT;
/// What a wet surface above boiling gives off whatever lies around it, kg/(m² s) for each 1 kg/kg above [`BOILS`]: steam
/// finds its way out of any wrap. Invented, so that a wet surface stays within a few kelvin of boiling.
const VENTS: f64 = 5e-4;
/// How often the balance is drawn nearer before the step is solved.
const TRIES: usize = 2;

/// What air and pit do to the surface in a step, straight in its temperature near where it is.
#[derive(Clone, Copy)]
pub(super) struct Around<F, const L: usize> {
    /// The temperature of the surface that this is for, °C.
    near: Lanes<F, L>,
    /// What would evaporate were all of it wet, kg/m²; less than nothing where it condenses.
    pull: Lanes<F, L>,
    /// Its rise a kelvin.
    rise: Lanes<F, L>,
    /// J/kg.
    pub latent: Lanes<F, L>,
    /// Heat from around, J/(m² K).
    takes: Lanes<F, L>,
    /// What is around, °C.
    celsius: Lanes<F, L>,
}

impl<F: Real, const L: usize> Around<F, L> {
    /// With the surface at some temperature.
    #[inline(always)]
    pub fn of<const N: usize>(params: &Params<F, N, L>, step: &Step, skin: Lanes<F, L>) -> Self {
        let (air, wrap) = (&step.boundary, &step.boundary.wrap);
        let celsius = params.pit_bias + Lanes::all(air.pit_c);
        let convection = params.convection * air.draft;
        let (k, k_around) = (skin + 273.15, celsius + 273.15);
        let radiation = (k * k + k_around * k_around)
            * (k + k_around)
            * params.emissivity
            * (SIGMA * wrap.takes_up);
        let takes = convection + radiation;
        let (full, rise) = saturated(skin, air.pressure_pa);
        let carries =
            convection * (wrap.lets_through * step.seconds / (AIR_HEAT + VAPOR_HEAT * air.vapor));
        let (boils, vents) = (full - Lanes::all(BOILS), VENTS * step.seconds);
        Self {
            near: skin,
            pull: (full - Lanes::all(air.vapor)) * carries + boils.at_least(0.0) * vents,
            rise: rise * boils.positive(carries + vents, carries),
            latent: Lanes::all(LATENT) - skin * LATENT_FALL,
            takes: takes / (takes * wrap.resistance + Lanes::all(1.0)) * step.seconds,
            celsius,
        }
    }

    /// The share of a film that the step leaves where nothing is added to it.
    #[inline(always)]
    pub fn leaves(&self, wet: Lanes<F, L>) -> Lanes<F, L> {
        let covers = wet + HALF_COVERED;
        covers / (covers + self.pull.at_least(0.0))
    }

    /// With so much water on it, kg/m². Only what is covered gives vapor, and the less is left the less: no step takes more
    /// than there is. It condenses everywhere.
    #[inline(always)]
    fn wet(&self, wet: Lanes<F, L>) -> Surface<F, L> {
        let covers = wet + HALF_COVERED;
        let share = Lanes::all(1.0) / (covers + self.pull.at_least(0.0));
        let dries = wet * share;
        let (one, rise) = (Lanes::all(1.0), dries * covers * share);
        let evaporates = self.pull * self.pull.positive(dries, one);
        let rise = self.rise * self.pull.positive(rise, one);
        Surface {
            evaporates: evaporates - rise * self.near,
            rise,
            own: self.takes + self.latent * rise,
            given: self.takes * self.celsius - self.latent * (evaporates - rise * self.near),
        }
    }

    /// The balance with `wet` kg/m² of water on it, near where the surface comes to be. `inward` is what conducts from the
    /// surface to the outermost cell in the step, J/(m² K), and `inner` that cell's temperature.
    #[inline(always)]
    pub fn balance<const N: usize>(
        mut self,
        params: &Params<F, N, L>,
        step: &Step,
        wet: Lanes<F, L>,
        inner: Lanes<F, L>,
        inward: Lanes<F, L>,
    ) -> (Self, Surface<F, L>) {
        let mut surface = self.wet(wet);
        for _ in 0..TRIES {
            self = Self::of(params, step, surface.skin(inner, inward));
            surface = self.wet(wet);
        }
        (self, surface)
    }
}

/// The surface of a step, straight in its temperature.
pub(super) struct Surface<F, const L: usize> {
    /// What evaporates at 0 °C, kg/m², and its rise a kelvin.
    evaporates: Lanes<F, L>,
    rise: Lanes<F, L>,
    /// What it takes a kelvin of its own, J/(m² K), and what it is given at 0 °C, J/m².
    pub own: Lanes<F, L>,
    pub given: Lanes<F, L>,
}

impl<F: Real, const L: usize> Surface<F, L> {
    /// Where it comes to be, with that much conducted inward to a cell of that temperature.
    #[inline(always)]
    pub fn skin(&self, inner: Lanes<F, L>, inward: Lanes<F, L>) -> Lanes<F, L> {
        (self.given + inward * inner) / (self.own + inward)
    }

    /// What evaporates there, kg/m².
    #[inline(always)]
    pub fn evaporated(&self, skin: Lanes<F, L>) -> Lanes<F, L> {
        self.evaporates + self.rise * skin
    }
}
