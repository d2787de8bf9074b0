//! What was filled in on a slip, field by field.

use super::{ago, given, heat, refused, whole};
use crate::{
    error::Refused,
    fire::UNIT_GRAMS,
    log::{Serve, Where},
    moment::Moment,
    units::Mk,
    words::{
        Words, key,
        typed::{self, MEAT_GRAMS, Seek},
    },
};
use serde::{Deserialize, Serialize, de::DeserializeOwned};
use std::{ops::RangeInclusive, str::FromStr};

/// What may be read by hand in a pit or a meat: −60 to 800 °C, as files may hold it.
const ANYWHERE: RangeInclusive<Mk> = Mk(213_150)..=Mk(1_073_150);

/// What was filled in. A shell that marks the field that was refused learns it from the last one asked for.
pub trait Filled {
    /// What stands in a field; empty where it did not come.
    fn field(&self, name: &str) -> &str;
    /// All fields with what stands in them.
    fn pairs(&self) -> Vec<(&str, &str)>;
}

/// One field as it was filled in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct FieldFilled {
    /// Its name: `SlipField::field`.
    pub field: String,
    /// What was typed, or the value of the option that was chosen.
    pub text: String,
}

impl Filled for Vec<FieldFilled> {
    fn field(&self, name: &str) -> &str {
        let found = self.iter().find(|one| one.field == name);
        found.map_or("", |one| &one.text)
    }

    fn pairs(&self) -> Vec<(&str, &str)> {
        self.iter()
            .map(|one| (one.field.as_str(), one.text.as_str()))
            .collect()
    }
}

/// Reads fields for one viewer at one moment.
pub(super) struct Fields<'a> {
    pub say: Words<'a>,
    pub moment: &'a Moment,
    pub filled: &'a dyn Filled,
}

impl<'a> Fields<'a> {
    pub fn trimmed(&self, field: &str) -> String {
        self.filled.field(field).trim().to_owned()
    }

    pub fn given(&self, field: &str) -> Option<&'a str> {
        given(self.filled.field(field))
    }

    pub fn name(&self, field: &str) -> Result<String, Refused> {
        Ok(typed::name(&self.say, self.filled.field(field))?)
    }

    /// A name, or nothing.
    pub fn any_name(&self, field: &str) -> Result<String, Refused> {
        let named = self.given(field).map(|_| self.name(field)).transpose()?;
        Ok(named.unwrap_or_default())
    }

    pub fn whole(&self, field: &str) -> Result<Option<i64>, Refused> {
        whole(&self.say, self.filled.field(field))
    }

    pub fn weight(&self, field: &str) -> Result<Option<i64>, Refused> {
        let read = |text| typed::weight(&self.say, text, &MEAT_GRAMS);
        Ok(self.given(field).map(read).transpose()?)
    }

    /// What one of a unit of fuel weighs.
    pub fn unit_weight(&self, field: &str) -> Result<Option<i64>, Refused> {
        let read = |text| typed::weight(&self.say, text, &UNIT_GRAMS);
        Ok(self.given(field).map(read).transpose()?)
    }

    pub fn heat(&self, field: &str) -> Result<Mk, Refused> {
        heat(&self.say, self.filled.field(field), &ANYWHERE)
    }

    /// One of a list of ids, or nothing.
    pub fn any_id<T: FromStr>(&self, field: &str) -> Result<Option<T>, Refused> {
        let read = |text: &str| text.parse().map_err(|_| self.unknown());
        self.given(field).map(read).transpose()
    }

    pub fn id<T: FromStr>(&self, field: &str) -> Result<T, Refused> {
        self.any_id(field)?.ok_or_else(|| self.unknown())
    }

    /// One of the names that the log knows.
    pub fn chosen<T: DeserializeOwned>(&self, field: &str) -> Result<T, Refused> {
        let text = self.filled.field(field);
        serde_json::from_value(text.into()).map_err(|_| self.unknown())
    }

    pub fn unknown(&self) -> Refused {
        refused(&self.say, key("form-choose"))
    }

    /// When it was done, by the choice of how long ago.
    pub fn at(&self) -> Option<i64> {
        let minutes = self.filled.field("ago").parse().unwrap_or(0);
        ago(minutes, self.moment)
    }

    /// The next time of day that is meant.
    pub fn clock(&self, field: &str) -> Result<i64, Refused> {
        let (text, now) = (self.filled.field(field), self.moment.utc_ms);
        Ok(typed::clock(&self.say, text, now, Seek::Next)?)
    }

    /// A serving time: a date with a time, or a time of day; none where nothing was typed.
    pub fn serve(&self, field: &str) -> Result<Option<Serve>, Refused> {
        let Some(text) = self.given(field) else {
            return Ok(None);
        };
        let dated = text
            .split_once('-')
            .is_some_and(|(year, _)| year.len() == 4);
        let at = match dated {
            true => typed::datetime_field(&self.say, text)?,
            false => typed::when(&self.say, text, self.moment.utc_ms)?,
        };
        let zone = self.say.viewer().zone.clone();
        Ok(Some(Serve { at, zone }))
    }

    /// Where a temperature is taken: `pit:` or `meat:` with the id of one, and of a meat after
    /// another `:` the spot, or in a field of its own.
    pub fn place(&self, field: &str) -> Result<Where, Refused> {
        let (thing, id) = self
            .filled
            .field(field)
            .split_once(':')
            .ok_or_else(|| self.unknown())?;
        let unread = |_| self.unknown();
        match thing {
            "pit" => Ok(Where::Pit {
                pit: id.parse().map_err(unread)?,
            }),
            "meat" => {
                let (id, spot) = match id.split_once(':') {
                    Some((id, spot)) => (id, spot.to_owned()),
                    None => (id, self.trimmed("spot")),
                };
                let piece = id.parse().map_err(unread)?;
                Ok(Where::Piece { piece, spot })
            }
            _ => Err(self.unknown()),
        }
    }
}
