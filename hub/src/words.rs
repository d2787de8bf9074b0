//! The words of the pages themselves: labels of forms and of the frame. They stand with all others in core's folder of
//! words, in `pages.ftl` of each language; here each gets a name that the compiler knows. Start at [`words`].

use slowbend_core::{
    ids::DeviceId,
    log::PitKind,
    words::{Locale, Viewer, Words},
};
use std::sync::OnceLock;

macro_rules! words {
    ($($name:ident: $key:literal,)*) => {
        /// All words in one language.
        pub struct HubWords { $(#[allow(missing_docs, reason = "named as they read")] pub $name: &'static str),* }

        impl HubWords {
            fn of(say: &Words<'_>) -> Self {
                Self { $($name: kept(say.text($key))),* }
            }
        }
        #[cfg(test)]
        const KEYS: &[&str] = &[$($key),*];
    };
}

/// The words of `locale`; said once for the life of the process.
pub fn words(locale: Locale) -> &'static HubWords {
    static EN_US: OnceLock<HubWords> = OnceLock::new();
    static ES_US: OnceLock<HubWords> = OnceLock::new();
    let once = match locale {
        Locale::EnUs => &EN_US,
        Locale::EsUs => &ES_US,
    };
    once.get_or_init(|| {
        let viewer = Viewer {
            locale,
            ..Viewer::default_for(DeviceId(uuid::Uuid::nil()))
        };
        HubWords::of(&Words::of(&viewer))
    })
}

/// Kept for good: as many as there are words, once a language.
fn kept(text: String) -> &'static str {
    Box::leak(text.into_boxed_str())
}

words! {
    skip: "page-skip",
    pages: "page-pages",
    now: "page-now",
    write: "page-write",
    timeline: "page-timeline",
    settings: "frame-settings",
    stopped: "frame-stopped",
    no_page: "page-no-page",
    to_start: "page-to-start",
    not_recorded: "page-not-recorded",
    already: "page-already",
    invented: "page-invented",
    leave_demo: "page-leave-demo",
    demo_under_way: "page-demo-under-way",
    demo_anew: "page-demo-anew",
    no_demo: "page-no-demo",
    too_large: "page-too-large",
    file_too_large: "page-file-too-large",
    cautions: "page-cautions",
    rings_while_open: "page-rings-while-open",
    sound: "page-sound",
    sound_on: "page-sound-on",
    no_script: "page-no-script",
    away: "page-away",
    show: "page-show",
    meats: "frame-meats",
    pits: "frame-pits",
    next: "frame-next",
    watch: "frame-watch",
    at_hand: "frame-at-hand",
    check: "page-check",
    check_next: "frame-check-next",
    did: "page-did",
    facts: "frame-facts",
    checks: "frame-checks",
    back_to_meat: "page-back-to-meat",
    thermometer: "frame-thermometer",
    other_thermometer: "frame-other-thermometer",
    left_in: "frame-left-in",
    when_done: "page-when-done",
    earlier: "frame-earlier",
    new_here: "page-new-here",
    change: "page-change",
    demo: "page-demo",
    past: "frame-past",
    cut: "frame-cut",
    no_meat: "frame-no-meat",
    more_meats: "page-more-meats",
    rows_hint: "page-rows-hint",
    no_pit: "frame-no-pit",
    pit_above: "page-pit-above",
    new_pit: "page-new-pit",
    first_pit: "page-first-pit",
    first_pit_hint: "page-first-pit-hint",
    pit: "page-pit",
    pit_name: "page-pit-name",
    pit_kind: "page-pit-kind",
    kind_stick_burner: "pit-kind-stick-burner",
    kind_kettle: "pit-kind-kettle",
    kind_drum: "pit-kind-drum",
    kind_ceramic: "pit-kind-ceramic",
    kind_cabinet: "pit-kind-cabinet",
    kind_pellet: "pit-kind-pellet",
    kind_electric: "pit-kind-electric",
    find_cut: "page-find-cut",
    all_cuts: "cuts-title",
    write_down: "page-write-down",
    more_of_it: "page-more-of-it",
    file: "page-file",
    file_hint: "page-file-hint",
    file_choose: "page-file-choose",
    file_rows: "page-file-rows",
    file_empty: "page-file-empty",
    file_unit: "page-file-unit",
    file_says: "page-file-says",
    file_first: "page-file-first",
    file_day: "page-file-day",
    file_month: "page-file-month",
    file_time_column: "page-file-time-column",
    file_temp_columns: "page-file-temp-columns",
    file_start: "page-file-start",
    file_counts: "page-file-counts",
    file_seconds: "page-file-seconds",
    file_minutes: "page-file-minutes",
    file_more: "page-file-more",
    file_column_unread: "page-file-column-unread",
    file_taken: "page-file-taken",
    file_doubled: "page-file-doubled",
    file_refused: "page-file-refused",
    people_unread: "page-people-unread",
    probe_source: "page-probe-source",
    choose: "page-choose",
    nothing_tried: "form-nothing-tried",
    not_tried: "form-not-tried",
    device: "page-device",
    device_name: "page-device-name",
    zone: "page-zone",
    zone_unread: "page-zone-unread",
    field_unread: "form-unread",
    saved: "page-saved",
    low: "page-low",
    high: "page-high",
    band: "page-band",
    band_minutes: "page-band-minutes",
    stale_button: "page-stale-button",
}

/// The kinds of pits, to be chosen from.
pub fn pit_kinds(words: &HubWords) -> impl Iterator<Item = (String, &str)> {
    [
        (PitKind::Kettle, words.kind_kettle),
        (PitKind::Drum, words.kind_drum),
        (PitKind::StickBurner, words.kind_stick_burner),
        (PitKind::Ceramic, words.kind_ceramic),
        (PitKind::Cabinet, words.kind_cabinet),
        (PitKind::Pellet, words.kind_pellet),
        (PitKind::Electric, words.kind_electric),
    ]
    .into_iter()
    .map(|(kind, name)| (crate::forms::name_of(&kind), name))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_word_is_said_in_each_language() {
        for locale in Locale::ALL {
            let viewer = Viewer {
                locale,
                ..Viewer::default_for(DeviceId(uuid::Uuid::nil()))
            };
            let say = Words::of(&viewer);
            for key in KEYS {
                let said = say.text(key);
                assert!(
                    !said.is_empty() && !said.contains('⟨'),
                    "{}: {key}",
                    locale.tag()
                );
            }
        }
    }
}
