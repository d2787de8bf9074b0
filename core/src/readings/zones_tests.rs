use super::*;
use crate::moment::SECOND;
use crate::readings::times::{self, TimeFormat};
use proptest::prelude::*;

const GAPS_FOLDS: &str = include_str!("../../tests/published/dst_gaps_folds.csv");
const OVERNIGHT: &str = include_str!("../../tests/published/dst_overnight_cooks.csv");

fn clock(zone: &str) -> ZoneClock {
    ZoneClock::new(zone.parse().unwrap())
}

fn stated(cell: &str) -> Stated {
    times::read(TimeFormat::Iso, cell.as_bytes(), false).unwrap()
}

fn utc(cell: &str) -> i64 {
    match stated(cell) {
        Stated::Instant(at) => at,
        Stated::Wall(_) => panic!("{cell} states no instant"),
    }
}

fn rows(published: &str) -> Vec<Vec<&str>> {
    let told = published
        .lines()
        .filter(|line| !line.starts_with('#'))
        .skip(1);
    let rows: Vec<Vec<&str>> = told.map(|line| line.split(',').collect()).collect();
    assert!(rows.len() >= 6);
    rows
}

#[test]
fn published_gaps_and_folds() {
    for row in rows(GAPS_FOLDS) {
        let [zone, kind, wall, fold0, fold1] = row[..5] else {
            panic!("{row:?}")
        };
        let mut alone = clock(zone);
        assert_eq!(
            alone.instant(stated(wall)),
            utc(fold0),
            "{zone} {kind} {wall}"
        );
        if kind == "fold" {
            let mut second_pass = clock(zone);
            second_pass.instant(Stated::Instant(utc(fold1) - 10 * MINUTE));
            assert_eq!(
                second_pass.instant(stated(wall)),
                utc(fold1),
                "{zone} {wall}, second pass"
            );
        }
    }
}

#[test]
fn published_nights_that_cross_a_change_last_as_long_as_they_lasted() {
    for row in rows(OVERNIGHT) {
        let [
            zone,
            start,
            fold,
            start_iso,
            start_utc,
            hours,
            end_iso,
            end_utc,
        ] = row[..8]
        else {
            panic!("{row:?}")
        };
        let mut clock = clock(zone);
        if fold == "1" {
            clock.instant(Stated::Instant(utc(start_utc) - MINUTE));
        }
        assert_eq!(
            clock.instant(stated(start)),
            utc(start_utc),
            "{zone} {start}"
        );
        let lasted = hours.parse::<i64>().unwrap() * HOUR;
        let mut every_minute = (1..=lasted / MINUTE).map(|n| {
            let at = utc(start_utc) + n * MINUTE;
            (at, clock.instant(Stated::Wall(at + offset_at(zone, at))))
        });
        assert!(
            every_minute.all(|(truth, ours)| truth == ours),
            "{zone} {start}"
        );
        assert_eq!(
            (utc(start_iso), utc(end_iso)),
            (utc(start_utc), utc(end_utc)),
            "{zone} {start}, offsets written"
        );
        assert_eq!(utc(start_utc) + lasted, utc(end_utc));
    }
}

fn offset_at(zone: &str, at: i64) -> i64 {
    let zone: Tz = zone.parse().unwrap();
    let naive = DateTime::from_timestamp_millis(at).unwrap().naive_utc();
    i64::from(
        zone.offset_from_utc_datetime(&naive)
            .fix()
            .local_minus_utc(),
    ) * SECOND
}

#[test]
fn a_file_that_runs_backward_over_the_repeated_hour_is_read_whole() {
    let (from, to) = (utc("2026-11-01T05:00Z"), utc("2026-11-01T09:00Z"));
    let mut clock = clock("America/Chicago");
    for n in 0..=(to - from) / MINUTE {
        let at = to - n * MINUTE;
        assert_eq!(
            clock.instant(Stated::Wall(at + offset_at("America/Chicago", at))),
            at
        );
    }
}

#[test]
fn a_change_of_half_an_hour_inside_an_hour_is_not_cached_over() {
    let mut clock = clock("Australia/Lord_Howe");
    for at in (utc("2026-10-03T12:00Z")..utc("2026-10-03T18:00Z")).step_by(MINUTE as usize) {
        assert_eq!(
            clock.instant(Stated::Wall(at + offset_at("Australia/Lord_Howe", at))),
            at
        );
    }
}

#[test]
fn a_day_that_an_island_skipped_takes_the_offset_before() {
    let mut clock = clock("Pacific/Apia");
    assert_eq!(
        clock.instant(stated("2011-12-30T12:00")),
        utc("2011-12-30T22:00Z")
    );
}

proptest! {
    #[test]
    fn the_cache_changes_nothing(start in 946_700_000_000i64..4_000_000_000_000, steps in prop::collection::vec(1i64..90, 1..60)) {
        let mut cached = clock("America/New_York");
        let mut wall = start;
        for step in steps {
            wall += step * MINUTE;
            let mut fresh = clock("America/New_York");
            (fresh.before, fresh.backward) = (cached.before, cached.backward);
            prop_assert_eq!(cached.instant(Stated::Wall(wall)), fresh.instant(Stated::Wall(wall)));
        }
    }
}
