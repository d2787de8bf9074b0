use super::{coefficients::PARTS, *};
use crate::units::Mk;

const COEFFICIENTS: &str = include_str!("../../../tests/published/choi_okos_coefficients.csv");
const PROPERTIES: &str = include_str!("../../../tests/published/choi_okos_meat_properties.csv");
const COMPOSITION: &str = include_str!("../../../tests/published/composition.csv");

#[test]
fn the_coefficients_are_those_that_were_read() {
    let names = ["water", "protein", "fat", "carbohydrate", "ash"];
    let mut seen = 0;
    for row in COEFFICIENTS.lines().skip(1) {
        let cells: Vec<&str> = row.split(',').collect();
        let name = cells[0].split(' ').next().unwrap();
        let Some(part) = names.iter().position(|part| *part == name) else {
            continue;
        };
        let ours = match cells[1] {
            "k" => PARTS[part].conducts,
            "rho" => PARTS[part].density,
            "cp" => PARTS[part].holds,
            other => panic!("{other} is not used"),
        };
        let read = [cells[3], cells[4], cells[5]].map(|cell| cell.parse().unwrap_or(0.0));
        assert_eq!(ours, read, "{row}");
        seen += 1;
    }
    assert_eq!(seen, 15);
}

/// The other reckoning rounds to four digits.
#[test]
fn nine_raw_cuts_at_five_temperatures() {
    let mut seen = 0;
    for row in PROPERTIES.lines().skip(1) {
        let cells: Vec<&str> = row.split(',').collect();
        let ndb = cells[0].split(' ').next().unwrap();
        let Some(made_of) = COMPOSITION
            .lines()
            .find(|line| line.starts_with(&format!("{ndb},")))
        else {
            continue;
        };
        let after = made_of.rsplit_once("\",").unwrap().0.len() + 2;
        let grams: Vec<f64> = made_of[after..]
            .split(',')
            .take(4)
            .filter_map(|g| g.parse().ok())
            .collect();
        let number = |i: usize| cells[i].parse::<f64>().unwrap();
        let at =
            Parts::of_grams([grams[0], grams[1], grams[2], 0.0, grams[3]]).properties(number(1));
        for (ours, theirs) in [
            (at.density, number(2)),
            (at.heat, number(3) * 1e3),
            (at.conducts_most, number(4)),
            (at.conducts_least, number(5)),
            (at.diffusivity(), number(6)),
        ] {
            assert!(
                (ours / theirs - 1.0).abs() < 3e-4,
                "{row}: {ours} for {theirs}"
            );
        }
        seen += 1;
    }
    assert_eq!(seen, 20);
}

#[test]
fn what_is_no_food_is_told() {
    let brisket = FoodInput {
        water: 6_108,
        protein: 1_842,
        fat: 1_906,
        carbohydrate: 0,
        ash: 88,
        temp: Mk::from_c_milli(20_000),
    };
    assert!(food_properties(&brisket).is_ok());
    let frozen = FoodInput {
        temp: Mk::from_c_milli(-1),
        ..brisket
    };
    assert_eq!(food_properties(&frozen), Err(NotAFood::Temp));
    let too_much = FoodInput {
        water: 9_000,
        ..brisket
    };
    assert_eq!(food_properties(&too_much), Err(NotAFood::Parts));
    let negative = FoodInput { ash: -1, ..brisket };
    assert_eq!(food_properties(&negative), Err(NotAFood::Parts));
}
