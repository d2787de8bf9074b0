use super::*;

/// A butt of 4 kg.
const BUTT: Member = Member {
    half_thickness: 0.055,
    shape: 1.19,
    dry_heat: 6.37e5,
    water: 719.0,
    dry_conducts: [0.05, 0.0],
    water_conducts: [0.416, 0.001],
    conducts: 1.0,
    convection: 6.0,
    emissivity: 0.9,
    wetness: 0.22,
    seep: 6e-8,
    lets_go: 0.7,
    pit_bias: 0.0,
    start_c: 4.0,
};

/// A night with all that happens: mops, a wrap, a rest at room temperature. Minutes since it went on.
fn around(minute: usize) -> Boundary {
    let mut around = Boundary::pit(if minute < 540 { 121.0 } else { 22.0 }, 0.02);
    if minute.is_multiple_of(30) && minute < 360 {
        around.mop = Mop {
            water: 0.1,
            celsius: 30.0,
        };
    }
    if (360..600).contains(&minute) {
        around.wrap = Wrap::PAPER;
    }
    around
}

/// The greatest errors of the books of heat and of water over a night, as shares of what was there.
fn books<F: Real, const N: usize>(members: &[Member; 4]) -> (f64, f64) {
    let mut block = Block::<F, N, 4>::raw(members);
    let f64s = |lanes: Lanes<F, 4>| lanes.0.map(Real::f64);
    let (heat, water) = (
        f64s(block.state.heat(&block.params)),
        f64s(block.state.inside(&block.params)),
    );
    let film = f64s(block.state.film);
    let (mut heat_in, mut water_in, mut film_in) = ([0.0; 4], [0.0; 4], [0.0; 4]);
    for minute in (0..660).step_by(2) {
        let flow = block.step(&around(minute), 120.0);
        for lane in 0..4 {
            let of = |lanes: Lanes<F, 4>| lanes.0[lane].f64();
            heat_in[lane] += of(flow.heat) - of(flow.carried);
            water_in[lane] -= of(flow.seeped);
            film_in[lane] +=
                of(flow.seeped) + of(flow.mopped) - of(flow.evaporated) - of(flow.dripped);
        }
    }
    let (heat_now, water_now) = (
        f64s(block.state.heat(&block.params)),
        f64s(block.state.inside(&block.params)),
    );
    let film_now = f64s(block.state.film);
    let (mut worst_heat, mut worst_water) = (0.0f64, 0.0f64);
    for lane in 0..4 {
        assert!(
            water_now[lane] < 0.95 * water[lane],
            "water left it: {water_now:?}"
        );
        worst_heat =
            worst_heat.max((heat_now[lane] - heat[lane] - heat_in[lane]).abs() / heat_now[lane]);
        let lost = (water_now[lane] - water[lane] - water_in[lane]).abs();
        worst_water = worst_water
            .max(lost.max((film_now[lane] - film[lane] - film_in[lane]).abs()) / water[lane]);
    }
    (worst_heat, worst_water)
}

fn four() -> [Member; 4] {
    let thin = Member {
        half_thickness: 0.012,
        shape: 0.2,
        ..BUTT
    };
    let wet = Member {
        wetness: 0.8,
        seep: 2e-7,
        lets_go: 1.1,
        ..BUTT
    };
    let dry = Member {
        wetness: 0.06,
        seep: 2e-9,
        conducts: 0.85,
        ..BUTT
    };
    [BUTT, thin, wet, dry]
}

/// Law: heat and water inside change by what crossed the surface, and by nothing else.
#[test]
fn nothing_is_lost_inside() {
    let (heat, water) = books::<f64, 48>(&four());
    assert!(heat < 1e-9 && water < 1e-9, "f64: {heat:e}, {water:e}");
    let (heat, water) = books::<f32, NODES>(&four());
    assert!(heat < 1e-4 && water < 1e-4, "f32: {heat:e}, {water:e}");
}

