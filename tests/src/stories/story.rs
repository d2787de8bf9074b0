//! The format of a story file.

use serde::Deserialize;
use serde_json::Value;
use std::collections::BTreeMap;

/// A cook's night.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Story {
    /// What it tells, in one sentence.
    pub story: String,
    /// When it begins: RFC 3339 with an offset.
    pub starts: String,
    /// Who holds a device.
    pub devices: BTreeMap<String, Holder>,
    /// What happens, in order.
    pub steps: Vec<Step>,
}

/// How a device shows things; what is left out is as in [`Viewer::default_for`](slowbend_core::words::Viewer), in Chicago.
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Holder {
    /// The language, such as `es-US`.
    pub locale: Option<Value>,
    /// `fahrenheit` or `celsius`.
    pub temperature: Option<Value>,
    /// `pound` or `kilogram`.
    pub weight: Option<Value>,
    /// `twelve` or `twentyfour`.
    pub hours: Option<Value>,
}

/// One step: an object with one key, which says what kind.
#[derive(Debug, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Step {
    /// So many minutes pass.
    Wait(i64),
    /// Somebody does something.
    Act(Doing),
    /// Somebody takes back what was called so, with the act that its outcome offered.
    Undo(Undoing),
    /// Somebody presses a button of a screen, found by its label.
    Press(Pressing),
    /// A probe is heard.
    Reading(Heard),
    /// A Bluetooth probe sends bytes.
    Word(Sent),
    /// A screen is looked at.
    Screen(Seen),
    /// The list of what must ring is looked at.
    Alarms(Ringing),
    /// All that is due by now has rung on somebody's device.
    Rang(String),
    /// Somebody's app is closed and opened again.
    Restart(String),
    /// Somebody's device makes forecasts from now on, and does all the slow work there is.
    Forecast(String),
    /// Somebody joins somebody else's crew.
    Join(Joining),
    /// These devices meet: each gives the others all that it has.
    Sync(Vec<String>),
}

/// An act and what comes of it.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Doing {
    /// Who.
    pub by: String,
    /// The act, with `$name` for what was made before.
    pub what: Value,
    /// Names for what it makes, in order.
    #[serde(default)]
    pub makes: Vec<String>,
    /// A name for its outcome.
    pub called: Option<String>,
    /// The token of a form.
    pub token: Option<String>,
    /// Whether it was recorded before under that token.
    pub repeated: Option<bool>,
    /// What is said back.
    pub said: Option<Value>,
    /// A part of the sentence that refuses it. Absent = it is taken.
    pub refused: Option<String>,
}

/// Taking back.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Undoing {
    /// Who.
    pub by: String,
    /// What was called so.
    pub of: String,
    /// A name for the outcome of taking it back: undoing that restores.
    pub called: Option<String>,
}

/// Pressing a button.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Pressing {
    /// Who.
    pub by: String,
    /// Which screen.
    pub see: String,
    /// Of what.
    pub of: Option<String>,
    /// At which pit.
    pub at: Option<String>,
    /// Where the button is on it.
    pub button: String,
    /// A name for the outcome.
    pub called: Option<String>,
}

/// The bytes of a Bluetooth probe, at the moment of the story.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Sent {
    /// Who hears it.
    pub by: String,
    /// The instrument.
    pub source: String,
    /// Its channel.
    pub sensor: String,
    /// The characteristic's number, four hexadecimal digits.
    pub characteristic: String,
    /// Its bytes, two hexadecimal digits each.
    pub hex: String,
    /// What is told of why there is no reading. Absent = there is one.
    pub why_none: Option<Value>,
}

/// A reading of a probe, at the moment of the story.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Heard {
    /// Who hears it.
    pub by: String,
    /// The instrument.
    pub source: String,
    /// Its channel.
    pub sensor: String,
    /// Whole degrees Fahrenheit.
    pub f: i64,
}

/// A look at a screen.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Seen {
    /// Who.
    pub by: String,
    /// Which screen: `start`, `pitside`, `piece`, `check`, `timeline`, `card`, `again`, `write_down`, `settings`, `pits`, `dishes`, `kitchen`, `kitchen_sheet`, `watch`,
    /// `opening`, `fire`, `trouble`.
    pub see: String,
    /// Of which cook or meat.
    pub of: Option<String>,
    /// At which pit.
    pub at: Option<String>,
    /// Path → what is there.
    pub shows: BTreeMap<String, Value>,
}

/// A look at the list of what must ring.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Ringing {
    /// On whose device.
    pub by: String,
    /// For each of these there is an alarm that it fits.
    #[serde(default)]
    pub rings: Vec<Alarm>,
    /// For each of these there is none.
    #[serde(default)]
    pub silent: Vec<Alarm>,
}

/// What an alarm is like; what is left out is not looked at.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Alarm {
    /// Its title.
    pub title: Option<Value>,
    /// How loud.
    pub urgency: Option<Value>,
    /// In how many minutes from now, at the earliest and at the latest.
    pub minutes: Option<(i64, i64)>,
}

/// Joining a crew.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Joining {
    /// Who.
    pub by: String,
    /// Whose crew.
    pub of: String,
}
