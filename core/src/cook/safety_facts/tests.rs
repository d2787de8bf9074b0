use super::*;
use crate::{
    cadence::Cadence,
    checks::Cut,
    cook::story::{SIX, Story, cook, piece, pit},
    log::*,
};

fn minute(minutes: i64) -> i64 {
    SIX + minutes * MINUTE
}

/// A chicken on the drum since six, with a probe in each of two places.
fn told(form: Form, cut: Cut, readings: &[(&str, i64, i64)]) -> Story {
    let mut story = Story::default();
    let of = Some(cook(1));
    let added = PitAdded {
        pit: pit(1),
        name: "Drum".into(),
        kind: PitKind::Drum,
        grate_cm2: None,
        alone_minutes: None,
    };
    story.say(1, minute(-10), None, added);
    let begun = CookStarted {
        id: cook(1),
        name: "Regatta lunch".into(),
        serve: None,
        people: None,
        demo: true,
    };
    story.say(1, minute(-9), of, begun);
    let added = PieceAdded {
        piece: piece(1),
        name: "Bird".into(),
        cut,
        form,
        weight_g: None,
        cadence: Cadence::None,
    };
    story.say(1, minute(-8), of, added);
    for (sensor, spot) in [("1", "center"), ("2", "thigh_joint")] {
        let place = Where::Piece {
            piece: piece(1),
            spot: spot.into(),
        };
        let bound = ProbeBound {
            source: "box".into(),
            sensor: sensor.into(),
            place,
            thermometer: None,
        };
        story.say(1, minute(-7), of, bound);
    }
    let stage = Stage::OnPit { pit: pit(1) };
    let on = StageSet {
        piece: piece(1),
        stage,
    };
    story.say(1, minute(0), of, on);
    for (sensor, at, f) in readings {
        story.tails.take("box", sensor, minute(*at), Mk::from_f(*f));
    }
    story
}

fn up(story: &Story, at: i64) -> ComingUp {
    let told = story.told();
    let known = told.known(1);
    let (cook, meat) = known.piece(piece(1)).unwrap();
    coming_up(&known, cook, meat, minute(at)).unwrap()
}

fn line(sensor: &'static str, from: (i64, i64), to: (i64, i64)) -> Vec<(&'static str, i64, i64)> {
    let f = |at: i64| from.1 + (to.1 - from.1) * (at - from.0) / (to.0 - from.0);
    (from.0..=to.0)
        .step_by(2)
        .map(|at| (sensor, at, f(at)))
        .collect()
}

#[test]
fn where_nothing_is_read_time_on_the_pit_counts() {
    let up = up(&told(Form::Injected, Cut::PorkButt, &[]), 90);
    assert_eq!(up.clock.spent_ms, 90 * MINUTE);
    assert_eq!((up.was_hot, up.is_read), (false, false));
}

#[test]
fn a_bird_that_comes_up_in_an_hour_is_hot_and_has_spent_that_hour() {
    let readings = line("1", (1, 45), (71, 150));
    let up = up(&told(Form::Intact, Cut::ChickenWhole, &readings), 72);
    assert!(up.was_hot && up.is_read);
    assert!(
        (60 * MINUTE..=72 * MINUTE).contains(&up.clock.spent_ms),
        "{up:?}"
    );
}

#[test]
fn the_place_that_is_worst_off_speaks_for_the_meat() {
    let mut readings = line("1", (1, 45), (71, 150));
    readings.extend(line("2", (1, 45), (71, 110)));
    let up = up(&told(Form::Intact, Cut::ChickenWhole, &readings), 72);
    assert!(!up.was_hot);
}

#[test]
fn meat_that_was_warm_when_it_went_on_is_not_taken_for_a_probe_that_jumped() {
    let readings = line("1", (1, 68), (61, 145));
    assert!(up(&told(Form::Injected, Cut::PorkButt, &readings), 62).was_hot);
}

#[test]
fn a_probe_in_the_air_shows_nothing_hot() {
    let mut readings = line("1", (1, 45), (31, 70));
    readings.extend(line("1", (33, 225), (71, 230)));
    assert!(!up(&told(Form::Injected, Cut::PorkButt, &readings), 72).was_hot);
}

#[test]
fn a_pit_is_too_cool_by_what_was_read_lately_and_else_by_what_it_is_held_at() {
    let mut story = told(Form::Intact, Cut::ChickenWhole, &[]);
    let cool = |story: &Story, at: i64| {
        let told = story.told();
        too_cool(&told.known(1), pit(1), minute(at))
    };
    assert_eq!(cool(&story, 1), None);
    let band = |low, high| FieldSet {
        of: Subject::Pit(pit(1)),
        to: Field::Band(Band {
            low: Mk::from_f(low),
            high: Mk::from_f(high),
            minutes: 15,
        }),
        saw: None,
    };
    story.say(1, minute(1), None, band(180, 220));
    assert_eq!(
        cool(&story, 2),
        Some(Mk((Mk::from_f(180).0 + Mk::from_f(220).0) / 2))
    );
    let read = |f| Read {
        place: Where::Pit { pit: pit(1) },
        thermometer: None,
        temp: Mk::from_f(f),
    };
    story.say(1, minute(3), Some(cook(1)), read(250));
    assert_eq!(cool(&story, 4), None);
    assert!(cool(&story, 30).is_some());
    story.say(1, minute(31), Some(cook(1)), read(224));
    assert_eq!(cool(&story, 32), Some(Mk::from_f(224)));
}
