use super::*;
use crate::readings::zones::ZoneClock;
use chrono::DateTime;
use proptest::prelude::*;

fn utc(text: &str) -> i64 {
    DateTime::parse_from_rfc3339(text)
        .unwrap()
        .timestamp_millis()
}

fn instant(format: TimeFormat, cell: &str) -> Result<i64, Fault> {
    let mut clock = ZoneClock::new(chrono_tz::America::Chicago);
    read(format, cell.as_bytes(), false).map(|stated| clock.instant(stated))
}

#[test]
fn year_first() {
    let five = utc("2026-06-13T05:00:00-05:00");
    for cell in [
        "2026-06-13T05:00:00",
        "2026-06-13 05:00",
        "2026/6/13 5:00:00.000",
        "2026-06-13T05:00:00-05:00",
        "2026-06-13T10:00:00Z",
        "2026-06-13 10:00:00 UTC",
        "2026-06-13T12:00:00+0200",
        "2026-06-13T12:00+02",
        " 2026-06-13 05:00:00 AM ",
    ] {
        assert_eq!(instant(TimeFormat::Iso, cell), Ok(five), "{cell}");
    }
    assert_eq!(
        instant(TimeFormat::Iso, "2026-06-13T05:00:00,1259"),
        Ok(five + 125)
    );
    assert_eq!(
        instant(TimeFormat::Iso, "2026-06-13T05:00:00.5"),
        Ok(five + 500)
    );
}

#[test]
fn year_last_in_either_order() {
    let afternoon = utc("2026-06-05T14:03:07-05:00");
    for cell in [
        "06/05/2026 2:03:07 PM",
        "6/5/26 14:03:07",
        "06-05-2026, 02:03:07 p. m.",
        "6/5/2026 2:03:07 p.m.",
    ] {
        assert_eq!(
            instant(TimeFormat::MonthFirst, cell),
            Ok(afternoon),
            "{cell}"
        );
    }
    for cell in ["05/06/2026 14:03:07", "5.6.2026 14:03:07"] {
        assert_eq!(instant(TimeFormat::DayFirst, cell), Ok(afternoon), "{cell}");
    }
    assert_eq!(
        instant(TimeFormat::MonthFirst, "12/31/2026 12:00 AM"),
        Ok(utc("2026-12-31T00:00:00-06:00"))
    );
    assert_eq!(
        instant(TimeFormat::MonthFirst, "12/31/2026 12:00 PM"),
        Ok(utc("2026-12-31T12:00:00-06:00"))
    );
}

#[test]
fn counted_from_1970_or_from_a_start() {
    let at = utc("2026-06-13T10:00:01.500Z");
    assert_eq!(instant(TimeFormat::EpochSeconds, "1781344801.5"), Ok(at));
    assert_eq!(instant(TimeFormat::EpochMillis, "1781344801500"), Ok(at));
    let since =
        |unit, cell| instant(TimeFormat::Elapsed { unit, start: at }, cell).map(|then| then - at);
    assert_eq!(
        since(ElapsedUnit::Clock, "1:02:03"),
        Ok(HOUR + 2 * MINUTE + 3 * SECOND)
    );
    assert_eq!(
        since(ElapsedUnit::Clock, "120:00:00.25"),
        Ok(120 * HOUR + 250)
    );
    assert_eq!(since(ElapsedUnit::Seconds, "90.5"), Ok(90_500));
    assert_eq!(since(ElapsedUnit::Minutes, "1.5"), Ok(90_000));
    assert_eq!(
        since(ElapsedUnit::Clock, "2:03"),
        Err(Fault::NotATime),
        "hours or minutes? not guessed"
    );
}

#[test]
fn refused_with_the_right_reason() {
    for (format, cell, fault) in [
        (TimeFormat::Iso, "", Fault::NoTime),
        (TimeFormat::Iso, "2026-02-30 05:00", Fault::NoSuchTime),
        (TimeFormat::Iso, "2026-06-13 25:00", Fault::NoSuchTime),
        (TimeFormat::Iso, "2026-06-13 13:00 PM", Fault::NoSuchTime),
        (TimeFormat::Iso, "2026-06-13", Fault::NotATime),
        (TimeFormat::Iso, "1970-01-01 00:00", Fault::Year),
        (TimeFormat::Iso, "2200-01-01 00:00", Fault::Year),
        (TimeFormat::Iso, "2026-06-13 05:00 or so", Fault::NotATime),
        (
            TimeFormat::MonthFirst,
            "13/06/2026 05:00",
            Fault::NoSuchTime,
        ),
        (TimeFormat::MonthFirst, "6/13/026 05:00", Fault::NotATime),
        (TimeFormat::EpochSeconds, "0", Fault::Year),
        (TimeFormat::EpochSeconds, "1781344801500", Fault::Year),
        (TimeFormat::EpochMillis, "999999999999999999", Fault::Year),
        (TimeFormat::EpochSeconds, "noon", Fault::NotATime),
    ] {
        assert_eq!(instant(format, cell), Err(fault), "{cell}");
    }
}

fn any_format() -> impl Strategy<Value = TimeFormat> {
    let elapsed = prop::sample::select(vec![
        ElapsedUnit::Clock,
        ElapsedUnit::Seconds,
        ElapsedUnit::Minutes,
    ]);
    let plain = vec![
        TimeFormat::Iso,
        TimeFormat::MonthFirst,
        TimeFormat::DayFirst,
        TimeFormat::EpochSeconds,
    ];
    prop_oneof![
        prop::sample::select(plain),
        (elapsed, any::<i64>()).prop_map(|(unit, start)| TimeFormat::Elapsed { unit, start }),
    ]
}

proptest! {
    #[test]
    fn any_bytes_are_read_or_refused(format in any_format(), cell in prop::collection::vec(any::<u8>(), 0..40)) {
        let _ = read(format, &cell, true);
    }

    #[test]
    fn almost_times_are_read_or_refused(format in any_format(), cell in "[0-9]{1,4}[-/.:][0-9]{1,2}[-/.: T][0-9]{1,4}[ T]?[0-9:.,APM Z+-]{0,14}") {
        let _ = read(format, cell.as_bytes(), true);
    }

    #[test]
    fn what_chrono_writes_is_read_back(ms in civil::EARLIEST..civil::LATEST) {
        let text = DateTime::from_timestamp_millis(ms).unwrap();
        let iso = text.format("%Y-%m-%dT%H:%M:%S%.3fZ").to_string();
        prop_assert_eq!(instant(TimeFormat::Iso, &iso), Ok(ms));
        let us = text.format("%m/%d/%Y %I:%M:%S %p +00:00").to_string();
        prop_assert_eq!(instant(TimeFormat::MonthFirst, &us), Ok(ms - ms % 1_000));
    }
}
