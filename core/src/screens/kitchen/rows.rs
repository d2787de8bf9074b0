//! Rows of a slip: fields that belong together, numbered, `part-0-name`, `part-0-parts`. A shell may lay them side by side.

use super::super::{SlipField, SlipOption, glance::Glance, slip::option};
use crate::{
    cook::Cook,
    ids::PieceId,
    words::{Arg, key},
};

/// So many empty rows stand below those that are filled.
const SPARE_ROWS: usize = 2;

/// How many rows a list of so many lines has.
pub(super) fn rows_for(lines: usize, least: usize) -> usize {
    (lines + SPARE_ROWS).max(least)
}

impl Glance<'_> {
    /// The name of a field in a row and its label: "2. Parts".
    pub(super) fn row_label(&self, row: usize, label: &'static str) -> String {
        let (row, label) = ((row + 1).to_string(), self.say.text(label));
        let args = [("row", Arg::Text(&row)), ("label", Arg::Text(&label))];
        self.say.with("kitchen-row", &args)
    }

    /// The field of a row, "parts-1-amount", and its label.
    fn in_row(&self, name: (&str, usize, &str), label: &'static str) -> (String, String) {
        let (list, row, of) = name;
        (format!("{list}-{row}-{of}"), self.row_label(row, label))
    }

    pub(super) fn row_number(
        &self,
        name: (&str, usize, &str),
        label: &'static str,
        usual: String,
    ) -> SlipField {
        let (field, label) = self.in_row(name, label);
        SlipField {
            usual,
            ..self.number_field(&field, label)
        }
    }

    pub(super) fn row_words(
        &self,
        name: (&str, usize, &str),
        label: &'static str,
        usual: String,
    ) -> SlipField {
        let (field, in_row) = self.in_row(name, label);
        SlipField {
            usual,
            label: in_row,
            ..self.words_field(&field, label)
        }
    }

    pub(super) fn row_one(
        &self,
        name: (&str, usize, &str),
        label: &'static str,
        options: Vec<SlipOption>,
        usual: &str,
    ) -> SlipField {
        let (field, label) = self.in_row(name, label);
        let one = self.one_of(&field, label, options);
        match usual {
            "" => one,
            usual => SlipField {
                usual: usual.into(),
                ..one
            },
        }
    }

    pub(super) fn number_as(
        &self,
        field: &str,
        label: &'static str,
        usual: Option<String>,
    ) -> SlipField {
        let usual = usual.unwrap_or_default();
        SlipField {
            usual,
            ..self.number_field(field, self.say.text(label))
        }
    }

    /// Which meats it is for; none chosen = all. What is chosen stands in `usual`, with commas.
    pub(super) fn meats_field(&self, cook: &Cook, chosen: &[PieceId]) -> SlipField {
        let ids: Vec<String> = chosen.iter().map(PieceId::to_string).collect();
        let field = self.some_of("meat", key("kitchen-for-meats"), self.meat_options(cook));
        SlipField {
            usual: ids.join(","),
            ..field
        }
    }

    pub(super) fn chosen_one(
        &self,
        field: &str,
        label: &'static str,
        options: &[(&str, &'static str)],
        usual: &str,
    ) -> SlipField {
        let options = options
            .iter()
            .map(|(value, label)| option(*value, self.say.text(label)));
        let one = self.one_of(field, self.say.text(label), options.collect());
        match usual {
            "" => one,
            usual => SlipField {
                usual: usual.into(),
                ..one
            },
        }
    }
}
