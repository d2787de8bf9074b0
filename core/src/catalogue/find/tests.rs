use super::*;
use proptest::prelude::*;
use std::collections::BTreeSet;

fn set(cuts: &[Cut]) -> BTreeSet<Cut> {
    cuts.iter().copied().collect()
}

const RIBS: [Cut; 5] = [
    Cut::SpareRibs,
    Cut::SpareRibsTrimmed,
    Cut::BabyBackRibs,
    Cut::PlateRibs,
    Cut::BeefBackRibs,
];
const CHICKEN: [Cut; 3] = [Cut::ChickenWhole, Cut::ChickenHalf, Cut::ChickenThighs];

#[test]
fn a_cook_finds_a_cut_by_what_it_is_called_at_the_pit() {
    for typed in [
        "rack",
        "slab",
        "ribs",
        "RIB",
        "costillas",
        "Costillar",
        "ribbs",
        "costilas",
    ] {
        assert_eq!(set(&find(typed)), set(&RIBS), "{typed}");
    }
    for (typed, cut) in [
        ("Boston butt", Cut::PorkButt),
        ("boston", Cut::PorkButt),
        ("cabeza de lomo", Cut::PorkButt),
        ("packer", Cut::Brisket),
        ("tritip", Cut::TriTip),
        ("tri tip", Cut::TriTip),
        ("medio pollo", Cut::ChickenHalf),
        ("half chiken", Cut::ChickenHalf),
        ("pechuga de pavo", Cut::TurkeyBreast),
        ("guajolote", Cut::TurkeyBreast),
        ("brats", Cut::Sausages),
        ("longaniza", Cut::Sausages),
        ("trimmed square", Cut::SpareRibsTrimmed),
        ("cordero", Cut::LambShoulder),
        ("panceta", Cut::PorkBelly),
    ] {
        assert_eq!(
            find(typed).first(),
            Some(&cut),
            "{typed}: {:?}",
            find(typed)
        );
    }
}

#[test]
fn a_word_that_many_cuts_share_finds_them_all() {
    let birds = find("bird");
    for cut in CHICKEN.iter().chain([&Cut::TurkeyBreast]) {
        assert!(birds.contains(cut), "{cut:?} is no bird");
    }
    assert!(birds.iter().all(|cut| cut.is_poultry()), "{birds:?}");
    assert_eq!(set(&find("ave")), set(&birds), "in both languages");
    let shoulders = [Cut::PorkButt, Cut::PorkPicnic, Cut::LambShoulder];
    assert_eq!(set(&find("paleta")), set(&shoulders));
    assert_eq!(set(&find("shoulder")), set(&shoulders));
    let briskets = [Cut::Brisket, Cut::BrisketFlat, Cut::BrisketPoint];
    for typed in ["brisket", "brisquet", "pecho", "Brisket"] {
        assert_eq!(set(&find(typed)), set(&briskets), "{typed}");
    }
}

#[test]
fn nothing_finds_all_and_nonsense_finds_none() {
    for typed in ["", "  ", " , - "] {
        assert_eq!(find(typed), Cut::ALL, "{typed:?}");
    }
    for typed in ["xylophone", "ribs xylophone", "z", "ribs\u{0}chicken"] {
        assert_eq!(find(typed), [], "{typed:?}");
    }
}

#[test]
fn each_cut_is_found_first_by_its_own_name_in_each_language() {
    for cut in Cut::ALL {
        for name in all_names(*cut).iter().take(2) {
            let found = find(name);
            assert!(found.contains(cut), "{name} finds {found:?}");
            assert!(found.len() <= 5, "{name} finds {found:?}");
        }
    }
}

proptest! {
    #[test]
    fn whatever_is_typed_no_cut_comes_twice(typed in "\\PC{0,90}") {
        let found = find(&typed);
        prop_assert_eq!(set(&found).len(), found.len());
    }

    #[test]
    fn a_letter_left_out_of_a_long_name_still_finds_it(which in 0..Cut::ALL.len(), at in 1usize..6) {
        let cut = Cut::ALL[which];
        let word = names()[which].1.iter().find(|word| word.len() >= 7).cloned();
        if let Some(mut word) = word {
            word.remove(at);
            prop_assert!(find(&word).contains(&cut), "{word}");
        }
    }
}
