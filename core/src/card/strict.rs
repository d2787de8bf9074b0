//! JSON as it may come from anybody: bounded in depth, and no field twice. Start at [`strict`].

use serde::de::{DeserializeSeed, Deserializer, Error, MapAccess, SeqAccess, Visitor};
use serde_json::{Map, Value};
use std::fmt;

/// How deep a card may be nested: a card of version 1 is four deep.
const DEPTH_MAX: usize = 12;

/// Reads `text`. A field that stands twice in one object is an error: two readers could take two different plans from it.
pub(super) fn strict(text: &str) -> Result<Value, serde_json::Error> {
    let mut from = serde_json::Deserializer::from_str(text);
    let value = Level(DEPTH_MAX).deserialize(&mut from)?;
    from.end()?;
    Ok(value)
}

/// So many levels may still follow.
struct Level(usize);

impl Level {
    fn deeper<E: Error>(&self) -> Result<Self, E> {
        let left = self.0.checked_sub(1);
        left.map(Self)
            .ok_or_else(|| E::custom("it is nested too deep"))
    }
}

impl<'de> DeserializeSeed<'de> for Level {
    type Value = Value;

    fn deserialize<D: Deserializer<'de>>(self, from: D) -> Result<Value, D::Error> {
        from.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Level {
    type Value = Value;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("JSON")
    }

    fn visit_unit<E: Error>(self) -> Result<Value, E> {
        Ok(Value::Null)
    }

    fn visit_bool<E: Error>(self, value: bool) -> Result<Value, E> {
        Ok(value.into())
    }

    fn visit_i64<E: Error>(self, value: i64) -> Result<Value, E> {
        Ok(value.into())
    }

    fn visit_u64<E: Error>(self, value: u64) -> Result<Value, E> {
        Ok(value.into())
    }

    fn visit_f64<E: Error>(self, value: f64) -> Result<Value, E> {
        Ok(value.into())
    }

    fn visit_str<E: Error>(self, text: &str) -> Result<Value, E> {
        Ok(text.into())
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut all: A) -> Result<Value, A::Error> {
        let mut list = vec![];
        while let Some(value) = all.next_element_seed(self.deeper()?)? {
            list.push(value);
        }
        Ok(Value::Array(list))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut all: A) -> Result<Value, A::Error> {
        let mut map = Map::new();
        while let Some(field) = all.next_key::<String>()? {
            let value = all.next_value_seed(self.deeper()?)?;
            if map.insert(field, value).is_some() {
                return Err(A::Error::custom("a field stands there twice"));
            }
        }
        Ok(Value::Object(map))
    }
}
