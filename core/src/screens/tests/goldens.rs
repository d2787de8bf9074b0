//! The screen of the propped phone at five moments of the regatta lunch, in both languages. After a change that was
//! meant, `cargo test -p slowbend-core --lib write_goldens -- --ignored` writes them anew: read the difference.

use super::{
    regatta::{moment, told_until, viewer},
    shown::shown,
};
use crate::{cook::story::cook, screens::pitside, words::Locale};

/// Minutes after six: asleep, the rub, a late mop, glaze and turkey, off and resting.
const MOMENTS: [i64; 5] = [30, 166, 205, 432, 462];

fn all(locale: Locale) -> String {
    let screens = MOMENTS.map(|at| {
        let told = told_until(at - 1).told();
        let viewer = viewer(locale);
        let screen = pitside(&told.known(1), &viewer, cook(1), &moment(at)).unwrap();
        shown(&screen)
    });
    screens.join("\n")
}

#[test]
fn the_regatta_lunch_in_english() {
    let told = all(Locale::EnUs);
    assert!(told == include_str!("en-US.txt"), "now it reads:\n{told}");
}

#[test]
fn the_regatta_lunch_in_spanish() {
    let told = all(Locale::EsUs);
    assert!(told == include_str!("es-US.txt"), "now it reads:\n{told}");
}

#[test]
#[ignore = "writes the goldens anew"]
fn write_goldens() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/src/screens/tests/");
    for locale in Locale::ALL {
        std::fs::write(format!("{folder}{}.txt", locale.tag()), all(locale)).unwrap();
    }
}
