//! The fields of one object of a card, taken one by one: each is of its kind and in its range, or refused by its place.
//! What is left in the end belongs to no field that is known, and is told.

use super::clean;
use crate::{
    error::Refused,
    words::{Arg, Words},
};
use serde::de::DeserializeOwned;
use serde_json::{Map, Value};
use std::ops::RangeInclusive;

/// So many things are told of one card at most; a card of junk is told short.
pub(super) const TOLD_MAX: usize = 12;

/// Where in a card something stands: "meats 2: cut", counted from 1.
#[derive(Clone, Debug, Default)]
pub(super) struct Place(String);

impl Place {
    /// The field `name` here.
    pub(super) fn field(&self, name: &str) -> Self {
        let name: String = clean::shown(name).chars().take(40).collect();
        match self.0.as_str() {
            "" => Self(name),
            place => Self(format!("{place}: {name}")),
        }
    }

    /// The element `index` of this list, counted from 0.
    pub(super) fn at(&self, index: usize) -> Self {
        Self(format!("{} {}", self.0, index + 1))
    }

    /// The refusal of what stands here, with a reason that is said elsewhere.
    pub(super) fn refused(&self, say: &Words<'_>, reason: &str) -> Refused {
        let args = [("field", Arg::Text(&self.0)), ("reason", Arg::Text(reason))];
        say.refuse("card-field", &args).into()
    }

    pub(super) fn too_long(&self, say: &Words<'_>, limit: usize) -> Refused {
        let args = [
            ("field", Arg::Text(&self.0)),
            ("limit", Arg::Number(limit as i64)),
        ];
        say.refuse("card-text-long", &args).into()
    }

    pub(super) fn whole(&self, say: &Words<'_>, range: &RangeInclusive<i64>) -> Refused {
        let args = [
            ("field", Arg::Text(&self.0)),
            ("low", Arg::Number(*range.start())),
            ("high", Arg::Number(*range.end())),
        ];
        say.refuse("card-number", &args).into()
    }

    pub(super) fn shape(&self, say: &Words<'_>) -> Refused {
        say.refuse("card-shape", &[("field", Arg::Text(&self.0))])
            .into()
    }

    pub(super) fn hidden(&self, say: &Words<'_>) -> String {
        say.with("card-cleaned", &[("field", Arg::Text(&self.0))])
    }
}

/// The fields of an object that are still to be taken.
pub(super) struct Fields<'a> {
    pub(super) say: Words<'a>,
    pub(super) place: Place,
    map: Map<String, Value>,
    told: &'a mut Vec<String>,
}

impl<'a> Fields<'a> {
    /// Those of `value`, which stands at `place`.
    pub(super) fn of(
        say: Words<'a>,
        place: Place,
        value: Value,
        told: &'a mut Vec<String>,
    ) -> Result<Self, Refused> {
        let Value::Object(map) = value else {
            return Err(place.shape(&say));
        };
        Ok(Self {
            say,
            place,
            map,
            told,
        })
    }

    /// The field `name`, whatever it is; null is as left out.
    pub(super) fn take(&mut self, name: &str) -> Option<Value> {
        self.map.remove(name).filter(|value| !value.is_null())
    }

    /// What is told beside a card that is taken.
    pub(super) fn tell(&mut self, what: String) {
        if self.told.len() < TOLD_MAX && !self.told.contains(&what) {
            self.told.push(what);
        }
    }

    /// A whole number in `range`.
    pub(super) fn whole(
        &mut self,
        name: &str,
        range: RangeInclusive<i64>,
    ) -> Result<Option<i64>, Refused> {
        let Some(value) = self.take(name) else {
            return Ok(None);
        };
        let read = value.as_i64().filter(|value| range.contains(value));
        let refused = || self.place.field(name).whole(&self.say, &range);
        read.map(Some).ok_or_else(refused)
    }

    /// A text, with what hides in it told.
    pub(super) fn written(&mut self, name: &str) -> Result<Option<String>, Refused> {
        let place = self.place.field(name);
        let value = self.take(name);
        value.map(|value| self.as_text(&place, value)).transpose()
    }

    /// `value` as a text.
    pub(super) fn as_text(&mut self, place: &Place, value: Value) -> Result<String, Refused> {
        let Value::String(text) = value else {
            return Err(place.shape(&self.say));
        };
        if clean::hides(&text) {
            self.tell(place.hidden(&self.say));
        }
        Ok(text)
    }

    /// A name that must be there.
    pub(super) fn name(&mut self, name: &str) -> Result<String, Refused> {
        let text = self.written(name)?;
        let text = text.ok_or_else(|| self.missing(name))?;
        clean::name(&self.say, &self.place.field(name), &text)
    }

    /// One of a set of names that are known here.
    pub(super) fn choice<T: DeserializeOwned>(&mut self, name: &str) -> Result<Option<T>, Refused> {
        let Some(value) = self.take(name) else {
            return Ok(None);
        };
        let read = serde_json::from_value(value);
        read.map(Some).map_err(|_| self.unknown(name))
    }

    /// Whether the field `name` is that text.
    pub(super) fn is_text(&self, name: &str, text: &str) -> bool {
        self.map.get(name).and_then(Value::as_str) == Some(text)
    }

    /// A list of up to `most`; empty where it is left out.
    pub(super) fn list(&mut self, name: &str, most: usize) -> Result<Vec<Value>, Refused> {
        let place = self.place.field(name);
        match self.take(name) {
            None => Ok(vec![]),
            Some(Value::Array(list)) if list.len() <= most => Ok(list),
            Some(Value::Array(_)) => {
                let args = [
                    ("field", Arg::Text(&place.0)),
                    ("limit", Arg::Number(most as i64)),
                ];
                Err(self.say.refuse("card-list-long", &args).into())
            }
            Some(_) => Err(place.shape(&self.say)),
        }
    }

    /// A list of objects, each read by `read`.
    pub(super) fn each<T>(
        &mut self,
        name: &str,
        most: usize,
        read: impl Fn(&mut Fields<'_>) -> Result<T, Refused>,
    ) -> Result<Vec<T>, Refused> {
        let (place, list) = (self.place.field(name), self.list(name, most)?);
        let mut all = vec![];
        for (index, value) in list.into_iter().enumerate() {
            let mut fields = Fields::of(self.say, place.at(index), value, &mut *self.told)?;
            all.push(read(&mut fields)?);
            fields.end();
        }
        Ok(all)
    }

    /// An object that may be left out.
    pub(super) fn inside<T>(
        &mut self,
        name: &str,
        read: impl Fn(&mut Fields<'_>) -> Result<T, Refused>,
    ) -> Result<Option<T>, Refused> {
        let Some(value) = self.take(name) else {
            return Ok(None);
        };
        let mut fields = Fields::of(self.say, self.place.field(name), value, &mut *self.told)?;
        let done = read(&mut fields)?;
        fields.end();
        Ok(Some(done))
    }

    /// Tells what is left.
    pub(super) fn end(mut self) {
        for name in std::mem::take(&mut self.map).keys() {
            let place = self.place.field(name);
            let args = [("field", Arg::Text(&place.0))];
            let told = self.say.with("card-left-out", &args);
            self.tell(told);
        }
    }

    pub(super) fn missing(&self, name: &str) -> Refused {
        let place = self.place.field(name);
        self.say
            .refuse("card-missing", &[("field", Arg::Text(&place.0))])
            .into()
    }

    fn unknown(&self, name: &str) -> Refused {
        let place = self.place.field(name);
        self.say
            .refuse("card-unknown", &[("field", Arg::Text(&place.0))])
            .into()
    }
}
