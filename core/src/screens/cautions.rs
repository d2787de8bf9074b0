//! Cautions in words, where the act happens.

use super::{Button, Caution, Notice, glance::Glance};
use crate::{
    acts::Act,
    cook::Cook,
    ids::{CookId, PitId},
    log::PitKind,
    safety::{CautionKind, Doing, cautions_at},
    units::Mk,
    words::Arg,
};

use std::collections::BTreeSet;

/// The name of what is told once where a cook on coals is begun.
const PEOPLE: &str = "people/charcoal";

impl Glance<'_> {
    pub fn cautions(&self, doing: Doing) -> Vec<Caution> {
        self.caution_texts(&cautions_at(doing))
    }

    /// Those of them that nobody has put away yet.
    pub fn caution_texts(&self, kinds: &[CautionKind]) -> Vec<Caution> {
        let dismissed = &self.known.crew.dismissed;
        let stands =
            |kind: &&CautionKind| !kind.is_told_once() || !dismissed.contains(&kind.notice());
        let kinds = kinds.iter().filter(stands);
        kinds.map(|kind| self.caution(*kind)).collect()
    }

    /// How a caution that is told once is put away.
    fn put_away(&self, kind: CautionKind) -> Option<Button> {
        let notice = kind.notice();
        kind.is_told_once()
            .then(|| self.plain("button-caution-read", Act::Dismiss { notice }))
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
            dismiss: self.put_away(kind),
        }
    }

    /// Whether a pit of the cook burns what leaves coals.
    pub fn has_coals(&self, cook: CookId) -> bool {
        let cook = self.known.cooks.get(&cook);
        cook.is_some_and(|cook| {
            let pits = self.pits_of(cook);
            pits.into_iter().any(|pit| self.burns_charcoal(pit))
        })
    }

    /// Charcoal and fire, told once where a cook on coals is begun.
    pub fn people_notice(&self, cook: &Cook) -> Option<Notice> {
        let coals = cook.is_open() && self.has_coals(cook.id);
        let kinds = [
            CautionKind::CharcoalNeverIndoors,
            CautionKind::Extinguisher,
            CautionKind::LocalRulesFirst,
        ];
        let texts = kinds.map(|kind| {
            let caution = self.caution(kind);
            match kind {
                CautionKind::LocalRulesFirst => caution.text,
                _ => format!("{} ({})", caution.text, caution.source),
            }
        });
        coals
            .then(|| self.dismissible(PEOPLE.into(), texts.join(" ")))
            .flatten()
    }

    /// The question before somebody sleeps while a pit burns that may not be left, and nobody else has the watch.
    pub fn sleep_question(&self) -> Option<String> {
        let caution = self.sleep_caution()?;
        let args = [("caution", Arg::Text(&caution))];
        Some(self.say.with("confirm-sleep", &args))
    }

    /// What is to be heeded then: which pits may not be left, and that nobody sleeps near coals.
    pub fn sleep_caution(&self) -> Option<String> {
        let mut watch = self.known.crew.on_watch(self.now).into_iter();
        if watch.any(|turn| turn.device != self.viewer.device) {
            return None;
        }
        let names: Vec<String> = self.not_alone().iter().map(|pit| self.pit(*pit)).collect();
        let coals = self.caution(CautionKind::NoSleepNearCoals);
        let names = self.say.list(&names);
        let args = [
            ("pits", Arg::Text(&names)),
            ("caution", Arg::Text(&coals.text)),
            ("source", Arg::Text(&coals.source)),
        ];
        (!names.is_empty()).then(|| self.say.with("sleep-caution", &args))
    }

    /// The pits with meat on them that burn coals and may not be left at all.
    fn not_alone(&self) -> BTreeSet<PitId> {
        let meats = self.known.open_cooks().flat_map(Cook::meats);
        let on = meats.filter(|piece| piece.is_on_pit(self.now));
        let pits = on.filter_map(|piece| piece.pit(self.now).map(|(pit, _)| pit));
        let alone = |pit: &PitId| {
            let pit = self.known.crew.pits.get(pit);
            pit.and_then(|pit| pit.alone_minutes.value).unwrap_or(0) > 0
        };
        pits.filter(|pit| self.burns_charcoal(*pit) && !alone(pit))
            .collect()
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
