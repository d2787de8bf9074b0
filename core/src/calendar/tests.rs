//! Examples of the standard, and laws. What an independent program reads of it is `tests/oracles/test_ical.py`.

use super::*;
use proptest::prelude::*;

/// 2026-10-31 22:00 in Chicago (UTC−5), the night before its clocks go back.
const AUTUMN: i64 = 1_793_502_000_000;
const HOUR: i64 = 3_600_000;

fn of(zone: &str, events: Vec<Event>) -> String {
    let made = calendar(&Calendar {
        name: "Regatta lunch".into(),
        zone: zone.into(),
        made: AUTUMN,
        sequence: 2,
        events,
    });
    made.unwrap().text
}

fn event(at: i64, until: i64) -> Event {
    Event {
        uid: "1@slowbend".into(),
        at,
        until,
        summary: "Put on: Butt; Slab 1, Slab 2".into(),
        description: "Twelve hours\nby the table".into(),
        rings: true,
    }
}

#[test]
fn an_hour_that_comes_twice_is_told_apart() {
    // 1:30 comes at 6:30 and at 7:30 UTC.
    let text = of(
        "America/Chicago",
        vec![event(
            AUTUMN + 3 * HOUR + HOUR / 2,
            AUTUMN + 4 * HOUR + HOUR / 2,
        )],
    );
    assert!(
        text.contains("DTSTART;TZID=America/Chicago:20261101T013000\r\n"),
        "{text}"
    );
    assert!(text.contains("DTEND:20261101T073000Z\r\n"), "{text}");
    for line in [
        "BEGIN:DAYLIGHT",
        "DTSTART:20260308T020000",
        "TZOFFSETFROM:-0600",
        "TZOFFSETTO:-0500",
        "TZNAME:CDT",
    ] {
        assert!(text.contains(&format!("{line}\r\n")), "{line} in {text}");
    }
    for line in ["BEGIN:STANDARD", "DTSTART:20261101T020000", "TZNAME:CST"] {
        assert!(text.contains(&format!("{line}\r\n")), "{line} in {text}");
    }
}

#[test]
fn a_zone_that_never_changes_stands_since_1970() {
    let text = of("America/Phoenix", vec![event(AUTUMN, AUTUMN)]);
    assert!(text.contains("BEGIN:STANDARD\r\nDTSTART:19700101T000000\r\nTZOFFSETFROM:-0700\r\nTZOFFSETTO:-0700\r\n"), "{text}");
    assert!(
        !text.contains("DAYLIGHT") && !text.contains("DTEND"),
        "{text}"
    );
}

#[test]
fn text_is_escaped_and_an_alarm_rings_at_its_time() {
    let text = of("UTC", vec![event(AUTUMN, AUTUMN + HOUR)]);
    assert!(
        text.contains("SUMMARY:Put on: Butt\\; Slab 1\\, Slab 2\r\n"),
        "{text}"
    );
    assert!(
        text.contains("DESCRIPTION:Twelve hours\\nby the table\r\n"),
        "{text}"
    );
    assert!(
        text.contains("TRIGGER:PT0S\r\n") && !text.contains("VTIMEZONE"),
        "{text}"
    );
}

#[test]
fn a_zone_that_is_not_known_is_told() {
    let made = calendar(&Calendar {
        name: String::new(),
        zone: "Lake/Boathouse".into(),
        made: 0,
        sequence: 0,
        events: vec![],
    });
    assert!(made.unwrap_err().to_string().contains("Lake/Boathouse"));
}

/// What a reader joins again (3.1).
fn unfolded(text: &str) -> String {
    text.replace("\r\n ", "")
}

proptest! {
    #[test]
    fn no_line_is_longer_than_75_octets_and_nothing_is_lost(summary in "[ñáa-z🎣,;\\\\ ]{0,200}", at in 0i64..4_000_000_000_000) {
        let all = of("America/Chicago", vec![Event { summary: summary.clone(), ..event(at, at + HOUR) }]);
        prop_assert!(all.split("\r\n").all(|line| line.len() <= 75));
        let written = summary.replace('\\', "\\\\").replace(';', "\\;").replace(',', "\\,");
        let line = format!("SUMMARY:{written}\r\n");
        prop_assert!(unfolded(&all).contains(&line));
        prop_assert_eq!(all.clone(), of("America/Chicago", vec![Event { summary, ..event(at, at + HOUR) }]));
    }
}
