//! What is hidden in one meat: its size, what it is made of, how its surface takes heat and gives water.

use super::{
    family::{Family, Range},
    shape::shape_of,
};
use crate::rng::Rng;
use slowbend_core::checks::cuts::{Cut, cut_facts};

/// Everything about a meat that no forecast is told but its cut and its weight.
#[derive(Clone, Copy, Debug)]
pub struct Meat {
    /// Which.
    pub cut: Cut,
    /// Its weight, g.
    pub grams: f64,
    /// Thickness, m.
    pub thick: f64,
    /// Width, m.
    pub wide: f64,
    /// Round as seen from above.
    pub round: bool,
    /// An elliptic section.
    pub ellipse: bool,
    /// Shares of water, protein, fat.
    pub made_of: [f64; 3],
    /// A factor on its conductivity.
    pub conducts: f64,
    /// W/(m² K) above.
    pub convection: f64,
    /// Share of that below.
    pub below: f64,
    /// Emissivity.
    pub emissivity: f64,
    /// kg/kg in the pit's air.
    pub vapor: f64,
    /// kg/(m² s) from a fresh surface.
    pub supply: f64,
    /// kg/m² until that falls off.
    pub stock: f64,
    /// It falls off as 1/(1 + x).
    pub hyperbolic: bool,
    /// Share of water that warming drives out.
    pub driven_out: f64,
    /// °C in the middle of that.
    pub driven_at: f64,
    /// Seconds to the surface.
    pub seep_s: f64,
    /// Share that drips off.
    pub drips: f64,
    /// Temperature when it comes on, °C.
    pub starts_at: f64,
    /// Minutes at 88 °C until it is tender; 0 where that does not decide.
    pub tender_min: f64,
    /// Kelvin for a factor of ten in that.
    pub z: f64,
}

/// One meat of a family.
pub fn meat(cut: Cut, family: Family, rng: &mut Rng) -> Meat {
    let (shape, ranges) = (shape_of(cut), family.ranges());
    let grams = rng.between(shape.grams.0, shape.grams.1);
    let middle = (shape.grams.0 + shape.grams.1) / 2.0;
    let thick = shape.thick_mm / 1e3 * (grams / middle).cbrt();
    let thick = rng.about(thick, ranges.thickness);
    let made = cut_facts(cut).composition;
    let fat = (made.fat as f64 / 1e4 * rng.about(1.0, 0.15)).min(0.6);
    let lean = (1.0 - fat) / (1.0 - made.fat as f64 / 1e4);
    let water = made.water as f64 / 1e4 * lean;
    let mut draw = |range: Range| rng.between(range.0, range.1);
    Meat {
        cut,
        grams,
        thick,
        wide: thick * shape.wide,
        round: shape.round,
        ellipse: ranges.ellipse,
        made_of: [water, made.protein as f64 / 1e4 * lean, fat],
        convection: draw(ranges.convection),
        below: draw(ranges.below),
        emissivity: draw(ranges.emissivity),
        vapor: draw(ranges.vapor),
        supply: draw(ranges.supply),
        stock: draw(ranges.stock) * 1040.0 * water * 0.03 * (thick / 0.06).powf(0.6),
        hyperbolic: ranges.hyperbolic,
        driven_out: draw(ranges.driven_out),
        driven_at: draw(ranges.driven_at),
        seep_s: draw(ranges.seep_h) * 3600.0,
        drips: draw(ranges.drips),
        starts_at: draw((2.0, 14.0)),
        z: draw(ranges.z),
        conducts: rng.about(1.0, ranges.conductivity),
        tender_min: rng.about(shape.tender_min, ranges.tender),
    }
}
