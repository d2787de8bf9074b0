//! Probes that send bytes.

use super::*;
use crate::probes::health_thermometer::TEMPERATURE_MEASUREMENT;

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