/// Law: a member comes to the same bytes in every lane, whatever lies beside it.
#[test]
fn a_lane_does_not_know_its_neighbors() {
    let follow = |members: &[Member; 4]| {
        let mut block = Block::<f32, NODES, 4>::raw(members);
        (0..60).for_each(|step| {
            block.step(&around(step * 2), 120.0);
        });
        block.state
    };
    let mut members = four();
    let straight = follow(&members);
    members.reverse();
    let mut reversed = follow(&members);
    let turned = reversed.clone();
    (0..4).for_each(|lane| reversed.copy_lane(lane, &turned, 3 - lane));
    assert_eq!(reversed.to_bytes(), straight.to_bytes());
}

#[test]
fn its_bytes_come_back_or_are_refused() {
    let mut block = Members::raw(&[BUTT; LANES]);
    block.step(&Boundary::pit(121.0, 0.02), 120.0);
    let bytes = block.state.to_bytes();
    assert_eq!(State::from_bytes(&bytes), Some(block.state));
    assert_eq!(State::<f32, NODES, LANES>::from_bytes(&bytes[1..]), None);
}

/// The time to a temperature inside, minutes, after `steps` of the fast kernel and of the reference.
#[test]
fn the_fast_kernel_is_within_two_percent_of_the_reference() {
    let fast = minutes_to::<f32, NODES>(95.0, 120.0, &Boundary::pit(121.1, 0.02));
    let fine = minutes_to::<f64, 48>(95.0, 10.0, &Boundary::pit(121.1, 0.02));
    assert!((fast / fine - 1.0).abs() < 0.02, "{fast} for {fine} min");
}

fn minutes_to<F: Real, const N: usize>(celsius: f64, seconds: f64, around: &Boundary) -> f64 {
    let mut block = Block::<F, N, 1>::raw(&[BUTT]);
    let mut steps = 0;
    while block.state.core().0[0].f64() < celsius {
        block.step(around, seconds);
        steps += 1;
    }
    f64::from(steps) * seconds / 60.0
}

/// A wet, thin piece that only air warms comes to the wet bulb of the air and stays there.
#[test]
fn what_is_all_wet_and_sees_no_walls_comes_to_the_wet_bulb() {
    let thin = Member {
        half_thickness: 0.004,
        shape: 0.0,
        emissivity: 0.0,
        wetness: 0.95,
        lets_go: 0.0,
        ..BUTT
    };
    for (dry_c, vapor) in [(60.0, 0.01), (107.2, 0.02), (121.1, 0.05), (121.1, 0.2)] {
        let mut block = Block::<f64, 24, 1>::raw(&[thin]);
        let mut around = Boundary::pit(dry_c, vapor);
        around.mop = Mop {
            water: 0.25,
            celsius: 40.0,
        };
        for _ in 0..3_000 {
            // Kept wet all the time by water of its own temperature.
            around.mop.celsius = block.state.skin.0[0];
            block.step(&around, 5.0);
            block.state.film = Lanes([1e3]);
        }
        let air = crate::air::Air {
            dry_bulb: crate::units::Mk::from_c_milli((dry_c * 1000.0) as i64),
            vapor_mg_per_kg: (vapor * 1e6) as i64,
            pressure_pa: 101_325,
        };
        let exact = crate::air::wet_bulb(&air).unwrap().wet_bulb.c_milli() as f64 / 1000.0;
        let ours = block.state.skin.0[0];
        assert!(
            (ours - exact).abs() < 0.5,
            "{dry_c} °C, {vapor}: {ours} for {exact}"
        );
    }
}

/// A night of four members in f32 comes to these bytes on every processor and in every build. A change of the equations changes
/// them: then what is printed here is put in.
#[test]
fn a_night_has_its_golden_bytes() {
    let mut block = Block::<f32, NODES, 4>::raw(&four());
    (0..660).step_by(2).for_each(|minute| {
        block.step(&around(minute), 120.0);
    });
    let hash = blake3::hash(&block.state.to_bytes()).to_hex();
    assert_eq!(
        hash.as_str(),
        "a588079c60bfc5e453950b4ddcdbdc21b9e390a38bcae8a92303b8c951053604"
    );
}
