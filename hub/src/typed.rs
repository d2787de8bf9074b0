//! What came with a form, as it was typed. Start at [`Typed`].

use slowbend_core::{error::Refused, forms::Filled};
use std::sync::{Mutex, PoisonError};

/// The fields of a posted form, in order.
#[derive(Clone, Debug, Default)]
pub struct Typed(pub Vec<(String, String)>, Asked);

/// The field that was read last: where reading stops, it is the one that was refused.
#[derive(Debug, Default)]
struct Asked(Mutex<Option<String>>);

impl Clone for Asked {
    fn clone(&self) -> Self {
        Self::default()
    }
}

impl From<Vec<(String, String)>> for Typed {
    fn from(fields: Vec<(String, String)>) -> Self {
        Self(fields, Asked::default())
    }
}

impl Filled for Typed {
    fn field(&self, name: &str) -> &str {
        self.text(name)
    }

    fn pairs(&self) -> Vec<(&str, &str)> {
        let pairs = self.0.iter();
        pairs
            .map(|(name, text)| (name.as_str(), text.as_str()))
            .collect()
    }
}

impl Typed {
    /// The field `name`; empty where it did not come.
    pub fn text(&self, name: &str) -> &str {
        self.blame(Some(name));
        let found = self.0.iter().find(|(known, _)| known == name);
        found.map_or("", |(_, value)| value)
    }

    /// The field that was read last.
    pub fn blamed(&self) -> Option<String> {
        self.1
            .0
            .lock()
            .unwrap_or_else(PoisonError::into_inner)
            .clone()
    }

    /// Says that what is refused is none of the fields alone.
    pub fn blame_none(&self) {
        self.blame(None);
    }

    fn blame(&self, name: Option<&str>) {
        let mut asked = self.1.0.lock().unwrap_or_else(PoisonError::into_inner);
        *asked = name.map(str::to_owned);
    }

    /// The field `name`, where something other than blanks was typed.
    pub fn given(&self, name: &str) -> Option<&str> {
        Some(self.text(name)).filter(|text| !text.trim().is_empty())
    }

    /// The field `name` as whatever reads itself from text; none where nothing was typed.
    ///
    /// # Errors
    /// `reason`, where something was typed that cannot be read.
    pub fn parsed<T: std::str::FromStr>(
        &self,
        name: &str,
        reason: &str,
    ) -> Result<Option<T>, Refused> {
        let read = |text: &str| text.trim().parse().map_err(|_| Refused::new(reason));
        self.given(name).map(read).transpose()
    }

    /// The field `name` as one of a set of names that core knows, such as a cut or a kind of pit.
    ///
    /// # Errors
    /// `reason`, where it is none of them.
    pub fn chosen<T: serde::de::DeserializeOwned>(
        &self,
        name: &str,
        reason: &str,
    ) -> Result<T, Refused> {
        serde_json::from_value(self.text(name).into()).map_err(|_| Refused::new(reason))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn blanks_are_nothing_and_numbers_are_read_or_refused() {
        let typed = Typed::from(vec![
            ("people".into(), " 14 ".into()),
            ("name".into(), "  ".into()),
        ]);
        assert_eq!(typed.given("name"), None);
        assert_eq!(typed.text("missing"), "");
        assert_eq!(typed.parsed::<i64>("people", "how many?"), Ok(Some(14)));
        assert_eq!(typed.parsed::<i64>("name", "how many?"), Ok(None));
        let broken = Typed::from(vec![("people".into(), "many".into())]);
        assert_eq!(
            broken.parsed::<i64>("people", "how many?"),
            Err(Refused::new("how many?"))
        );
    }
}
