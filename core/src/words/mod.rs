//! Every word a person reads, and everything a person types.
//!
//! Start at [`Words`]: `let say = Words::of(&viewer);` then `say.text("key")`, `say.with("key", &[("name", arg)])`,
//! or one of the ways to write a number, a time or a list in [`mod@format`]. What a person types is read by [`typed`],
//! whose refusals are already in the viewer's language.
//!
//! # Messages
//! They are [Fluent](https://projectfluent.org) files, one per subject, in a folder per language (`en-US/`, `es-US/`),
//! embedded and parsed once. No sentence is written in Rust. The tests of this module refuse: a key that one language
//! lacks, a variable that one language lacks, a file that does not parse, a key that is said anywhere in the sources
//! and does not exist, and a call that gives other variables than the message has. So that they see every key, write
//! it as a literal in the call, or as [`key`]`("…")` where it is chosen; never build one with `format!`.
//!
//! Keys are kebab-case and begin with their subject (`error-…`, `alarm-…`), because all files share one space of names.
//! Give counts as [`Arg::Number`] and let the message choose its plural (`{ $n -> [one] … *[other] … }`); give anything
//! with a unit as text that was written by [`mod@format`]. Spanish speaks to the cook as *tú*.
//! A sentence may end in a time: the stop of "p. m." is not doubled.
//!
//! # Adding a language
//! 1. A variant of [`Locale`] with its tag, added to `ALL`; its language in `asked` in `viewer.rs`.
//! 2. A folder named as the tag with a copy of each file of `en-US/`, translated; plural forms as CLDR has them for
//!    that language.
//! 3. The compiler then asks for its arms in `bundle.rs`; the unit and day words that people may type in any language are
//!    listed in `typed/`: add its own.
//! 4. `cargo test -p slowbend-core words::` says what is missing.
//!
//! Numbers are written with a decimal point in both languages so far, which is US and Mexican usage; a language that
//! uses a comma changes `decimal` in `format/mod.rs`. Typing takes either mark.

mod bundle;
pub mod format;
mod measure;
mod say;
pub mod typed;
mod viewer;
pub mod zone;

pub use measure::Measure;
pub use say::{Arg, Words, key};
pub use viewer::{HourCycle, Locale, TemperatureUnit, Viewer, WeightUnit};

use serde::{Deserialize, Serialize};

/// What a person asked for was not done, and what they can do now, in their language.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error, Serialize, Deserialize)]
#[error("{reason}")]
pub struct Refused {
    /// One or two sentences: what was wrong, and what to type or do instead.
    pub reason: String,
}

#[cfg(test)]
mod complete;

/// A viewer in Chicago with the usual units of `locale`'s place.
#[cfg(test)]
fn test_viewer(locale: Locale) -> Viewer {
    let device = crate::ids::DeviceId(uuid::Uuid::nil());
    Viewer {
        locale,
        zone: "America/Chicago".into(),
        ..Viewer::default_for(device)
    }
}

/// The same with metric units and a 24-hour clock.
#[cfg(test)]
fn metric_viewer(locale: Locale) -> Viewer {
    Viewer {
        temperature: TemperatureUnit::Celsius,
        weight: WeightUnit::Kilogram,
        hours: HourCycle::TwentyFour,
        ..test_viewer(locale)
    }
}
