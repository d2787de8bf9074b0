//! The stages a meat can go to from where it is.

use super::{Button, Tone, glance::Glance};
use crate::{
    checks::{SafeState, cut_facts, cuts::WrapKind},
    cook::{Cook, Piece},
    log::{Stage, Wrap},
};

impl Glance<'_> {
    /// The stages it can go to from where it is.
    pub fn stage_buttons(&self, cook: &Cook, piece: &Piece) -> Vec<Button> {
        let stage = piece.stage(self.now).map(|passed| passed.stage);
        let unshown = self.lacks_its_minimum(cook, piece);
        let next = match stage {
            Some(off @ (Stage::Off | Stage::Held | Stage::CutUp)) if unshown => {
                self.stages_unshown(off)
            }
            _ => self.stages_after(piece, stage),
        };
        next.into_iter()
            .map(|(stage, tone)| self.guarded(cook, piece, stage, tone))
            .collect()
    }

    fn stages_after(&self, piece: &Piece, stage: Option<Stage>) -> Vec<(Stage, Tone)> {
        let pits = self.known.crew.pits.keys();
        let on = |tone| {
            pits.clone()
                .map(move |pit| (Stage::OnPit { pit: *pit }, tone))
        };
        let wraps = || {
            let kinds = cut_facts(piece.cut).wraps.into_iter().map(wrap_of);
            kinds.map(|wrap| (Stage::Wrapped { wrap }, Tone::Plain))
        };
        let plain = |stage| (stage, Tone::Plain);
        let main = |stage| (stage, Tone::Main);
        match stage {
            None => [Stage::Trimmed, Stage::Brined, Stage::Rubbed]
                .map(plain)
                .into_iter()
                .chain(on(Tone::Main))
                .collect(),
            Some(Stage::Trimmed | Stage::Brined | Stage::Rubbed | Stage::Resting) => on(Tone::Main)
                .chain([Stage::Rubbed, Stage::Resting].map(plain))
                .filter(|(to, _)| Some(*to) != stage)
                .collect(),
            Some(Stage::OnPit { .. } | Stage::Unwrapped) => {
                std::iter::once(main(Stage::Off)).chain(wraps()).collect()
            }
            Some(Stage::Wrapped { .. }) => vec![main(Stage::Off), plain(Stage::Unwrapped)],
            Some(Stage::Off) => [main(Stage::Held), plain(Stage::CutUp), plain(Stage::Served)]
                .into_iter()
                .chain(on(Tone::Plain))
                .collect(),
            Some(Stage::Held) => vec![
                main(Stage::CutUp),
                plain(Stage::Served),
                plain(Stage::PutAway),
            ],
            Some(Stage::CutUp) => vec![main(Stage::Served), plain(Stage::PutAway)],
            Some(Stage::Served) => vec![main(Stage::PutAway)],
            Some(Stage::PutAway) => vec![main(Stage::Reheated)],
            Some(Stage::Reheated) => vec![main(Stage::Served), plain(Stage::PutAway)],
            Some(Stage::ThrownAway) => vec![],
        }
    }

    /// Off with its minimum not shown, it goes back on; nothing else is offered first.
    fn stages_unshown(&self, stage: Stage) -> Vec<(Stage, Tone)> {
        let pits = self.known.crew.pits.keys();
        let on = pits.map(|pit| (Stage::OnPit { pit: *pit }, Tone::Main));
        let others = [Stage::Held, Stage::CutUp, Stage::Served, Stage::PutAway];
        let others = others
            .into_iter()
            .filter(|to| *to != stage && !matches!((stage, to), (Stage::CutUp, Stage::Held)));
        on.chain(others.map(|to| (to, Tone::Plain))).collect()
    }

    /// Whether no reading shows the published minimum, rest apart.
    pub fn lacks_its_minimum(&self, cook: &Cook, piece: &Piece) -> bool {
        let verdict = self.verdict(cook, piece);
        !verdict.is_ok_and(|verdict| verdict.safety.rest_left_ms.is_some())
    }

    /// Serving what was never shown to reach its minimum is asked about first, and so is a pit that is too cool for it.
    fn guarded(&self, cook: &Cook, piece: &Piece, stage: Stage, tone: Tone) -> Button {
        if let Some(asked) = self.on_too_cool(piece, stage, tone) {
            return asked;
        }
        let mut button = self.stage_button(piece.id, stage, tone);
        let shown = self
            .verdict(cook, piece)
            .is_ok_and(|v| v.safety.state == SafeState::Safe);
        if stage == Stage::Served && !shown {
            button.tone = Tone::Grave;
            button.confirm = Some(self.say.text("confirm-serve"));
        }
        button
    }
}

const fn wrap_of(kind: WrapKind) -> Wrap {
    match kind {
        WrapKind::Paper => Wrap::Paper,
        WrapKind::Foil => Wrap::Foil,
        WrapKind::Boat => Wrap::Boat,
        WrapKind::Pan => Wrap::Pan,
    }
}
