//! What wakes: again and again until it is answered, whoever has the watch.

use super::*;

fn with_probe_in_butt(fahrenheit: i64) -> Night {
    let mut night = Night::begun();
    let place = Where::Piece {
        piece: piece(2),
        spot: "center".into(),
    };
    night.say(
        0,
        ProbeBound {
            source: "box".into(),
            sensor: "2".into(),
            place,
            thermometer: None,
        },
    );
    night
        .story
        .tails
        .take("box", "2", minute(300), Mk::from_f(fahrenheit));
    night
}

fn pulls(night: &Night, at: i64) -> Vec<i64> {
    let is_pull = |ring: &Ring| {
        ring.jobs
            .first()
            .is_some_and(|due| due.job == Job::Pull(piece(2)))
    };
    minutes(
        &night
            .rings(at)
            .into_iter()
            .filter(is_pull)
            .collect::<Vec<_>>(),
    )
}

#[test]
fn the_pull_point_wakes_and_nags_until_the_meat_is_off() {
    let mut night = with_probe_in_butt(203);
    assert_eq!(
        pulls(&night, 300),
        [300, 302, 304, 307, 310, 315, 320, 330, 345]
    );
    night.ring_until(300);
    assert_eq!(pulls(&night, 301), [302, 304, 307, 310, 315, 320, 330, 345]);
    assert_eq!(
        pulls(&night, 308),
        [307, 310, 315, 320, 330, 345],
        "those slept through are one, late"
    );
    night.say(
        309,
        StageSet {
            piece: piece(2),
            stage: Stage::Off,
        },
    );
    assert!(pulls(&night, 310).is_empty());
}

#[test]
fn below_the_pull_point_nothing_wakes() {
    assert!(pulls(&with_probe_in_butt(190), 300).is_empty());
}

#[test]
fn a_sleeper_is_woken_for_the_fire_and_at_the_end_of_sleep() {
    let mut night = Night::begun();
    night.crew(0, Slept { until: minute(240) });
    let wakes: Vec<Ring> = night
        .rings(1)
        .into_iter()
        .filter(|ring| ring.urgency == Urgency::Wake)
        .collect();
    assert!(
        wakes
            .iter()
            .any(|ring| ring.jobs[0].job == Job::FireRound(pit(1)) && ring.at == minute(60))
    );
    assert!(
        wakes
            .iter()
            .any(|ring| ring.jobs[0].job == Job::WakeUp(cook(1)) && ring.at == minute(240))
    );
    night.crew(230, Woke {});
    assert!(night.job(231, Job::WakeUp(cook(1))).is_none());
}

#[test]
fn where_another_has_the_watch_this_device_rings_five_minutes_later_and_calls_in_silence() {
    let mut night = Night::begun();
    night.set_rubs(50);
    night.story.say(
        2,
        minute(50),
        None,
        WatchTaken {
            note: "steady at 250".into(),
        },
    );
    let fire = |device| {
        let rings = night.rings_on(device, 51, 60).rings;
        rings
            .into_iter()
            .find(|ring| matches!(ring.jobs[0].job, Job::FireRound(_)))
            .unwrap()
            .at
    };
    assert_eq!(fire(1) - fire(2), SECOND_EAR_MS);
    let calls = |device| {
        night
            .rings_on(device, 51, 60)
            .rings
            .into_iter()
            .filter(|ring| ring.urgency == Urgency::Call)
            .all(|ring| ring.silent)
    };
    assert!(calls(1) && !calls(2));
}

#[test]
fn a_list_that_is_cut_says_so_and_keeps_the_soonest() {
    let night = Night::begun();
    let whole = night.rings_on(1, 1, 60);
    assert_eq!(whole.complete_until, None);
    for limit in 1..whole.rings.len() {
        let cut = night.rings_on(1, 1, limit);
        assert_eq!(cut.rings.len(), limit);
        assert_eq!(cut.rings[..limit - 1], whole.rings[..limit - 1]);
        let last = cut.rings.last().unwrap();
        assert_eq!(
            (last.id, Some(last.at)),
            (AlarmId::OPEN_SLOWBEND, cut.complete_until)
        );
        assert_eq!(
            last.at,
            whole.rings[limit - 1].at,
            "it rings when the first that is missing would"
        );
    }
}

#[test]
fn served_food_is_put_away_within_two_hours() {
    let mut night = Night::begun();
    night.say(
        400,
        StageSet {
            piece: piece(1),
            stage: Stage::Served,
        },
    );
    let due = night.job(401, Job::PutAway(piece(1))).unwrap();
    assert_eq!((due.at - SIX) / MINUTE, 400 + 105);
    assert_eq!(due.urgency, Urgency::Wake);
    night.say(
        480,
        StageSet {
            piece: piece(1),
            stage: Stage::PutAway,
        },
    );
    assert!(night.job(481, Job::PutAway(piece(1))).is_none());
}

#[test]
fn the_same_things_in_words_in_both_languages() {
    let night = with_probe_in_butt(203);
    let told = night.story.told();
    let known = told.known(1);
    let list = night.rings_on(1, 300, 60);
    for locale in crate::words::Locale::ALL {
        let viewer = crate::words::Viewer {
            locale,
            zone: "America/Chicago".into(),
            ..crate::words::Viewer::default_for(known.device)
        };
        let said = said(
            &known,
            &viewer,
            &list,
            &crate::moment::Moment::at(minute(300), "America/Chicago"),
        );
        assert_eq!(said.alarms.len(), list.rings.len());
        assert!(
            said.alarms
                .iter()
                .all(|alarm| !alarm.title.is_empty() && !alarm.speech.contains('⟨')),
            "{said:?}"
        );
    }
}
