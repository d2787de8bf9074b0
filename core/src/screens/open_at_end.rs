//! What is still open when a cook is finished: meats on the pit, food that is not away, and what was never shown safe.

use super::glance::Glance;
use crate::{
    alarms::is_to_put_away,
    cook::{Cook, Piece},
    log::Stage,
    words::{Arg, key},
};

/// Whether a meat is of one kind of what is open.
type Is<'a> = &'a dyn Fn(&Piece) -> bool;

impl Glance<'_> {
    /// The question before a cook is finished: what is open first.
    pub fn finish_question(&self, cook: &Cook) -> String {
        let open = self.open_at_end(cook);
        match open.is_empty() {
            true => self.say.text("confirm-finish"),
            false => {
                let open = open.join(" ");
                self.say
                    .with("confirm-finish-open", &[("open", Arg::Text(&open))])
            }
        }
    }

    /// A sentence for each kind of thing that is open, its meats listed.
    fn open_at_end(&self, cook: &Cook) -> Vec<String> {
        let on = |piece: &Piece| piece.is_on_pit(self.now);
        let out = |piece: &Piece| self.is_out(cook, piece);
        let unshown = |piece: &Piece| {
            piece.on_pit_at(self.now).is_some() && self.lacks_its_minimum(cook, piece)
        };
        let kinds: [(&'static str, Is<'_>); 3] = [
            (key("open-on-pit"), &on),
            (key("open-put-away"), &out),
            (key("open-unshown"), &unshown),
        ];
        let said = kinds.into_iter().filter_map(|(kind, is)| {
            let meats = cook.meats().filter(|piece| is(piece));
            let names: Vec<&str> = meats.map(|piece| piece.name.value.as_str()).collect();
            let what = self.say.list(&names);
            (!names.is_empty()).then(|| self.say.with(kind, &[("what", Arg::Text(&what))]))
        });
        said.collect()
    }

    /// Off the pit, and neither away nor said to be all eaten.
    fn is_out(&self, cook: &Cook, piece: &Piece) -> bool {
        let Some(passed) = piece.stage(self.now) else {
            return false;
        };
        match passed.stage {
            Stage::Served => is_to_put_away(&self.known, cook, piece, self.now),
            Stage::Off | Stage::Held | Stage::CutUp | Stage::Reheated => true,
            _ => false,
        }
    }
}
