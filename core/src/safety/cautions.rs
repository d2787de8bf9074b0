//! What to tell a person at the moment of the act. Start at [`cautions_at`].
//!
//! Law: every set of cautions ends with the one that defers to local rules and to licensed practice.

use super::{Source, keyed::keyed};

keyed! {
    /// One caution. Its text names [`CautionKind::source`].
    CautionKind {
        /// Burning charcoal gives off carbon monoxide, which has no odor: never in a home, vehicle or tent.
        CharcoalNeverIndoors = "caution-charcoal-never-indoors",
        /// An open window or a fan does not make charcoal indoors safe.
        WindowIsNotEnough = "caution-window-is-not-enough",
        /// Coals give off carbon monoxide until they are out: no pit goes indoors with fresh ones.
        CoalsUntilOut = "caution-coals-until-out",
        /// A brush or mop that touched raw poultry touches nothing else.
        RawPoultryBrush = "caution-raw-poultry-brush",
        /// A marinade that held raw meat is boiled before it goes on cooked food.
        RawMarinade = "caution-raw-marinade",
        /// Two hours between 40 and 140 °F at most; one hour when the air is above 90 °F.
        TwoHours = "caution-two-hours",
        /// Hot food is held at 140 °F or above.
        HoldHot = "caution-hold-hot",
        /// Cold food is held at 40 °F or below.
        HoldCold = "caution-hold-cold",
        /// A smoker's air is 225 to 300 °F, with a thermometer in the air and one in the food.
        SmokerAir = "caution-smoker-air",
        /// What to do with food over a fire that went out is counted on a screen of its own.
        FireOutCounts = "caution-fire-out-counts",
        /// A thermometer that was in raw poultry is washed before it goes into anything else.
        WashThermometer = "caution-wash-thermometer",
        /// Hands, knives, cutting surfaces and the phone that touched raw poultry are washed too.
        WashHandsAndPhone = "caution-wash-hands-and-phone",
        /// A mop pot is kept at 140 °F or boiled before it goes on again.
        MopPotHot = "caution-mop-pot-hot",
        /// Raw poultry never sits over other food.
        RawNeverAbove = "caution-raw-never-above",
        /// A smoker stands in the open, away from what burns.
        SmokerInTheOpen = "caution-smoker-in-the-open",
        /// Nobody sleeps near burning coals.
        NoSleepNearCoals = "caution-no-sleep-near-coals",
        /// Ash is left until it is cold, in metal.
        ColdAsh = "caution-cold-ash",
        /// Meat that is burnt outside may be raw inside.
        BurntOutside = "caution-burnt-outside",
        /// Food that an extinguisher's powder reached is not eaten.
        ExtinguisherPowder = "caution-extinguisher-powder",
        /// Thick smoke is bitter; its harm is not judged here.
        ThickSmoke = "caution-thick-smoke",
        /// A grease fire gets no air and no water.
        GreaseFire = "caution-grease-fire",
        /// An extinguisher for grease is at hand, and whoever cannot put a fire out at once gets away and calls.
        Extinguisher = "caution-extinguisher",
        /// Meat is thawed through before it is smoked, never at room temperature.
        ThawFirst = "caution-thaw-first",
        /// A probe left in poultry shows one place; three places are read by hand.
        PoultryThreePlaces = "caution-poultry-three-places",
        /// Local rules and licensed practice go before anything said here.
        LocalRulesFirst = "caution-local-rules-first",
    }
}

impl CautionKind {
    /// Who published it.
    pub const fn source(self) -> Source {
        match self {
            Self::CharcoalNeverIndoors | Self::CoalsUntilOut => Source::CpscCharcoal,
            Self::WindowIsNotEnough => Source::Cpsc5012,
            Self::RawPoultryBrush | Self::RawMarinade => Source::UsdaMarinade,
            Self::TwoHours | Self::HoldHot | Self::HoldCold | Self::MopPotHot => {
                Source::UsdaTwoHours
            }
            Self::SmokerAir => Source::UsdaSmokerAir,
            Self::GreaseFire
            | Self::Extinguisher
            | Self::ThickSmoke
            | Self::WashThermometer
            | Self::WashHandsAndPhone
            | Self::RawNeverAbove
            | Self::ColdAsh => Source::CommonPractice,
            Self::ThawFirst | Self::SmokerInTheOpen => Source::UsdaSmoking,
            Self::NoSleepNearCoals => Source::CpscCharcoal,
            Self::PoultryThreePlaces
            | Self::FireOutCounts
            | Self::BurntOutside
            | Self::ExtinguisherPowder
            | Self::LocalRulesFirst => Source::OwnCaution,
        }
    }
}

