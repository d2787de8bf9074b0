//! What keeps probes from being found or heard, in plain words with what mends it.

use super::{RadioFix, RadioTrouble};
use crate::{
    probes::{Hearing, RadioState},
    screens::glance::Glance,
    words::key,
};

impl Glance<'_> {
    pub fn radio_trouble(&self, hearing: &Hearing) -> Option<RadioTrouble> {
        let allow = match hearing.asked_in_vain {
            true => RadioFix::OpenPermissions,
            false => RadioFix::Allow,
        };
        let (text, fix) = match hearing.radio {
            RadioState::Ready => return None,
            RadioState::Missing => (key("hearing-radio-missing"), None),
            RadioState::Refused => (key("hearing-radio-refused"), Some(allow)),
            RadioState::LocationRefused => (key("hearing-location-refused"), Some(allow)),
            RadioState::LocationOff => (key("hearing-location-off"), Some(RadioFix::OpenLocation)),
            RadioState::Off => (key("hearing-radio-off"), Some(RadioFix::SwitchOn)),
        };
        let label = fix.map_or_else(String::new, |fix| self.say.text(label_of(fix)));
        Some(RadioTrouble {
            text: self.say.text(text),
            fix,
            label,
        })
    }
}

const fn label_of(fix: RadioFix) -> &'static str {
    match fix {
        RadioFix::Allow => key("hearing-allow"),
        RadioFix::OpenPermissions => key("hearing-open-permissions"),
        RadioFix::OpenLocation => key("hearing-open-location"),
        RadioFix::SwitchOn => key("hearing-switch-on"),
    }
}
