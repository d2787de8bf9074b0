//! When a reading was, by the clock of the probe and by the one of this device.

use super::super::{health_thermometer::TEMPERATURE_MEASUREMENT, *};
use crate::moment::{HOUR, MINUTE, Moment, SECOND};
use chrono::{Datelike, NaiveDateTime, Timelike};

/// 36.4 °C at a time by the probe's clock, such as `2026-06-13T14:00:00`.
fn stamped(wall: &str) -> Vec<u8> {
    let wall = NaiveDateTime::parse_from_str(wall, "%Y-%m-%dT%H:%M:%S").unwrap();
    let year = (wall.year() as u16).to_le_bytes();
    let rest = [
        wall.month(),
        wall.day(),
        wall.hour(),
        wall.minute(),
        wall.second(),
    ];
    let rest = rest.map(|part| part as u8);
    [&[0x02, 0x6C, 0x01, 0x00, 0xFF][..], &year, &rest].concat()
}

fn at(wall: &str, moment: &Moment) -> Result<i64, NotAWord> {
    let heard = heard(TEMPERATURE_MEASUREMENT, &stamped(wall), moment)?;
    Ok(heard.unwrap().at)
}

/// Saturday 2026-06-13 14:00 in Chicago (UTC−5).
fn lunch() -> Moment {
    Moment::at(1_781_377_200_000, "America/Chicago")
}

#[test]
fn without_a_time_it_was_now() {
    let heard = heard(
        TEMPERATURE_MEASUREMENT,
        &[0x00, 0x6C, 0x01, 0x00, 0xFF],
        &lunch(),
    );
    assert_eq!(heard.unwrap().unwrap().at, lunch().utc_ms);
}

#[test]
fn what_was_kept_is_not_taken_for_what_is_hot_now() {
    let now = lunch().utc_ms;
    assert_eq!(
        at("2026-06-13T11:20:05", &lunch()),
        Ok(now - 160 * MINUTE + 5 * SECOND)
    );
    assert_eq!(at("2026-06-12T14:00:00", &lunch()), Ok(now - 24 * HOUR));
}

#[test]
fn a_clock_a_little_ahead_reads_now() {
    for wall in ["2026-06-13T14:00:01", "2026-06-13T14:10:00"] {
        assert_eq!(at(wall, &lunch()), Ok(lunch().utc_ms));
    }
}

#[test]
fn a_clock_that_is_far_off_is_told() {
    for wall in [
        "2026-06-13T14:10:01",
        "2026-06-12T13:59:59",
        "2000-01-01T00:00:00",
        "9999-12-31T23:59:59",
    ] {
        let told = at(wall, &lunch()).unwrap_err().to_string();
        assert!(told.contains(&wall.replace('T', " ")), "{told}");
    }
}

/// The overnight cook of 2026-11-01: 1:30 comes at 6:30 and again at 7:30 UTC.
#[test]
fn in_an_hour_that_comes_twice_it_is_the_later_one_that_has_come() {
    let first = Moment::at(1_793_514_600_000, "America/Chicago");
    let second = first.plus(HOUR);
    assert_eq!(at("2026-11-01T01:30:00", &first), Ok(first.utc_ms));
    assert_eq!(at("2026-11-01T01:30:00", &second), Ok(second.utc_ms));
}

/// On 2026-03-08 the clock jumps from 2:00 to 3:00, at 8:00 UTC; a probe that does not know of it shows 2:30 half an hour later.
#[test]
fn a_time_that_the_clock_skips_is_read_with_the_offset_before() {
    let moment = Moment::at(1_772_958_600_000, "America/Chicago");
    assert_eq!(at("2026-03-08T02:30:00", &moment), Ok(moment.utc_ms));
}

#[test]
fn the_probes_clock_shows_the_time_of_the_place() {
    let tokyo = Moment {
        zone: "Asia/Tokyo".into(),
        ..lunch()
    };
    assert_eq!(at("2026-06-14T04:00:00", &tokyo), Ok(tokyo.utc_ms));
}
