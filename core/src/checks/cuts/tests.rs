use super::*;
use crate::{checks::Test, safety::minimum, units::Mk};

#[test]
fn the_facts_of_each_cut_hang_together() {
    for cut in Cut::ALL {
        let facts = cut_facts(*cut);
        assert_eq!(facts.cut, *cut);
        assert!(
            facts.tests.contains(&Test::Temperature),
            "every cut can show its minimum"
        );
        assert!(facts.feel_by.iter().all(|test| facts.tests.contains(test)));
        assert_eq!(
            facts.done_by == DoneBy::Temperature,
            facts.feel_by.is_empty()
        );
        assert!(usize::try_from(facts.spots_needed).unwrap() <= facts.spots.len());
        assert!(
            facts.close_from <= facts.done_range.low
                && facts.done_range.low < facts.done_range.high
        );
        assert!(
            facts
                .over_above
                .is_none_or(|over| over > facts.done_range.high)
        );
        assert!(
            facts.done_range.low >= minimum(*cut, Form::Intact).temp,
            "nobody pulls {cut:?} below its minimum"
        );
        assert!(facts.pit.low <= facts.time_at.low && facts.time_at.high <= facts.pit.high);
        assert!(facts.tests.contains(&Test::WrapCall) != facts.wraps.is_empty());
    }
}

/// Ribs, shoulder and brisket are tough at 145 °F: their minimum is far below where they are done, and no feel is
/// believed that comes so early.
#[test]
fn what_is_done_by_feel_is_done_far_above_its_minimum() {
    for cut in Cut::ALL {
        let facts = cut_facts(*cut);
        if facts.is_done_far_above() {
            assert!(facts.tender_from() >= Mk::from_f(180), "{cut:?}");
        } else {
            assert_eq!(facts.done_by, DoneBy::Temperature, "{cut:?}");
        }
    }
}

#[test]
fn poultry_is_read_in_three_places_and_never_by_feel() {
    for cut in Cut::ALL.iter().filter(|cut| cut.is_poultry()) {
        let facts = cut_facts(*cut);
        assert_eq!((facts.spots_needed, facts.spots.len()), (3, 3));
        assert!(facts.by_hand && facts.done_by == DoneBy::Temperature);
    }
}

#[test]
fn what_is_not_known_is_not_whole_muscle() {
    for cut in Cut::ALL {
        assert_ne!(cut.form_unsaid(), Form::Intact);
        let said = minimum(*cut, cut.form_unsaid());
        assert!(said.temp >= minimum(*cut, Form::Intact).temp);
    }
}

#[test]
fn every_test_is_tried_on_some_cut() {
    for test in Test::ALL {
        let tried = |cut: &Cut| cut_facts(*cut).tests.contains(test);
        assert!(Cut::ALL.iter().any(tried), "{test:?} is tried on no cut");
    }
}
