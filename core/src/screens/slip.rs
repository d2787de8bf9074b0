//! Slips: short forms that any shell shows alike. A slip names its fields; what was filled in comes back by
//! [`forms::slip`](crate::forms::slip), and no shell knows what a slip means.

use super::glance::Glance;
use crate::{forms::AGO_MINUTES, moment::MINUTE, words::Arg};
use serde::{Deserialize, Serialize};

/// A short form about one thing.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Slip {
    /// Which one: its name in [`SlipFilled`](crate::forms::SlipFilled).
    pub slip: String,
    /// Its heading.
    pub heading: String,
    /// How it is filled in; empty where that is plain.
    pub how: String,
    /// Its fields, in order.
    pub fields: Vec<SlipField>,
    /// The button.
    pub submit: String,
}

/// One field of a slip.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct SlipField {
    /// Its name.
    pub field: String,
    /// Its label, with the unit.
    pub label: String,
    /// What is filled in.
    pub kind: SlipKind,
    /// What can be chosen.
    pub options: Vec<SlipOption>,
    /// What stands in it at first.
    pub usual: String,
}

/// What is filled in a field.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum SlipKind {
    /// Words.
    Words,
    /// A number, maybe with a unit.
    Number,
    /// A date and a time, or a time of day.
    Time,
    /// One of the options.
    One,
    /// Any of the options; the field comes back once for each.
    Some,
}

/// One option of a field.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct SlipOption {
    /// As it comes back.
    pub value: String,
    /// As shown.
    pub label: String,
}

pub(super) fn option(value: impl Into<String>, label: impl Into<String>) -> SlipOption {
    SlipOption {
        value: value.into(),
        label: label.into(),
    }
}

impl Glance<'_> {
    pub fn slip(&self, slip: &str, heading: &'static str, fields: Vec<SlipField>) -> Slip {
        Slip {
            slip: slip.into(),
            heading: self.say.text(heading),
            how: String::new(),
            fields,
            submit: self.say.text("slip-write-down"),
        }
    }

    fn filled_in(&self, field: &str, label: String, kind: SlipKind) -> SlipField {
        SlipField {
            field: field.into(),
            label,
            kind,
            options: vec![],
            usual: String::new(),
        }
    }

    pub fn words_field(&self, field: &str, label: &'static str) -> SlipField {
        self.filled_in(field, self.say.text(label), SlipKind::Words)
    }

    pub fn number_field(&self, field: &str, label: String) -> SlipField {
        self.filled_in(field, label, SlipKind::Number)
    }

    pub fn time_field(&self, field: &str, label: &'static str) -> SlipField {
        self.filled_in(field, self.say.text(label), SlipKind::Time)
    }

    /// One of the options, at first the first.
    pub fn one_of(&self, field: &str, label: String, options: Vec<SlipOption>) -> SlipField {
        let usual = options
            .first()
            .map_or(String::new(), |one| one.value.clone());
        SlipField {
            options,
            usual,
            ..self.filled_in(field, label, SlipKind::One)
        }
    }

    pub fn some_of(&self, field: &str, label: &'static str, options: Vec<SlipOption>) -> SlipField {
        SlipField {
            options,
            ..self.filled_in(field, self.say.text(label), SlipKind::Some)
        }
    }

    /// A label with the viewer's sign for degrees.
    pub fn degrees_label(&self, label: &'static str) -> String {
        let label = self.say.text(label);
        let unit = Arg::Text(self.degrees());
        let args = [("label", Arg::Text(&label)), ("unit", unit)];
        self.say.with("label-unit", &args)
    }

    /// How long ago it was done.
    pub fn ago_field(&self) -> SlipField {
        self.one_of(
            "ago",
            self.say.text("slip-when-done"),
            ago_options(&self.say),
        )
    }
}

/// The lengths of time that an act can be said to lie back.
pub(super) fn ago_options(say: &crate::words::Words<'_>) -> Vec<SlipOption> {
    AGO_MINUTES
        .map(|minutes| option(minutes.to_string(), say.ago(minutes * MINUTE)))
        .into()
}