impl CautionKind {
    /// Whether it is told once, and put away for good by whoever has read it: what is learned, not what the food at hand
    /// asks for.
    pub const fn is_told_once(self) -> bool {
        matches!(
            self,
            Self::CharcoalNeverIndoors
                | Self::WindowIsNotEnough
                | Self::CoalsUntilOut
                | Self::Extinguisher
                | Self::ColdAsh
                | Self::NoSleepNearCoals
                | Self::SmokerInTheOpen
                | Self::RawPoultryBrush
                | Self::RawMarinade
                | Self::WashThermometer
                | Self::WashHandsAndPhone
                | Self::MopPotHot
                | Self::RawNeverAbove
        )
    }

    /// What it is called when it is put away.
    pub fn notice(self) -> String {
        format!("caution/{}", self.key())
    }
}

keyed! {
    /// What a person is about to do, or has just done.
    Doing {
        /// Getting meat ready for the fire.
        Preparing = "doing-preparing",
        /// Lighting or feeding charcoal.
        LightingCharcoal = "doing-lighting-charcoal",
        /// Putting a pit away.
        PuttingPitAway = "doing-putting-pit-away",
        /// A mop, spritz or glaze on meat that is not poultry.
        MoppingMeat = "doing-mopping-meat",
        /// A mop, spritz or glaze on poultry.
        MoppingPoultry = "doing-mopping-poultry",
        /// Checking meat that is not poultry.
        CheckingMeat = "doing-checking-meat",
        /// Checking poultry.
        CheckingPoultry = "doing-checking-poultry",
        /// Taking meat off, holding it, serving it.
        Serving = "doing-serving",
        /// Holding dishes hot or cold.
        HoldingDishes = "doing-holding-dishes",
        /// Bringing back a pit that runs cold, or whose probe is silent.
        PitRunsCold = "doing-pit-runs-cold",
        /// Finding out that a fire is out.
        FireWentOut = "doing-fire-went-out",
        /// Moving raw poultry to where other food is.
        MovingPoultry = "doing-moving-poultry",
        /// Going to sleep while a pit burns.
        GoingToSleep = "doing-going-to-sleep",
        /// Cooling a pit that runs hot.
        PitRunsHot = "doing-pit-runs-hot",
        /// Clearing thick smoke.
        SmokeIsThick = "doing-smoke-is-thick",
        /// Starving burning fat.
        FlareUp = "doing-flare-up",
        /// Going on with what was in it.
        AfterFlareUp = "doing-after-flare-up",
    }
}

/// The cautions for this act, the gravest first, the deferring one last.
pub fn cautions_at(doing: Doing) -> Vec<CautionKind> {
    use CautionKind::*;
    let mut all = match doing {
        Doing::Preparing => vec![ThawFirst, RawMarinade],
        Doing::LightingCharcoal => vec![
            CharcoalNeverIndoors,
            WindowIsNotEnough,
            SmokerInTheOpen,
            Extinguisher,
        ],
        Doing::PuttingPitAway => vec![CoalsUntilOut, CharcoalNeverIndoors, ColdAsh],
        Doing::MoppingMeat => vec![RawMarinade, MopPotHot],
        Doing::MoppingPoultry => vec![RawPoultryBrush, RawMarinade, MopPotHot],
        Doing::CheckingMeat => vec![],
        Doing::CheckingPoultry => vec![PoultryThreePlaces, WashThermometer, WashHandsAndPhone],
        Doing::MovingPoultry => vec![RawNeverAbove, WashHandsAndPhone],
        Doing::GoingToSleep => vec![NoSleepNearCoals, CharcoalNeverIndoors],
        Doing::FireWentOut => vec![TwoHours, HoldHot],
        Doing::Serving => vec![TwoHours, HoldHot],
        Doing::HoldingDishes => vec![HoldHot, HoldCold, TwoHours],
        Doing::PitRunsCold => vec![TwoHours, FireOutCounts, SmokerAir],
        Doing::PitRunsHot => vec![BurntOutside],
        Doing::SmokeIsThick => vec![ThickSmoke],
        Doing::FlareUp => vec![GreaseFire, Extinguisher],
        Doing::AfterFlareUp => vec![BurntOutside, ExtinguisherPowder],
    };
    all.push(LocalRulesFirst);
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_act_defers_to_local_rules_last_and_every_caution_is_said_somewhere() {
        let mut said = std::collections::BTreeSet::new();
        for doing in Doing::ALL {
            let all = cautions_at(*doing);
            assert_eq!(all.last(), Some(&CautionKind::LocalRulesFirst), "{doing:?}");
            said.extend(all);
        }
        assert_eq!(said.into_iter().collect::<Vec<_>>(), CautionKind::ALL);
    }

    #[test]
    fn burning_fat_says_no_water_before_anything_else() {
        assert_eq!(cautions_at(Doing::FlareUp)[0], CautionKind::GreaseFire);
    }

    #[test]
    fn charcoal_says_never_indoors_before_anything_else() {
        assert_eq!(
            cautions_at(Doing::LightingCharcoal)[0],
            CautionKind::CharcoalNeverIndoors
        );
        assert!(CautionKind::CharcoalNeverIndoors.source().is_published());
    }
}
