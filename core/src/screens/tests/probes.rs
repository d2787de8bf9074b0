//! Stories of the screen of probes, on the invented regatta lunch: channel 1 of "box" sits in the drum, channel 2 in the
//! butt; both are read every five minutes until eleven.

use super::regatta::{minute, moment, told_until, viewer};
use crate::{
    acts::Act,
    cook::story::{Story, cook, piece, pit},
    log::Where,
    moment::MINUTE,
    probes::{HeardSource, Hearing, RadioState, Reach},
    screens::{self, Line, ProbesScreen, RadioFix, Weight, probes},
    words::Locale,
};

const LAST: i64 = 300;

fn heard(source: &str, name: &str, reach: Reach, sensors: &[&str]) -> HeardSource {
    HeardSource {
        source: source.into(),
        name: name.into(),
        reach,
        sensors: sensors.iter().map(|one| (*one).into()).collect(),
        trouble: None,
    }
}

fn hearing(sources: &[HeardSource]) -> Hearing {
    Hearing {
        sources: sources.to_vec(),
        ..Hearing::default()
    }
}

fn seen(story: &Story, hearing: &Hearing, at: i64) -> ProbesScreen {
    let told = story.told();
    probes(&told.known(1), &viewer(Locale::EnUs), hearing, &moment(at))
}

fn kept() -> Hearing {
    hearing(&[heard("box", "Pair", Reach::Linked, &["1", "2"])])
}

#[test]
fn each_sensor_is_named_by_where_it_sits_and_says_what_it_read() {
    let screen = seen(&told_until(LAST), &kept(), LAST);
    let told: Vec<_> = screen
        .probes
        .iter()
        .map(|card| (&*card.line.name, &*card.line.state))
        .collect();
    assert_eq!(
        told,
        [
            ("Butt · middle of the thickest part", "175 °F, just now"),
            ("Drum", "256 °F, just now")
        ]
    );
    assert_eq!(screen.probes[1].line.detail, "Pair, channel 1 · Linked");
    assert_eq!(screen.notice.title, "Listening to probes");
    assert_eq!(screen.notice.lines[0], "Drum: 256 °F at 11:00 AM");
    assert!(screen.listen);
    assert_eq!(screen.silent_at, Some(minute(LAST + 15)));
}

#[test]
fn a_probe_that_went_silent_is_told_where_it_sits_in_the_notice_and_before_sleep() {
    let story = told_until(LAST);
    let (told, viewer) = (story.told(), viewer(Locale::EnUs));
    let known = told.known(1);
    let at = |at| {
        let moment = moment(at);
        let now = screens::pitside(&known, &viewer, cook(1), &moment).unwrap();
        let butt = now
            .meats
            .into_iter()
            .find(|line| line.name == "Butt")
            .unwrap();
        let meat = screens::piece(&known, &viewer, piece(3), &moment).unwrap();
        let fact = meat.facts.into_iter().find(|fact| fact.name == "Probe");
        let night = screens::night(&known, &viewer, &moment);
        let notice = probes(&known, &viewer, &kept(), &moment).notice;
        (butt, fact, night.probes, notice)
    };
    let gap = "A probe in it is silent since 11:00 AM";
    let says = |line: &Line| format!("{} {}", line.state, line.detail);
    let (butt, fact, night, notice) = at(LAST + 14);
    assert!(!says(&butt).contains(gap) && fact.is_none());
    assert!(night.iter().all(|line| line.weight == Weight::Calm));
    assert_eq!(notice.title, "Listening to probes");
    let (butt, fact, night, notice) = at(LAST + 15);
    assert!(says(&butt).contains(gap), "{butt:?}");
    assert!(butt.weight <= Weight::Call);
    assert_eq!(fact.unwrap().state, gap);
    assert_eq!(night.len(), 2);
    assert!(
        night
            .iter()
            .all(|line| line.weight == Weight::Call && line.state == "Silent since 11:00 AM")
    );
    assert_eq!(notice.title, "2 probes are silent");
    assert_eq!(notice.lines[0], "Drum: Silent since 11:00 AM");
}

#[test]
fn of_two_probes_in_one_pit_the_silent_one_is_told_though_the_other_speaks() {
    let mut story = told_until(LAST);
    let second = crate::log::ProbeBound {
        source: "other".into(),
        sensor: "1".into(),
        place: Where::Pit { pit: pit(1) },
        thermometer: None,
    };
    story.say(1, minute(LAST - 20), Some(cook(1)), second);
    let told = story.told();
    let now = screens::pitside(
        &told.known(1),
        &viewer(Locale::EnUs),
        cook(1),
        &moment(LAST),
    )
    .unwrap();
    let drum = now
        .pits
        .into_iter()
        .find(|line| line.name == "Drum")
        .unwrap();
    assert_eq!(drum.state, "256 °F, just now");
    assert!(
        drum.detail
            .contains("A probe in it is silent since 10:40 AM"),
        "{}",
        drum.detail
    );
    assert_eq!(drum.weight, Weight::Call);
}

