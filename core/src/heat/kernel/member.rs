//! One hypothesis about one meat, and what the steps need of it.

use super::{grid, lanes::Lanes, number::Real};

/// One hypothesis about one meat in one pit. Units are SI but for °C; what the ranges leave out is not refused here.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Member {
    /// From the center to the surface, m: 0.004 to 0.15.
    pub half_thickness: f64,
    /// 0 a slab, 1 a cylinder, 2 a sphere, and between: half thickness × surface / volume − 1.
    pub shape: f64,
    /// Heat that all but the water holds, J/(m³ K).
    pub dry_heat: f64,
    /// Water in the raw meat, kg/m³.
    pub water: f64,
    /// What all but the water conducts: at 0 °C, W/(m K), and its rise a kelvin.
    pub dry_conducts: [f64; 2],
    /// What the raw meat's water adds: at 0 °C, W/(m K), and its rise a kelvin.
    pub water_conducts: [f64; 2],
    /// Both are multiplied by this: about 0.85 to 1.15.
    pub conducts: f64,
    /// Convection, W/(m² K): 4 to 30.
    pub convection: f64,
    /// Emissivity: 0 to 1.
    pub emissivity: f64,
    /// The share of the surface that is wet while juice comes: 0.05 to 0.9.
    pub wetness: f64,
    /// How fast juice seeps down its pressure, m²/s, at 70 °C with nothing lost yet: 5e-9 to 2e-7.
    pub seep: f64,
    /// How much of what published hot meat lets go this meat lets go: 0 to 1.2.
    pub lets_go: f64,
    /// What the pit is hotter where the meat lies than where it is read, K.
    pub pit_bias: f64,
    /// All of it when it goes on, °C.
    pub start_c: f64,
}

/// The members of a block, lane by lane. Start at [`Params::of`].
#[derive(Clone, Debug)]
pub struct Params<F, const N: usize, const L: usize> {
    /// Volume of each cell a surface, m.
    pub(super) volume: [Lanes<F, L>; N],
    /// Area over distance from each cell to the next, the last to the surface, 1/m.
    pub(super) through: [Lanes<F, L>; N],
    pub(super) dry_heat: Lanes<F, L>,
    pub(super) water: Lanes<F, L>,
    pub(super) conducts: [Lanes<F, L>; 4],
    pub(super) convection: Lanes<F, L>,
    pub(super) emissivity: Lanes<F, L>,
    pub(super) drips_from: Lanes<F, L>,
    pub(super) seep: Lanes<F, L>,
    pub(super) lets_go: Lanes<F, L>,
    pub(super) pit_bias: Lanes<F, L>,
    pub(super) start_c: Lanes<F, L>,
}

/// A film of this much water covers half of a surface, kg/m² (a tenth of a millimeter). Invented.
pub(super) const HALF_COVERED: f64 = 0.1;

impl<F: Real, const N: usize, const L: usize> Params<F, N, L> {
    /// One member a lane.
    pub fn of(members: &[Member; L]) -> Self {
        let mut params = Self::blank();
        for (lane, member) in members.iter().enumerate() {
            params.set(lane, member);
        }
        params
    }

    fn blank() -> Self {
        let one = Lanes::all(1.0);
        Self {
            volume: [one; N],
            through: [one; N],
            dry_heat: one,
            water: one,
            conducts: [one; 4],
            convection: one,
            emissivity: one,
            drips_from: one,
            seep: one,
            lets_go: one,
            pit_bias: one,
            start_c: one,
        }
    }

    /// Puts a member into a lane; what the block's state says of that lane stays.
    pub fn set(&mut self, lane: usize, member: &Member) {
        let half = member.half_thickness;
        for i in 0..N {
            let next = if i + 1 < N {
                grid::middle(i + 1, N)
            } else {
                1.0
            };
            let face = grid::area(grid::edge(i + 1, N), member.shape);
            let distance = (next - grid::middle(i, N)) * half;
            self.volume[i].0[lane] = F::of(grid::volume(i, N, member.shape) * half);
            self.through[i].0[lane] = F::of(face / distance);
        }
        let [dry, dry_rise] = member.dry_conducts.map(|k| k * member.conducts);
        let [wet, wet_rise] = member
            .water_conducts
            .map(|k| k * member.conducts / member.water);
        for (into, k) in self.conducts.iter_mut().zip([dry, dry_rise, wet, wet_rise]) {
            into.0[lane] = F::of(k);
        }
        let wetness = member.wetness;
        for (into, value) in [
            (&mut self.dry_heat, member.dry_heat),
            (&mut self.water, member.water),
            (&mut self.convection, member.convection),
            (&mut self.emissivity, member.emissivity),
            (
                &mut self.drips_from,
                HALF_COVERED * wetness / (1.0 - wetness),
            ),
            (&mut self.seep, member.seep),
            (&mut self.lets_go, member.lets_go),
            (&mut self.pit_bias, member.pit_bias),
            (&mut self.start_c, member.start_c),
        ] {
            into.0[lane] = F::of(value);
        }
    }

    /// What cell holds at some water conducts at some temperature, W/(m K).
    #[inline(always)]
    pub(super) fn conductivity(&self, celsius: Lanes<F, L>, water: Lanes<F, L>) -> Lanes<F, L> {
        let [dry, dry_rise, wet, wet_rise] = self.conducts;
        dry + dry_rise * celsius + (wet + wet_rise * celsius) * water
    }

    /// Heat that a volume holds with some water, J/(m³ K).
    #[inline(always)]
    pub(super) fn holds(&self, water: Lanes<F, L>) -> Lanes<F, L> {
        self.dry_heat + water * super::WATER_HEAT
    }
}
