//! A member for a cut as it usually is. Start at [`typical`].

use super::{
    food::Parts,
    kernel::{Member, Wrap},
    shape::{Shape, shape},
};
use crate::checks::cuts::{Composition, Cut, WrapKind, cut_facts};

/// Where the two temperatures lie between which conductivity is taken for straight, °C.
const STRAIGHT: [f64; 2] = [15.0, 80.0];
/// The heat of what is dry is that at this temperature, °C: it differs by 3 % over the whole range, the whole by 1 %.
const MIDDLE_C: f64 = 60.0;

/// Air of a pit, kg of vapor a kg of dry air: outdoor air has 0.002 to 0.02 (computed tables in `docs/heat.md`), a wood fire
/// adds about as much (3 kg of wood in 100 kg of air leave 1.5 kg of water). From memory.
pub const PIT_VAPOR: f64 = 0.025;

/// A cut of this weight, from the refrigerator, in a pit whose reading is right.
///
/// Convection and emissivity are those of still, hot air and of meat (from memory: 4 to 10 W/(m² K), 0.9). How wet the surface
/// is, how fast juice seeps and how much is let go are chosen so that what cooks see comes out of it; `docs/heat.md` says what
/// does, and how far each may be off.
pub fn typical(cut: Cut, grams: i64) -> Member {
    of_parts(parts(&cut_facts(cut).composition), shape(cut, grams))
}

/// Shares of a cut's published composition.
pub fn parts(composition: &Composition) -> Parts {
    let grams = [
        composition.water,
        composition.protein,
        composition.fat,
        0,
        composition.ash,
    ];
    Parts::of_grams(grams.map(|part| part as f64))
}

/// A member made of this, in this shape, the rest as [`typical`].
pub fn of_parts(parts: Parts, shape: Shape) -> Member {
    let density = parts.properties(20.0).density;
    let whole = STRAIGHT.map(|celsius| parts.properties(celsius).conducts_most);
    let water = STRAIGHT.map(|celsius| parts.water_conducts(celsius));
    Member {
        half_thickness: shape.half_thickness,
        shape: shape.shape,
        dry_heat: density * parts.dry_heat(MIDDLE_C),
        water: density * parts.water(),
        dry_conducts: straight([whole[0] - water[0], whole[1] - water[1]]),
        water_conducts: straight(water),
        conducts: 1.0,
        convection: 6.0,
        emissivity: 0.9,
        wetness: 0.22,
        seep: 6e-8,
        lets_go: 0.7,
        pit_bias: 0.0,
        start_c: 4.0,
    }
}

/// At 0 °C, and the rise a kelvin, of the straight line through two values.
fn straight([low, high]: [f64; 2]) -> [f64; 2] {
    let rise = (high - low) / (STRAIGHT[1] - STRAIGHT[0]);
    [low - rise * STRAIGHT[0], rise]
}

/// What a wrap does to heat and vapor.
pub const fn wrap(kind: WrapKind) -> Wrap {
    match kind {
        WrapKind::Foil | WrapKind::Pan => Wrap::FOIL,
        WrapKind::Paper => Wrap::PAPER,
        WrapKind::Boat => Wrap::BOAT,
    }
}
