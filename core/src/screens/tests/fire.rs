//! Nights at a fire: what one tap logs, what is next, and when to feed, for every kind of pit.

use super::regatta::{minute, moment, told_until, viewer};
use crate::{
    acts::Act,
    cook::story::{Story, cook, piece, pit},
    fire::{Ambient, FireDid, FuelUnit, Rain, SmokeSeen, SmokeWood, Sun, WeatherTap, Wind},
    log::*,
    moment::MINUTE,
    screens::{self, FireScreen, Line, Weight},
    words::Locale,
};

const KINDS: [PitKind; 7] = [
    PitKind::StickBurner,
    PitKind::Kettle,
    PitKind::Drum,
    PitKind::Ceramic,
    PitKind::Cabinet,
    PitKind::Pellet,
    PitKind::Electric,
];

fn seen(story: &Story, of: u128, at: i64, locale: Locale) -> FireScreen {
    let told = story.told();
    screens::fire(
        &told.known(1),
        &viewer(locale),
        cook(1),
        pit(of),
        &moment(at),
    )
    .unwrap()
}

fn fire(story: &Story, of: u128, at: i64) -> FireScreen {
    seen(story, of, at, Locale::EnUs)
}

/// A pit of that kind with the butt of the lunch on it.
fn moved_to(story: &mut Story, of: u128, kind: PitKind) {
    let added = PitAdded {
        pit: pit(of),
        name: "Club pit".into(),
        kind,
        grate_cm2: None,
        alone_minutes: None,
    };
    story.say(1, minute(-290), None, added);
    let (piece, stage) = (piece(3), Stage::OnPit { pit: pit(of) });
    story.say(1, minute(1), Some(cook(1)), StageSet { piece, stage });
}

fn put_on(story: &mut Story, of: u128, at: i64, unit: FuelUnit, quarters: i64) {
    let (pit, what) = (pit(of), String::new());
    let fed = FedUnits {
        pit,
        unit,
        quarters,
        what,
    };
    story.say(1, minute(at), Some(cook(1)), fed);
}

fn say(story: &mut Story, at: i64, fact: impl Into<Payload>) {
    story.say(1, minute(at), Some(cook(1)), fact);
}

fn four_taps(story: &mut Story, at: i64, wind: Wind) {
    for said in [
        WeatherTap::Air(Ambient::Warm),
        WeatherTap::Blows(wind),
        WeatherTap::Falls(Rain::Dry),
        WeatherTap::Shines(Sun::Shade),
    ] {
        say(story, at, WeatherSaid { said });
    }
}

fn next(screen: &FireScreen) -> &Line {
    &screen.next[0]
}

/// The stick burner of the lunch: a split about every forty minutes.
#[test]
fn a_stick_burner_learns_its_splits_and_the_wind_shortens_them() {
    let mut story = told_until(10);
    moved_to(&mut story, 9, PitKind::StickBurner);
    assert_eq!(next(&fire(&story, 9, 10)).state, "not known yet");
    four_taps(&mut story, 10, Wind::Still);
    put_on(&mut story, 9, 20, FuelUnit::Split, 4);
    let reckoned = fire(&story, 9, 21);
    assert!(
        next(&reckoned).detail.contains("rough"),
        "{:?}",
        next(&reckoned)
    );
    for at in [60, 101, 140, 180] {
        put_on(&mut story, 9, at, FuelUnit::Split, 4);
    }
    let calm = fire(&story, 9, 181);
    assert_eq!(
        next(&calm).state,
        "about 10:40 AM · in 39 min".replace("10:40 AM", "9:40 AM")
    );
    assert_eq!(
        next(&calm).detail,
        "Between 9:39 AM and 9:41 AM. Learned from 4 intervals of this cook."
    );
    assert_eq!(calm.feed.state, "1 split · 1 min ago");
    assert_eq!(calm.accept.as_ref().unwrap().label, "Call me at 9:40 AM");
    // Two splits last twice as long.
    put_on(&mut story, 9, 220, FuelUnit::Split, 8);
    assert!(
        next(&fire(&story, 9, 221)).state.contains("in 1 h 1"),
        "{}",
        next(&fire(&story, 9, 221)).state
    );
    let blows = WeatherTap::Blows(Wind::Windy);
    say(&mut story, 222, WeatherSaid { said: blows });
    let gale = fire(&story, 9, 222);
    assert!(next(&gale).state.contains("in 4"), "{}", next(&gale).state);
    assert_eq!(gale.weather[1].state, "windy");
}

