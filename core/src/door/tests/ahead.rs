//! Forecasts behind the door, by sums of a test's own: what is made, kept, made anew and let go.

use super::*;
use crate::{
    ahead::{Ahead, grid, tests::tiny::TINY},
    finish::GRID_MS,
    ids::PieceId,
};

fn forecasting(place: &Path, install: &str) -> Slowbend {
    let mut door = open(place, install);
    door.forecast_by(TINY);
    door
}

/// Works until there is nothing more; answers how many calls that took.
fn work(door: &mut Slowbend, minutes: i64) -> usize {
    (1..)
        .find(|_| !door.work(&now(minutes), 9).unwrap())
        .unwrap()
}

fn probed(door: &mut Slowbend, cook: CookId, piece: PieceId) {
    let place = Where::Piece {
        piece,
        spot: "center".into(),
    };
    let bind = Act::BindProbe {
        cook,
        source: "box".into(),
        sensor: "1".into(),
        place,
        thermometer: None,
    };
    act(door, 1, bind);
}

fn read(door: &mut Slowbend, minutes: std::ops::Range<i64>) {
    for at in minutes {
        let reading = SensorReading {
            source: "box".into(),
            sensor: "1".into(),
            at: SIX + at * MINUTE,
            temp: Mk(290_000 + at * 100),
        };
        door.readings(&[reading], &now(at)).unwrap();
    }
}

/// A slab that went on a minute after six, its probe read for so many minutes.
fn read_until(door: &mut Slowbend, minutes: i64) -> PieceId {
    let (cook, _, piece) = begun(door);
    probed(door, cook, piece);
    read(door, 2..minutes);
    piece
}

fn shown(door: &Slowbend, piece: PieceId) -> Ahead {
    door.ahead.shown[&piece].clone()
}

#[test]
fn a_door_that_is_not_asked_for_forecasts_makes_none() {
    let place = tempfile::tempdir().unwrap();
    let mut door = open(place.path(), "here");
    read_until(&mut door, 30);
    work(&mut door, 30);
    assert!(door.ahead.shown.is_empty());
    assert_eq!(door.works_next(&now(30)), None);
}

#[test]
fn the_last_instant_of_the_grid_is_forecast_and_the_next_is_told() {
    let place = tempfile::tempdir().unwrap();
    let mut door = forecasting(place.path(), "here");
    let piece = read_until(&mut door, 63);
    work(&mut door, 63);
    let made_for = shown(&door, piece).forecast.made_for;
    assert_eq!(made_for, grid(now(63).utc_ms));
    assert_eq!(door.works_next(&now(63)), Some(made_for + GRID_MS));
    assert_eq!(door.forecasts_finished(), 1);
    work(&mut door, 64);
    assert_eq!(door.forecasts_finished(), 1, "nothing is made twice");
    work(&mut door, 65);
    assert_eq!(shown(&door, piece).forecast.made_for, made_for + GRID_MS);
}

#[test]
fn killed_anywhere_it_comes_to_the_same_and_shows_the_last_meanwhile() {
    let (steady, killed) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let mut door = forecasting(steady.path(), "here");
    let piece = read_until(&mut door, 170);
    work(&mut door, 130);
    work(&mut door, 170);
    let mut other = forecasting(killed.path(), "here");
    assert_eq!(read_until(&mut other, 170), piece);
    work(&mut other, 130);
    let before = shown(&other, piece);
    for steps in [1, 7, 12, 30] {
        for _ in 0..steps {
            other.work(&now(170), 9).unwrap();
        }
        drop(other);
        other = forecasting(killed.path(), "here");
        assert_eq!(shown(&other, piece), before);
    }
    work(&mut other, 170);
    assert_eq!(shown(&other, piece), shown(&door, piece));
    assert_ne!(shown(&other, piece), before);
}

#[test]
fn two_phones_that_come_to_hold_the_same_come_to_the_same_forecast() {
    let (here, there) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let mut door = forecasting(here.path(), "here");
    let (_, pit, piece) = begun(&mut door);
    let mut other = forecasting(there.path(), "there");
    other
        .absorb(&door.entries_after(&[]).unwrap(), &now(2))
        .unwrap();
    work(&mut other, 90);
    let opened = |minutes: i64| Act::Open {
        pit: Some(pit),
        wetted: vec![piece],
        turned: vec![],
        glazed: vec![],
        at: Some(SIX + minutes * MINUTE),
    };
    for minutes in [30, 61, 88] {
        act(&mut door, 91, opened(minutes));
    }
    work(&mut door, 120);
    other
        .absorb(&door.entries_after(&[]).unwrap(), &now(120))
        .unwrap();
    work(&mut other, 120);
    assert_eq!(shown(&other, piece), shown(&door, piece));
}

#[test]
fn what_comes_late_within_the_hour_is_followed_from_the_hour_and_earlier_from_the_beginning() {
    let place = tempfile::tempdir().unwrap();
    let mut door = forecasting(place.path(), "here");
    let piece = read_until(&mut door, 179);
    work(&mut door, 179);
    let before = shown(&door, piece);
    let open = |at: i64| Act::Open {
        pit: None,
        wetted: vec![piece],
        turned: vec![],
        glazed: vec![],
        at: Some(SIX + at * MINUTE),
    };
    act(&mut door, 179, open(150));
    let from_the_hour = work(&mut door, 179);
    let after = shown(&door, piece);
    assert_ne!(after, before);
    act(&mut door, 179, open(40));
    let from_the_beginning = work(&mut door, 179);
    assert_eq!(from_the_hour, 11 * 4 + 1, "eleven instants after the hour");
    assert_eq!(from_the_beginning, 35 * 4 + 1, "all of them");
    assert_ne!(shown(&door, piece), after);
}

