//! Why the bytes of a probe are not taken, in a sentence that says what to do.

use super::{LocalTime, local_time::NoSuchTime};
use crate::{
    readings::Told,
    words::{Words, key},
};

/// How much of what was typed is repeated in a message, characters.
const SHOWN_CHARS_MAX: usize = 40;

/// What is wrong with the bytes.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NotAWord {
    /// None of the characteristics that are read here.
    #[error("{}", self.reason())]
    Unread {
        /// Its 16-bit number.
        characteristic: u16,
    },
    /// Too few bytes, or too many.
    #[error("{}", self.reason())]
    Length {
        /// As many as belong there.
        wanted: usize,
        /// As many as came.
        got: usize,
    },
    /// A time that no calendar or clock shows.
    #[error("{}", self.reason())]
    NoSuchTime,
    /// The probe's clock is too far from this device's.
    #[error("{}", self.reason())]
    ClockOff {
        /// What the probe's clock said.
        claimed: LocalTime,
    },
    /// Above 800 °C.
    #[error("{}", self.reason())]
    TooHot,
    /// Below −60 °C.
    #[error("{}", self.reason())]
    TooCold,
    /// A text that is not bytes.
    #[error("{}", self.reason())]
    NotHex {
        /// What was given, cut short.
        typed: String,
    },
    /// A text that is no characteristic's number.
    #[error("{}", self.reason())]
    NotANumber {
        /// What was given, cut short.
        typed: String,
    },
}

impl NotAWord {
    pub(super) const fn length(wanted: usize, got: usize) -> Self {
        Self::Length { wanted, got }
    }

    pub(super) fn not_hex(typed: &str) -> Self {
        Self::NotHex { typed: cut(typed) }
    }

    pub(super) fn not_a_number(typed: &str) -> Self {
        Self::NotANumber { typed: cut(typed) }
    }
}

fn cut(typed: &str) -> String {
    let shown = typed.chars().filter(|c| !c.is_control());
    shown.take(SHOWN_CHARS_MAX).collect()
}

impl From<NoSuchTime> for NotAWord {
    fn from(_: NoSuchTime) -> Self {
        Self::NoSuchTime
    }
}

impl Told for NotAWord {
    fn key(&self) -> &'static str {
        match self {
            Self::Unread { .. } => key("probe-unread"),
            Self::Length { .. } => key("probe-length"),
            Self::NoSuchTime => key("probe-no-such-time"),
            Self::ClockOff { .. } => key("probe-clock-off"),
            Self::TooHot => key("probe-too-hot"),
            Self::TooCold => key("probe-too-cold"),
            Self::NotHex { .. } => key("probe-not-hex"),
            Self::NotANumber { .. } => key("probe-not-a-characteristic"),
        }
    }

    fn args(&self, _: &Words<'_>) -> Vec<(&'static str, String)> {
        match self {
            Self::Unread { characteristic } => {
                vec![("characteristic", format!("0x{characteristic:04X}"))]
            }
            Self::Length { wanted, got } => {
                vec![("wanted", wanted.to_string()), ("got", got.to_string())]
            }
            Self::ClockOff { claimed } => vec![("time", claimed.to_string())],
            Self::NotHex { typed } | Self::NotANumber { typed } => vec![("typed", typed.clone())],
            Self::NoSuchTime | Self::TooHot | Self::TooCold => vec![],
        }
    }
}
