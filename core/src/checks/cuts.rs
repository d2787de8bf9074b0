//! The cuts, one file each. Start at [`cut_facts`]. A new cut is a file with one function, and a line in each match here.
//!
//! No number here is published: all are common practice, no source. The published ones are in
//! [`safety::minimums`](crate::safety::minimums), and no verdict goes below those whatever stands here.

mod cook_time;
mod facts;
mod pork_butt;
mod spare_ribs;
mod turkey_breast;

pub use cook_time::{CookTime, Minutes};
pub use facts::{BastingHint, CheckAgain, CutFacts, Degrees, DoneBy, Species, WrapKind};

use super::Spot;
use crate::safety::{Form, keyed::keyed};

keyed! {
    /// What piece of which animal.
    Cut {
        /// A slab of pork spare ribs, trimmed square or not.
        SpareRibs = "cut-spare-ribs",
        /// The upper pork shoulder, bone in or out.
        PorkButt = "cut-pork-butt",
        /// A turkey breast, bone in or out.
        TurkeyBreast = "cut-turkey-breast",
    }
}

impl Cut {
    /// The animal.
    pub const fn species(self) -> Species {
        match self {
            Self::SpareRibs | Self::PorkButt => Species::Pork,
            Self::TurkeyBreast => Species::Turkey,
        }
    }

    /// Whether the poultry rules hold.
    pub const fn is_poultry(self) -> bool {
        matches!(self.species(), Species::Turkey)
    }

    /// The places where its temperature counts, in the order to read them. What is stuffed adds its stuffing.
    pub fn spots(self, form: Form) -> Vec<Spot> {
        let mut spots = cut_facts(self).spots;
        if form == Form::Stuffed {
            spots.push(Spot::StuffingCenter);
        }
        spots
    }
}

/// What is known of a cut.
pub fn cut_facts(cut: Cut) -> CutFacts {
    match cut {
        Cut::SpareRibs => spare_ribs::facts(),
        Cut::PorkButt => pork_butt::facts(),
        Cut::TurkeyBreast => turkey_breast::facts(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{checks::Test, safety::minimum};

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
                facts.done_range.low >= minimum(*cut, Form::Intact).temp,
                "nobody pulls {cut:?} below its minimum"
            );
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
}
