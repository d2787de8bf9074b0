//! Laws of all typed input: no text panics, every refusal is a whole sentence, and what was written can be typed back.

use super::*;
use crate::{
    moment::{HOUR, MINUTE},
    units::Mk,
    words::{Locale, Viewer, metric_viewer, test_viewer},
};
use proptest::prelude::*;

fn viewers() -> impl Strategy<Value = Viewer> {
    let all: Vec<_> = Locale::ALL
        .into_iter()
        .flat_map(|locale| [test_viewer(locale), metric_viewer(locale)])
        .collect();
    const ZONES: [&str; 5] = [
        "America/Chicago",
        "America/Mexico_City",
        "Asia/Kathmandu",
        "Australia/Lord_Howe",
        "UTC",
    ];
    (prop::sample::select(all), prop::sample::select(&ZONES[..])).prop_map(|(viewer, zone)| {
        Viewer {
            zone: zone.into(),
            ..viewer
        }
    })
}

/// Any text at all, and text made of the pieces that readers look for.
fn texts() -> impl Strategy<Value = String> {
    let pieces = prop::sample::select(
        &[
            "0",
            "7",
            "59",
            "203",
            "1,250",
            "999999999999999999999",
            ".",
            ",",
            ":",
            "-",
            "−",
            " ",
            "\u{a0}",
            "°",
            "f",
            "C",
            "lb",
            "oz",
            "kg",
            "g",
            "h",
            "min",
            "días",
            "pm",
            "a. m.",
            "mañana",
            "noon",
            "T",
            "2026-06-13",
            "ß",
            "İ",
            "\u{0}",
            "{$x}",
        ][..],
    );
    prop_oneof![
        any::<String>(),
        prop::collection::vec(pieces, 0..8).prop_map(|pieces| pieces.concat())
    ]
}

proptest! {
    #[test]
    fn no_text_panics_and_every_refusal_is_a_sentence(viewer in viewers(), text in texts(), now in 1_600_000_000_000..4_000_000_000_000_i64) {
        let say = Words::of(&viewer);
        let refusals = [
            temperature(&say, &text, &TEMPERATURE).err(),
            weight(&say, &text, &MEAT_GRAMS).err(),
            duration(&say, &text, &DURATION_MS).err(),
            clock(&say, &text, now, Seek::Next).err(),
            clock(&say, &text, now, Seek::Nearest).err(),
            time_field(&say, &text, now, Seek::Last).err(),
            datetime_field(&say, &text).err(),
            name(&say, &text).err(),
        ];
        for Refused { reason } in refusals.into_iter().flatten() {
            prop_assert!(reason.ends_with('.') && !reason.starts_with('⟨'), "{}", reason);
            prop_assert!(!reason.contains("{$typed}") && !reason.contains('\u{0}'), "{}", reason);
        }
    }

    #[test]
    fn what_is_accepted_lies_in_the_range_asked_for(viewer in viewers(), text in texts(), low in 250_000..400_000_i64, width in 0..400_000_i64) {
        let say = Words::of(&viewer);
        let range = Mk(low)..=Mk(low + width);
        if let Ok(at) = temperature(&say, &text, &range) {
            prop_assert!(range.contains(&at));
        }
        if let Ok(grams) = weight(&say, &text, &(low..=low + width)) {
            prop_assert!((low..=low + width).contains(&grams));
        }
    }

    #[test]
    fn a_temperature_written_is_typed_back_within_half_a_degree(viewer in viewers(), mk in 253_150..773_150_i64) {
        let say = Words::of(&viewer);
        let back = temperature(&say, &say.temperature(Mk(mk)), &TEMPERATURE).unwrap();
        prop_assert!((back.0 - mk).abs() <= 500);
        let fine = temperature(&say, &say.temperature_fine(Mk(mk)), &TEMPERATURE);
        prop_assert!(fine.is_err() || (fine.unwrap().0 - mk).abs() <= 100);
    }

    /// Half an ounce is 14.2 g; above a kilogram half a step of 100 g.
    #[test]
    fn a_weight_written_is_typed_back_within_half_a_step(viewer in viewers(), grams in 45..=59_900_i64) {
        let say = Words::of(&viewer);
        let back = weight(&say, &say.weight(grams), &MEAT_GRAMS).unwrap();
        let step = if viewer.weight == crate::words::WeightUnit::Pound { 15 } else { 50 };
        prop_assert!((back - grams).abs() <= step);
    }

    #[test]
    fn a_length_written_is_typed_back_within_half_a_step(viewer in viewers(), ms in MINUTE..14 * 24 * HOUR) {
        let say = Words::of(&viewer);
        let back = duration(&say, &say.duration(ms), &DURATION_MS).unwrap();
        let step = if ms < 48 * HOUR - MINUTE { MINUTE } else { HOUR };
        prop_assert!((back - ms).abs() <= step / 2);
    }

    /// Whole minutes. The second of two equal times of an autumn night is written as the first, and read as it.
    #[test]
    fn a_time_written_is_typed_back(viewer in viewers(), minute in 26_700_000..68_800_000_i64, ahead in 0..20 * 60_i64) {
        let say = Words::of(&viewer);
        let (then, now) = ((minute + ahead) * MINUTE, minute * MINUTE);
        let twice = crate::words::zone::instant_of(say.zone, crate::words::zone::local(say.zone, then)) != then;
        if !twice {
            prop_assert_eq!(datetime_field(&say, &say.datetime_field(then)), Ok(then));
            prop_assert_eq!(clock(&say, &say.clock(then), now, Seek::Next), Ok(then));
            prop_assert_eq!(clock(&say, &say.clock_day(then, now), now, Seek::Next), Ok(then));
            prop_assert_eq!(time_field(&say, &say.time_field(then), now, Seek::Next), Ok(then));
        }
    }

    #[test]
    fn a_name_read_once_stays_as_it_is(viewer in viewers(), text in texts()) {
        let say = Words::of(&viewer);
        if let Ok(read) = name(&say, &text) {
            prop_assert_eq!(name(&say, &read), Ok(read.clone()));
        }
    }
}
