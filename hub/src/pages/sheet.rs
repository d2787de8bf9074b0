//! What every part of a page is written with: the viewer, the words, and what was typed in a form that was not taken.

use super::{Beside, Page};
use crate::{
    demo::Kept,
    once,
    viewer::Reader,
    words::{HubWords, words},
};
use maud::{Markup, html};
use slowbend_core::{
    ids::CookId,
    words::{TemperatureUnit, Words},
};

/// One page being written.
pub struct Sheet<'a> {
    /// Who looks.
    pub reader: &'a Reader,
    /// Core's words.
    pub say: Words<'a>,
    /// Our own words.
    pub words: &'static HubWords,
    /// Which page.
    pub page: Page,
    /// What it shows beside its screen.
    pub beside: &'a Beside,
    /// When it is.
    pub now: i64,
    demo: Option<Kept>,
}

impl<'a> Sheet<'a> {
    /// A sheet for `page`; `demo` tells what was invented.
    pub fn new(
        reader: &'a Reader,
        page: Page,
        beside: &'a Beside,
        now: i64,
        demo: Option<Kept>,
    ) -> Self {
        Self {
            reader,
            say: Words::of(&reader.viewer),
            words: words(reader.viewer.locale),
            page,
            beside,
            now,
            demo,
        }
    }

    /// Whether `cook` was invented.
    pub fn is_demo(&self, cook: CookId) -> bool {
        self.demo.as_ref().is_some_and(|demo| demo.invented(cook))
    }

    /// A label of a temperature, with the viewer's unit.
    pub fn degrees(&self, label: &str) -> String {
        let sign = match self.reader.viewer.temperature {
            TemperatureUnit::Fahrenheit => "°F",
            TemperatureUnit::Celsius => "°C",
        };
        format!("{label} ({sign})")
    }

    /// A form to `action`, with what makes it safe to send twice. `id` is unique on the page: a form that was not taken
    /// comes back with what was typed in it.
    pub fn form(&self, id: &str, action: &str, inside: Markup) -> Markup {
        let kept = self.is_back(id).then(|| self.beside.typed.text("token"));
        let token = kept.map_or_else(once::token, str::to_owned);
        html! {
            form method="post" action=(action) {
                input type="hidden" name="token" value=(token);
                input type="hidden" name="form" value=(id);
                input type="hidden" name="back" value=(self.page.path());
                (inside)
            }
        }
    }

    /// What stands in the field `name` of form `id`: what was typed, else `usual`.
    pub fn value(&self, id: &str, name: &str, usual: &str) -> String {
        if self.is_back(id) {
            self.beside.typed.text(name).to_owned()
        } else {
            usual.to_owned()
        }
    }

    /// Whether `option` of the field `name` of form `id` is chosen.
    pub fn is_chosen(&self, id: &str, name: &str, option: &str, usual: bool) -> bool {
        if self.is_back(id) {
            let typed = &self.beside.typed.0;
            typed
                .iter()
                .any(|(known, value)| known == name && value == option)
        } else {
            usual
        }
    }

    fn is_back(&self, id: &str) -> bool {
        self.beside.typed.text("form") == id
    }
}
