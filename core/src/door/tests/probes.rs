//! Probes that send bytes.

use super::*;
use crate::probes::{HeardWord, health_thermometer::TEMPERATURE_MEASUREMENT};

/// 225 °F.
const WORD: [u8; 5] = [0x01, 0xE1, 0x00, 0x00, 0x00];

#[test]
fn bytes_of_a_probe_are_a_reading_as_any_other() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let heard = door.probe_word("box", "1", TEMPERATURE_MEASUREMENT, &WORD, &now(3));
    let reading = SensorReading {
        source: "box".into(),
        sensor: "1".into(),
        at: now(3).utc_ms,
        temp: Mk::from_f(225),
    };
    assert_eq!(heard.unwrap(), Some(reading.clone()));
    let tails = door.tails.clone();
    let elsewhere = tempfile::tempdir().unwrap();
    let mut other = open(elsewhere.path(), "here");
    other.readings(&[reading], &now(3)).unwrap();
    assert_eq!(tails, other.tails);
    let empty = door.probe_word(
        "box",
        "1",
        TEMPERATURE_MEASUREMENT,
        &[0, 0xFF, 0xFF, 0x7F, 0],
        &now(4),
    );
    assert_eq!(empty.unwrap(), None);
    door.suspend().unwrap();
    drop(door);
    assert_eq!(open(place.path(), "here").tails, tails);
}

#[test]
fn bytes_that_are_not_sound_are_refused_and_leave_nothing() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let mut refused = |sensor, characteristic, bytes: &[u8]| {
        let answer = door.probe_word("box", sensor, characteristic, bytes, &now(3));
        match answer.unwrap_err() {
            Trouble::Refused { reason } => reason,
            other => panic!("{other:?}"),
        }
    };
    assert!(refused("1", TEMPERATURE_MEASUREMENT, &WORD[..4]).contains("4 bytes instead of 5"));
    assert!(refused("1", 0x2A00, &WORD).contains("0x2A00"));
    assert!(refused("1", TEMPERATURE_MEASUREMENT, &[0, 0, 1, 0, 1]).contains("800 °C"));
    assert!(refused("", TEMPERATURE_MEASUREMENT, &WORD).contains("1 to 80"));
    assert_eq!(door.tails, Tails::default());
}

#[test]
fn of_many_words_a_bad_one_takes_nothing_from_the_others() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    let viewer = viewer(&mut door);
    let word = |sensor: &str, bytes: &[u8], heard: i64| HeardWord {
        source: "box".into(),
        sensor: sensor.into(),
        characteristic: TEMPERATURE_MEASUREMENT,
        bytes: bytes.into(),
        heard: now(heard),
    };
    let words = [
        word("1", &WORD, 1),
        word("1", &[1, 2], 2),
        word("2", &[0, 0xFF, 0xFF, 0x7F, 0], 2),
        word("2", &WORD, 3),
    ];
    let taken = door.probe_words(&viewer, &words, &now(3)).unwrap();
    let at: Vec<_> = taken
        .iter()
        .map(|one| one.reading.as_ref().map(|reading| reading.at))
        .collect();
    assert_eq!(at, [Some(now(1).utc_ms), None, None, Some(now(3).utc_ms)]);
    let why: Vec<_> = taken
        .iter()
        .map(|one| one.why_none.as_deref().unwrap_or_default())
        .collect();
    assert!(why[1].contains("2 bytes instead of 5"), "{}", why[1]);
    assert!(why[2].contains("no reading"), "{}", why[2]);
    assert_eq!((why[0], why[3]), ("", ""));
}
