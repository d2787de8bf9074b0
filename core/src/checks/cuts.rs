//! The cuts, one file each. Start at [`cut_facts`]. A new cut is a file with one function, and a line in each match here.
//!
//! No number here is published but what a cut is made of ([`Composition`]): all others are common practice, no source.
//! The published minimums are in [`safety::minimums`](crate::safety::minimums), and no verdict goes below those whatever
//! stands here. A cut like another says only what is otherwise.

mod baby_back_ribs;
mod beef_back_ribs;
mod brisket;
mod brisket_flat;
mod brisket_point;
mod chicken_half;
mod chicken_thighs;
mod chicken_whole;
mod composition;
mod cook_time;
mod facts;
mod lamb_shoulder;
mod plate_ribs;
mod pork_belly;
mod pork_butt;
mod pork_loin;
mod pork_picnic;
mod poultry_sausages;
mod sausages;
mod spare_ribs;
mod spare_ribs_trimmed;
mod tri_tip;
mod turkey_breast;

pub use composition::Composition;
pub use cook_time::{CookTime, Minutes};
pub use facts::{BastingHint, CheckAgain, CutFacts, Degrees, DoneBy, Species, WrapKind};

use super::Spot;
use crate::safety::{Form, keyed::keyed};

keyed! {
    /// What piece of which animal, in the order in which they are listed.
    Cut {
        /// A whole slab of pork spare ribs; in old entries also one that was trimmed.
        SpareRibs = "cut-spare-ribs",
        /// Spare ribs with tips and flap cut off, a square slab.
        SpareRibsTrimmed = "cut-spare-ribs-trimmed",
        /// Pork ribs from the loin.
        BabyBackRibs = "cut-baby-back-ribs",
        /// The upper pork shoulder, bone in or out.
        PorkButt = "cut-pork-butt",
        /// The lower pork shoulder with the arm bone.
        PorkPicnic = "cut-pork-picnic",
        /// A slab of fresh pork belly.
        PorkBelly = "cut-pork-belly",
        /// A pork loin roast, bone in or out.
        PorkLoin = "cut-pork-loin",
        /// A whole brisket, flat and point together.
        Brisket = "cut-brisket",
        /// The flat of a brisket alone.
        BrisketFlat = "cut-brisket-flat",
        /// The point of a brisket alone.
        BrisketPoint = "cut-brisket-point",
        /// A plate of beef short ribs, uncut.
        PlateRibs = "cut-plate-ribs",
        /// Beef ribs from which the roast was cut.
        BeefBackRibs = "cut-beef-back-ribs",
        /// A tri-tip roast, of the bottom sirloin.
        TriTip = "cut-tri-tip",
        /// A whole chicken, opened flat or not.
        ChickenWhole = "cut-chicken-whole",
        /// Half a chicken.
        ChickenHalf = "cut-chicken-half",
        /// Chicken thighs, some of them at once.
        ChickenThighs = "cut-chicken-thighs",
        /// A turkey breast, bone in or out.
        TurkeyBreast = "cut-turkey-breast",
        /// A lamb shoulder, bone in or out.
        LambShoulder = "cut-lamb-shoulder",
        /// Fresh sausages of pork or beef, some of them at once.
        Sausages = "cut-sausages",
        /// Fresh sausages of chicken or turkey, some of them at once.
        PoultrySausages = "cut-poultry-sausages",
    }
}

impl Cut {
    /// The animal.
    pub const fn species(self) -> Species {
        match self {
            Self::SpareRibs
            | Self::SpareRibsTrimmed
            | Self::BabyBackRibs
            | Self::PorkButt
            | Self::PorkPicnic
            | Self::PorkBelly
            | Self::PorkLoin => Species::Pork,
            Self::Brisket
            | Self::BrisketFlat
            | Self::BrisketPoint
            | Self::PlateRibs
            | Self::BeefBackRibs
            | Self::TriTip => Species::Beef,
            Self::ChickenWhole | Self::ChickenHalf | Self::ChickenThighs => Species::Chicken,
            Self::TurkeyBreast => Species::Turkey,
            Self::LambShoulder => Species::Lamb,
            Self::Sausages => Species::Mixed,
            Self::PoultrySausages => Species::Poultry,
        }
    }

    /// Whether the poultry rules hold.
    pub const fn is_poultry(self) -> bool {
        matches!(
            self.species(),
            Species::Chicken | Species::Turkey | Species::Poultry
        )
    }

    /// Whether it is ground meat whatever is said of it.
    pub const fn is_ground(self) -> bool {
        matches!(self, Self::Sausages | Self::PoultrySausages)
    }

    /// Whether these are ribs of pork, which get a glaze at the end where they are kept wet.
    pub const fn is_pork_ribs(self) -> bool {
        matches!(
            self,
            Self::SpareRibs | Self::SpareRibsTrimmed | Self::BabyBackRibs
        )
    }

    /// What is taken to have been done to it where nobody said: what is not known is never taken for whole muscle.
    pub const fn form_unsaid(self) -> Form {
        match self.is_ground() {
            true => Form::Ground,
            false => Form::Unknown,
        }
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
        Cut::SpareRibsTrimmed => spare_ribs_trimmed::facts(),
        Cut::BabyBackRibs => baby_back_ribs::facts(),
        Cut::PorkButt => pork_butt::facts(),
        Cut::PorkPicnic => pork_picnic::facts(),
        Cut::PorkBelly => pork_belly::facts(),
        Cut::PorkLoin => pork_loin::facts(),
        Cut::Brisket => brisket::facts(),
        Cut::BrisketFlat => brisket_flat::facts(),
        Cut::BrisketPoint => brisket_point::facts(),
        Cut::PlateRibs => plate_ribs::facts(),
        Cut::BeefBackRibs => beef_back_ribs::facts(),
        Cut::TriTip => tri_tip::facts(),
        Cut::ChickenWhole => chicken_whole::facts(),
        Cut::ChickenHalf => chicken_half::facts(),
        Cut::ChickenThighs => chicken_thighs::facts(),
        Cut::TurkeyBreast => turkey_breast::facts(),
        Cut::LambShoulder => lamb_shoulder::facts(),
        Cut::Sausages => sausages::facts(),
        Cut::PoultrySausages => poultry_sausages::facts(),
    }
}

#[cfg(test)]
mod tests;
