//! Things to be said, in anybody's language. Start at [`Said::say`].

use super::answer::{Said, SaidArg, SaidValue};
use crate::words::{Arg, Words};

impl Said {
    pub(super) fn new(key: &str, args: &[(&str, SaidValue)]) -> Self {
        let arg = |(name, value): &(&str, SaidValue)| SaidArg {
            name: (*name).to_owned(),
            value: value.clone(),
        };
        Self {
            key: key.to_owned(),
            args: args.iter().map(arg).collect(),
        }
    }

    /// The sentence in the words of a viewer.
    pub fn say(&self, say: &Words<'_>) -> String {
        let texts: Vec<Option<String>> = self.args.iter().map(|arg| arg.value.text(say)).collect();
        let args: Vec<(&str, Arg<'_>)> = self
            .args
            .iter()
            .zip(&texts)
            .map(|(arg, text)| match (text, &arg.value) {
                (None, SaidValue::Count(count)) => (arg.name.as_str(), Arg::Number(*count)),
                (text, _) => (
                    arg.name.as_str(),
                    Arg::Text(text.as_deref().unwrap_or_default()),
                ),
            })
            .collect();
        say.with(&self.key, &args)
    }
}

impl SaidValue {
    /// None for a count, which chooses a plural.
    fn text(&self, say: &Words<'_>) -> Option<String> {
        Some(match self {
            Self::Name(name) => name.clone(),
            Self::Count(_) => return None,
            Self::At(ms) => say.clock(*ms),
            Self::Minutes(minutes) => say.duration(*minutes * crate::moment::MINUTE),
            Self::Temp(temp) => say.temperature(*temp),
            Self::Grams(grams) => say.weight(*grams),
            Self::Message(key) => say.text(key),
        })
    }
}

pub(super) fn name(name: &str) -> SaidValue {
    SaidValue::Name(name.to_owned())
}
