//! Pits: outside the band, silent, and rounds where no probe watches.

use super::*;

fn silent(night: &Night, at: i64) -> i64 {
    (night.job(at, Job::Silent(pit(1))).unwrap().at - SIX) / MINUTE
}

#[test]
fn a_dead_probe_rings_fifteen_minutes_after_its_last_word_laid_in_advance() {
    let mut night = Night::begun();
    night.probe(0);
    assert_eq!(silent(&night, 0), 15, "it never spoke");
    night.reads(10, 250);
    assert_eq!(silent(&night, 10), 25, "pushed on by a reading");
    night.reads(20, 250);
    assert_eq!(silent(&night, 20), 35);
    assert!(
        night
            .rings(20)
            .iter()
            .any(|ring| ring.at == minute(35) && ring.urgency == Urgency::Wake)
    );
    assert!(!night.ring_until(35).is_empty());
    night.reads(40, 250);
    assert_eq!(silent(&night, 40), 55, "it spoke again");
    assert!(
        night.rings(40).iter().any(|ring| ring.at == minute(55)),
        "and its next silence rings again"
    );
}

#[test]
fn the_fire_is_seen_to_until_the_probe_that_was_placed_speaks() {
    let mut night = Night::begun();
    night.probe(10);
    let round = |night: &Night, at| night.job(at, Job::FireRound(pit(1))).map(|due| due.at);
    assert_eq!(round(&night, 11), Some(minute(60)), "it has said nothing");
    assert_eq!(silent(&night, 11), 25, "and that is called for too");
    night.reads(30, 250);
    assert_eq!(round(&night, 31), None, "now it watches");
    assert_eq!(silent(&night, 31), 45);
}

#[test]
fn what_a_probe_read_before_it_was_placed_here_does_not_count_as_a_word() {
    let mut night = Night::begun();
    night.reads(5, 70);
    night.probe(10);
    assert!(night.job(11, Job::FireRound(pit(1))).is_some());
}

#[test]
fn a_silence_that_was_seen_rings_again_a_quarter_of_an_hour_later() {
    let mut night = Night::begun();
    night.probe(0);
    night.reads(5, 250);
    night.ring_until(20);
    night.say(
        22,
        Answered {
            job: Job::Silent(pit(1)),
        },
    );
    assert_eq!(silent(&night, 22), 37);
}

#[test]
fn a_pit_outside_its_band_rings_after_its_minutes_and_not_while_muted() {
    let mut night = Night::begun();
    night.probe(0);
    let band = Band {
        low: Mk::from_f(225),
        high: Mk::from_f(275),
        minutes: 5,
    };
    night.crew(
        0,
        FieldSet {
            of: Subject::Pit(pit(1)),
            to: Field::Band(band),
            saw: None,
        },
    );
    let outside = |night: &Night, at| {
        night
            .job(at, Job::Outside(pit(1)))
            .map(|due| (due.at - SIX) / MINUTE)
    };
    night.reads(30, 250);
    assert_eq!(outside(&night, 30), None);
    night.reads(40, 210);
    assert_eq!(outside(&night, 40), Some(45), "laid in advance");
    night.say(
        42,
        Fed {
            pit: pit(1),
            what: "one chimney".into(),
        },
    );
    assert_eq!(
        outside(&night, 43),
        Some(57),
        "muted for ten minutes after the feed, then five"
    );
    night.reads(50, 240);
    assert_eq!(outside(&night, 50), None, "back in its band");
}

#[test]
fn a_pit_that_nobody_gave_a_band_is_watched_by_what_is_on_it() {
    let mut night = Night::begun();
    night.probe(0);
    night.reads(20, 450);
    assert!(night.job(20, Job::Outside(pit(1))).is_some());
}

#[test]
fn with_no_probe_somebody_sees_to_the_fire_within_the_hour() {
    let mut night = Night::begun();
    let round =
        |night: &Night, at| (night.job(at, Job::FireRound(pit(1))).unwrap().at - SIX) / MINUTE;
    assert_eq!(round(&night, 0), 60);
    night.wet(40, &[1]);
    assert_eq!(round(&night, 41), 100, "an opening sees the fire");
    night.say(90, FireSeen { pit: pit(1) });
    assert_eq!(round(&night, 91), 150);
    night.crew(
        92,
        FieldSet {
            of: Subject::Pit(pit(1)),
            to: Field::AloneMinutes(Some(600)),
            saw: None,
        },
    );
    assert_eq!(
        round(&night, 93),
        180,
        "ninety minutes at the most while awake"
    );
    night.crew(94, Slept { until: minute(500) });
    assert_eq!(
        round(&night, 95),
        690,
        "a pit that may be left alone lets its cook sleep"
    );
}
