//! What the crew owns, and who is there.

use super::super::testing::*;
use crate::{
    acts::Act,
    ids::ThermometerId,
    log::{
        Band, Bath, DeviceNamed, Dismissed, Draft, Field, FieldSet, Payload, PitAdded, PitKind,
        Slept, Stamp, Subject, ThermometerChecked, WatchTaken, Woke,
    },
    moment::HOUR,
    units::Mk,
};

fn one(payload: impl Into<Payload>) -> Vec<Draft> {
    vec![Draft {
        cook: None,
        at: NIGHT,
        payload: payload.into(),
    }]
}

fn thermometer(night: &mut Night) -> ThermometerId {
    let act = Act::AddThermometer {
        name: "Red stick".into(),
    };
    match night.does(act).decision.made[..] {
        [Subject::Thermometer(id)] => id,
        ref other => panic!("one thermometer was made, not {other:?}"),
    }
}

#[test]
fn a_pit_is_added_under_the_name_that_can_be_read() {
    let mut night = Night::new();
    let done = night.does(Act::AddPit {
        name: "  The\u{202e} old  drum ".into(),
        kind: PitKind::Drum,
        grate_cm2: Some(1_600),
        alone_minutes: Some(0),
    });
    let [Subject::Pit(pit)] = done.decision.made[..] else {
        panic!("{done:?}")
    };
    let fact = PitAdded {
        pit,
        name: "The old drum".into(),
        kind: PitKind::Drum,
        grate_cm2: Some(1_600),
        alone_minutes: Some(0),
    };
    assert_eq!(done.decision.drafts, one(fact));
    assert_eq!(done.decision.said, "Added The old drum.");
    assert!(done.decision.undoable);
    assert_eq!(night.crew().pits[&pit].name.value, "The old drum");
}

#[test]
fn a_thermometer_is_told_how_far_it_is_off() {
    let mut night = Night::new();
    let thermometer = thermometer(&mut night);
    let mut says = |against, read: Mk| {
        let act = Act::CheckThermometer {
            thermometer,
            against,
            read,
        };
        night.does(act).decision
    };
    assert_eq!(
        says(Bath::Ice, Mk::from_f(32)).said,
        "Red stick reads right."
    );
    assert_eq!(
        says(Bath::Ice, Mk::from_f(34)).said,
        "Red stick reads 2 °F high."
    );
    assert_eq!(
        says(Bath::Ice, Mk::from_f(36)).said,
        "Red stick reads 4 °F high. Its readings are corrected by that."
    );
    assert_eq!(
        says(Bath::Ice, Mk::from_f(26)).said,
        "Red stick reads 6 °F low. Nothing is judged by it: use another one."
    );
    let denver = Bath::Boiling { altitude_m: 1_609 };
    let low = says(denver, Mk::from_f(200));
    assert_eq!(
        low.said,
        "Red stick reads 2 °F low. Its readings are corrected by that."
    );
    let fact = ThermometerChecked {
        thermometer,
        against: denver,
        expected: Mk(367_770),
        read: Mk::from_f(200),
    };
    assert_eq!(low.drafts, one(fact));
}

#[test]
fn a_field_is_set_on_what_was_seen() {
    let mut night = Night::new();
    let drum = night.pit("Drum", PitKind::Drum);
    let band = Band {
        low: Mk::from_f(225),
        high: Mk::from_f(275),
        minutes: 15,
    };
    let done = night.does(Act::SetField {
        of: Subject::Pit(drum),
        to: Field::Band(band),
        saw: Some(Stamp(7)),
    });
    let fact = FieldSet {
        of: Subject::Pit(drum),
        to: Field::Band(band),
        saw: Some(Stamp(7)),
    };
    assert_eq!(done.decision.drafts, one(fact));
    assert_eq!(done.decision.said, "Saved for Drum.");
    assert_eq!(night.crew().pits[&drum].band.value, Some(band));
}

#[test]
fn the_crews_habits_are_set() {
    let mut night = Night::new();
    for to in [
        Field::MopMinutes(20),
        Field::SpritzMinutes(45),
        Field::AltitudeM(1_609),
    ] {
        let of = Subject::Crew;
        let done = night.does(Act::SetField { of, to, saw: None });
        assert_eq!(done.decision.said, "Saved for the crew.");
    }
    let crew = night.crew();
    let kept = [&crew.mop_minutes, &crew.spritz_minutes, &crew.altitude_m];
    assert_eq!(
        kept.map(|reg| reg.as_ref().map(|reg| reg.value)),
        [Some(20), Some(45), Some(1_609)]
    );
}

#[test]
fn people_name_their_device_sleep_wake_and_take_the_watch() {
    let mut night = Night::new();
    let name = || "Ana's phone".to_owned();
    let until = NIGHT + 6 * HOUR;
    let note = || "Drum at 240, vents a third open".to_owned();
    let table = [
        (
            Act::NameDevice { name: name() },
            Payload::from(DeviceNamed { name: name() }),
            "This device is now called Ana's phone.",
        ),
        (
            Act::Sleep { until },
            Slept { until }.into(),
            "Sleep well until tomorrow 4:00 AM.",
        ),
        (Act::WakeUp, Woke {}.into(), "Good morning."),
        (
            Act::TakeWatch { note: note() },
            WatchTaken { note: note() }.into(),
            "You have the watch.",
        ),
    ];
    for (act, payload, said) in table {
        let decision = night.does(act).decision;
        assert_eq!(decision.drafts, one(payload));
        assert_eq!(decision.said, said);
        assert!(decision.undoable && decision.made.is_empty());
    }
    let turn = night.crew().on_watch(NIGHT).expect("somebody took it");
    assert_eq!(turn.device, device(1));
}

#[test]
fn a_notice_that_was_read_is_read_for_good() {
    let mut night = Night::new();
    let notice = "overruled/name/5/x".to_owned();
    let decision = night
        .does(Act::Dismiss {
            notice: notice.clone(),
        })
        .decision;
    assert_eq!(decision.drafts, one(Dismissed { notice }));
    assert!(!decision.undoable);
}
