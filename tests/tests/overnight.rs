//! Overnight cooks across each change of the clocks: the hour that was said for serving is kept, and alarms are instants.
//!
//! `fixtures/dst_overnight_cooks.csv`: 17 nights, computed with Python's zoneinfo from tzdata 2026.6 (its last column says
//! so of each row); the column WRONG_naive_wall_end is what adding hours to the wall clock would give.

use slowbend_core::{
    acts::Act,
    alarms::{AlarmId, AlarmList},
    log::{Job, Serve, Subject},
    moment::{HOUR, MINUTE, Moment},
    words::{Viewer, Words, typed},
};
use slowbend_tests::{kit, sim::place};

/// How long before serving time it is called.
const CALL_MS: i64 = 30 * MINUTE;

struct Night {
    zone: String,
    start: i64,
    end: i64,
    end_wall: String,
    elapsed_h: i64,
    wrong_wall: String,
}

fn nights() -> Vec<Night> {
    let table = include_str!("fixtures/dst_overnight_cooks.csv");
    table.lines().skip(1).map(night).collect()
}

fn night(line: &str) -> Night {
    let cells: Vec<&str> = line.split(',').collect();
    let end_local =
        chrono::DateTime::parse_from_rfc3339(cells[6]).expect("an instant with its offset");
    let instant = |cell: &str| {
        chrono::DateTime::parse_from_rfc3339(&cell.replace('Z', ":00Z")).expect("an instant")
    };
    Night {
        zone: cells[0].into(),
        start: instant(cells[4]).timestamp_millis(),
        elapsed_h: cells[5].parse().expect("hours"),
        end: instant(cells[7]).timestamp_millis(),
        end_wall: end_local.format("%Y-%m-%dT%H:%M").to_string(),
        wrong_wall: cells[8].trim_end_matches(":00").into(),
    }
}

fn viewer(zone: &str) -> Viewer {
    Viewer {
        zone: zone.into(),
        ..Viewer::default_for(slowbend_core::ids::DeviceId(uuid::Uuid::nil()))
    }
}

#[test]
fn the_table_is_whole() {
    let all = nights();
    assert_eq!(all.len(), 17);
    assert!(
        all.iter()
            .all(|night| night.end - night.start == night.elapsed_h * HOUR)
    );
    let moved = all
        .iter()
        .filter(|night| night.wrong_wall != night.end_wall)
        .count();
    assert!(moved >= 14, "only {moved} nights cross a change");
}

#[test]
fn what_is_typed_for_the_morning_is_the_instant_of_that_wall_clock() {
    for night in nights() {
        let reader = viewer(&night.zone);
        let say = Words::of(&reader);
        assert_eq!(
            say.datetime_field(night.end),
            night.end_wall,
            "{}",
            night.zone
        );
        let typed = typed::datetime_field(&say, &night.end_wall).expect("a time of that day");
        let twice =
            say.datetime_field(typed) == say.datetime_field(night.end) && typed != night.end;
        assert!(
            typed == night.end || (twice && (typed - night.end).abs() == HOUR),
            "{} {}: {typed}",
            night.zone,
            night.end_wall
        );
    }
}

#[test]
fn the_call_for_serving_is_an_instant_and_stays_it_on_a_flight() {
    for night in nights() {
        let root = place::fresh();
        let now = Moment::at(night.start, &night.zone);
        let mut door = kit::open(root.path(), "phone", &now);
        let mut reader = viewer(&night.zone);
        reader.device = door.device().expect("it is open");
        let start = Act::StartCook {
            name: "Regatta breakfast".into(),
            serve: Some(Serve {
                at: night.end,
                zone: night.zone.clone(),
            }),
            people: Some(14),
            meats: vec![],
            demo: false,
        };
        let made = door.act(&reader, &start, &now).expect("a cook begins").made;
        let Some(Subject::Cook(cook)) = made.first().copied() else {
            panic!("no cook was made")
        };
        let id = AlarmId::of(cook, Job::Serve(cook), 0, 0);
        let rings_at = |list: AlarmList| {
            list.alarms
                .iter()
                .find(|alarm| alarm.covers.contains(&id))
                .map(|alarm| alarm.at)
        };
        let due = (night.end - CALL_MS).max(night.start);
        for zone in [night.zone.as_str(), "Asia/Tokyo", "America/Phoenix"] {
            let there = Moment {
                zone: zone.into(),
                ..now.clone()
            };
            let list = door
                .alarms(
                    &Viewer {
                        zone: zone.into(),
                        ..reader.clone()
                    },
                    &there,
                    60,
                )
                .expect("alarms are told");
            assert_eq!(rings_at(list), Some(due), "{zone}");
        }
        let half_way = now.plus(night.elapsed_h * HOUR / 2);
        let list = door
            .alarms(&reader, &half_way, 60)
            .expect("alarms are told");
        assert_eq!(
            rings_at(list),
            Some(due.max(half_way.utc_ms)),
            "half way through, {}",
            night.zone
        );
        let screen = door
            .pitside(&reader, cook, &now)
            .expect("the cook is shown");
        let wall = Words::of(&reader).clock(night.end);
        assert!(
            screen.serve.contains(&wall),
            "{} says '{}' and not {wall}",
            night.zone,
            screen.serve
        );
    }
}
