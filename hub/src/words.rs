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
    kind_stick_burner: "page-kind-stick-burner",
    kind_kettle: "page-kind-kettle",
    kind_drum: "page-kind-drum",
    kind_ceramic: "page-kind-ceramic",
    kind_cabinet: "page-kind-cabinet",
    kind_pellet: "page-kind-pellet",
    kind_electric: "page-kind-electric",
    form: "page-form",
    find_cut: "page-find-cut",
    cut_as_typed: "page-cut-as-typed",
    all_cuts: "cuts-title",
    about_cut: "cuts-about",
    form_unknown: "page-form-unknown",
    form_intact: "page-form-intact",
    form_injected: "page-form-injected",
    form_tenderised: "page-form-tenderised",
    form_ground: "page-form-ground",
    form_rolled: "page-form-rolled",
    form_stuffed: "page-form-stuffed",
    cadence: "page-cadence",
    cadence_usual: "page-cadence-usual",
    cadence_none: "frame-no-meat",
    cadence_spritz: "page-cadence-spritz",
    cadence_mop: "page-cadence-mop",
    write_down: "page-write-down",
    note: "page-note",
    note_text: "page-note-text",
    read_with: "page-read-with",
    reading: "page-reading",
    place: "page-place",
    temp: "page-temp",
    spot: "page-spot",
    spot_in_pit: "page-spot-in-pit",
    feed: "page-feed",
    feed_what: "page-feed-what",
    vent: "page-vent",
    vent_how: "page-vent-how",
    move_meat: "page-move-meat",
    meat: "page-meat",
    opening: "page-opening",
    opening_hint: "page-opening-hint",
    did_nothing: "page-did-nothing",
    did_wet: "page-did-wet",
    did_turn: "page-did-turn",
    did_glaze: "page-did-glaze",
    more_of_it: "page-more-of-it",
    split: "page-split",
    split_names: "page-split-names",
    join: "page-join",
    join_name: "page-join-name",
    join_one: "page-join-one",
    pull_at: "page-pull-at",
    weight: "page-weight",
    new_name: "page-new-name",
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
    meat_name: "page-meat-name",
    add_meat: "frame-another-meat",
    add_dish: "page-add-dish",
    dish_name: "page-dish-name",
    dish_held: "page-dish-held",
    dish_hot: "page-dish-hot",
    dish_cold: "page-dish-cold",
    serve: "page-serve",
    serve_at: "page-serve-at",
    people: "page-people",
    people_count: "page-people-count",
    people_unread: "page-people-unread",
    sleep: "page-sleep",
    sleep_until: "page-sleep-until",
    take_watch: "page-take-watch",
    watch_note: "page-watch-note",
    probe: "page-probe",
    probe_source: "page-probe-source",
    probe_sensor: "page-probe-sensor",
    choose: "page-choose",
    nothing_tried: "form-nothing-tried",
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

/// What may have been done to a meat; nobody knowing it is the usual one.
pub fn forms(words: &HubWords) -> impl Iterator<Item = (String, &str)> {
    use slowbend_core::safety::Form;
    [
        (Form::Unknown, words.form_unknown),
        (Form::Intact, words.form_intact),
        (Form::Injected, words.form_injected),
        (Form::Tenderised, words.form_tenderised),
        (Form::Ground, words.form_ground),
        (Form::Rolled, words.form_rolled),
        (Form::Stuffed, words.form_stuffed),
    ]
    .into_iter()
    .map(|(form, name)| (crate::forms::name_of(&form), name))
}

/// How often a meat may be wetted.
pub fn cadences(words: &HubWords) -> impl Iterator<Item = (String, &str)> {
    [
        ("", words.cadence_usual),
        ("none", words.cadence_none),
        ("spritz", words.cadence_spritz),
        ("mop", words.cadence_mop),
    ]
    .into_iter()
    .map(|(value, name)| (value.to_owned(), name))
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
