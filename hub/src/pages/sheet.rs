//! What every part of a page is written with: the viewer, the words, and what was typed in a form that was not taken.

use super::{Beside, Page};
use crate::{
    demo::Demo,
    once,
    viewer::Reader,
    words::{HubWords, words},
};
use maud::{Markup, html};
use slowbend_core::words::{TemperatureUnit, Words};
use std::cell::RefCell;

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
    /// How the demo is seen from here.
    pub demo: Demo,
    blamed: RefCell<Option<String>>,
}

impl<'a> Sheet<'a> {
    /// A sheet for `page`.
    pub fn new(reader: &'a Reader, page: Page, beside: &'a Beside, now: i64, demo: Demo) -> Self {
        Self {
            reader,
            say: Words::of(&reader.viewer),
            words: words(reader.viewer.locale),
            page,
            beside,
            now,
            demo,
            blamed: RefCell::default(),
        }
    }

    /// Whether the field `name` of form `id` is what was refused; its label is kept for the sentence that says so.
    pub fn is_blamed(&self, id: &str, name: &str, label: &str) -> bool {
        let is = self.is_back(id) && self.beside.blamed.as_deref() == Some(name);
        if is {
            *self.blamed.borrow_mut() = Some(label.to_owned());
        }
        is
    }

    /// The label of what was refused, once its field was written.
    pub fn blamed(&self) -> Option<String> {
        self.blamed.borrow().clone()
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
        self.form_as(id, action, None, inside)
    }

    /// The same for a form that a file may be sent with, also where scripts are off.
    pub fn form_with_file(&self, id: &str, action: &str, inside: Markup) -> Markup {
        self.form_as(id, action, Some("multipart/form-data"), inside)
    }

    fn form_as(&self, id: &str, action: &str, kind: Option<&str>, inside: Markup) -> Markup {
        let kept = self.is_back(id).then(|| self.beside.typed.text("token"));
        let token = kept.map_or_else(once::token, str::to_owned);
        html! {
            form method="post" action=(action) enctype=[kind] {
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