/// A drum with baskets: one basket is a night, and its chunks are smoke, no feeds.
#[test]
fn a_drum_counts_baskets_as_feeds_and_chunks_as_smoke() {
    let mut story = told_until(10);
    say(
        &mut story,
        11,
        WoodSaid {
            pit: pit(1),
            wood: SmokeWood::Hickory,
        },
    );
    put_on(&mut story, 1, 12, FuelUnit::Basket, 4);
    let before = next(&fire(&story, 1, 13)).state.clone();
    put_on(&mut story, 1, 14, FuelUnit::Chunk, 4);
    let after = fire(&story, 1, 15);
    assert_eq!(
        next(&after).state.split(" · ").next(),
        before.split(" · ").next()
    );
    assert_eq!(after.feed.state, "1 chunk · 1 min ago");
    let states: Vec<&str> = after.smoke.iter().map(|line| line.state.as_str()).collect();
    assert_eq!(states, ["hickory", "medium"]);
    say(
        &mut story,
        40,
        SmokeWatched {
            pit: pit(1),
            seen: SmokeSeen::White,
        },
    );
    let dirty = fire(&story, 1, 41);
    assert_eq!(
        (dirty.smoke[2].state.as_str(), dirty.smoke[2].weight),
        ("dirty", Weight::Call)
    );
    assert!(dirty.smoke_advice[0].starts_with("It is dirty"));
    assert_eq!(
        fire(&story, 1, 75).smoke.len(),
        2,
        "what was seen an hour ago is not now"
    );
}

/// Strong wood is asked about once; burnt down it is a fire like another, until other wood is said.
#[test]
fn mesquite_that_is_burnt_to_coals_is_warned_of_no_more() {
    let mut story = told_until(10);
    moved_to(&mut story, 9, PitKind::StickBurner);
    let wood = SmokeWood::Mesquite;
    say(&mut story, 20, WoodSaid { pit: pit(9), wood });
    let raw = fire(&story, 9, 21);
    assert!(raw.smoke_advice[0].starts_with("Mesquite is strong"));
    let asked = &raw.smoke_taps[1].buttons[0];
    assert_eq!(
        asked.label,
        "Burnt to coals first, or mixed with milder wood"
    );
    let Act::TameWood {
        pit: its, wood: of, ..
    } = asked.act
    else {
        panic!("the first tap is about mesquite: {asked:?}");
    };
    say(&mut story, 22, WoodTamed { pit: its, wood: of });
    let tame = fire(&story, 9, 23);
    assert!(
        tame.smoke_advice
            .iter()
            .all(|said| !said.starts_with("Mesquite"))
    );
    assert_eq!(
        tame.smoke[0].state,
        "mesquite, burnt to coals or mixed with a milder wood"
    );
    assert_eq!(
        tame.smoke_taps[1].buttons.len(),
        raw.smoke_taps[1].buttons.len() - 1
    );
    say(&mut story, 30, WoodSaid { pit: pit(9), wood });
    let again = fire(&story, 9, 31);
    assert!(again.smoke_advice[0].starts_with("Mesquite is strong"));
}

/// A pellet hopper: filled by quarters, and it may not be left past what it holds.
#[test]
fn a_hopper_is_reckoned_by_what_it_weighs_here() {
    let mut story = told_until(10);
    moved_to(&mut story, 9, PitKind::Pellet);
    put_on(&mut story, 9, 11, FuelUnit::Hopper, 4);
    let usual = next(&fire(&story, 9, 12)).state.clone();
    let half = UnitWeighed {
        pit: pit(9),
        unit: FuelUnit::Hopper,
        grams: 4_500,
    };
    story.say(1, minute(12), None, half);
    let small = fire(&story, 9, 13);
    assert_ne!(next(&small).state, usual);
    assert!(small.weigh.unwrap().how.contains("9 lb 15 oz"));
    assert!(
        small.next[1].detail.starts_with("By what was burnt"),
        "{:?}",
        small.next[1]
    );
    assert!(small.vents.is_empty());
}

#[test]
fn an_accepted_time_is_shown_and_offered_no_more() {
    let mut story = told_until(205);
    put_on(&mut story, 1, 100, FuelUnit::Chimney, 4);
    put_on(&mut story, 1, 200, FuelUnit::Chimney, 4);
    let screen = fire(&story, 1, 205);
    let Act::PlanFeed { due, .. } = screen.accept.unwrap().act else {
        panic!("it accepts a time");
    };
    assert_eq!(due, minute(300));
    say(&mut story, 206, FeedPlanned { pit: pit(1), due });
    let accepted = fire(&story, 1, 207);
    assert_eq!(accepted.accept, None);
    assert_eq!(accepted.next[1].state, "rings at 11:00 AM");
}

