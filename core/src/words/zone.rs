//! Between instants and wall clocks. Schedules are instants; "2 p.m." is a wall time with its zone until it is resolved
//! here.

use chrono::{DateTime, NaiveDateTime, Offset, TimeDelta, TimeZone};
use chrono_tz::Tz;

/// What a wall clock in `zone` shows at `utc_ms`. Instants outside the years 1 to 9999 are shown as the nearest end.
pub fn local(zone: Tz, utc_ms: i64) -> NaiveDateTime {
    let inside = utc_ms.clamp(-62_135_510_400_000, 253_402_214_400_000);
    let utc = DateTime::from_timestamp_millis(inside).unwrap_or_default();
    zone.from_utc_datetime(&utc.naive_utc()).naive_local()
}

/// The instant at which a wall clock in `zone` shows `wall`, by RFC 5545 section 3.3.5: a time that comes twice is its
/// first occurrence; a time that the clock skips is read with the offset before the gap, so 2:30 in a spring night
/// that jumps from 2 to 3 is 3:30.
pub fn instant_of(zone: Tz, wall: NaiveDateTime) -> i64 {
    let offset_s = zone
        .offset_from_local_datetime(&wall)
        .earliest()
        .map_or_else(
            || offset_before(zone, wall),
            |offset| offset.fix().local_minus_utc(),
        );
    wall.and_utc().timestamp_millis() - i64::from(offset_s) * 1_000
}

/// The offset in force before the gap that `wall` falls in, in seconds east. Gaps are at most a day long (Samoa left
/// out 2011-12-30), and every change since 1970 is on a quarter of an hour.
fn offset_before(zone: Tz, wall: NaiveDateTime) -> i32 {
    (1..=100)
        .filter_map(|quarters| wall.checked_sub_signed(TimeDelta::minutes(15 * quarters)))
        .find_map(|earlier| zone.offset_from_local_datetime(&earlier).latest())
        .map_or(0, |offset| offset.fix().local_minus_utc())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn published_gaps_and_repeated_hours_resolve_as_rfc_5545_says() {
        let table = include_str!("../../tests/published/dst_gaps_folds.csv");
        let rows = table.lines().filter(|line| !line.starts_with('#')).skip(1);
        let mut checked = 0;
        for row in rows {
            let cells: Vec<_> = row.split(',').collect();
            let zone: Tz = cells[0].parse().unwrap();
            let wall = NaiveDateTime::parse_from_str(cells[2], "%Y-%m-%dT%H:%M").unwrap();
            let utc = NaiveDateTime::parse_from_str(cells[3], "%Y-%m-%dT%H:%MZ").unwrap();
            assert_eq!(
                instant_of(zone, wall),
                utc.and_utc().timestamp_millis(),
                "{row}"
            );
            checked += 1;
        }
        assert_eq!(checked, 6);
    }

    /// Chicago keeps UTC−5 in July under the rule in force since 2007. The compiled tables hold changes up to the end
    /// of 2099; in 2100, the last year that may be typed, every zone stands on its standard offset.
    #[test]
    fn the_zone_tables_reach_the_end_of_2099() {
        let wall = NaiveDateTime::parse_from_str("2099-07-01T12:00", "%Y-%m-%dT%H:%M").unwrap();
        let utc = wall + TimeDelta::hours(5);
        assert_eq!(
            instant_of(Tz::America__Chicago, wall),
            utc.and_utc().timestamp_millis()
        );
    }
}
