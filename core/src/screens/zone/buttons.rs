//! What can be done about a caution: go on past it, which is asked about and kept, or throw the food away.

use crate::{
    acts::Act,
    cook::{
        Piece,
        safety_facts::{SMOKER_LEAST, needs_hot_pit, too_cool},
    },
    ids::PieceId,
    log::{Caveat, Stage},
    safety::Source,
    screens::{Button, Tone, buttons::button, glance::Glance},
    words::Arg,
};

impl Glance<'_> {
    /// The question before a pit that is too cool takes a meat that needs a hot one; none where it may.
    pub fn on_too_cool(&self, piece: &Piece, stage: Stage, tone: Tone) -> Option<Button> {
        let Stage::OnPit { pit } = stage else {
            return None;
        };
        let heat = needs_hot_pit(piece).then(|| too_cool(&self.known, pit, self.now))??;
        let (pit_name, heat) = (self.pit(pit), self.say.temperature(heat));
        let (least, source) = (
            self.say.temperature(SMOKER_LEAST),
            self.say.text(Source::UsdaSmokerAir.key()),
        );
        let args = [
            ("name", Arg::Text(&piece.name.value)),
            ("pit", Arg::Text(&pit_name)),
            ("temp", Arg::Text(&heat)),
            ("least", Arg::Text(&least)),
            ("source", Arg::Text(&source)),
        ];
        let label = self.stage_button(piece.id, stage, tone).label;
        let (piece, at) = (piece.id, None);
        Some(Button {
            confirm: Some(self.say.with("confirm-cool-pit", &args)),
            ..button(label, Act::PutOnAnyway { piece, pit, at }, Tone::Grave)
        })
    }

    /// Go on past the clock.
    pub fn past_clock(&self, piece: PieceId) -> Button {
        let name = self.piece_name(piece);
        let caveat = Caveat::PastClock;
        Button {
            confirm: Some(
                self.say
                    .with("confirm-past-clock", &[("name", Arg::Text(&name))]),
            ),
            ..button(
                self.say.text("button-past-clock"),
                Act::GoPast { piece, caveat },
                Tone::Grave,
            )
        }
    }

    /// Throw it away.
    pub fn throw_away(&self, piece: PieceId) -> Button {
        let name = self.piece_name(piece);
        Button {
            confirm: Some(
                self.say
                    .with("confirm-throw-away", &[("name", Arg::Text(&name))]),
            ),
            ..self.stage_button(piece, Stage::ThrownAway, Tone::Grave)
        }
    }
}
