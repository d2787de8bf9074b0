//! The FTL files, embedded and parsed once per language for the life of the process.

use super::viewer::Locale;
use fluent_bundle::{FluentResource, concurrent::FluentBundle};
use std::sync::OnceLock;

/// The messages of one language, ready to be said from any thread.
pub(super) type Bundle = FluentBundle<FluentResource>;

/// Embeds one file of each name per language. A new subject is one more name here and one file in each folder.
macro_rules! subjects {
    ($($name:literal),* $(,)?) => {
        /// File name without ending, and text, of each file of `locale`.
        pub(super) const fn files(locale: Locale) -> &'static [(&'static str, &'static str)] {
            match locale {
                Locale::EnUs => &[$(($name, include_str!(concat!("en-US/", $name, ".ftl")))),*],
                Locale::EsUs => &[$(($name, include_str!(concat!("es-US/", $name, ".ftl")))),*],
            }
        }
    };
}

subjects!(
    "acts",
    "alarms",
    "batch",
    "cadence",
    "card",
    "catalogue",
    "charts",
    "checks",
    "common",
    "cuts",
    "courses",
    "dishes",
    "door",
    "errors",
    "forecast",
    "fire",
    "frame",
    "handover",
    "hearing",
    "hints",
    "opening",
    "pages",
    "phones",
    "pits",
    "plan",
    "probes",
    "readings",
    "rings",
    "safety",
    "screens",
    "sheet",
    "slips",
    "thermometers",
    "times",
    "trouble",
    "units",
    "unshown",
    "wall",
    "zone",
);

/// The parsed messages of `locale`. Only the first call in a process parses.
pub(super) fn bundle(locale: Locale) -> &'static Bundle {
    static EN_US: OnceLock<Bundle> = OnceLock::new();
    static ES_US: OnceLock<Bundle> = OnceLock::new();
    let once = match locale {
        Locale::EnUs => &EN_US,
        Locale::EsUs => &ES_US,
    };
    once.get_or_init(|| parse(locale))
}

/// Keeps what can be read of a faulty file: the tests of this module refuse faults before they ship, and a cook at the
/// pit is better served by a missing line than by no screen.
fn parse(locale: Locale) -> Bundle {
    let tag = locale
        .tag()
        .parse()
        .expect("tags are written in this crate and each is tested");
    let mut bundle = Bundle::new_concurrent(vec![tag]);
    bundle.set_use_isolating(false);
    for (_, text) in files(locale) {
        let resource = FluentResource::try_new((*text).to_owned()).unwrap_or_else(|(read, _)| read);
        let _repeated_keys = bundle.add_resource(resource);
    }
    bundle
}
