//! Saying a message in the viewer's language.

use super::{
    Refused,
    bundle::{Bundle, bundle},
    viewer::Viewer,
};
use chrono_tz::Tz;
use fluent_bundle::{FluentArgs, FluentValue};

/// What a message's variable stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Arg<'a> {
    /// Shown as it is; no markup or message syntax in it is obeyed.
    Text(&'a str),
    /// A count: chooses the plural form. Beyond ±2⁵³ it would lose its last digits; no count here comes near.
    Number(i64),
}

impl<'a> From<&'a str> for Arg<'a> {
    fn from(text: &'a str) -> Self {
        Self::Text(text)
    }
}

impl<'a> From<&'a String> for Arg<'a> {
    fn from(text: &'a String) -> Self {
        Self::Text(text)
    }
}

impl From<i64> for Arg<'_> {
    fn from(number: i64) -> Self {
        Self::Number(number)
    }
}

/// Marks a literal as a message key, so that the test that looks for missing messages sees it. For keys that are
/// chosen apart from where they are said: `fn key_of(cut) -> &'static str { match cut { Ribs => key("cut-ribs"), … } }`.
pub const fn key(key: &'static str) -> &'static str {
    key
}

/// The viewer's language, units, clock and zone, ready to write with. Cheap to make: nothing is parsed after the
/// first use of a language. How numbers, times and lists are written is in [`format`](super::format).
#[derive(Clone, Copy)]
pub struct Words<'a> {
    pub(super) viewer: &'a Viewer,
    pub(super) zone: Tz,
    zone_known: bool,
    bundle: &'static Bundle,
}

impl<'a> Words<'a> {
    /// Words for `viewer`. A zone that is not known here is taken as UTC: see [`zone_note`](Self::zone_note).
    pub fn of(viewer: &'a Viewer) -> Self {
        let zone = viewer.zone.parse::<Tz>();
        Self {
            viewer,
            zone_known: zone.is_ok(),
            zone: zone.unwrap_or(Tz::UTC),
            bundle: bundle(viewer.locale),
        }
    }

    /// Whose words these are.
    pub const fn viewer(&self) -> &'a Viewer {
        self.viewer
    }

    /// Whether times are shown in the viewer's own zone; if not, they are in UTC.
    pub const fn zone_known(&self) -> bool {
        self.zone_known
    }

    /// What a screen with times on it must say when the zone is not known.
    pub fn zone_note(&self) -> Option<String> {
        (!self.zone_known)
            .then(|| self.with("zone-unknown", &[("zone", Arg::Text(&self.viewer.zone))]))
    }

    /// Whether there is a message `key`: for keys that came with an entry.
    pub fn has(&self, key: &str) -> bool {
        self.bundle.has_message(key)
    }

    /// The message `key`, which has no variables. A missing one shows its key in ⟨⟩.
    pub fn text(&self, key: &str) -> String {
        self.with(key, &[])
    }

    /// The message `key` with its variables filled in. A missing message shows its key in ⟨⟩.
    pub fn with(&self, key: &str, args: &[(&str, Arg<'_>)]) -> String {
        let Some(pattern) = self
            .bundle
            .get_message(key)
            .and_then(|message| message.value())
        else {
            return format!("⟨{key}⟩");
        };
        let args = (!args.is_empty()).then(|| fluent_args(args));
        let mut errors = Vec::new();
        let said = self
            .bundle
            .format_pattern(pattern, args.as_ref(), &mut errors);
        one_stop(said.into_owned())
    }

    /// A refusal whose reason is the message `key`.
    pub fn refuse(&self, key: &str, args: &[(&str, Arg<'_>)]) -> Refused {
        Refused {
            reason: self.with(key, args),
        }
    }
}

/// A sentence that ends in "p. m." needs no second stop (Spanish orthography, from memory).
fn one_stop(said: String) -> String {
    if said.contains(". m..") {
        said.replace(". m..", ". m.")
    } else {
        said
    }
}

fn fluent_args<'s>(args: &[(&'s str, Arg<'s>)]) -> FluentArgs<'s> {
    args.iter().map(|&(name, arg)| (name, value(arg))).collect()
}

fn value(arg: Arg<'_>) -> FluentValue<'_> {
    match arg {
        Arg::Text(text) => FluentValue::from(text),
        Arg::Number(number) => FluentValue::from(number),
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Locale, test_viewer};
    use super::*;

    #[test]
    fn a_count_takes_its_plural_in_both_languages() {
        let say = |locale, days| {
            Words::of(&test_viewer(locale)).with("duration-days", &[("days", Arg::Number(days))])
        };
        assert_eq!(say(Locale::EnUs, 1), "1 day");
        assert_eq!(say(Locale::EnUs, 0), "0 days");
        assert_eq!(say(Locale::EnUs, 12), "12 days");
        assert_eq!(say(Locale::EsUs, 1), "1 día");
        assert_eq!(say(Locale::EsUs, 0), "0 días");
        assert_eq!(say(Locale::EsUs, 12), "12 días");
    }

    #[test]
    fn a_missing_message_shows_its_key_and_an_unknown_zone_is_said() {
        let mut viewer = test_viewer(Locale::EnUs);
        let missing = "no-such-message";
        assert_eq!(Words::of(&viewer).text(missing), "⟨no-such-message⟩");
        assert_eq!(Words::of(&viewer).zone_note(), None);
        viewer.zone = "Mars/Olympus".into();
        let say = Words::of(&viewer);
        assert!(!say.zone_known());
        assert!(say.zone_note().unwrap().contains("Mars/Olympus"));
        assert_eq!(say.clock(0), "12:00 AM");
    }

    #[test]
    fn a_sentence_that_ends_in_an_abbreviation_has_one_stop() {
        let viewer = test_viewer(Locale::EsUs);
        let example = [
            ("typed", Arg::Text("x")),
            ("example", Arg::Text("2:05 p. m.")),
        ];
        let said = Words::of(&viewer).with("error-clock-unread", &example);
        assert_eq!(
            said,
            "“x” no es una hora. Escribe una, por ejemplo 2:05 p. m."
        );
    }

    #[test]
    fn what_a_person_typed_is_text_whatever_it_looks_like() {
        let viewer = test_viewer(Locale::EnUs);
        let said = Words::of(&viewer).list(&["{ zone-unknown }", "<script>", "$days"]);
        assert_eq!(said, "{ zone-unknown }, <script> and $days");
    }
}
