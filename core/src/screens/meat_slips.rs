//! What can be said about one meat beside its stage and its checks.

use super::{Slip, glance::Glance};
use crate::cook::{Cook, Piece};

impl Glance<'_> {
    pub fn meat_slips(&self, cook: &Cook, piece: &Piece) -> Vec<Slip> {
        let text = |field: &str, label| vec![self.words_field(field, label)];
        let number = |field: &str, label| vec![self.number_field(field, label)];
        let wetting = self.cadence_options().split_off(1);
        let wetting = self.one_of("cadence", self.say.text("field-cadence"), wetting);
        let mut all = vec![
            self.slip("note", "slip-note", text("text", "slip-note-text")),
            self.slip(
                "weight",
                "field-weight",
                number("weight", self.weight_label()),
            ),
            self.slip("cadence", "field-cadence", vec![wetting]),
            self.slip("prepared", "slip-form", vec![self.prepared_field()]),
            self.slip(
                "pull",
                "slip-pull",
                number("pull", self.degrees_label("slip-temp")),
            ),
            self.slip("name", "field-name", text("name", "field-name")),
            self.slip("split", "slip-split", text("names", "slip-split-names")),
        ];
        let mut others = self.meat_options(cook);
        others.retain(|other| other.value != piece.id.to_string());
        if !others.is_empty() {
            let with = self.some_of("with", "slip-join-with", others);
            let fields = vec![with, self.words_field("name", "slip-join-name")];
            all.push(self.slip("join", "slip-join", fields));
        }
        all
    }
}
