//! The constants of `safety::minimums` against the rows of `tests/published/minimums.csv`.

use slowbend_core::{
    checks::Cut,
    moment::SECOND,
    safety::{Form, minimum, minimums::*},
    units::Mk,
};

/// (rule, temperature, milliseconds held) of each row; the provenance stands in the file.
fn published() -> Vec<(String, Mk, i64)> {
    let text = include_str!("../published/minimums.csv");
    text.lines()
        .skip(1)
        .map(|line| {
            let mut cells = line.splitn(4, ',');
            let mut cell = || cells.next().expect("four cells in each row");
            let (rule, temp, hold) = (cell().to_owned(), cell(), cell());
            let hold: f64 = hold.parse().expect("seconds");
            let temp = Mk::from_f(temp.parse().expect("degrees"));
            (rule, temp, (hold * SECOND as f64) as i64)
        })
        .collect()
}

fn of(rule: &str) -> Vec<(Mk, i64)> {
    let rows: Vec<_> = published()
        .into_iter()
        .filter(|row| row.0 == rule)
        .map(|row| (row.1, row.2))
        .collect();
    assert!(!rows.is_empty(), "no row {rule}");
    rows
}

#[test]
fn the_usda_chart() {
    for cut in Cut::ALL
        .iter()
        .filter(|cut| !cut.is_poultry() && !cut.is_ground())
    {
        let whole = minimum(*cut, Form::Intact);
        assert_eq!(
            of("usda_whole_muscle"),
            [(whole.temp, whole.rest_ms)],
            "{cut:?}"
        );
    }
    for form in [
        Form::Intact,
        Form::Injected,
        Form::Ground,
        Form::Rolled,
        Form::Unknown,
    ] {
        let sausages = minimum(Cut::Sausages, form);
        assert_eq!(
            of("usda_ground"),
            [(sausages.temp, sausages.rest_ms)],
            "{form:?}"
        );
    }
    assert_eq!(
        of("usda_ground"),
        [(minimum(Cut::PorkButt, Form::Ground).temp, 0)]
    );
    for form in Form::ALL {
        for cut in Cut::ALL.iter().filter(|cut| cut.is_poultry()) {
            let bird = minimum(*cut, *form);
            assert_eq!(
                of("usda_poultry"),
                [(bird.temp, bird.rest_ms)],
                "{cut:?} {form:?}"
            );
        }
    }
}

#[test]
fn the_food_code() {
    for form in [
        Form::Injected,
        Form::Tenderised,
        Form::Rolled,
        Form::Unknown,
    ] {
        let raised = minimum(Cut::SpareRibs, form);
        assert_eq!(of("food_code_raised"), [(raised.temp, raised.rest_ms)]);
    }
    let [first, second] = FOOD_CODE_OTHER_STEPS;
    assert_eq!(of("food_code_chart"), [first, second, (MEAT_AT_ONCE, 0)]);
    for cut in Cut::ALL {
        let stuffed = minimum(*cut, Form::Stuffed);
        assert_eq!(
            of("food_code_poultry_stuffed"),
            [(stuffed.temp, stuffed.rest_ms)]
        );
    }
}

#[test]
fn no_time_is_needed_at_158_for_meat_and_at_165_for_turkey_and_a_degree_less_needs_some() {
    assert_eq!(
        of("fsis_meat_6_5_log"),
        [(Mk::from_f(157), 14 * SECOND), (MEAT_AT_ONCE, 0)]
    );
    let turkey = of("fsis_turkey_12_fat");
    assert_eq!(turkey[1], (POULTRY_OR_STUFFED, 0));
    assert!(turkey[0].1 > 0);
}
