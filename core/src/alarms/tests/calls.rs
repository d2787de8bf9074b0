//! Calls: few, and none in sleep.

use super::*;

#[test]
fn the_rub_is_asked_about_then_mops_follow_the_claimed_times() {
    let mut night = Night::begun();
    assert_eq!(night.job(0, Job::RubSet(piece(1))).unwrap().at, minute(45));
    night.say(
        45,
        RubAnswered {
            piece: piece(1),
            set: false,
        },
    );
    assert_eq!(
        night.job(46, Job::RubSet(piece(1))).unwrap().at,
        minute(65),
        "not yet = 20 min"
    );
    night.set_rubs(65);
    night.wet(66, &[1]);
    assert!(
        night.job(67, Job::RubSet(piece(1))).is_none(),
        "asked no more"
    );
    let due = night.job(67, Job::Wet(piece(1))).unwrap();
    assert!(
        (minute(96 - 7)..=minute(96 + 7)).contains(&due.at),
        "within its window: {}",
        (due.at - SIX) / MINUTE
    );
}

#[test]
fn mops_and_spritzes_due_close_together_become_one_opening_and_one_call() {
    let mut night = Night::begun();
    night.set_rubs(50);
    night.wet(60, &[1]);
    night.wet(35, &[2]);
    let ribs = night.job(61, Job::Wet(piece(1))).unwrap().at;
    let butt = night.job(61, Job::Wet(piece(2))).unwrap().at;
    assert_eq!(ribs, butt, "one opening serves both");
    let calls: Vec<Ring> = night
        .rings(61)
        .into_iter()
        .filter(|ring| ring.urgency == Urgency::Call)
        .collect();
    let wets = |ring: &Ring| {
        ring.jobs
            .iter()
            .filter(|due| matches!(due.job, Job::Wet(_)))
            .count()
    };
    assert_eq!(calls.iter().map(wets).max(), Some(2));
}

#[test]
fn calls_are_never_less_than_ten_minutes_apart_even_late_ones() {
    let mut night = Night::begun();
    night.set_rubs(50);
    for at in [50, 58, 70, 95, 300] {
        let calls: Vec<i64> = night
            .rings(at)
            .iter()
            .filter(|ring| ring.urgency == Urgency::Call)
            .map(|ring| ring.at)
            .collect();
        assert!(
            calls
                .windows(2)
                .all(|pair| pair[1] - pair[0] >= CALLS_APART_MS),
            "at {at}: {calls:?}"
        );
    }
    let first = night.ring_until(50);
    assert!(first.iter().any(|ring| ring.urgency == Urgency::Call));
    let next = night
        .rings(51)
        .into_iter()
        .find(|ring| ring.urgency == Urgency::Call);
    assert!(
        next.is_none_or(|ring| ring.at >= minute(60)),
        "ten minutes after what rang"
    );
}

#[test]
fn what_rang_does_not_ring_again_and_what_is_answered_never_does() {
    let mut night = Night::begun();
    night.set_rubs(50);
    let rang: Vec<AlarmId> = night
        .ring_until(52)
        .iter()
        .flat_map(|ring| ring.covers.clone())
        .collect();
    assert!(!rang.is_empty());
    for at in 52..60 {
        let listed: Vec<AlarmId> = night
            .rings(at)
            .iter()
            .flat_map(|ring| ring.covers.clone())
            .collect();
        assert!(rang.iter().all(|id| !listed.contains(id)), "at {at}");
    }
    let mop = night.wet(60, &[1, 2]);
    night.say(61, Voided { targets: vec![mop] });
    let again = night.rings(61);
    let listed: Vec<AlarmId> = again.iter().flat_map(|ring| ring.covers.clone()).collect();
    assert!(
        rang.iter().all(|id| !listed.contains(id)),
        "an answered name is never used again"
    );
    assert!(
        again
            .iter()
            .any(|ring| ring.jobs.iter().any(|due| due.job == Job::Wet(piece(1)))),
        "but the mop is due again"
    );
}

#[test]
fn a_call_waits_for_the_end_of_sleep_and_missed_ones_are_one() {
    let mut night = Night::begun();
    night.set_rubs(50);
    night.wet(60, &[1, 2]);
    night.crew(70, Slept { until: minute(300) });
    let calls: Vec<Ring> = night
        .rings(71)
        .into_iter()
        .filter(|ring| ring.urgency == Urgency::Call)
        .collect();
    assert!(
        !calls.is_empty() && calls.iter().all(|ring| ring.at >= minute(300)),
        "{:?}",
        minutes(&calls)
    );
    let due: Vec<Due> = night
        .due(200)
        .into_iter()
        .filter(|due| due.job == Job::Wet(piece(1)))
        .collect();
    assert_eq!(due.len(), 1, "four mops slept through are one line");
    night.crew(120, Woke {});
    assert!(
        night
            .rings(121)
            .iter()
            .any(|ring| ring.urgency == Urgency::Call && ring.at <= minute(121)),
        "up early, told at once"
    );
}

#[test]
fn an_opening_planned_again_a_minute_later_does_not_ring_again() {
    let mut night = Night::begun();
    night.set_rubs(50);
    night.wet(60, &[1]);
    night.wet(35, &[2]);
    let planned = night.job(61, Job::Wet(piece(1))).unwrap().at;
    let at = (planned - SIX) / MINUTE;
    assert!(!night.ring_until(at).is_empty());
    for later in at..at + 30 {
        let wets = night
            .rings(later)
            .iter()
            .filter(|ring| matches!(ring.jobs[0].job, Job::Wet(_)))
            .count();
        assert_eq!(wets, 0, "{later} minutes after six");
    }
}
