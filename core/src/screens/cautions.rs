//! Cautions in words, where the act happens.

use super::{Caution, glance::Glance};
use crate::{
    ids::PitId,
    log::PitKind,
    safety::{CautionKind, Doing, cautions_at},
    units::Mk,
    words::Arg,
};

impl Glance<'_> {
    pub fn cautions(&self, doing: Doing) -> Vec<Caution> {
        self.caution_texts(&cautions_at(doing))
    }

    pub fn caution_texts(&self, kinds: &[CautionKind]) -> Vec<Caution> {
        kinds.iter().map(|kind| self.caution(*kind)).collect()
    }

    /// A smoker's air is the 225 to 300 °F of [`CautionKind::SmokerAir`]; the danger zone and the hot day are USDA's 40, 140 and 90 °F: see the source of [`CautionKind::TwoHours`].
    fn caution(&self, kind: CautionKind) -> Caution {
        let [cold, hot, air] = [40, 140, 90].map(|f| self.say.temperature(Mk::from_f(f)));
        let smoker = self.say.temperature_span(Mk::from_f(225), Mk::from_f(300));
        let args = [
            ("smoker", Arg::Text(&smoker)),
            ("cold", Arg::Text(&cold)),
            ("hot", Arg::Text(&hot)),
            ("air", Arg::Text(&air)),
        ];
        Caution {
            text: self.say.with(kind.key(), &args),
            source: self.say.text(kind.source().key()),
        }
    }

    /// What burns charcoal in this pit gives off carbon monoxide.
    pub fn burns_charcoal(&self, pit: PitId) -> bool {
        let kind = self.known.crew.pits.get(&pit).map(|pit| pit.kind.value);
        matches!(
            kind,
            Some(
                PitKind::Kettle
                    | PitKind::Drum
                    | PitKind::Ceramic
                    | PitKind::StickBurner
                    | PitKind::Cabinet
            )
        )
    }
}
