//! Laws of heat over invented meats and pits, held by f64 members of 24 cells.

use proptest::prelude::*;
use slowbend_core::{
    checks::cuts::Cut,
    heat::{
        PIT_VAPOR,
        kernel::{Block, Boundary, Member, Mop, Wrap},
        typical,
    },
};

type Meat = Block<f64, 24, 1>;

/// Cuts that are cooked past a stall, and weights that they have.
const CUTS: [(Cut, i64, i64); 6] = [
    (Cut::PorkButt, 2_500, 5_000),
    (Cut::Brisket, 4_000, 8_000),
    (Cut::BrisketFlat, 1_500, 3_500),
    (Cut::SpareRibs, 1_200, 2_000),
    (Cut::BeefBackRibs, 1_000, 2_000),
    (Cut::LambShoulder, 1_500, 3_000),
];

prop_compose! {
    /// The ranges that `docs/heat.md` gives for what is not known of a meat.
    fn member()(
        cut in 0..CUTS.len(),
        weight in 0.0..1.0f64,
        wetness in 0.12..0.4f64,
        seep in -7.6..-6.9f64,
        lets_go in 0.5..0.9f64,
        convection in 4.0..12.0f64,
        conducts in 0.9..1.1f64,
    ) -> Member {
        let (cut, light, heavy) = CUTS[cut];
        let grams = light + ((heavy - light) as f64 * weight) as i64;
        Member { wetness, seep: libm::pow(10.0, seep), lets_go, convection, conducts, ..typical(cut, grams) }
    }
}

/// Hours until the center is at `until` °C, `around` being asked for each step with the center's temperature; none after 40 h.
fn hours(member: &Member, until: f64, mut around: impl FnMut(f64, f64) -> Boundary) -> Option<f64> {
    let mut meat = Meat::raw(&[*member]);
    for minute in 0..40 * 60 {
        let core = meat.state.core().0[0];
        if core >= until {
            return Some(f64::from(minute) / 60.0);
        }
        meat.step(&around(f64::from(minute), core), 60.0);
    }
    None
}

fn pit(celsius: f64) -> Boundary {
    Boundary::pit(celsius, PIT_VAPOR)
}

fn late(hours: Option<f64>) -> f64 {
    hours.unwrap_or(40.0)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, ..ProptestConfig::default() })]

    /// Law: a hotter pit is never slower.
    #[test]
    fn a_hotter_pit_is_never_slower(member in member(), pit_c in 105.0..140.0f64, more in 1.0..25.0f64) {
        let usual = late(hours(&member, 85.0, |_, _| pit(pit_c)));
        prop_assert!(late(hours(&member, 85.0, |_, _| pit(pit_c + more))) <= usual);
    }

    /// Law: foil put on in the stall is never slower than none.
    #[test]
    fn foil_in_the_stall_is_never_slower(member in member(), pit_c in 105.0..140.0f64, at in 66.0..74.0f64) {
        let mut wrapped = false;
        let foil = hours(&member, 93.0, |_, core| {
            wrapped |= core >= at;
            Boundary { wrap: if wrapped { Wrap::FOIL } else { Wrap::BARE }, ..pit(pit_c) }
        });
        prop_assert!(late(foil) <= late(hours(&member, 93.0, |_, _| pit(pit_c))) + 0.02);
    }

    /// Law: a cold mop never helps, and a thicker piece is never faster.
    #[test]
    fn a_mop_and_a_thicker_piece_are_never_faster(member in member(), pit_c in 110.0..140.0f64) {
        let usual = late(hours(&member, 75.0, |_, _| pit(pit_c)));
        let mopped = hours(&member, 75.0, |minute, _| {
            let water = if minute > 59.0 && minute % 30.0 == 0.0 { 0.15 } else { 0.0 };
            Boundary { mop: Mop { water, celsius: 20.0 }, ..pit(pit_c) }
        });
        prop_assert!(late(mopped) >= usual - 0.02);
        let thicker = Member { half_thickness: member.half_thickness * 1.1, ..member };
        prop_assert!(late(hours(&thicker, 75.0, |_, _| pit(pit_c))) >= usual);
    }

    /// Law: no place is colder than the coldest or hotter than the hottest that it met, no water comes of nothing, and none
    /// is owed.
    #[test]
    fn nothing_leaves_its_bounds(member in member(), pit_c in 60.0..170.0f64, vapor in 0.002..0.1f64) {
        let mut meat = Meat::raw(&[member]);
        for _ in 0..600 {
            meat.step(&Boundary::pit(pit_c, vapor), 60.0);
            for i in 0..24 {
                let (celsius, water) = (meat.state.temp[i].0[0], meat.state.water[i].0[0]);
                prop_assert!((member.start_c - 1e-6..=pit_c + 1e-6).contains(&celsius), "{celsius} °C in cell {i}");
                prop_assert!((0.0..=member.water * 1.6).contains(&water), "{water} kg/m³ in cell {i}");
            }
            prop_assert!(meat.state.film.0[0] >= -1e-9, "{:?}", meat.state.film);
        }
    }
}