#[test]
fn a_sensor_without_a_place_counts_nowhere_and_can_be_given_each_place_but_its_own() {
    let story = told_until(0);
    let kept = hearing(&[
        heard("new", "", Reach::Linked, &["1"]),
        heard("box", "Pair", Reach::Linked, &["1", "2"]),
    ]);
    let screen = seen(&story, &kept, 0);
    let fresh = screen
        .probes
        .iter()
        .find(|card| card.source == "new")
        .unwrap();
    assert_eq!(fresh.line.name, "new, channel 1");
    assert_eq!(fresh.line.state, "No place yet: it counts nowhere");
    let labels: Vec<_> = fresh.places.iter().map(|place| &*place.label).collect();
    assert!(labels.starts_with(&["Drum", "Kettle"]), "{labels:?}");
    assert!(
        labels
            .iter()
            .any(|label| label.starts_with("Turkey breast · ")),
        "{labels:?}"
    );
    let drum = Act::BindProbe {
        cook: cook(1),
        source: "new".into(),
        sensor: "1".into(),
        place: Where::Pit { pit: pit(1) },
        thermometer: None,
    };
    assert_eq!(fresh.places[0].act, drum);
    let sits = screen
        .probes
        .iter()
        .find(|card| card.line.name == "Drum")
        .unwrap();
    assert!(sits.places.iter().all(|place| place.label != "Drum"));
}

#[test]
fn what_is_placed_but_not_kept_here_is_shown_and_what_is_near_is_offered_once() {
    let near = heard("near", "Club probe", Reach::Nearby, &[]);
    let screen = seen(&told_until(0), &hearing(&[near]), 0);
    assert!(screen.probes.iter().all(|card| card.forget.is_none()));
    assert!(
        screen.probes[0]
            .line
            .detail
            .contains("Not kept on this phone")
    );
    assert_eq!(screen.nearby.len(), 1);
    assert_eq!(screen.nearby[0].name, "Club probe");
}

#[test]
fn an_instrument_that_was_not_reached_or_speaks_neither_service_has_no_places() {
    let foreign = heard("odd", "Odd", Reach::Foreign, &[]);
    let screen = seen(&told_until(0), &hearing(&[foreign]), 0);
    let odd = screen
        .probes
        .iter()
        .find(|card| card.source == "odd")
        .unwrap();
    assert_eq!(odd.places, []);
    assert_eq!(odd.line.weight, Weight::Call);
    assert!(
        odd.line.detail.contains("Has neither service"),
        "{}",
        odd.line.detail
    );
    assert!(odd.forget.is_some());
}

#[test]
fn each_refusal_is_told_with_what_mends_it_in_both_languages() {
    for (radio, in_vain, fix) in [
        (RadioState::Missing, false, None),
        (RadioState::Refused, false, Some(RadioFix::Allow)),
        (RadioState::Refused, true, Some(RadioFix::OpenPermissions)),
        (RadioState::LocationRefused, false, Some(RadioFix::Allow)),
        (RadioState::LocationOff, false, Some(RadioFix::OpenLocation)),
        (RadioState::Off, false, Some(RadioFix::SwitchOn)),
    ] {
        let hearing = Hearing {
            radio,
            asked_in_vain: in_vain,
            ..Hearing::default()
        };
        let story = told_until(0);
        let told = story.told();
        let texts = [Locale::EnUs, Locale::EsUs].map(|locale| {
            let screen = probes(&told.known(1), &viewer(locale), &hearing, &moment(0));
            let trouble = screen.trouble.unwrap();
            assert_eq!(trouble.fix, fix);
            assert_eq!(trouble.label.is_empty(), fix.is_none());
            assert_eq!(screen.notice.lines[0], trouble.text);
            trouble.text
        });
        assert_ne!(texts[0], texts[1]);
    }
    assert_eq!(seen(&told_until(0), &kept(), 0).trouble, None);
}

#[test]
fn nothing_changes_before_until() {
    let story = told_until(LAST);
    let told = story.told();
    for after in 0..40 {
        let from = moment(LAST + after);
        let look = |ms: i64| {
            probes(
                &told.known(1),
                &viewer(Locale::EnUs),
                &kept(),
                &from.plus(ms),
            )
        };
        assert_eq!(
            look(0),
            look(MINUTE - 1),
            "{after} minutes after the last reading"
        );
    }
}