#[test]
fn a_meat_that_comes_off_is_forecast_no_more_and_nothing_of_it_is_kept() {
    let place = tempfile::tempdir().unwrap();
    let mut door = forecasting(place.path(), "here");
    let piece = read_until(&mut door, 70);
    work(&mut door, 70);
    assert!(door.ahead.shown.contains_key(&piece));
    let off = Act::SetStage {
        piece,
        stage: Stage::Off,
        at: None,
    };
    act(&mut door, 71, off);
    work(&mut door, 76);
    assert!(door.ahead.shown.is_empty());
    drop(door);
    assert!(forecasting(place.path(), "here").ahead.shown.is_empty());
}

#[test]
fn nothing_rings_by_a_forecast() {
    let (with, without) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let mut door = forecasting(with.path(), "here");
    let mut plain = open(without.path(), "here");
    read_until(&mut door, 170);
    read_until(&mut plain, 170);
    work(&mut door, 170);
    work(&mut plain, 170);
    let viewer = viewer(&mut door);
    let rings = |door: &mut Slowbend| door.alarms(&viewer, &now(170), 60).unwrap();
    assert_eq!(rings(&mut door), rings(&mut plain));
}

#[test]
fn the_sums_that_ship_go_on_after_a_kill_to_the_same_bytes() {
    let (steady, killed) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let shipped = |place: &Path| {
        let mut door = open(place, "here");
        door.make_forecasts().unwrap();
        door
    };
    let mut door = shipped(steady.path());
    let piece = read_until(&mut door, 11);
    work(&mut door, 11);
    let mut other = shipped(killed.path());
    read_until(&mut other, 11);
    other.work(&now(6), 9).unwrap();
    drop(other);
    other = shipped(killed.path());
    work(&mut other, 11);
    assert_eq!(shown(&other, piece), shown(&door, piece));
    let forecast = shown(&door, piece).forecast;
    let done = forecast.done.expect("ribs are done within a day");
    assert!(done.p10 < done.p50 && done.p50 < done.p90);
    assert!(forecast.rough && !forecast.fan.is_empty());
}

/// A slab that was on `pit` for so many hours from `from`, minutes after six, in a cook of its own that is over.
fn cooked(door: &mut Slowbend, pit: crate::ids::PitId, from: i64, hours: i64) -> CookId {
    let meat = NewMeat {
        name: String::new(),
        cut: Cut::SpareRibs,
        form: Form::Intact,
        weight_g: Some(1_600),
        cadence: None,
        pit: None,
    };
    let start = Act::StartCook {
        name: "Regatta lunch".into(),
        serve: None,
        people: None,
        meats: vec![meat],
        demo: false,
    };
    let made = act(door, from, start).made;
    let [Subject::Cook(cook), Subject::Piece(piece)] = made[..] else {
        panic!("a cook and a meat: {made:?}")
    };
    let stage = |stage| Act::SetStage {
        piece,
        stage,
        at: None,
    };
    act(door, from, stage(Stage::OnPit { pit }));
    act(door, from + hours * 60, stage(Stage::Off));
    act(door, from + hours * 60 + 5, Act::FinishCook { cook });
    cook
}

#[test]
fn past_cooks_teach_the_next_and_learned_anew_it_is_the_same() {
    let (here, there) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let mut door = forecasting(here.path(), "here");
    let (_, pit, piece) = begun(&mut door);
    work(&mut door, 6);
    let untaught = shown(&door, piece);
    for (from, hours) in [(10, 7), (600, 6)] {
        cooked(&mut door, pit, from, hours);
        work(&mut door, from + hours * 60 + 6);
    }
    let lessons = door.ahead.learning.lessons.clone();
    let of_pit = lessons.pits[&pit];
    // Two hours late by what was usual, then one: the sums of these tests take a millikelvin off a second.
    assert_eq!((of_pit.value, of_pit.meats), (-10_800, 2));
    assert_eq!(lessons.cuts[&Cut::SpareRibs].meats, 2);
    let mut other = forecasting(there.path(), "there");
    other
        .absorb(&door.entries_after(&[]).unwrap(), &now(1_000))
        .unwrap();
    work(&mut other, 1_000);
    assert_eq!(other.ahead.learning.lessons, lessons);
    assert_ne!(shown(&other, piece).told, untaught.told);
    drop(door);
    let mut again = forecasting(here.path(), "here");
    work(&mut again, 1_000);
    assert_eq!(again.ahead.learning.lessons, lessons);
}

#[test]
fn what_is_taken_back_of_a_past_cook_is_unlearned() {
    let place = tempfile::tempdir().unwrap();
    let mut door = forecasting(place.path(), "here");
    let (_, pit, _) = begun(&mut door);
    cooked(&mut door, pit, 10, 7);
    let cook = cooked(&mut door, pit, 600, 6);
    work(&mut door, 1_000);
    assert_eq!(door.ahead.learning.lessons.pits[&pit].meats, 2);
    assert!(door.want_cook(cook).unwrap());
    let off = door.cooks[&cook].pieces.values().next().unwrap();
    let targets = vec![off.stages.last().unwrap().when.entry];
    act(&mut door, 1_001, Act::Undo { targets });
    work(&mut door, 1_002);
    assert_eq!(door.ahead.learning.lessons.pits[&pit].meats, 1);
}
