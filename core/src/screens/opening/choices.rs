//! What can be done to one meat in an opening, and what of it is chosen already.

use super::{OpeningChoice, OpeningDoes};
use crate::{
    alarms::Due,
    cadence::Cadence,
    cook::Piece,
    ids::PieceId,
    log::{Job, Wrap},
    screens::glance::Glance,
    words::key,
};

impl Glance<'_> {
    /// Whether what touches it touches nothing else.
    pub fn is_poultry(&self, id: PieceId) -> bool {
        let found = self.known.piece(id);
        found.is_some_and(|(_, piece)| piece.cut.is_poultry())
    }

    /// What can be done to it; `ours` is what is due of it.
    pub(super) fn opening_choices(&self, piece: &Piece, ours: &[&Due]) -> Vec<OpeningChoice> {
        let asks = |is: fn(Job) -> bool| ours.iter().find(|due| is(due.job));
        let open = |is: fn(Job) -> bool| asks(is).is_some_and(|due| self.ahead(due.from) <= 0);
        let wrap = piece.wrapped(self.now).map(|(_, wrap)| wrap);
        let choice = |does, label: String, chosen| OpeningChoice {
            does,
            label,
            chosen,
        };
        let mut all = vec![];
        if asks(|job| matches!(job, Job::RubSet(_))).is_some() {
            for (does, label) in [
                (OpeningDoes::RubSet, key("opening-rub-set")),
                (OpeningDoes::RubNotYet, key("opening-rub-not-yet")),
            ] {
                all.push(choice(does, self.say.text(label), false));
            }
        }
        if wrap.is_none() && piece.cadence.value != Cadence::None {
            let (does, label) = self.wet_choice(piece);
            all.push(choice(does, label, open(|job| matches!(job, Job::Wet(_)))));
        }
        all.push(choice(
            OpeningDoes::Turn,
            self.say.text("opening-turn"),
            false,
        ));
        let glazed = piece.cut.is_pork_ribs() || asks(|job| matches!(job, Job::Glaze(_))).is_some();
        if glazed && wrap.is_none_or(|wrap| wrap == Wrap::Boat) {
            let due = open(|job| matches!(job, Job::Glaze(_)));
            all.push(choice(OpeningDoes::Glaze, self.say.text("job-glaze"), due));
        }
        all
    }

    /// A spray touches nothing; a mop that touches poultry touches nothing else.
    fn wet_choice(&self, piece: &Piece) -> (OpeningDoes, String) {
        match piece.cadence.value {
            Cadence::Spritz { .. } => (OpeningDoes::Wet, self.say.text("job-spritz")),
            _ if piece.cut.is_poultry() => {
                (OpeningDoes::WetApart, self.say.text("opening-mop-apart"))
            }
            _ => (OpeningDoes::Wet, self.say.text("job-mop")),
        }
    }
}
