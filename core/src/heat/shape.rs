//! What shape a cut has for heat: half its thickness, and how far it is from a slab.
//!
//! A brick β₁ and β₂ times as long and as wide as it is thick has surface × half thickness / volume = 1 + 1/β₁ + 1/β₂, the
//! equivalent dimensionality of Lin and others (ASHRAE Refrigeration, read in a copy of the 2010 edition, p. 20.5); less 1 it
//! is the exponent of [`Member::shape`](super::kernel::Member). The proportions are from memory, no source: whoever measures
//! knows better, so the half thickness can be given.

use crate::checks::cuts::Cut;

/// Half the thickness, m, and the shape: 0 slab, 1 cylinder, 2 sphere, and between.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shape {
    /// From the center to the surface, m.
    pub half_thickness: f64,
    /// The exponent.
    pub shape: f64,
}

/// How the size of a cut follows its weight.
enum Grows {
    /// In all directions: so many times as long and as wide as thick.
    Alike(f64, f64),
    /// In length and width: so many mm thick, so many times as long as wide.
    Flat(f64, f64),
    /// In length: so many mm thick, so many times as wide as thick.
    Long(f64, f64),
    /// In number: so many mm thick, so many times as long and as wide.
    Number(f64, f64, f64),
}

/// Raw meat, kg/m³: Choi and Okos give 1020 to 1060 for the cuts here.
const DENSITY: f64 = 1_040.0;

/// Of this cut at this weight: 50 to 20,000 g, held there.
pub fn shape(cut: Cut, grams: i64) -> Shape {
    let volume = grams.clamp(50, 20_000) as f64 / 1000.0 / DENSITY;
    let (thick, long, wide) = match grows(cut) {
        Grows::Alike(long, wide) => (libm::cbrt(volume / (long * wide)), long, wide),
        Grows::Flat(mm, longer) => {
            let thick = mm / 1000.0;
            let wide = libm::sqrt(volume / (thick * longer)) / thick;
            (thick, wide * longer, wide)
        }
        Grows::Long(mm, wide) => {
            let thick = mm / 1000.0;
            (thick, volume / (thick * thick * thick * wide), wide)
        }
        Grows::Number(mm, long, wide) => (mm / 1000.0, long, wide),
    };
    Shape {
        half_thickness: thick / 2.0,
        shape: (1.0 / long + 1.0 / wide).min(2.0),
    }
}

const fn grows(cut: Cut) -> Grows {
    match cut {
        Cut::SpareRibs => Grows::Flat(29.0, 2.4),
        Cut::SpareRibsTrimmed => Grows::Flat(28.0, 2.8),
        Cut::BabyBackRibs => Grows::Flat(28.0, 3.5),
        Cut::PlateRibs => Grows::Flat(55.0, 1.3),
        Cut::BeefBackRibs => Grows::Flat(32.0, 2.0),
        Cut::PorkBelly => Grows::Flat(42.0, 1.4),
        Cut::PorkLoin => Grows::Long(75.0, 1.3),
        Cut::PorkButt | Cut::PorkPicnic => Grows::Alike(1.9, 1.5),
        Cut::LambShoulder => Grows::Alike(2.4, 1.6),
        Cut::Brisket => Grows::Alike(6.5, 3.4),
        Cut::BrisketFlat => Grows::Alike(6.5, 3.3),
        Cut::BrisketPoint => Grows::Alike(3.2, 2.2),
        Cut::TriTip => Grows::Alike(4.5, 2.0),
        Cut::ChickenWhole => Grows::Alike(3.2, 2.5),
        Cut::ChickenHalf => Grows::Alike(4.0, 2.6),
        Cut::TurkeyBreast => Grows::Alike(2.5, 1.9),
        Cut::ChickenThighs => Grows::Number(32.0, 2.6, 1.9),
        Cut::Sausages | Cut::PoultrySausages => Grows::Number(32.0, 3.8, 1.0),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_heavier_butt_is_thicker_and_a_heavier_slab_is_not() {
        let [small, large] = [3_000, 6_000].map(|grams| shape(Cut::PorkButt, grams));
        assert!(large.half_thickness > small.half_thickness * 1.25);
        let [small, large] = [1_200, 2_400].map(|grams| shape(Cut::SpareRibs, grams));
        assert_eq!(large.half_thickness, small.half_thickness);
        assert!(large.shape < small.shape);
    }

    #[test]
    fn every_cut_lies_between_a_slab_and_a_sphere() {
        for &cut in Cut::ALL {
            for grams in [50, 1_000, 20_000] {
                let Shape {
                    half_thickness,
                    shape,
                } = shape(cut, grams);
                assert!((0.0..=2.0).contains(&shape), "{cut:?} {grams}: {shape}");
                assert!((0.005..0.2).contains(&half_thickness), "{cut:?} {grams}");
            }
        }
    }
}
