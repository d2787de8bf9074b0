//! A series is what one source heard of one sensor: two phones that hear one probe keep two series, so nothing doubles.

use super::told::Told;
use crate::{
    units::Mk,
    words::{Words, key},
};
use serde::{Deserialize, Serialize};

/// The longest name of a source or a sensor, in characters. Common practice, no source.
pub const NAME_CHARS_MAX: usize = 80;

/// Names a series: who heard it, and which sensor it was.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "Parts", into = "Parts")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SeriesId {
    source: String,
    sensor: String,
}

#[derive(Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
struct Parts {
    source: String,
    sensor: String,
}

impl SeriesId {
    /// Each name is 1 to [`NAME_CHARS_MAX`] characters once blanks at its ends are taken off, none of them a control.
    pub fn new(source: &str, sensor: &str) -> Result<Self, BadSeriesName> {
        Ok(Self {
            source: checked(source)?,
            sensor: checked(sensor)?,
        })
    }

    /// Who heard it: a device, an instrument, a file.
    pub fn source(&self) -> &str {
        &self.source
    }

    /// Which sensor, in the words of the source.
    pub fn sensor(&self) -> &str {
        &self.sensor
    }
}

/// One temperature at one instant. Order is (at, temp).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Reading {
    /// Milliseconds since 1970, UTC.
    pub at: i64,
    /// Millikelvin.
    pub temp: Mk,
}

/// A name of a source or sensor that cannot be used.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, thiserror::Error)]
#[error("{}", self.reason())]
pub struct BadSeriesName {
    /// What was given, cut short.
    pub name: String,
}

impl Told for BadSeriesName {
    fn key(&self) -> &'static str {
        key("readings-name-bad")
    }

    fn args(&self, _: &Words<'_>) -> Vec<(&'static str, String)> {
        vec![
            ("name", self.name.clone()),
            ("limit", NAME_CHARS_MAX.to_string()),
        ]
    }
}

fn checked(name: &str) -> Result<String, BadSeriesName> {
    let trimmed = name.trim();
    let chars = trimmed.chars().count();
    let fits = (1..=NAME_CHARS_MAX).contains(&chars) && !trimmed.chars().any(char::is_control);
    match fits {
        true => Ok(trimmed.to_string()),
        false => Err(BadSeriesName {
            name: name.chars().take(NAME_CHARS_MAX).collect(),
        }),
    }
}

impl TryFrom<Parts> for SeriesId {
    type Error = BadSeriesName;
    fn try_from(parts: Parts) -> Result<Self, BadSeriesName> {
        Self::new(&parts.source, &parts.sensor)
    }
}

impl From<SeriesId> for Parts {
    fn from(id: SeriesId) -> Self {
        Self {
            source: id.source,
            sensor: id.sensor,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_is_one_line_of_1_to_80_characters() {
        let eighty = "é".repeat(80);
        assert_eq!(SeriesId::new(" drum ", &eighty).unwrap().sensor(), eighty);
        assert_eq!(SeriesId::new(" drum ", "grate").unwrap().source(), "drum");
        for bad in ["", "  ", "two\nlines", &"é".repeat(81)] {
            let error = SeriesId::new("drum", bad).unwrap_err().to_string();
            assert!(error.contains("1 to 80 characters"), "{error}");
        }
    }

    #[test]
    fn a_bad_name_does_not_come_in_through_json_either() {
        let good = SeriesId::new("drum", "grate").unwrap();
        let json = serde_json::to_string(&good).unwrap();
        assert_eq!(json, r#"{"source":"drum","sensor":"grate"}"#);
        assert_eq!(serde_json::from_str::<SeriesId>(&json).unwrap(), good);
        assert!(serde_json::from_str::<SeriesId>(r#"{"source":"","sensor":"grate"}"#).is_err());
    }
}
