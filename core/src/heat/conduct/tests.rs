use super::*;
use crate::units::Mk;

const SERIES: &str = include_str!("../../../tests/published/full_series_center_surface.csv");
const ONE_TERM: &str = include_str!("../../../tests/published/one_term_coefficients.csv");

/// A solid whose characteristic time is 1 s.
fn unit(shape: f64, biot: f64) -> Solid {
    Solid {
        half_thickness: 1.0,
        shape,
        conducts: 1.0,
        holds: 1.0,
        surface: biot,
    }
}

/// 0.1 K in a difference of 100 K.
const CLOSE: f64 = 1e-3;

#[test]
fn the_exact_series_of_slab_cylinder_and_sphere() {
    let mut seen = 0;
    for row in SERIES.lines().skip(1) {
        let cells: Vec<&str> = row.split(',').collect();
        let shape = match cells[0] {
            "wall" => 0.0,
            "sphere" => 2.0,
            _ => 1.0,
        };
        let [biot, fourier, core, surface] = [1, 2, 3, 4].map(|i| cells[i].parse::<f64>().unwrap());
        let solid = unit(shape, biot);
        let left = &solid.warm(&[fourier], 40)[0];
        assert!((left.core() - core).abs() < CLOSE, "{row}: {}", left.core());
        let ours = left.surface(&solid);
        assert!((ours - surface).abs() < CLOSE, "{row}: {ours}");
        seen += 1;
    }
    assert_eq!(seen, 128);
}

/// Late, each falls as its first term: the eigenvalue can be read off two times.
#[test]
fn the_first_terms_of_every_published_biot_number() {
    let mut seen = 0;
    for row in ONE_TERM.lines().skip(1) {
        let cells: Vec<f64> = row
            .split(',')
            .take(7)
            .map(|cell| cell.parse().unwrap())
            .collect();
        for shape in 0..3 {
            let solid = unit(shape as f64, cells[0]);
            let (zeta, c) = (cells[1 + 2 * shape], cells[2 + 2 * shape]);
            let left = solid.warm(&[0.6], 60);
            let exact = c * libm::exp(-zeta * zeta * 0.6);
            assert!(
                (left[0].core() - exact).abs() < CLOSE,
                "{row} shape {shape}"
            );
            seen += 1;
        }
    }
    assert!(seen >= 90, "{seen}");
}

/// Cengel's long shaft of 20 cm, from memory, recomputed by the exact series: 364.3 °C inside after 45 minutes.
#[test]
fn a_shaft_that_cools() {
    let shaft = ConductionInput {
        half_thickness_um: 100_000,
        shape_permille: 1_000,
        conducts_uw_per_m_k: 14_900_000,
        holds_j_per_m3_k: 3_772_152,
        surface_mw_per_m2_k: 80_000,
        start: Mk::from_c_milli(600_000),
        around: Mk::from_c_milli(200_000),
        at_s: vec![600, 2_700],
    };
    let answer = conduction(&shaft).unwrap();
    assert_eq!(answer.biot_permille, 537);
    let core = answer.at[1].core.c_milli();
    assert!((core - 364_300).abs() < 200, "{core}");
    assert!(answer.at[1].surface < answer.at[1].mean && answer.at[1].mean < answer.at[1].core);
}

/// Cengel's egg, from memory, recomputed by the exact series: 861 s to 70 °C inside.
#[test]
fn an_egg_that_boils() {
    let egg = |at_s| ConductionInput {
        half_thickness_um: 25_000,
        shape_permille: 2_000,
        conducts_uw_per_m_k: 627_000,
        holds_j_per_m3_k: 4_152_318,
        surface_mw_per_m2_k: 1_200_000,
        start: Mk::from_c_milli(5_000),
        around: Mk::from_c_milli(95_000),
        at_s: vec![at_s],
    };
    let core = conduction(&egg(861)).unwrap().at[0].core.c_milli();
    assert!((core - 70_000).abs() < 100, "{core}");
    assert_eq!(
        conduction(&ConductionInput {
            shape_permille: 2_001,
            ..egg(1)
        }),
        Err(NotASolid::Range("shape_permille", 0, 2_000))
    );
    assert_eq!(
        conduction(&ConductionInput {
            at_s: vec![5, 5],
            ..egg(1)
        }),
        Err(NotASolid::Times)
    );
}

/// Law: what lies between slab and cylinder cools between them.
#[test]
fn a_shape_between_lies_between() {
    let core = |shape| unit(shape, 2.0).warm(&[0.5], 40)[0].core();
    let shapes: Vec<f64> = (0..=8).map(|i| core(f64::from(i) / 4.0)).collect();
    assert!(
        shapes.windows(2).all(|pair| pair[0] > pair[1]),
        "{shapes:?}"
    );
}