#[test]
fn past_cooks_at_that_pit_teach_the_first_feed() {
    let mut story = Story::default();
    let added = PitAdded {
        pit: pit(1),
        name: "Drum".into(),
        kind: PitKind::Drum,
        grate_cm2: None,
        alone_minutes: None,
    };
    story.say(1, minute(-9_000), None, added);
    for (of, began) in [(2, -8_000), (1, 0)] {
        let begun = CookStarted {
            id: cook(of),
            name: "Lunch".into(),
            serve: None,
            people: None,
            demo: false,
        };
        story.say(1, minute(began), Some(cook(of)), begun);
        let feeds = if of == 2 { vec![0, 90, 180] } else { vec![5] };
        for at in feeds {
            let fed = FedUnits {
                pit: pit(1),
                unit: FuelUnit::Chimney,
                quarters: 4,
                what: String::new(),
            };
            story.say(1, minute(began + at), Some(cook(of)), fed);
        }
    }
    story.say(1, minute(-7_000), Some(cook(2)), CookFinished {});
    let screen = fire(&story, 1, 6);
    assert!(
        next(&screen).detail.contains("2 intervals of past cooks"),
        "{:?}",
        next(&screen)
    );
    assert!(
        next(&screen).state.ends_with("in 1 h 29 min"),
        "{:?}",
        next(&screen)
    );
}

#[test]
fn every_kind_of_pit_has_its_taps_its_jobs_and_its_cautions_in_both_languages() {
    let mut story = told_until(205);
    for (of, kind) in (10..).zip(KINDS) {
        let added = PitAdded {
            pit: pit(of),
            name: "Another".into(),
            kind,
            grate_cm2: None,
            alone_minutes: None,
        };
        story.say(1, minute(1), None, added);
        for locale in Locale::ALL {
            let screen = seen(&story, of, 205, locale);
            let next: Vec<_> = screen.jobs.iter().filter(|job| job.is_next).collect();
            assert_eq!(next.len(), 1, "{kind:?}");
            assert!(screen.feed.buttons.len() >= 2);
            assert!(screen.jobs.iter().all(|job| !job.how.is_empty()));
            let charcoal = !matches!(kind, PitKind::Pellet | PitKind::Electric);
            assert_eq!(!screen.cautions.is_empty(), charcoal, "{kind:?}");
            let light = &screen.jobs[usize::from(kind == PitKind::Pellet)];
            assert_eq!(!light.cautions.is_empty(), charcoal, "{kind:?}");
            let said = serde_json::to_string(&screen).unwrap();
            assert!(!said.contains('⟨'), "{said}");
        }
    }
}

#[test]
fn jobs_are_done_one_after_another_until_the_fire_is_shut_down() {
    let mut story = told_until(10);
    let added = PitAdded {
        pit: pit(9),
        name: "Kettle two".into(),
        kind: PitKind::Kettle,
        grate_cm2: None,
        alone_minutes: None,
    };
    story.say(1, minute(2), None, added);
    let next_of = |story: &Story, at| {
        let jobs = fire(story, 9, at).jobs;
        jobs.into_iter().find(|job| job.is_next).map(|job| job.name)
    };
    assert_eq!(next_of(&story, 11).as_deref(), Some("Light it"));
    for (at, did, then) in [
        (12, FireDid::Lit, Some("Wait until it burns clear")),
        (30, FireDid::CoalsReady, Some("Feed it")),
        (31, FireDid::ShutDown, None),
    ] {
        say(&mut story, at, FireTended { pit: pit(9), did });
        assert_eq!(next_of(&story, at).as_deref(), then);
    }
    say(
        &mut story,
        60,
        FireTended {
            pit: pit(9),
            did: FireDid::Lit,
        },
    );
    assert_eq!(
        next_of(&story, 60 + MINUTE / MINUTE).as_deref(),
        Some("Wait until it burns clear")
    );
}

#[test]
fn many_openings_are_priced_and_a_few_are_not() {
    let opened = |story: &mut Story, at| {
        let opened = Opened {
            pit: Some(pit(2)),
            wetted: vec![],
            turned: vec![],
            glazed: vec![],
        };
        say(story, at, opened);
    };
    let mut story = told_until(100);
    opened(&mut story, 101);
    let priced = |story: &Story| {
        let lines = fire(story, 2, 200).next;
        lines
            .into_iter()
            .find(|line| line.name == "Openings so far")
    };
    assert_eq!(priced(&story), None);
    (0..9).for_each(|i| opened(&mut story, 110 + 5 * i));
    let line = priced(&story).unwrap();
    assert_eq!(line.state, "10 openings");
    assert!(line.detail.contains("rough"));
}
